/** Simulated pairs of rounds with a change in between that works, or does nothing, read by `core/rounds`. */
import type { Complaint, RecordId } from '../../core/records/index.ts';
import {
  compareCell,
  compareCells,
  orderAnswers,
  reportsOf,
  type AnsweredRun,
  type CellComparison,
} from '../../core/rounds/index.ts';
import { seeded } from '../seeded.ts';

export interface ChangeScenario {
  /** Testers who wear both rounds, and those who wear only one, in each round. */
  readonly both: number;
  readonly onlyOne?: number;
  /** Asked runs of a tester in the earlier and in the later round. */
  readonly runs: readonly [number, number];
  /** Mean share of runs that report it. */
  readonly rate: readonly [number, number];
  /** How much testers differ: intraclass correlation of a beta distribution of their rates; 0: alike. */
  readonly differ?: number;
  /** With this chance a run is as the tester's last one of the round. */
  readonly linger?: number;
  /** As many other cells, in which nothing changes, at this rate. */
  readonly others?: { readonly cells: number; readonly rate: number };
}

export interface ChangeFigures {
  readonly verdicts: Readonly<Record<CellComparison['verdict'], number>>;
  /** Share of tests whose interval of the change holds the true one; null without a basis. */
  readonly coverage: number | null;
  /** Share of tests with any other cell named new, and named worth a look. */
  readonly falselyNew: number;
  readonly falselyLook: number;
  /** Share of tests in which the first cell itself is proved to be new. */
  readonly provedNew: number;
}

const ALLOWED = 0.05;
const FELT = { kind: 'heel-slip', zone: 'U10' } as const;
const zones = [
  'P1',
  'P2',
  'P3',
  'P4',
  'P5',
  'P6',
  'P7',
  'P8',
  'P9',
  'U1',
  'U2',
  'U3',
  'U4',
  'U5',
] as const;
const kinds = ['rubbing', 'pressure', 'hot-spot'] as const;

type Random = () => number;

/** Marsaglia G & Tsang WW, ACM Trans Math Softw 2000;26:363-372; below 1 by the power of a uniform. */
const gamma = (shape: number, random: Random): number => {
  if (shape < 1) return gamma(shape + 1, random) * random() ** (1 / shape);
  const d = shape - 1 / 3;
  for (;;) {
    const z = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const v = (1 + z / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(random()) < (z * z) / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
};

/** A tester's own rate. */
const rateOf = (mean: number, differ: number, random: Random): number => {
  if (differ === 0) return mean;
  const [a, b] = [(mean * (1 - differ)) / differ, ((1 - mean) * (1 - differ)) / differ];
  const x = gamma(a, random);
  return x / (x + gamma(b, random));
};

const play = (scenario: ChangeScenario, random: Random) => {
  const { both, onlyOne = 0, runs, rate, differ = 0, linger = 0, others } = scenario;
  const rounds: AnsweredRun[][] = [[], []];
  const cells = [
    { ...FELT, rate },
    ...Array.from({ length: others?.cells ?? 0 }, (_, at) => ({
      kind: kinds[Math.floor(at / zones.length) % kinds.length] as (typeof kinds)[number],
      zone: zones[at % zones.length] as (typeof zones)[number],
      rate: [others?.rate ?? 0, others?.rate ?? 0] as const,
    })),
  ];
  const wear = (name: string, wears: readonly (0 | 1)[]) => {
    const own = cells.map((cell) => rateOf(Math.max(...cell.rate), differ, random));
    for (const round of wears) {
      const before = cells.map(() => -1);
      for (let run = 0; run < runs[round]; run++) {
        const complaints = cells.flatMap((cell, at): Complaint[] => {
          const mean = Math.max(...cell.rate);
          const p = mean === 0 ? 0 : ((own[at] as number) * cell.rate[round]) / mean;
          const lingers = before[at] !== -1 && random() < linger;
          const felt = lingers ? before[at] === 1 : random() < p;
          before[at] = felt ? 1 : 0;
          return felt ? [{ foot: 'left', zone: cell.zone, kind: cell.kind }] : [];
        });
        (rounds[round] as AnsweredRun[]).push({
          run: `${name}-${round}-${run}` as RecordId,
          tester: name as RecordId,
          startMs: run,
          complaints,
        });
      }
    }
  };
  for (let at = 0; at < both; at++) wear(`b${at}`, [0, 1]);
  for (let at = 0; at < onlyOne; at++) {
    wear(`e${at}`, [0]);
    wear(`l${at}`, [1]);
  }
  return rounds.map(orderAnswers) as [
    ReturnType<typeof orderAnswers>,
    ReturnType<typeof orderAnswers>,
  ];
};

/** Plays the scenario so often and reads each test once, at its end. */
export const simulateChanges = (
  scenario: ChangeScenario,
  tests: number,
  seed: number,
): ChangeFigures => {
  const random = seeded(seed);
  const verdicts = { mended: 0, better: 0, 'no-different': 0, worse: 0, 'too-little': 0 };
  const truth = scenario.rate[1] - scenario.rate[0];
  let [covered, intervals, falselyNew, falselyLook, provedNew] = [0, 0, 0, 0, 0];
  for (let test = 0; test < tests; test++) {
    const [earlier, later] = play(scenario, random);
    const found = compareCell(
      {
        earlier: { answers: earlier, reports: reportsOf(earlier, FELT) },
        later: { answers: later, reports: reportsOf(later, FELT) },
      },
      ALLOWED,
    );
    verdicts[found.verdict]++;
    if (found.change) {
      intervals++;
      if (found.change.lower <= truth && truth <= found.change.upper) covered++;
    }
    if (scenario.others) {
      const all = compareCells(earlier, later, () => ({ earlier: false, later: false }));
      if (all.some(({ kind, word }) => kind === FELT.kind && word === 'proved')) provedNew++;
      const rises = all.filter(({ kind }) => kind !== FELT.kind);
      if (rises.some(({ word }) => word === 'proved')) falselyNew++;
      if (rises.some(({ word }) => word === 'look')) falselyLook++;
    }
  }
  const share = (count: number) => count / tests;
  return {
    verdicts: {
      mended: share(verdicts.mended),
      better: share(verdicts.better),
      'no-different': share(verdicts['no-different']),
      worse: share(verdicts.worse),
      'too-little': share(verdicts['too-little']),
    },
    coverage: intervals > 0 ? covered / intervals : null,
    falselyNew: share(falselyNew),
    falselyLook: share(falselyLook),
    provedNew: share(provedNew),
  };
};
