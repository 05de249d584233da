/** How far did this phone's tester run in each pair? From the runs on this phone, counted once each. */
import {
  handOutSpan,
  isWithin,
  loggedRun,
  withoutRepeats,
  type LoggedRun,
} from '../../core/mileage/index.ts';
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { metres, type Metres } from '../../core/units/index.ts';

export interface HeldPair {
  readonly pair: RecordOf<'pair'>;
  readonly handOut: RecordOf<'hand-out'>;
  /** What this tester ran in it. */
  readonly distanceM: Metres;
  readonly runs: number;
  readonly lastRunMs: number | null;
  /** This tester's runs in it, each once, whether or not they count. */
  readonly ownRuns: readonly RecordOf<'run'>[];
}

/** The pairs in this tester's hands now. */
export const heldPairs = (
  tester: RecordId,
  pairs: readonly RecordOf<'pair'>[],
  handOuts: readonly RecordOf<'hand-out'>[],
  runs: readonly RecordOf<'run'>[],
  nowMs: number,
): readonly HeldPair[] => {
  const { counted, repeats } = withoutRepeats(runs.map(loggedRun));
  return handOuts
    .filter(({ body }) => body.tester === tester)
    .filter((handOut) => isWithin(handOutSpan(handOut), nowMs))
    .flatMap((handOut) => {
      const pair = pairs.find(({ revision }) => revision.id === handOut.body.pair);
      if (!pair) return [];
      const own = counted.filter((run) => run.pair === handOut.body.pair && run.tester === tester);
      const ownRuns = runs.filter(
        ({ body, revision }) =>
          body.pair === handOut.body.pair && body.tester === tester && !repeats.has(revision.id),
      );
      return [{ pair, handOut, ...sumOf(own), ownRuns }];
    });
};

const sumOf = (runs: readonly LoggedRun[]) => ({
  distanceM: metres(runs.reduce((sum, run) => sum + run.distanceM, 0)),
  runs: runs.length,
  lastRunMs: runs.at(-1)?.startMs ?? null,
});
