/** The rows of the table of dimensions, read into a blueprint, or what is wrong with each cell. Pure. */
import {
  isIn,
  isSite,
  rangeOf,
  ranges,
  unitsOf,
  type Dimension,
  type Range,
} from '../../core/records/index.ts';
import { parseDecimal, plainText } from '../../core/units/index.ts';
import type { DimensionColumn } from './dimension-rows.ts';
import { isBlankDimension, type DimensionDraft } from './round.ts';

/** What is wrong with a cell. */
export type DimensionTrouble = {
  /** Row, from 0. */
  readonly at: number;
  readonly field: DimensionColumn;
} & (
  | { readonly why: 'missing' | 'site' | 'number' | 'below-minus' }
  /** A word that the table does not know. */
  | { readonly why: 'unknown'; readonly word: string }
  /** Which numbers can be there. */
  | { readonly why: 'range'; readonly range: Range }
  /** An earlier row, from 0, is the same dimension. */
  | { readonly why: 'twice'; readonly first: number }
);

type CellTrouble = DimensionTrouble extends infer One
  ? One extends DimensionTrouble
    ? Omit<One, 'at'>
    : never
  : never;

/** Binary fractions of percent do not come back as they were typed. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** A tolerance as typed, against its nominal; null where it is none. */
const toleranceOf = (typed: string, nominal: number): number | null => {
  const text = plainText(typed);
  if (!text.endsWith('%')) return parseDecimal(text);
  const percent = parseDecimal(text.slice(0, -1));
  return percent === null ? null : tidy((percent * nominal) / 100);
};

/** Minus and plus with their signs: one below nominal may stand without, and `±1` stands for both. */
const tolerancesOf = (minus: string, plus: string): readonly [string, string] => {
  const bare = (text: string) => text.trim().replace(/^±\s*/, '');
  const below = bare(minus);
  const lower =
    below === '' || /^[-−－+＋]/.test(below) || /^0+$/.test(below) ? below : `-${below}`;
  const upper = plus.trim() === '' && minus.trim().startsWith('±') ? below : bare(plus);
  return [lower.replace(/^[+＋]/, ''), upper.replace(/^[+＋]/, '')];
};

/** What is wrong with a figure that must be there: it is missing, no number, or one that cannot be. */
const figureTroubles = (
  field: DimensionColumn,
  typed: string,
  value: number | null,
  range: Range,
): readonly CellTrouble[] => {
  if (typed.trim() === '') return [{ field, why: 'missing' }];
  if (value === null) return [{ field, why: 'number' }];
  return isIn(value, range) ? [] : [{ field, why: 'range', range }];
};

/** A list to choose from: nothing is chosen, or a word was pasted that it does not have. */
const choiceTroubles = (
  field: 'measure' | 'unit' | 'foot',
  { notKnown }: DimensionDraft,
  isChosen: boolean,
): readonly CellTrouble[] => {
  const word = notKnown?.[field];
  if (word !== undefined) return [{ field, why: 'unknown', word }];
  return isChosen ? [] : [{ field, why: 'missing' }];
};

const siteTroubles = (site: string): readonly CellTrouble[] =>
  site === ''
    ? [{ field: 'site', why: 'missing' }]
    : isSite(site)
      ? []
      : [{ field: 'site', why: 'site' }];

type ReadRow = { readonly dimension: Dimension } | { readonly wrong: readonly CellTrouble[] };

const readRow = (row: DimensionDraft): ReadRow => {
  const { measure, foot } = row;
  const site = row.site.trim();
  const unit = measure === '' ? '' : (unitsOf[measure].find((one) => one === row.unit) ?? '');
  // Without a measure nothing says what its figures can be.
  const possible = measure === '' || unit === '' ? ranges.benchFigure : rangeOf(measure, unit);
  const either = { ...possible, least: -possible.most };
  const nominal = parseDecimal(row.nominal);
  const [minus, plus] = tolerancesOf(row.lower, row.upper);
  // A tolerance in percent is read even where the nominal that it is of is not there yet.
  const of = nominal ?? possible.least;
  const [lower, upper] = [toleranceOf(minus, of), toleranceOf(plus, of)];
  const leftRight = row.leftRight.trim() === '' ? undefined : toleranceOf(row.leftRight, of);
  const wrong: readonly CellTrouble[] = [
    ...choiceTroubles('measure', row, measure !== ''),
    ...siteTroubles(site),
    ...figureTroubles('nominal', row.nominal, nominal, possible),
    ...figureTroubles('lower', minus, lower, either),
    ...(lower !== null && upper !== null && lower > upper
      ? [{ field: 'upper', why: 'below-minus' } as const]
      : figureTroubles('upper', plus, upper, either)),
    ...choiceTroubles('unit', row, measure === '' || unit !== ''),
    ...choiceTroubles('foot', row, true),
    ...(leftRight === undefined
      ? []
      : figureTroubles('leftRight', row.leftRight, leftRight, { ...possible, least: 0 })),
  ];
  if (wrong.length > 0 || measure === '' || unit === '') return { wrong };
  if (nominal === null || lower === null || upper === null) return { wrong };
  const { foot: _foot, leftRight: _leftRight, ...kept } = row.kept ?? {};
  return {
    dimension: {
      ...kept,
      measure,
      site,
      unit,
      nominal,
      lower,
      upper,
      ...(foot !== 'both' && { foot }),
      ...(typeof leftRight === 'number' && { leftRight }),
    },
  };
};

const keyOf = ({ measure, site, unit, foot }: Dimension): string =>
  [measure, site, unit, foot ?? 'both'].join(' ');

/** The rows as a blueprint, without those that nobody filled in; and every cell that is wrong. */
export const readDimensions = (rows: readonly DimensionDraft[]) => {
  const dimensions: Dimension[] = [];
  const troubles: DimensionTrouble[] = [];
  const firsts = new Map<string, number>();
  for (const [at, row] of rows.entries()) {
    if (isBlankDimension(row)) continue;
    const read = readRow(row);
    if ('wrong' in read) {
      troubles.push(...read.wrong.map((one) => ({ at, ...one })));
      continue;
    }
    const key = keyOf(read.dimension);
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, at);
    else troubles.push({ at, field: 'site', why: 'twice', first });
    dimensions.push(read.dimension);
  }
  return { dimensions, troubles };
};
