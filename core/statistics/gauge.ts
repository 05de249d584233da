/**
 * How much of what a gauge shows is the gauge? Parts measured by operators several times each: its
 * repeatability (the same operator again), its reproducibility (another operator), and what is left for the
 * parts.
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III: average and range method, and analysis
 * of variance of the crossed design. The interaction of operators and parts is pooled with repeatability where
 * its F test gives p > 0.25. A share of the study's spread below 10 % is good, to 30 % conditional. The interval of
 * the gauge's standard deviation is Satterthwaite's (Biometrics Bulletin 1946;2:110-114) over the mean squares.
 */
import { betaLower, fQuantile } from './beta.ts';
import { groupBy } from './group-by.ts';
import { LEVEL, type Interval } from './interval.ts';

export interface GaugeReading {
  readonly part: string;
  readonly operator: string;
  readonly value: number;
}

/** Standard deviations of one method, in the unit of the readings. */
export interface GaugeSpread {
  /** Equipment variation: the same operator, the same part, again. */
  readonly repeatability: number;
  /** Appraiser variation: other operators, their interaction with the parts included. */
  readonly reproducibility: number;
  /** Both together: the standard uncertainty of one reading by any of the operators. */
  readonly gauge: number;
  readonly parts: number;
  readonly total: number;
  /** Gauge against total, 0 to 1. */
  readonly share: number;
  /** Six standard deviations of the gauge against the width of the tolerance; null where none was given. */
  readonly shareOfTolerance: number | null;
  /** Number of distinct categories, 1.41 times parts against gauge, not cut off; null where the gauge varies by nothing. */
  readonly categories: number | null;
}

export interface GaugeMeanSquare {
  readonly squares: number;
  readonly df: number;
  readonly meanSquare: number;
}

export interface GaugeAnova extends GaugeSpread {
  /** Interval of the gauge's standard deviation. */
  readonly interval: Interval;
  /** The interaction was pooled with repeatability, because its p is above 0.25. */
  readonly pooled: boolean;
  /** F test of the interaction; null where repeatability is nought. */
  readonly interaction: { readonly f: number; readonly p: number } | null;
  /** F of operators and of parts, against what stands below them (pooled or interaction); null where that is nought. */
  readonly f: { readonly operators: number; readonly parts: number } | null;
  readonly table: Readonly<
    Record<'operators' | 'parts' | 'interaction' | 'repeatability', GaugeMeanSquare>
  >;
}

export interface GaugeRanges extends GaugeSpread {
  /** Upper control limit of the ranges of one operator on one part. */
  readonly rangeLimit: number;
  /** Where a range lies above it: that operator read that part unlike the rest. */
  readonly above: readonly { readonly operator: string; readonly part: string }[];
}

/** Good: below 10 % of the spread (or of the tolerance where one is given); conditional: to 30 %. */
export type GaugeWord = 'good' | 'conditional' | 'not-good-enough';

export type GaugeStudyResult =
  | {
      readonly ok: false;
      readonly why: 'too-few-parts' | 'too-few-operators' | 'too-few-trials' | 'nothing-varies';
    }
  | {
      readonly ok: false;
      /** A cell that has not as many trials as the most. */
      readonly why: 'unbalanced';
      readonly part: string;
      readonly operator: string;
      readonly have: number;
      readonly need: number;
    }
  | {
      readonly ok: true;
      readonly parts: number;
      readonly operators: number;
      readonly trials: number;
      readonly anova: GaugeAnova;
      /** Null beyond the constants of the handbook's tables: 15 parts or operators, 5 trials. */
      readonly ranges: GaugeRanges | null;
      /** By the analysis of variance. */
      readonly word: GaugeWord;
      readonly wordFrom: 'tolerance' | 'total';
    };

/** p above which the interaction is pooled. */
const POOL_ABOVE = 0.25;

/** d2* for one range of 2, 3 … values (Duncan AJ, Quality Control and Industrial Statistics, from memory; √(d2² + d3²)). */
const ONE_RANGE = [
  1.41421, 1.91155, 2.23887, 2.48124, 2.67253, 2.82981, 2.96288, 3.07794, 3.17905, 3.26909, 3.35016,
  3.42378, 3.49116, 3.55333,
];
/** d2 for the mean of many ranges of 2, 3, 4, 5 values, and D4 for their limit, as the handbook rounds it. */
const MANY_RANGES = [1.12838, 1.69257, 2.05875, 2.32593];
const RANGE_LIMIT = [3.27, 2.58, 2.28, 2.11];

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const mean = (values: readonly number[]): number => sum(values) / values.length;
const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** Probability that an F variable is at least f. */
const fUpper = (f: number, df1: number, df2: number): number =>
  betaLower(df2 / (df2 + df1 * f), df2 / 2, df1 / 2);

