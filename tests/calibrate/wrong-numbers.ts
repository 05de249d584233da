/**
 * What one wrong number does to the verdict on wear: rounds drawn as in `wear.ts`, with a fault put into the records,
 * opened as a log and read by the verdict, so that whatever keeps such numbers out of the figures is part of it.
 */
import { viewOfHeads, type RecordId, type Revision } from '../../core/records/index.ts';
import { lookAtWear, openProject, reviewProject, verdictOf } from '../../core/review/index.ts';
import * as make from '../core/review/log-for-tests.ts';
import { own, PROJECT, record } from '../core/review/log-for-tests.ts';
import { idOf } from '../core/records/make.ts';
import { seeded } from '../seeded.ts';
import { drawRound, type RoundTruth } from './wear.ts';

export const faults = [
  'none',
  'one reading ×10',
  'second gauge 4 % high from the third check on',
  'second gauge 8 % high from the third check on',
  'noise growing threefold with distance',
  'one run of 500 km in the wrong pair before its first check',
] as const;
export type Fault = (typeof faults)[number];

const ROUND = idOf(2);
const PAIRS = 6;
const AT_KM = [0, 50, 150, 300] as const;
const BRIEF_M = 500_000;
const RUN_KM = 25;
const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 4, 1);
const at = (day: number) => new Date(START + day * DAY_MS).toISOString();

/** On the day before a check its kilometres are run; a run a day. */
const dayOf = (km: number): number => 1 + km / RUN_KM;

const logOf = (
  fault: Fault,
  { errorSd, normal }: RoundTruth,
  pairs: readonly ((x: number) => number)[],
  limit: number,
) => {
  const misread = fault === 'one reading ×10';
  const gauge = fault.startsWith('second gauge 4') ? 1.04 : fault.startsWith('second') ? 1.08 : 1;
  const [oddPair, oddCheck] = [2, 2];
  const readingOf = (value: number, pair: number, check: number): number => {
    const km = AT_KM[check] as number;
    const noisy = fault.startsWith('noise') ? errorSd * (1 + (2 * km) / 300) : errorSd;
    const read = value * Math.exp(noisy * normal()) * (check >= 2 ? gauge : 1);
    return misread && pair === oddPair && check === oddCheck ? 10 * read : read;
  };
  const worn = (n: number): { pair: RecordId; tester: RecordId } => ({
    pair: idOf(10 + n),
    tester: idOf(100 + n),
  });
  const revisions: Revision[] = [
    make.project({
      distanceM: BRIEF_M,
      limits: [
        { measure: 'energy-absorbed', bound: 'at-least', value: limit, basis: 'share-of-new' },
      ],
    }),
    make.round(ROUND, 1, { foam: 'eva' }),
    ...pairs.flatMap((valueAt, n) => [
      make.pair(idOf(10 + n), ROUND, `${100 + n}`),
      record(idOf(100 + n), 'tester', { code: `T${n}` }),
      make.handOut(idOf(200 + n), worn(n), at(0)),
      ...Array.from({ length: 300 / RUN_KM }, (_, run) =>
        make.run(idOf(10_000 + 100 * n + run), worn(n), at(1 + run), {
          distanceM: 1000 * RUN_KM,
          durationS: 330 * RUN_KM,
        }),
      ),
      ...AT_KM.map((km, check) =>
        own(idOf(5000 + 10 * n + check), 'bench-check', {
          pair: idOf(10 + n),
          at: at(dayOf(km) - 0.5),
          restedH: 30,
          temperatureC: 23,
          readings: [
            {
              measure: 'energy-absorbed',
              site: 'heel-centre',
              foot: 'left',
              unit: 'J',
              value: readingOf(valueAt(1000 * km), n, check),
            },
          ],
        }),
      ),
    ]),
    ...(fault.startsWith('one run')
      ? [
          make.run(idOf(9000), worn(oddPair), at(0.1), {
            distanceM: 500_000,
            durationS: 30 * 3600,
          }),
        ]
      : []),
  ];
  return openProject(viewOfHeads(revisions), PROJECT, START + 100 * DAY_MS);
};

