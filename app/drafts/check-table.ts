/**
 * Which bench checks stand in a table that a shop or a laboratory wrote? One reading a line, RFC 4180; lines
 * of one pair at one instant make one check. Nothing is taken in silence: every line that cannot be read is
 * told with its column, and the lines that can are kept.
 */
import {
  isSite,
  measures,
  measureUnits,
  readBody,
  unitsOf,
  type BodyOf,
  type Range,
  type RecordId,
} from '../../core/records/index.ts';
import { plainText } from '../../core/units/index.ts';
import { columns, neededColumns, type Column } from './check-columns.ts';
import { siteOf, named, type DimensionNames } from './dimension-rows.ts';
import { emptyTable, tableLine, typedTable, type TableLine } from './table.ts';
import { kindKey, type Gauges } from './check-gauges.ts';
import {
  emptyReading,
  readCircumstances,
  readingNumbers,
  readReading,
  withAsked,
  type AskedPlace,
  type CircumstanceField,
  type ReadingField,
  type WrongNumber,
} from './check-readings.ts';

export type TableTrouble =
  | { readonly why: 'unknown-word'; readonly words: readonly string[] }
  /** The number cannot be: in the unit of the column. */
  | { readonly why: 'out-of-range'; readonly range: Range }
  | {
      readonly why:
        | 'missing-column'
        | 'open-quote'
        | 'number-of-cells'
        | 'unknown-pair'
        | 'no-date'
        /** No day in the line, and none above it for the pair. */
        | 'no-day'
        | 'no-number'
        | 'no-site'
        | 'differs'
        | 'too-many'
        | 'too-long';
    };

export interface ReadTable {
  readonly checks: readonly BodyOf<'bench-check'>[];
  /** The line of each reading of each check. */
  readonly lines: ReadonlyMap<BodyOf<'bench-check'>, readonly number[]>;
  /** Checks of the table that the log has already: they are not taken again. */
  readonly known: number;
  /** Lines without a value: nobody measured there, and they are passed over. */
  readonly unmeasured: number;
  /** Lines count from 1, the heading included. */
  readonly troubles: readonly (TableTrouble & {
    readonly line: number;
    readonly column: Column;
    /** What stands in the cell. */
    readonly typed: string;
  })[];
}

/** Names of the reader's language, by the words that records keep. */
export type TableNames = Partial<
  Pick<DimensionNames, 'measures' | 'units' | 'sites'> & {
    readonly feet: Readonly<Record<string, string>>;
  }
>;

/** A pair at an instant: what makes two checks the same. */
export const checkKey = ({ pair, at }: Pick<BodyOf<'bench-check'>, 'pair' | 'at'>): string =>
  `${pair} ${Date.parse(at)}`;

const MOST_READINGS = 200;
const ANY_NUMBER: Range = { least: -Infinity, most: Infinity, unit: 'mm' };
const feet = ['left', 'right'] as const;

/** The column that a field of the record comes from. */
const columnOf: Readonly<Record<string, Column>> = {
  distanceM: 'distance_km',
  restedH: 'rested_h',
  temperatureC: 'temperature_c',
  operator: 'operator',
};

/** The column of each number that is typed. */
const columnOfField: Readonly<Record<ReadingField | CircumstanceField, Column>> = {
  value: 'value',
  km: 'distance_km',
  rested: 'rested_h',
  room: 'temperature_c',
  uncertainty: 'uncertainty',
  load: 'load_n',
};

/** Year, month and day, then perhaps hour, minute and offset: as ISO has it, or as a spreadsheet rewrites it. */
const DATE =
  /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]+(\d{1,2}):(\d{2})(:\d{2}(?:\.\d+)?)?\s*(Z|[+-]\d{2}:?\d{2})?)?$/i;