const spreadOf = (
  repeatability: number,
  reproducibility: number,
  parts: number,
  toleranceWidth: number | null,
): GaugeSpread => {
  const gauge = Math.hypot(repeatability, reproducibility);
  const total = Math.hypot(gauge, parts);
  return {
    repeatability,
    reproducibility,
    gauge,
    parts,
    total,
    share: gauge / total,
    shareOfTolerance: toleranceWidth === null ? null : (6 * gauge) / toleranceWidth,
    categories: gauge > 0 ? (1.41 * parts) / gauge : null,
  };
};

/** The readings as `cells[operator][part][trial]`. */
type Cells = readonly (readonly (readonly number[])[])[];

const rangesOf = (
  cells: Cells,
  {
    operators,
    parts,
  }: { readonly operators: readonly string[]; readonly parts: readonly string[] },
  toleranceWidth: number | null,
): GaugeRanges | null => {
  const trials = cells[0]?.[0]?.length ?? 0;
  const [d2, limit] = [MANY_RANGES[trials - 2], RANGE_LIMIT[trials - 2]];
  const [ofOperators, ofParts] = [ONE_RANGE[operators.length - 2], ONE_RANGE[parts.length - 2]];
  if (d2 === undefined || limit === undefined || ofOperators === undefined || ofParts === undefined)
    return null;
  const meanRange = mean(cells.flatMap((own) => own.map(range)));
  const repeatability = meanRange / d2;
  const between = range(cells.map((own) => mean(own.flat()))) / ofOperators;
  const reproducibility = Math.sqrt(
    Math.max(0, between ** 2 - repeatability ** 2 / (parts.length * trials)),
  );
  const partMeans = parts.map((_, at) => mean(cells.flatMap((own) => own[at] ?? [])));
  return {
    ...spreadOf(repeatability, reproducibility, range(partMeans) / ofParts, toleranceWidth),
    rangeLimit: limit * meanRange,
    above: operators.flatMap((operator, o) =>
      parts.flatMap((part, p) =>
        range(cells[o]?.[p] ?? []) > limit * meanRange ? [{ operator, part }] : [],
      ),
    ),
  };
};

const anovaOf = (cells: Cells, toleranceWidth: number | null, level: number): GaugeAnova => {
  const o = cells.length;
  const p = cells[0]?.length ?? 0;
  const r = cells[0]?.[0]?.length ?? 0;
  const all = cells.flat(2);
  const grand = mean(all);
  const squaresAbout = (values: readonly number[], each: number) =>
    each * sum(values.map((value) => (value - grand) ** 2));
  const operators = squaresAbout(
    cells.map((own) => mean(own.flat())),
    p * r,
  );
  const parts = squaresAbout(
    Array.from({ length: p }, (_, at) => mean(cells.flatMap((own) => own[at] ?? []))),
    o * r,
  );
  const cellSquares = squaresAbout(
    cells.flatMap((own) => own.map(mean)),
    r,
  );
  const interaction = Math.max(0, cellSquares - operators - parts);
  const repeatability = sum(
    cells.flatMap((own) => own.flatMap((cell) => cell.map((value) => (value - mean(cell)) ** 2))),
  );
  const row = (squares: number, df: number): GaugeMeanSquare => ({
    squares,
    df,
    meanSquare: squares / df,
  });
  const table = {
    operators: row(operators, o - 1),
    parts: row(parts, p - 1),
    interaction: row(interaction, (o - 1) * (p - 1)),
    repeatability: row(repeatability, o * p * (r - 1)),
  };
  const f =
    table.repeatability.meanSquare > 0
      ? table.interaction.meanSquare / table.repeatability.meanSquare
      : null;
  const test =
    f === null ? null : { f, p: fUpper(f, table.interaction.df, table.repeatability.df) };
  const pooled = test !== null && test.p > POOL_ABOVE;
  const error = pooled
    ? row(interaction + repeatability, table.interaction.df + table.repeatability.df)
    : table.repeatability;
  // Below operators and parts stands the interaction, or what it was pooled into.
  const below = pooled ? error : table.interaction;
  const ofOperators = Math.max(0, (table.operators.meanSquare - below.meanSquare) / (p * r));
  const ofInteraction = pooled ? 0 : Math.max(0, (below.meanSquare - error.meanSquare) / r);
  const ofParts = Math.max(0, (table.parts.meanSquare - below.meanSquare) / (o * r));
  const spread = spreadOf(
    Math.sqrt(error.meanSquare),
    Math.sqrt(ofOperators + ofInteraction),
    Math.sqrt(ofParts),
    toleranceWidth,
  );
  return {
    ...spread,
    interval: gaugeInterval(
      [
        { ...table.operators, times: 1 / (p * r) },
        ...(pooled
          ? [{ ...error, times: 1 - 1 / (p * r) }]
          : [
              { ...table.interaction, times: 1 / r - 1 / (p * r) },
              { ...error, times: 1 - 1 / r },
            ]),
      ],
      spread.gauge,
      level,
    ),
    pooled,
    interaction: test,
    f:
      below.meanSquare > 0
        ? {
            operators: table.operators.meanSquare / below.meanSquare,
            parts: table.parts.meanSquare / below.meanSquare,
          }
        : null,
    table,
  };
};

