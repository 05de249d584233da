/**
 * Do the wear intervals cover what they promise? Rounds of pairs are drawn from truths inside and outside of
 * the model's family, fitted, and compared with a new pair of the same truth: the share of 90 % intervals
 * that hold its value at 500 km and its distance to the limit, and the share of "holds" that were wrong.
 *
 * `npx tsx tests/calibrate/wear.ts [TESTS]` prints the table; the same seed gives the same table.
 */
import type { FoamId } from '../../core/foot/index.ts';
import { metres } from '../../core/units/index.ts';
import {
  fitWear,
  forms,
  wearPrior,
  type FormName,
  type WearCheck,
  type WearKind,
  type WearLimit,
} from '../../core/wear/index.ts';
import { seeded } from '../seeded.ts';

const GOAL = metres(500_000);

export const designs = {
  'six pairs, four checks': { pairs: 6, atKm: [0, 50, 150, 300] },
  'three pairs, three checks': { pairs: 3, atKm: [0, 100, 300] },
} as const;
export type Design = keyof typeof designs;

/** How the truth is drawn; changes are at 500 km, on the kind's scale. */
interface Truth {
  readonly kind: WearKind;
  readonly foam: FoamId;
  readonly form: FormName;
  readonly change: readonly [mean: number, sd: number];
  /** Sizes of the spreads of a round: between changes of pairs, between starts, of one check. */
  readonly spreads: readonly [pair: number, start: number, check: number];
  readonly start: number;
  /** Limits are drawn evenly between these. */
  readonly limit: Omit<WearLimit, 'value'> & { readonly from: number; readonly to: number };
  /** One pair's change is off by this much. */
  readonly outlier?: number;
  /** Standard deviation of an error of each check that its gauge does not know of. */
  readonly temperatureError?: number;
}

const energy: Truth = {
  kind: 'energy-absorbed J',
  foam: 'eva',
  form: 'power',
  change: [-0.3, 0.12],
  spreads: [0.09, 0.03, 0.02],
  start: 5,
  limit: { bound: 'at-least', basis: 'share-of-new', from: 0.6, to: 0.9 },
};

const peak: Truth = {
  kind: 'impact-peak N',
  foam: 'eva',
  form: 'power',
  change: [0.048, 0.03],
  spreads: [0.027, 0.022, 0.02],
  start: 950,
  limit: { bound: 'at-most', basis: 'reading', from: 950, to: 1100 },
};

const stack: Truth = {
  kind: 'stack-height mm',
  foam: 'eva',
  form: 'power',
  change: [-1, 0.8],
  spreads: [0.4, 0.5, 0.3],
  start: 38,
  limit: { bound: 'at-least', basis: 'reading', from: 34, to: 38 },
};

/** Truths in the family, and out of it. */
export const scenarios = {
  'power law': energy,
  'power law, impact peak': peak,
  'power law, stack height': stack,
  plateau: { ...energy, form: 'plateau' },
  'straight line': { ...energy, form: 'line' },
  'straight line, stack height': { ...stack, form: 'line' },
  'softens against the prior': { ...peak, change: [-0.05, 0.02] },
  'outlying pair': { ...energy, outlier: -0.3 },
  'temperature not kept': {
    ...stack,
    kind: 'hardness asker-c',
    change: [3, 2],
    spreads: [1.5, 2, 1],
    start: 45,
    limit: { bound: 'at-most', basis: 'reading', from: 44, to: 56 },
    temperatureError: 2.5,
  },
} as const satisfies Record<string, Truth>;
export type Scenario = keyof typeof scenarios;

/** One round's truth: how its pairs wear, and how much one check is off. */
export interface RoundTruth {
  readonly ratio: boolean;
  /** Mean change of the round at the goal, on the kind's scale. */
  readonly change: number;
  readonly errorSd: number;
  /** A pair's value by metres; its change may be off by an amount. */
  readonly drawPair: (outlier?: number) => (x: number) => number;
  readonly normal: () => number;
}