/** A day, which is noon of it, or a date and time; without an offset it is the reader's own clock. */
const instantOf = (text: string): string | null => {
  const found = DATE.exec(plainText(text).trim());
  if (!found) return null;
  const [, year = '', month = '', day = '', hour = '12', minute = '00', second = '', zone = ''] =
    found;
  const two = (part: string) => part.padStart(2, '0');
  const local = `${year}-${two(month)}-${two(day)}`;
  const ms = Date.parse(`${local}T${two(hour)}:${minute}${second}${zone.toUpperCase()}`);
  // 31 June would be 1 July.
  const isDay = !Number.isNaN(Date.parse(local)) && new Date(local).toISOString().startsWith(local);
  return Number.isFinite(ms) && isDay ? new Date(ms).toISOString().replace(/\.\d{3}Z$/, 'Z') : null;
};

/**
 * What stands in one line; null where anything in it cannot be.
 * @param fail told of each cell that cannot be read
 */
const readLine = (
  cell: TableLine<Column>['cell'],
  pairs: ReadonlyMap<string, RecordId>,
  names: TableNames,
  fail: (column: Column, trouble: TableTrouble) => void,
) => {
  const failNumbers = (wrong: readonly WrongNumber<keyof typeof columnOfField>[]) => {
    const told = wrong.map((one) => ({ ...one, column: columnOfField[one.field] }));
    told.sort((a, b) => columns.indexOf(a.column) - columns.indexOf(b.column));
    for (const { column, value, range } of told)
      fail(column, value === null ? { why: 'no-number' } : { why: 'out-of-range', range });
  };
  const oneOf = <T extends string>(
    column: Column,
    of: readonly T[],
    known: Readonly<Record<string, string>> = {},
  ): T | undefined => {
    const word = named(cell(column), of, known);
    if (word === undefined) fail(column, { why: 'unknown-word', words: of });
    return word;
  };

  const pair = pairs.get(cell('pair').toUpperCase());
  if (!pair) fail('pair', { why: 'unknown-pair' });
  const instant = instantOf(cell('measured_at'));
  if (instant === null)
    fail('measured_at', { why: cell('measured_at') === '' ? 'no-day' : 'no-date' });
  const site = siteOf(cell('site'), names.sites ?? {});
  if (!isSite(site)) fail('site', { why: 'no-site' });
  const measure = oneOf('measure', measures, names.measures);
  const unit = oneOf('unit', measure === undefined ? measureUnits : unitsOf[measure], names.units);
  const foot = oneOf('foot', feet, names.feet);
  const typedReading = {
    ...emptyReading,
    site,
    value: cell('value'),
    uncertainty: cell('uncertainty'),
    load: cell('load_n'),
    gauge: cell('gauge'),
    method: cell('method'),
  };
  // Without a measure and its unit nothing says what the value can be: its range is not judged.
  const read =
    measure && unit
      ? readReading({ ...typedReading, measure, unit, foot: foot ?? 'left' })
      : readingNumbers(typedReading, ANY_NUMBER);
  const { said: circumstances, wrong } = readCircumstances({
    km: cell('distance_km'),
    room: cell('temperature_c'),
    rested: cell('rested_h'),
    operator: cell('operator'),
  });
  failNumbers([...('wrong' in read ? read.wrong : []), ...wrong]);
  return pair && instant !== null && foot && 'reading' in read && wrong.length === 0
    ? { pair, at: instant, circumstances, reading: read.reading }
    : null;
};

/** The lines, each without an instant with that of the line of the same pair above: a shop writes it once a pair. */
const withInstants = (lines: readonly TableLine<Column>[]): readonly TableLine<Column>[] => {
  const above = new Map<string, string>();
  return lines.map((one) => {
    const pair = one.cell('pair').toUpperCase();
    const typed = one.cell('measured_at');
    if (typed !== '') above.set(pair, typed);
    // As it stands above this line now: a later line of the pair may bear another day.
    const instant = above.get(pair) ?? '';
    return {
      ...one,
      cell: (column) => (column === 'measured_at' ? instant : one.cell(column)),
    };
  });
};