/** The gauge's variance is a sum of mean squares: Satterthwaite's degrees of freedom, and chi-squared. */
const gaugeInterval = (
  terms: readonly (GaugeMeanSquare & { readonly times: number })[],
  gauge: number,
  level: number,
): Interval => {
  const variance = sum(terms.map(({ meanSquare, times }) => meanSquare * times));
  const spread = sum(terms.map(({ meanSquare, times, df }) => (meanSquare * times) ** 2 / df));
  if (!(variance > 0) || !(spread > 0)) return { lower: gauge, upper: gauge };
  const df = variance ** 2 / spread;
  // Chi-squared over its degrees of freedom is F with very many below.
  const at = (p: number) => Math.sqrt(variance / fQuantile(p, df, 1e7));
  // Where operators differ by less than chance the variance is cut off at nought, and the estimate may leave it.
  return {
    lower: Math.min(gauge, at((1 + level) / 2)),
    upper: Math.max(gauge, at((1 - level) / 2)),
  };
};

const wordOf = (share: number): GaugeWord =>
  share < 0.1 ? 'good' : share <= 0.3 ? 'conditional' : 'not-good-enough';

/**
 * Reads a gauge study: every operator measured every part equally often.
 * @param toleranceWidth upper less lower limit that the gauge must decide, in the readings' unit; null: none
 * @returns why not, where the design is too small or not balanced, or no reading differs from another
 */
export const gaugeStudy = (
  readings: readonly GaugeReading[],
  toleranceWidth: number | null = null,
  level = LEVEL,
): GaugeStudyResult => {
  const byOperator = groupBy(readings, ({ operator }) => operator);
  const operators = [...byOperator.keys()].sort();
  const parts = [...new Set(readings.map(({ part }) => part))].sort();
  if (parts.length < 2) return { ok: false, why: 'too-few-parts' };
  if (operators.length < 2) return { ok: false, why: 'too-few-operators' };
  const cells = operators.map((operator) => {
    const own = groupBy(byOperator.get(operator) ?? [], ({ part }) => part);
    return parts.map((part) => (own.get(part) ?? []).map(({ value }) => value));
  });
  const trials = Math.max(...cells.flatMap((own) => own.map((cell) => cell.length)));
  for (const [o, operator] of operators.entries())
    for (const [p, part] of parts.entries()) {
      const have = cells[o]?.[p]?.length ?? 0;
      if (have !== trials)
        return { ok: false, why: 'unbalanced', part, operator, have, need: trials };
    }
  if (trials < 2) return { ok: false, why: 'too-few-trials' };
  if (range(cells.flat(2)) === 0) return { ok: false, why: 'nothing-varies' };
  const anova = anovaOf(cells, toleranceWidth, level);
  const share = anova.shareOfTolerance ?? anova.share;
  return {
    ok: true,
    parts: parts.length,
    operators: operators.length,
    trials,
    anova,
    ranges: rangesOf(cells, { operators, parts }, toleranceWidth),
    word: wordOf(share),
    wordFrom: anova.shareOfTolerance === null ? 'total' : 'tolerance',
  };
};