/** Draws the truth of one round. */
export const drawRound = (scenario: Scenario, random: () => number): RoundTruth => {
  const truth: Truth = scenarios[scenario];
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const ratio = wearPrior(truth.kind, truth.foam).scale === 'ratio';
  const form = forms.find(({ name }) => name === truth.form);
  if (form === undefined) throw new RangeError(`no form ${truth.form}`);
  const bend = form.bend ? form.bend.median * Math.exp(form.bend.logSd * normal()) : 1;
  const change = truth.change[0] + truth.change[1] * normal();
  const pairSd = truth.spreads[0] * (0.3 + 1.2 * random());
  const startSd = truth.spreads[1] * Math.exp(0.3 * normal());
  const errorSd = truth.spreads[2] * Math.exp(0.3 * normal());
  const drawPair = (outlier = 0) => {
    const first = (ratio ? Math.log(truth.start) : truth.start) + startSd * normal();
    const own = change + pairSd * normal() + outlier;
    return (x: number) => {
      const y = first + own * form.share(x, bend);
      return ratio ? Math.exp(y) : y;
    };
  };
  return { ratio, change, errorSd, drawPair, normal };
};

/** What came of many rounds; shares from 0 to 1. */
export interface Calibration {
  readonly scenario: Scenario;
  readonly design: Design;
  /** 90 % interval of a new pair's value at 500 km. */
  readonly value: number;
  /** 90 % interval of its distance to the limit. */
  readonly distance: number;
  /** Share of rounds that said "holds" or "does not hold". */
  readonly said: number;
  /** Of those that said "holds", the share where the new pair did not. */
  readonly wrongHolds: number;
  /** Rounds where a pair that wears as the others do was named as outlying. */
  readonly wronglyNamed: number;
  /** Rounds where the outlying pair was named; null where there is none. */
  readonly named: number | null;
  /** Mean width of the interval of the value. */
  readonly width: number;
}

/** Draws and fits `tests` rounds of one scenario. */
export const simulateWear = (
  scenario: Scenario,
  design: Design,
  tests: number,
  seed: number,
): Calibration => {
  const truth: Truth = scenarios[scenario];
  const { pairs, atKm } = designs[design];
  const random = seeded(seed);
  const prior = wearPrior(truth.kind, truth.foam);
  let [value, distance, said, holds, wrong, misnamed, named, width] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let test = 0; test < tests; test++) {
    const { ratio, errorSd, drawPair, normal } = drawRound(scenario, random);
    const checks: WearCheck<WearKind>[] = [];
    for (let pair = 0; pair < pairs; pair++) {
      const at = drawPair(pair === 0 ? truth.outlier : 0);
      for (const km of atKm) {
        const error = Math.hypot(errorSd, truth.temperatureError ?? 0) * normal();
        const exact = at(km * 1000);
        checks.push({
          kind: truth.kind,
          pair: `pair ${pair}`,
          distance: metres(km * 1000),
          value: ratio ? exact * Math.exp(error) : exact + error,
        });
      }
    }
    const fit = fitWear({ kind: truth.kind, site: 'heel-centre', checks }, prior);
    const fresh = drawPair();
    const interval = fit.valueAt(GOAL);
    if (interval === null) throw new RangeError('no start');
    width += interval.upper - interval.lower;
    if (interval.lower <= fresh(GOAL) && fresh(GOAL) <= interval.upper) value++;

    const { from, to, bound, basis } = truth.limit;
    const limit: WearLimit = { bound, basis, value: from + (to - from) * random() };
    const edge = basis === 'reading' ? limit.value : limit.value * fresh(0);
    const isWithin = (x: number) => (bound === 'at-least' ? fresh(x) >= edge : fresh(x) <= edge);
    const crossing = fit.limitDistance(limit);
    if (crossing === null) throw new RangeError('no start');
    const { lower, upper } = crossing;
    const before = lower === 0 || isWithin(lower === 'beyond-checks' ? fit.reach : lower);
    if (before && (upper === 'beyond-checks' || !isWithin(upper))) distance++;

    const word = fit.chanceToHold(limit, GOAL)?.word;
    if (word !== 'not-known-yet') said++;
    if (word === 'holds') {
      holds++;
      if (!isWithin(GOAL)) wrong++;
    }
    const odd = fit.outlyingPairs();
    const isOdd = (pair: string) => truth.outlier !== undefined && pair === 'pair 0';
    if (odd.some(({ pair }) => !isOdd(pair))) misnamed++;
    if (odd.some(({ pair }) => isOdd(pair))) named++;
  }
  return {
    scenario,
    design,
    value: value / tests,
    distance: distance / tests,
    said: said / tests,
    wrongHolds: holds > 0 ? wrong / holds : 0,
    wronglyNamed: misnamed / tests,
    named: truth.outlier === undefined ? null : named / tests,
    width: width / tests,
  };
};
