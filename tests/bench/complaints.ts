/** All cells and rounds of a large panel weighed, against a column library's group-by counts of the same data. */
import { op, table } from 'arquero';
import { weighComplaints, type RoundComplaints } from '../../core/complaints/index.ts';
import { largePanel } from './large-panel.ts';
import type { BenchRow } from './row.ts';

const TESTERS = 1000;
const RUNS = 200_000;
const ROUNDS = 4;

interface Row {
  readonly round: number;
  readonly zone: string;
  readonly kind: string;
  readonly runs: number;
  readonly testers: number;
}

export const complaintsRow: BenchRow = {
  name: `complaints of ${TESTERS.toLocaleString('en')} testers, ${RUNS.toLocaleString('en')} runs: counts, intervals, evidence`,
  peerName: 'arquero 7.2.1, counts by round, zone and kind only',
  setUp() {
    const rounds = largePanel(TESTERS, RUNS, ROUNDS);
    const reports = rounds.flatMap((answers, round) =>
      answers.flatMap(({ run, tester, complaints }) =>
        complaints.map(({ zone, kind }) => ({ round, run, tester, zone, kind })),
      ),
    );
    // As columns, made beforehand: what the library likes best.
    const columns = table({
      round: reports.map(({ round }) => round),
      run: reports.map(({ run }) => run),
      tester: reports.map(({ tester }) => tester),
      zone: reports.map(({ zone }) => zone),
      kind: reports.map(({ kind }) => kind),
    });
    return Promise.resolve({
      ours: () =>
        rounds.map((answers) => weighComplaints(answers, { complaint: 0.05, pain: 0.01 })),
      peer: () =>
        columns
          .groupby('round', 'zone', 'kind')
          .rollup({ runs: op.distinct('run'), testers: op.distinct('tester') })
          .objects(),
      check(ours, peer) {
        const lines = (rows: readonly Row[]) =>
          rows
            .map(({ round, zone, kind, runs, testers }) =>
              [round, zone, kind, runs, testers].join(' '),
            )
            .sort()
            .join('\n');
        const counted = (ours as RoundComplaints[]).flatMap(({ cells }, round) =>
          cells.map(({ zone, kind, runs, testersOnce }) => ({
            round,
            zone,
            kind,
            runs,
            testers: testersOnce,
          })),
        );
        if (lines(counted) !== lines(peer as Row[])) throw new Error('the two counts differ');
      },
    });
  },
};
