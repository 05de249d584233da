/**
 * What breaks the guarantee of a proof, and what the words around it are worth: complaints that linger, questions
 * answered only when it hurts, the share at the moment of proof, silence, trends, and growth. Each row stands for
 * one mechanism that the grid of `simulate.ts` does not have.
 */
import {
  trendsOverDistance,
  weighComplaints,
  type FeetAnswer,
  type ObservedRun,
} from '../../core/complaints/index.ts';
import { complaintKinds, isPlausible, kindsOfComplaint, zoneCodes } from '../../core/foot/index.ts';
import type { RecordId } from '../../core/records/index.ts';
import { recurring, reviewProject, verdictOf } from '../../core/review/index.ts';
import { metres } from '../../core/units/index.ts';
import { growingLog, type GrowingTest } from '../core/review/growing-logs.ts';
import { seeded } from '../seeded.ts';

type Random = () => number;

const ALLOWED = { complaint: 0.05, pain: 0.01 };
const TESTERS = 8;
const RUNS = 12;
const CELL = { zone: 'U10', kind: 'heel-slip' } as const;

/** Every complaint that can sensibly be felt and is held against the rate of complaints. */
const cells = zoneCodes.flatMap((zone) =>
  complaintKinds
    .filter((kind) => isPlausible(kind, zone) && !kindsOfComplaint[kind].painLike)
    .map((kind) => ({ zone, kind })),
);

interface Panel {
  /** The same rate in every cell. */
  readonly rate: number;
  readonly linger?: number;
  /** Share of runs without any complaint whose question is left open. */
  readonly skipped?: number;
  readonly runs?: number;
  readonly cells: typeof cells;
}

const answersOf = (panel: Panel, random: Random): FeetAnswer[] => {
  const { rate, linger = 0, skipped = 0, runs = RUNS, cells: felt } = panel;
  const answers: FeetAnswer[] = [];
  for (let tester = 0; tester < TESTERS; tester++) {
    const before = new Int8Array(felt.length).fill(-1);
    for (let run = 0; run < runs; run++) {
      const complaints = felt.flatMap((cell, at) => {
        const lingers = before[at] !== -1 && random() < linger;
        const has = lingers ? before[at] === 1 : random() < rate;
        before[at] = has ? 1 : 0;
        return has ? [{ foot: 'left' as const, ...cell }] : [];
      });
      if (complaints.length === 0 && random() < skipped) continue;
      answers.push({
        run: `${tester}-${run}` as RecordId,
        tester: `t${tester}` as RecordId,
        complaints,
      });
    }
  }
  return answers;
};

/** Share of tests, read once at the end, with any false proof across testers, and for one tester. */
export const falseProofs = (panel: Omit<Panel, 'cells'>, tests: number, seed: number) => {
  const random = seeded(seed);
  let [across, single] = [0, 0];
  for (let test = 0; test < tests; test++) {
    const found = weighComplaints(answersOf({ ...panel, cells }, random), ALLOWED).cells;
    if (found.some(({ word }) => word === 'recurs-across-testers')) across++;
    if (found.some(({ provenTesters }) => provenTesters.length > 0)) single++;
  }
  return { across: across / tests, single: single / tests };
};

/**
 * Share of tests with a false proof across testers where the question after a good run is left open so often: three
 * cells exactly at the allowed rate, 24 runs of each tester.
 */
export const falseWhenSkipped = (skipped: number, tests: number, seed: number): number => {
  const random = seeded(seed);
  let wrong = 0;
  const few = cells.slice(0, 3);
  for (let test = 0; test < tests; test++) {
    const answers = answersOf({ rate: ALLOWED.complaint, skipped, runs: 24, cells: few }, random);
    const found = weighComplaints(answers, ALLOWED).cells;
    if (found.some(({ word }) => word === 'recurs-across-testers')) wrong++;
  }
  return wrong / tests;
};

