/** How many remarks were made at which distance of their pair? */
import { metres, type Metres } from '../units/index.ts';

export interface Stretches {
  /** Length of each stretch; they begin at 0. */
  readonly stepM: Metres;
  /** Remarks in each; as many as reach the farthest remark of all. */
  readonly counts: readonly number[];
}

/** More bars than this in the room of a filter are not told apart. Judgement, no source. */
const MOST_STRETCHES = 12;
const steps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000] as const;

/**
 * @param all distances of every remark: they set the stretches, so that these stay while the list is narrowed
 * @param found distances of the remarks to be counted
 * @param unitM stretches are round numbers of it
 */
export const stretchesOf = (
  all: readonly Metres[],
  found: readonly Metres[],
  unitM: Metres,
): Stretches => {
  const farthest = all.reduce((most, one) => Math.max(most, one), 0);
  const fits = (step: number) => Math.floor(farthest / (step * unitM)) + 1 <= MOST_STRETCHES;
  const stepM = metres((steps.find(fits) ?? Math.ceil(farthest / unitM / MOST_STRETCHES)) * unitM);
  const counts = Array.from({ length: Math.floor(farthest / stepM) + 1 }, () => 0);
  for (const one of found) counts[Math.floor(one / stepM)]!++;
  return { stepM, counts: all.length === 0 ? [] : counts };
};
