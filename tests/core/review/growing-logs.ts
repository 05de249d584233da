/** Simulated tests of a round whose complaint comes from some distance on, as logs that a review opens. */
import { viewOfHeads, type RecordId } from '../../../core/records/index.ts';
import { openProject, type ProjectLog } from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { PROJECT, record } from './log-for-tests.ts';

const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 4, 1);
const ROUND = idOf(2);
const at = (day: number) => new Date(START + day * DAY_MS).toISOString();

export interface GrowingTest {
  readonly testers: number;
  readonly runs: number;
  readonly runKm: number;
  readonly briefKm: number;
  /** Chance of a report in a run that begins at these kilometres. */
  readonly rateAt: (km: number) => number;
  /** With this chance a run is as the tester's last one. */
  readonly linger?: number;
}

/** One test: each tester in a pair of their own, one run a day, each asked. */
export const growingLog = (test: GrowingTest, random: () => number): ProjectLog => {
  const { testers, runs, runKm, briefKm, rateAt, linger = 0 } = test;
  const numbers = Array.from({ length: testers }, (_, n) => n);
  const worn = (n: number): { pair: RecordId; tester: RecordId } => ({
    pair: idOf(10 + n),
    tester: idOf(100 + n),
  });
  const revisions = [
    make.project({ distanceM: 1000 * briefKm }),
    make.round(ROUND, 1),
    ...numbers.flatMap((n) => {
      let before: boolean | null = null;
      return [
        make.pair(idOf(10 + n), ROUND, `${100 + n}`),
        record(idOf(100 + n), 'tester', { code: `T${n}` }),
        make.handOut(idOf(200 + n), worn(n), at(0)),
        ...Array.from({ length: runs }, (_, run) => {
          const lingers = before !== null && random() < linger;
          const felt: boolean = lingers ? before === true : random() < rateAt(run * runKm);
          before = felt;
          return make.run(idOf(10_000 + 100 * n + run), worn(n), at(run + 0.25), {
            distanceM: 1000 * runKm,
            durationS: 360 * runKm,
            feet: felt
              ? {
                  answer: 'complaints',
                  complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
                }
              : { answer: 'nothing' },
          });
        }),
      ];
    }),
  ];
  return openProject(viewOfHeads(revisions), PROJECT, START + 200 * DAY_MS) as ProjectLog;
};