/**
 * Reads a table.
 * @param pairs ids of the project's pairs by their code
 * @param known keys of the checks that the log has (see {@link checkKey})
 * @param names what the reader's language calls measures, sites, feet and units: they are understood too
 */
export const readBenchTable = (
  text: string,
  project: RecordId,
  pairs: ReadonlyMap<string, RecordId>,
  known: ReadonlySet<string> = new Set(),
  names: TableNames = {},
): ReadTable => {
  const { missing, width, lines: typed } = typedTable<Column>(text, neededColumns);
  if (missing.length > 0)
    return {
      checks: [],
      lines: new Map(),
      known: 0,
      unmeasured: 0,
      troubles: missing.map((column) => ({ line: 1, column, typed: '', why: 'missing-column' })),
    };

  const troubles: ReadTable['troubles'][number][] = [];
  const checks = new Map<string, BodyOf<'bench-check'>>();
  const lines = new Map<string, readonly number[]>();
  let unmeasured = 0;
  for (const { line, cells, cell } of withInstants(typed)) {
    const before = troubles.length;
    const fail = (column: Column, trouble: TableTrouble) => {
      const typed = cells.length === width ? cell(column) : '';
      troubles.push({ line, column, typed, ...trouble });
    };
    if (cells.some((one) => /[\r\n]/.test(one))) {
      // A quote that was never closed has swallowed what follows: nothing after it can be trusted.
      fail('pair', { why: 'open-quote' });
      break;
    }
    if (cells.length !== width) {
      fail('pair', { why: 'number-of-cells' });
      continue;
    }
    if (cell('value') === '') {
      unmeasured += 1;
      continue;
    }
    const read = readLine(cell, pairs, names, fail);
    if (!read || troubles.length > before) continue;
    const { pair, at, circumstances, reading } = read;
    const key = checkKey({ pair, at });
    const check = checks.get(key) ?? { project, pair, at, readings: [] };
    for (const [field, said] of Object.entries(circumstances)) {
      const earlier = (check as Record<string, unknown>)[field];
      if (earlier !== undefined && earlier !== said)
        fail(columnOf[field] as Column, { why: 'differs' });
    }
    if (check.readings.length >= MOST_READINGS) fail('value', { why: 'too-many' });
    if (troubles.length > before) continue;
    const more = {
      ...check,
      ...circumstances,
      readings: [...check.readings, reading],
    };
    // What the log would refuse is told here, line by line, before anything is taken in.
    const body = readBody('bench-check', more);
    if (body.ok) {
      checks.set(key, body.body);
      lines.set(key, [...(lines.get(key) ?? []), line]);
    } else
      for (const { field } of body.problems) fail(columnOf[field] ?? 'value', { why: 'too-long' });
  }
  const fresh = [...checks].filter(([key]) => !known.has(key));
  return {
    checks: fresh.map(([, check]) => check),
    lines: new Map(fresh.map(([key, check]) => [check, lines.get(key) ?? []])),
    known: checks.size - fresh.length,
    unmeasured,
    troubles,
  };
};

/** A table with its heading alone, to be filled in. */
export const emptyBenchTable = (): string => emptyTable(columns);

/**
 * The table for the shop: a line for each pair, place and foot, with room for the value and when it was measured.
 * @param codes of the pairs
 * @param asked the dimensions of their blueprint, the places of the brief's limits
 * @param gauges the usual one of each kind of reading: whoever takes another writes it over
 */
export const filledBenchTable = (
  codes: readonly string[],
  asked: readonly AskedPlace[],
  gauges: Gauges,
): string => {
  const rows = codes.flatMap((pair) =>
    withAsked([], asked).map(({ measure, site, foot, unit }) => {
      const gauge = gauges[kindKey({ measure, unit })] ?? '';
      const known: Partial<Record<Column, string>> = { pair, measure, site, foot, unit, gauge };
      return columns.map((column) => known[column] ?? '');
    }),
  );
  // A gauge's name may hold a comma.
  return emptyBenchTable() + rows.map((row) => tableLine(row)).join('');
};
