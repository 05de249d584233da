/** Simulated samples of two rounds with a change between them that arrived, came halfway or not, read by `core/rounds`. */
import {
  arrivalWord,
  arrivalWords,
  sampleDifference,
  usualGaugeError,
  type ArrivalWord,
  type SampleReading,
} from '../../core/rounds/index.ts';
import type { RecordId } from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';

export interface ArrivalScenario {
  /** Pairs of the earlier and of the later round. */
  readonly pairs: readonly [number, number];
  /** What is asked for, and how much of it is in the shoe, mm. */
  readonly amount: number;
  readonly truth: number;
  /** Standard deviation of a pair, of a shoe within its pair, and of one reading, mm; later pairs may scatter more. */
  readonly pairSd: number;
  readonly laterSd?: number;
  readonly shoeSd: number;
  readonly readSd: number;
  /** Steps in which the gauge is read, mm. */
  readonly step: number;
  /** Sizes, each a millimetre higher than the one before; each round has its own mix of them. */
  readonly sizes: number;
  /** Each round has a gauge of its own that errs by so much, mm; 0: one gauge reads both. */
  readonly gauge?: number;
  /** Whether what the gauges err by is known to the log. */
  readonly gaugeKnown?: boolean;
}

export type ArrivalFigures = Readonly<Record<ArrivalWord, number>> & {
  /** Share of intervals that hold the truth, of those that there are. */
  readonly coverage: number;
};

const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const play = (
  scenario: ArrivalScenario,
  round: 0 | 1,
  random: () => number,
): readonly SampleReading[] => {
  const {
    pairs,
    truth,
    pairSd,
    laterSd = pairSd,
    shoeSd,
    readSd,
    step,
    sizes,
    gauge = 0,
  } = scenario;
  const bias = gauge * normal(random);
  return Array.from({ length: pairs[round] }, (_, n) => {
    // The later round leans to large sizes: what a size is must not be taken for the change.
    const lean = round === 1 ? Math.sqrt(random()) : random();
    const size = Math.min(sizes - 1, Math.floor(lean * sizes));
    const pair = 60 + size + round * truth + (round === 1 ? laterSd : pairSd) * normal(random);
    return (['left', 'right'] as const).map((foot): SampleReading => {
      const value = pair + shoeSd * normal(random) + readSd * normal(random) + bias;
      return {
        pair: `${round} ${n}` as RecordId,
        measure: 'dimension',
        site: 'collar-height-lateral',
        unit: 'mm',
        foot,
        value: Math.round(value / step) * step,
        sizeMm: 250 + 5 * size,
        gauges: [gauge > 0 ? `gauge ${round}` : 'gauge'],
        uncertainty: gauge > 0 && scenario.gaugeKnown !== false ? gauge : null,
      };
    });
  }).flat();
};

/** How often each word is said, over so many simulated rounds. */
export const simulateArrivals = (
  scenario: ArrivalScenario,
  tests: number,
  seed: number,
): ArrivalFigures => {
  const random = seeded(seed);
  const said = Object.fromEntries(arrivalWords.map((word) => [word, 0])) as Record<
    ArrivalWord,
    number
  >;
  let [told, holds] = [0, 0];
  for (let at = 0; at < tests; at++) {
    const rounds = [play(scenario, 0, random), play(scenario, 1, random)] as const;
    const usual = usualGaugeError('dimension', 'collar-height-lateral', null);
    const found = sampleDifference(...rounds, () => null, usual);
    const interval = found?.interval ?? null;
    said[arrivalWord(scenario.amount, interval)] += 1 / tests;
    if (!interval) continue;
    told++;
    if (interval.lower <= scenario.truth && scenario.truth <= interval.upper) holds++;
  }
  return { ...said, coverage: told === 0 ? 1 : holds / told };
};

export const arrivalBase: ArrivalScenario = {
  pairs: [8, 8],
  amount: 3,
  truth: 3,
  pairSd: 0.5,
  shoeSd: 0.3,
  readSd: 0.15,
  step: 0.1,
  sizes: 1,
};

const shown = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** Lines of the table: how samples are made, and how much of the change is in them. */
const designs: readonly (readonly [string, Partial<ArrivalScenario>])[] = [
  ['8 and 8 pairs of one size', {}],
  ['3 and 3 pairs of one size', { pairs: [3, 3] }],
  ['2 and 2 pairs of one size', { pairs: [2, 2] }],
  ['8 and 8 pairs in four sizes, the later round larger', { sizes: 4 }],
  ['5 and 8 pairs in three sizes', { pairs: [5, 8], sizes: 3 }],
  ['4 and 8 pairs, the later ones scatter three times as much', { pairs: [4, 8], laterSd: 1.5 }],
  ['8 and 3 pairs, the later ones scatter three times as much', { pairs: [8, 3], laterSd: 1.5 }],
  ['8 and 8 pairs, scatter 2 mm', { pairSd: 2 }],
  ['8 and 8 pairs read in whole mm, scatter 0.1 mm', { pairSd: 0.1, shoeSd: 0.05, step: 1 }],
  ['8 and 8 pairs, a gauge a round, each off by ± 0.5 mm', { gauge: 0.5 }],
  ['a gauge a round, off by ± 0.2 mm, and nobody knows it', { gauge: 0.2, gaugeKnown: false }],
  ['a gauge a round, off by ± 0.5 mm, and nobody knows it', { gauge: 0.5, gaugeKnown: false }],
];

export const ARRIVAL_HEADER = [
  '| samples | in the shoe | arrived | more | partly | not | too few to say | not measured | interval holds the truth |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- |',
] as const;

/** 3 mm are asked for; nothing, half, all of it is in the shoe. */
export const arrivalRows = (tests: number, seed: number): readonly string[] =>
  designs.flatMap(([name, more]) =>
    [0, 1.5, 3].map((truth) => {
      const found = simulateArrivals({ ...arrivalBase, ...more, truth }, tests, seed);
      const { arrived, beyond, partly, not, open, coverage } = found;
      const cells = [arrived, beyond, partly, not, open, found['not-measured'], coverage];
      return `| ${name} | ${truth} of 3 mm | ${cells.map(shown).join(' | ')} |`;
    }),
  );