/** How many times too high the share of runs is when it is first proven; so many of eight have it at this rate. */
export const shareAtProof = (
  [affected, rate]: readonly [number, number],
  tests: number,
  seed: number,
): number | null => {
  const random = seeded(seed);
  let [sum, proofs] = [0, 0];
  for (let test = 0; test < tests; test++) {
    const answers: FeetAnswer[] = [];
    for (let run = 0; run < RUNS; run++) {
      for (let tester = 0; tester < TESTERS; tester++)
        answers.push({
          run: `${tester}-${run}` as RecordId,
          tester: `t${tester}` as RecordId,
          complaints: tester < affected && random() < rate ? [{ foot: 'left', ...CELL }] : [],
        });
      const [cell] = weighComplaints(answers, ALLOWED).cells;
      if (cell?.word !== 'recurs-across-testers') continue;
      sum += cell.runShare.share / ((rate * affected) / TESTERS);
      proofs++;
      break;
    }
  }
  return proofs > 0 ? sum / proofs : null;
};

/**
 * Of tests in which four of eight are prone at 20 %: the share that is silent after so many runs of each, and the
 * share that is called "not seen" then, by the rule that asked only whether proof was possible at all and by ours.
 */
export const calledNotSeen = (runs: number, tests: number, seed: number) => {
  const random = seeded(seed);
  let [silent, before, now] = [0, 0, 0];
  for (let test = 0; test < tests; test++) {
    const answers: FeetAnswer[] = [];
    for (let tester = 0; tester < TESTERS; tester++)
      for (let run = 0; run < runs; run++)
        answers.push({
          run: `${tester}-${run}` as RecordId,
          tester: `t${tester}` as RecordId,
          complaints: tester < 4 && random() < 0.2 ? [{ foot: 'left', ...CELL }] : [],
        });
    const weighed = weighComplaints(answers, ALLOWED);
    if (weighed.cells.length > 0) continue;
    silent++;
    const loud = answers.map((one) => ({
      ...one,
      complaints: [{ foot: 'left' as const, ...CELL }],
    }));
    const [most] = weighComplaints(loud, ALLOWED).cells;
    if (most && most.eValue >= most.needed) before++;
    if (weighed.unreported.complaint.word === 'not-seen') now++;
  }
  return { silent: silent / tests, before: before / tests, now: now / tests };
};

/** Share of tests with a trend named though the rate stays as it is. */
export const falseTrends = (
  {
    rate,
    linger,
    testers = TESTERS,
    runs = RUNS,
  }: {
    readonly rate: number;
    readonly linger: number;
    readonly testers?: number;
    readonly runs?: number;
  },
  tests: number,
  seed: number,
): number => {
  const random = seeded(seed);
  let named = 0;
  for (let test = 0; test < tests; test++) {
    const observed: ObservedRun[] = [];
    for (let tester = 0; tester < testers; tester++) {
      let before: boolean | null = null;
      for (let run = 0; run < runs; run++) {
        const lingers: boolean = before !== null && random() < linger;
        before = lingers ? before === true : random() < rate;
        observed.push({
          run: `${tester}-${run}` as RecordId,
          tester: `t${tester}` as RecordId,
          pair: `p${tester}` as RecordId,
          round: 'r' as RecordId,
          startMs: run,
          pairM: metres(10_000 * run),
          complaints: before ? [{ foot: 'left', ...CELL }] : [],
          softShare: null,
          wet: null,
          temperatureC: null,
          sock: null,
        });
      }
    }
    const [trend] = trendsOverDistance(observed, [CELL]);
    if (trend?.word === 'grows' || trend?.word === 'fades') named++;
  }
  return named / tests;
};

/**
 * What is said of complaints that grow, as shares of tests; and how often the rule that tested proven complaints
 * only, and took three pairs at the brief's distance for enough, said that it holds.
 */
export const saidOfGrowth = (test: GrowingTest, tests: number, seed: number) => {
  const random = seeded(seed);
  const said = { holds: 0, 'does-not-hold': 0, 'not-known-yet': 0 };
  let before = 0;
  for (let at = 0; at < tests; at++) {
    const log = growingLog(test, random);
    const [round] = reviewProject(log).rounds;
    if (!round) continue;
    const item = verdictOf(log, round).items.find(({ what }) => what === 'complaints');
    if (item?.what !== 'complaints') continue;
    said[item.word]++;
    const isProven = recurring(round).length > 0;
    if (item.pairsThere >= 3 && !(isProven && item.growing.length > 0)) before++;
  }
  return {
    before: before / tests,
    holds: said.holds / tests,
    grows: said['does-not-hold'] / tests,
  };
};
