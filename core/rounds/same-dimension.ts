/**
 * What do several readings of one dimension say together, and how surely?
 *
 * Readings of one gauge are averaged over its operators' means, gauges over each other's, all with the same weight.
 * Repeating makes only the repeatable part of the uncertainty smaller (by the root of the number of readings); what
 * operators differ by, by the root of the number of operators; an uncertainty that is stated as one figure is
 * not known to fall into parts, so it stays as it is. Gauges err on their own: theirs is divided by the root
 * of their number in squares (JCGM 100:2008, from memory). One gauge of unknown uncertainty leaves the whole unknown.
 */
import { chiSquaredUpper, groupBy } from '../statistics/index.ts';

/** A gauge's standard uncertainty, in the reading's unit. */
export interface GaugeUncertainty {
  /** By the same operator at once; 0 where the figure is stated whole. */
  readonly repeatable: number;
  /** What stays when it is repeated: operators, calibration. */
  readonly lasting: number;
  /** Lasting uncertainty shrinks with the number of operators: it is what they differ by. */
  readonly betweenOperators: boolean;
  readonly from: 'reading' | 'gauge-study';
}

export interface OneReading {
  readonly value: number;
  /** Empty: no gauge was named. */
  readonly gauge: string;
  /** Empty: not said. */
  readonly operator: string;
  /** Null: not known. */
  readonly uncertainty: GaugeUncertainty | null;
}

export interface Combined {
  readonly value: number;
  /** Standard, of the value; null where that of a gauge is not known. */
  readonly uncertainty: number | null;
  readonly from: GaugeUncertainty['from'] | null;
  readonly readings: number;
  readonly gauges: readonly string[];
  readonly operators: number;
  /** The readings lie farther apart than their uncertainties explain (chi-squared, p below 1 %): read again. */
  readonly disagree: boolean;
}

const DISAGREE = 0.01;

const mean = (values: readonly number[]): number =>
  values.reduce((a, b) => a + b, 0) / values.length;

/** The uncertainty of one gauge's mean over these readings; null where that of one is not known. */
const ofGauge = (own: readonly OneReading[], operators: number): number | null => {
  let [repeatable, lasting] = [0, 0];
  for (const { uncertainty } of own) {
    if (uncertainty === null) return null;
    const parts = uncertainty.betweenOperators ? operators : 1;
    repeatable = Math.max(repeatable, uncertainty.repeatable);
    lasting = Math.max(lasting, uncertainty.lasting / Math.sqrt(parts));
  }
  return Math.hypot(repeatable / Math.sqrt(own.length), lasting);
};

/** Do the readings scatter more than each one's whole uncertainty allows? */
const scatterTooFar = (readings: readonly OneReading[], middle: number): boolean => {
  let squares = 0;
  for (const { value, uncertainty } of readings) {
    const size = uncertainty && Math.hypot(uncertainty.repeatable, uncertainty.lasting);
    if (size === null || !(size > 0)) return false;
    squares += ((value - middle) / size) ** 2;
  }
  return readings.length > 1 && chiSquaredUpper(squares, readings.length - 1) < DISAGREE;
};

/** Puts the readings of one dimension together. @returns null where there is none */
export const combine = (readings: readonly OneReading[]): Combined | null => {
  if (readings.length === 0) return null;
  const gauges = [...groupBy(readings, ({ gauge }) => gauge)].map(([gauge, own]) => {
    const operators = groupBy(own, ({ operator }) => operator);
    const value = mean([...operators.values()].map((of) => mean(of.map((one) => one.value))));
    return { gauge, value, uncertainty: ofGauge(own, operators.size) };
  });
  const value = mean(gauges.map((one) => one.value));
  let squares: number | null = 0;
  for (const { uncertainty } of gauges)
    squares = uncertainty === null || squares === null ? null : squares + uncertainty ** 2;
  const uncertainty = squares === null ? null : Math.sqrt(squares) / gauges.length;
  const known = uncertainty !== null && uncertainty > 0;
  return {
    value,
    uncertainty: known ? uncertainty : null,
    from: known
      ? readings.some((one) => one.uncertainty?.from === 'gauge-study')
        ? 'gauge-study'
        : 'reading'
      : null,
    readings: readings.length,
    gauges: gauges.map(({ gauge }) => gauge).filter((gauge) => gauge !== ''),
    operators: new Set(readings.map(({ operator }) => operator)).size,
    disagree: scatterTooFar(readings, value),
  };
};
