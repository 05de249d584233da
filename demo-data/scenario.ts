/** The invented wear test in figures: who wears what when, what is wrong with each round. */
import type { Brief, Change, Dimension } from '../core/records/index.ts';
import type { ComplaintKind, FoamId, ZoneCode } from '../core/foot/index.ts';
import { metres, millimetres } from '../core/units/index.ts';

export const SEED = 20261125;
export const FIRST_DAY = Date.UTC(2026, 8, 9);
export const DAY_MS = 86_400_000;
export const WEEKS = 10;

export const brief: Brief = {
  runner: 'neutral',
  use: 'daily-training',
  surfaces: ['road', 'gravel'],
  distanceM: metres(600_000),
  allowedRate: { complaint: 0.05, pain: 0.01 },
  limits: [
    {
      measure: 'energy-absorbed',
      site: 'heel-centre',
      bound: 'at-least',
      value: 0.7,
      basis: 'share-of-new',
    },
    {
      measure: 'stack-height',
      site: 'heel-centre',
      bound: 'at-least',
      value: 34,
      basis: 'reading',
    },
    { measure: 'tread-depth', site: 'heel-lateral', bound: 'at-least', value: 1, basis: 'reading' },
  ],
  attributes: [
    'overall',
    'heel-cushioning',
    'forefoot-cushioning',
    'stability',
    'toe-room',
    'heel-hold',
    'midfoot-hold',
    'ventilation',
  ],
  feet: {
    lengthMm: [millimetres(240), millimetres(290)],
    widthMm: [millimetres(88), millimetres(112)],
  },
  words: 'Invented for the demo. A neutral daily trainer for road and light gravel.',
};

const dimension = (
  measure: Dimension['measure'],
  site: string,
  unit: Dimension['unit'],
  nominal: number,
  tolerance: number,
): Dimension => ({ measure, site, unit, nominal, lower: -tolerance, upper: tolerance });

/** Tolerances: common practice, no source. */
export const blueprint: readonly Dimension[] = [
  dimension('stack-height', 'heel-centre', 'mm', 36, 1),
  dimension('stack-height', 'forefoot-centre', 'mm', 28, 1),
  dimension('hardness', 'heel-centre', 'asker-c', 45, 3),
  dimension('mass', 'shoe', 'g', 252, 12),
  dimension('dimension', 'collar-height-lateral', 'mm', 62, 2),
  dimension('dimension', 'heel-cup-width', 'mm', 58, 1),
];

export interface RoundPlan {
  readonly name: string;
  readonly stage: 'first-samples' | 'wear-test-samples' | 'confirmation-samples';
  readonly changes: readonly Change[];
  readonly foam: FoamId;
  /** What a new sample of this round measures on average, by blueprint site. */
  readonly energyAtNewJ: number;
  readonly comfort: number;
}

export const rounds: readonly RoundPlan[] = [
  {
    name: 'Round 1',
    stage: 'first-samples',
    changes: [],
    foam: 'eva',
    energyAtNewJ: 2.05,
    comfort: 62,
  },
  {
    name: 'Round 2',
    stage: 'wear-test-samples',
    changes: [
      {
        part: 'upper-pattern',
        what: 'Collar 3 mm higher on the lateral side, heel curve drawn in by 1.5 mm',
        mends: { kind: 'heel-slip', zone: 'U10' },
        structured: {
          part: 'upper-pattern',
          line: 'collar',
          side: 'lateral',
          direction: 'higher',
          by: { amount: 3, unit: 'mm' },
        },
      },
      { part: 'upper-material', what: 'Lateral mudguard in a firmer film' },
    ],
    foam: 'eva',
    energyAtNewJ: 2.07,
    comfort: 68,
  },
  {
    name: 'Round 3',
    stage: 'confirmation-samples',
    changes: [
      {
        part: 'upper-material',
        what: 'Mudguard film cut back 6 mm from the little toe',
        mends: { kind: 'pressure', zone: 'U3' },
      },
      { part: 'midsole-foam', what: 'Foam of a new batch, density up by 6 %' },
    ],
    foam: 'eva',
    energyAtNewJ: 2.12,
    comfort: 72,
  },
];

export const TESTERS = 12;
export const PAIRS_PER_ROUND = 8;

/** Testers (from 0) who feel what recurs: five of the first eight slip at the heel in round 1. */
export const heelSlippers = new Set([0, 2, 3, 5, 6]);
export const wideFeet = new Set([4, 7, 8, 10]);
export const alwaysComplains = 10;

/** One tester's pair in one period: rounds and pairs count from 0. */
export interface Wearing {
  readonly tester: number;
  readonly round: number;
  readonly pair: number;
}

/** Three periods. Pairs of an earlier round are worn on, so that some go far. */
export const periods: readonly {
  readonly fromDay: number;
  readonly toDay: number;
  readonly wearings: readonly Wearing[];
}[] = [
  {
    fromDay: 0,
    toDay: 23,
    wearings: Array.from({ length: 8 }, (_, at) => ({ tester: at, round: 0, pair: at })),
  },
  {
    fromDay: 24,
    toDay: 46,
    wearings: [
      ...Array.from({ length: 4 }, (_, at) => ({ tester: at, round: 0, pair: at })),
      ...Array.from({ length: 8 }, (_, at) => ({ tester: at + 4, round: 1, pair: at })),
    ],
  },
  {
    fromDay: 47,
    toDay: 69,
    wearings: [
      ...Array.from({ length: 8 }, (_, at) => ({ tester: at, round: 2, pair: at })),
      ...Array.from({ length: 4 }, (_, at) => ({ tester: at + 8, round: 1, pair: at + 4 })),
    ],
  },
];

export interface Circumstance {
  readonly tester: number;
  readonly round: number;
  /** Kilometres on the pair before the run. */
  readonly pairKm: number;
  readonly temperatureC: number;
}

/** What can bother a tester, and how likely it is on one run. */
export const troubles: readonly {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  readonly feet: readonly ('left' | 'right')[];
  readonly severity: readonly [number, number];
  readonly probability: (at: Circumstance) => number;
}[] = [
  {
    zone: 'U10',
    kind: 'heel-slip',
    feet: ['left', 'right'],
    severity: [3, 6],
    probability: ({ tester, round }) =>
      heelSlippers.has(tester) ? ([0.5, 0.05, 0.03][round] as number) : 0.01,
  },
  {
    zone: 'U3',
    kind: 'pressure',
    feet: ['right'],
    severity: [2, 6],
    probability: ({ tester, round }) =>
      wideFeet.has(tester) ? ([0.02, 0.5, 0.06][round] as number) : 0.01,
  },
  {
    zone: 'U8',
    kind: 'rubbing',
    feet: ['left'],
    severity: [1, 4],
    probability: ({ pairKm }) => 0.3 * Math.exp(-pairKm / 45),
  },
  {
    zone: 'P4',
    kind: 'hot-spot',
    feet: ['left', 'right'],
    severity: [4, 8],
    probability: ({ tester }) => (tester === alwaysComplains ? 0.85 : 0.01),
  },
  {
    zone: 'P9',
    kind: 'bottoming-out',
    feet: ['left', 'right'],
    severity: [2, 5],
    probability: ({ pairKm, tester }) => (pairKm > 150 ? (tester % 4 === 2 ? 0.35 : 0.05) : 0.005),
  },
  {
    zone: 'U4',
    kind: 'overheating',
    feet: ['left', 'right'],
    severity: [1, 4],
    probability: ({ temperatureC }) => (temperatureC > 22 ? 0.15 : 0.005),
  },
];
