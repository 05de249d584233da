/**
 * Which bench readings may stand in one line of wear? Those of one measure, at one site, in one unit, and
 * no others: the same 500 km cost an EVA midsole about a quarter of the energy it absorbs (Cook SD et al.,
 * Am J Sports Med 1985;13:248-253) and add 5 % to its impact peak (Wang L et al., Footwear Sci
 * 2010;2:141-147), so a scale common to both would mean nothing.
 */
import type { Measure, MeasureUnit, Reading } from '../records/index.ts';
import type { Metres } from '../units/index.ts';

/** What can wear, each measure with its unit: readings of two kinds are never pooled. */
export const wearKinds = [
  'stack-height mm',
  'tread-depth mm',
  'hardness asker-c',
  'hardness shore-a',
  'mass g',
  'impact-peak N',
  'energy-absorbed J',
  'energy-absorbed %',
  'energy-returned J',
  'energy-returned %',
] as const satisfies readonly `${Measure} ${MeasureUnit}`[];
export type WearKind = (typeof wearKinds)[number];

/** Whether wear adds to the value or multiplies it. */
export type WearScale = 'difference' | 'ratio';

/** On which scale a kind wears: lengths and hardness by difference, the rest by ratio. */
export const scaleOf = (kind: WearKind): WearScale =>
  kind.endsWith(' mm') || kind.startsWith('hardness') ? 'difference' : 'ratio';

/** One value of one pair at one distance; both shoes' readings are averaged into it. */
export interface WearCheck<Kind extends WearKind> {
  readonly kind: Kind;
  readonly pair: string;
  readonly distance: Metres;
  readonly value: number;
}

/** What was measured of one kind at one site on the pairs of one round. */
export interface WearSeries<Kind extends WearKind> {
  readonly kind: Kind;
  readonly site: string;
  readonly checks: readonly WearCheck<Kind>[];
}

/** A series of any kind, to be told apart by its `kind`. */
export type AnyWearSeries = { [Kind in WearKind]: WearSeries<Kind> }[WearKind];

/** A bench check with the distance on the pair as it is known. */
export interface MeasuredCheck {
  readonly pair: string;
  readonly distance: Metres;
  readonly readings: readonly Reading[];
}

/** The kind a reading belongs to; null where its measure does not wear or is not given in that unit. */
export const kindOf = (reading: Pick<Reading, 'measure' | 'unit'>): WearKind | null =>
  wearKinds.find((kind) => kind === `${reading.measure} ${reading.unit}`) ?? null;

/** Whether a value can stand on its kind's scale: a ratio needs a value above zero. */
export const isUsable = (kind: WearKind, value: number): boolean =>
  Number.isFinite(value) && (scaleOf(kind) === 'difference' || value > 0);

/**
 * The series of a round's bench checks, one a kind and site, sorted by kind and site. Readings of one check
 * at one site, of both shoes or repeated, are averaged (by their logarithms on a ratio scale); readings that
 * `isUsable` refuses are left out, and `checkWarnings` says so.
 */
export const wearSeries = (checks: readonly MeasuredCheck[]): readonly AnyWearSeries[] => {
  const series = new Map<string, { kind: WearKind; site: string; checks: WearCheck<WearKind>[] }>();
  for (const { pair, distance, readings } of checks) {
    const here = new Map<string, { kind: WearKind; site: string; values: number[] }>();
    for (const reading of readings) {
      const kind = kindOf(reading);
      if (kind === null || !isUsable(kind, reading.value)) continue;
      const key = `${kind} ${reading.site}`;
      const at = here.get(key) ?? { kind, site: reading.site, values: [] };
      at.values.push(reading.value);
      here.set(key, at);
    }
    for (const [key, { kind, site, values }] of here) {
      const ratio = scaleOf(kind) === 'ratio';
      const sum = values.reduce((total, value) => total + (ratio ? Math.log(value) : value), 0);
      const mean = sum / values.length;
      const of = series.get(key) ?? { kind, site, checks: [] };
      of.checks.push({ kind, pair, distance, value: ratio ? Math.exp(mean) : mean });
      series.set(key, of);
    }
  }
  return [...series.entries()]
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([, one]) => one as AnyWearSeries);
};
