/** What does a round's card say of its complaints, in one line? The surest first, and never less than the shoe shows. */
import { surenessOf, type Sureness, type WeighedCell } from '../complaints/index.ts';

type Cell = Pick<WeighedCell, 'zone' | 'kind' | 'word' | 'testersOnce' | 'runs'>;

export type RoundCardLine<C extends Cell = Cell> =
  | { readonly case: 'nobody-ran' }
  | { readonly case: 'nothing' }
  /** One tester has it in more than one run, which is too few to say that it recurs. */
  | { readonly case: 'early'; readonly cell: C }
  | { readonly case: 'felt'; readonly sure: Exclude<Sureness, 'too-early'>; readonly cell: C };

const bySureness = ['clear', 'one-tester', 'likely'] as const;

/**
 * @param cells complaints of the round, the most proved first
 * @param runs how many runs of the round count
 * @returns the surest complaint; of equally likely ones that of the most testers, as the shoe's headline has it
 */
export const roundCardLine = <C extends Cell>(
  cells: readonly C[],
  runs: number,
): RoundCardLine<C> => {
  if (runs === 0) return { case: 'nobody-ran' };
  for (const sure of bySureness) {
    const found = cells.filter(({ word, testersOnce }) => surenessOf(word, testersOnce) === sure);
    const cell =
      sure === 'likely' ? found.toSorted((a, b) => b.testersOnce - a.testersOnce)[0] : found[0];
    if (cell) return { case: 'felt', sure, cell };
  }
  const [early] = cells
    .filter(({ word }) => word === 'early-sign')
    .toSorted((a, b) => b.runs - a.runs);
  return early ? { case: 'early', cell: early } : { case: 'nothing' };
};
