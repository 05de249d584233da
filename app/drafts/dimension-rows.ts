/** The dimensions of a round as rows of a table: cells chosen or typed, rows changed and removed. Pure. */
import { unitsOf, type Foot, type Measure, type MeasureUnit } from '../../core/records/index.ts';
import { plainText } from '../../core/units/index.ts';
import type { DimensionDraft } from './round.ts';

/** In the order of the table, which is that of a drawing's list: what, where, how much, what is allowed. */
export const dimensionColumns = [
  'measure',
  'site',
  'nominal',
  'lower',
  'upper',
  'unit',
  'foot',
  'leftRight',
] as const;
export type DimensionColumn = (typeof dimensionColumns)[number];

/** Names as the reader's language writes them, by what they are kept as. */
export interface DimensionNames {
  readonly measures: Readonly<Record<Measure, string>>;
  readonly units: Readonly<Record<MeasureUnit, string>>;
  readonly feet: Readonly<Record<Foot | 'both', string>>;
  readonly sites: Readonly<Record<string, string>>;
  readonly columns: Readonly<Record<DimensionColumn, string>>;
}

/** As a word that records keep. */
export const plain = (text: string): string =>
  plainText(text)
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

/** What a cell is kept as, by its own word or by its name; undefined: neither. */
export const named = <T extends string>(
  cell: string,
  ids: readonly T[],
  names: Readonly<Record<string, string>>,
): T | undefined => ids.find((id) => id === plain(cell) || plain(names[id] ?? id) === plain(cell));

/** The word that a place is kept by: that of a known name, else what was typed as one word. */
export const siteOf = (text: string, sites: DimensionNames['sites']): string =>
  named(text, Object.keys(sites), sites) ?? plain(text);

/** The row without what was told of a word. */
export const withoutWord = (
  { notKnown, ...row }: DimensionDraft,
  column: 'measure' | 'unit' | 'foot',
): DimensionDraft => {
  const { [column]: _told, ...others } = notKnown ?? {};
  return Object.keys(others).length > 0 ? { ...row, notKnown: others } : row;
};

/** The row with another measure: a unit that it is not given in gives way to its usual one. */
export const withMeasure = (row: DimensionDraft, measure: Measure): DimensionDraft => ({
  ...withoutWord(row, 'measure'),
  measure,
  unit: unitsOf[measure].find((unit) => unit === row.unit) ?? unitsOf[measure][0],
});

export const withUnit = (row: DimensionDraft, unit: MeasureUnit): DimensionDraft => ({
  ...withoutWord(row, 'unit'),
  unit,
});

export const withFoot = (row: DimensionDraft, foot: Foot | 'both'): DimensionDraft => ({
  ...withoutWord(row, 'foot'),
  foot,
});

/** The rows with one of them changed. */
export const withRow = (
  rows: readonly DimensionDraft[],
  at: number,
  row: DimensionDraft,
): readonly DimensionDraft[] => rows.map((one, other) => (other === at ? row : one));

/** The rows without one of them. */
export const withoutRow = (
  rows: readonly DimensionDraft[],
  at: number,
): readonly DimensionDraft[] => rows.filter((_, other) => other !== at);
