/**
 * The dimensions of a blueprint as they are pasted from a spreadsheet: a line each, with or without a head. Columns part
 * by tabs, else by semicolons or commas. Pure.
 */
import {
  measures,
  unitsOf,
  type Foot,
  type Measure,
  type MeasureUnit,
  type Range,
} from '../../core/records/index.ts';
import { plainText } from '../../core/units/index.ts';
import type { DimensionDraft } from './round.ts';
import { isTrouble, readDimension, type DimensionTrouble } from './round-reading.ts';
import { typedTable, type TableLine } from './table.ts';

/** In the order in which they stand where there is no head; `unit` and what follows may be left out. */
const dimensionColumns = [
  'measure',
  'site',
  'nominal',
  'minus',
  'plus',
  'unit',
  'foot',
  'left_right',
] as const;
type DimensionColumn = (typeof dimensionColumns)[number];

/** Names of measures, units, feet and sites as the reader's language writes them, by what they are kept as. */
export interface DimensionNames {
  readonly measures: Readonly<Record<Measure, string>>;
  readonly units: Readonly<Record<MeasureUnit, string>>;
  readonly feet: Readonly<Record<Foot | 'both', string>>;
  readonly sites: Readonly<Record<string, string>>;
}

export interface DimensionCell {
  /** From 1, as it stands in what was pasted. */
  readonly line: number;
  readonly column: DimensionColumn;
  readonly why: 'missing' | 'unknown' | 'site' | 'number';
  /** Of a number: which ones can be there. */
  readonly range?: Range;
}

export interface DimensionTable {
  readonly dimensions: readonly DimensionDraft[];
  readonly troubles: readonly DimensionCell[];
}

const plain = (text: string): string =>
  plainText(text)
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

/** What a cell is kept as, by its own word or by its name; undefined: neither. */
const named = <T extends string>(
  cell: string,
  ids: readonly T[],
  names: Readonly<Record<string, string>>,
): T | undefined => ids.find((id) => id === plain(cell) || plain(names[id] ?? id) === plain(cell));

const columnOfField: Readonly<Record<DimensionTrouble['field'], DimensionColumn>> = {
  site: 'site',
  nominal: 'nominal',
  lower: 'minus',
  upper: 'plus',
  leftRight: 'left_right',
};

/** Minus and plus as the form holds them: a tolerance below the nominal has its sign, `±1` stands for both. */
const tolerancesOf = (minus: string, plus: string): readonly [string, string] => {
  const bare = (text: string) => text.trim().replace(/^±\s*/, '');
  const below = bare(minus);
  const lower =
    below === '' || /^[-−－+＋]/.test(below) || /^0+$/.test(below) ? below : `-${below}`;
  const upper = plus.trim() === '' && minus.trim().startsWith('±') ? below : bare(plus);
  return [lower, upper.replace(/^[+＋]/, '')];
};

const readLine = (
  { line, cell }: TableLine<DimensionColumn>,
  names: DimensionNames,
): { readonly draft: DimensionDraft | null; readonly troubles: readonly DimensionCell[] } => {
  const measure = named(cell('measure'), measures, names.measures);
  const units = measure === undefined ? [] : unitsOf[measure];
  const unit = cell('unit') === '' ? units[0] : named(cell('unit'), units, names.units);
  const feet = ['both', 'left', 'right'] as const;
  const foot = cell('foot') === '' ? 'both' : named(cell('foot'), feet, names.feet);
  const unknown = (column: DimensionColumn): DimensionCell => ({
    line,
    column,
    why: cell(column) === '' ? 'missing' : 'unknown',
  });
  const words: readonly DimensionCell[] = [
    ...(measure === undefined ? [unknown('measure')] : []),
    ...(measure !== undefined && unit === undefined ? [unknown('unit')] : []),
    ...(foot === undefined ? [unknown('foot')] : []),
  ];
  if (measure === undefined || unit === undefined || foot === undefined)
    return { draft: null, troubles: words };
  const [lower, upper] = tolerancesOf(cell('minus'), cell('plus'));
  const draft: DimensionDraft = {
    measure,
    site: named(cell('site'), Object.keys(names.sites), names.sites) ?? plain(cell('site')),
    foot,
    unit,
    nominal: cell('nominal'),
    lower,
    upper,
    leftRight: cell('left_right'),
  };
  const read = readDimension(draft);
  if (!isTrouble(read)) return { draft, troubles: [] };
  return {
    draft: null,
    troubles: read.wrong.map(({ field, range }): DimensionCell => {
      const column = columnOfField[field];
      if (cell(column) === '' && !(field === 'upper' && upper !== ''))
        return { line, column, why: 'missing' };
      return field === 'site'
        ? { line, column, why: 'site' }
        : { line, column, why: 'number', ...(range && { range }) };
    }),
  };
};

/**
 * Reads what was pasted.
 * @param names in the reader's language; the words that records keep are always known
 */
export const readDimensionTable = (text: string, names: DimensionNames): DimensionTable => {
  const [first = ''] = text.split(/\r?\n/);
  const hasHead = /^"?\s*measure\b/i.test(first);
  const mark = first.includes('\t') ? '\t' : first.includes(';') ? ';' : ',';
  const lines = typedTable<DimensionColumn>(
    hasHead ? text : `${dimensionColumns.join(mark)}\n${text}`,
    [],
    [mark],
  ).lines.map((one) => (hasHead ? one : { ...one, line: one.line - 1 }));
  const read = lines.map((one) => readLine(one, names));
  return {
    dimensions: read.flatMap(({ draft }) => (draft ? [draft] : [])),
    troubles: read.flatMap(({ troubles }) => troubles),
  };
};