export interface FaultFigures {
  /** Mean width of the 90 % interval of a new pair's value at the brief's distance, J. */
  readonly width: number;
  /** Share of intervals that hold a new pair's value there, and a checked pair's own. */
  readonly newPair: number;
  readonly ownPair: number;
  /** Share of rounds called "holds": the mean pair keeps the limit by far, nearly fails it, is just at it. */
  readonly holdsFar: number;
  readonly holdsNear: number;
  readonly holdsAtLimit: number;
  /**
   * Of the rounds at the limit: share that blame the pairs, by the rule that looked at the next checks only, and
   * now; and share that name one pair or reading instead.
   */
  readonly blamedBefore: number;
  readonly blamed: number;
  readonly namesOne: number;
}

/** The mean pair at the brief's distance, as shares of the limit's opposite: how much of its value it keeps. */
const FAR = 0.7;
const NEAR = 0.9;
/** Below this narrowing the earlier rule blamed the pairs. */
const TELLING = 0.05;

const place = { round: ROUND, kind: 'energy-absorbed J', site: 'heel-centre' } as const;

const wearOf = (log: ReturnType<typeof logOf>) => {
  const [round] = log ? reviewProject(log).rounds : [];
  const item = log && round && verdictOf(log, round).items.find(({ what }) => what === 'wear');
  return item?.what === 'wear' ? item : null;
};

/** Draws so many rounds, the same for every fault, each read against three limits. */
export const simulateFault = (fault: Fault, rounds: number, seed: number): FaultFigures => {
  const random = seeded(seed);
  let [width, newPair, ownPair, holdsFar, holdsNear, holdsAtLimit] = [0, 0, 0, 0, 0, 0];
  let [blamedBefore, blamed, namesOne] = [0, 0, 0];
  for (let at = 0; at < rounds; at++) {
    const truth = drawRound('power law', random);
    const pairs = Array.from({ length: PAIRS }, () => truth.drawPair());
    const mean = Math.exp(truth.change);
    const far = logOf(fault, truth, pairs, mean * FAR);
    if (far === null) throw new Error('no project');
    const fresh = truth.drawPair()(BRIEF_M);
    const value = lookAtWear(far, place, 'distance', null)?.curve?.find(({ x }) => x >= BRIEF_M);
    if (value) {
      width += value.upper - value.lower;
      if (value.lower <= fresh && fresh <= value.upper) newPair++;
    }
    const checked = lookAtWear(far, place, 'distance', idOf(12))?.curve?.find(
      ({ x }) => x >= BRIEF_M,
    );
    const itsOwn = pairs[2]?.(BRIEF_M) ?? NaN;
    if (checked && checked.lower <= itsOwn && itsOwn <= checked.upper) ownPair++;
    if (wearOf(far)?.word === 'holds') holdsFar++;
    if (wearOf(logOf(fault, truth, pairs, mean * NEAR))?.word === 'holds') holdsNear++;
    const item = wearOf(logOf(fault, truth, pairs, mean));
    if (item?.word === 'holds') holdsAtLimit++;
    if (item?.word !== 'not-known-yet') continue;
    if (item.next.every(({ narrowing }) => narrowing < TELLING)) blamedBefore++;
    if (item.spread?.by === 'pairs') blamed++;
    else if (item.spread) namesOne++;
  }
  const share = (count: number) => count / rounds;
  return {
    width: share(width),
    newPair: share(newPair),
    ownPair: share(ownPair),
    holdsFar: share(holdsFar),
    holdsNear: share(holdsNear),
    holdsAtLimit: share(holdsAtLimit),
    blamedBefore: share(blamedBefore),
    blamed: share(blamed),
    namesOne: share(namesOne),
  };
};
