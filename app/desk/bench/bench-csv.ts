/**
 * Which bench checks stand in a table that a shop or a laboratory wrote? One reading a line, RFC 4180; lines
 * of one pair at one instant make one check. Nothing is taken in silence: every line that cannot be read is
 * told with its column, and the lines that can are kept.
 */
import Papa from 'papaparse';
import * as z from 'zod/mini';
import {
  isIn,
  measures,
  measureUnits,
  rangeOf,
  ranges,
  readBody,
  unitsOf,
  type BodyOf,
  type Range,
  type RecordId,
} from '../../../core/records/index.ts';
import { celsius, parseDecimal, toMetres } from '../../../core/units/index.ts';

const required = ['pair', 'measured_at', 'measure', 'site', 'foot', 'value', 'unit'] as const;
const optional = [
  'distance_km',
  'rested_h',
  'temperature_c',
  'operator',
  'gauge',
  'uncertainty',
  'load_n',
  'method',
] as const;
export const columns = [...required, ...optional] as const;
type Column = (typeof columns)[number];

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
  /** Lines count from 1, the heading included. */
  readonly troubles: readonly (TableTrouble & { readonly line: number; readonly column: Column })[];
}

/** A pair at an instant: what makes two checks the same. */
export const checkKey = ({ pair, at }: Pick<BodyOf<'bench-check'>, 'pair' | 'at'>): string =>
  `${pair} ${Date.parse(at)}`;

/** What a pair can have run, in the unit of the column. */
const kilometres: Range = { least: 0, most: ranges.distanceM.most / 1000, unit: 'km' };
const MOST_READINGS = 200;
const feet = ['left', 'right'] as const;

const rowsSchema = z.array(z.array(z.string()));

/** The column that a field of the record comes from. */
const columnOf: Readonly<Record<string, Column>> = {
  distanceM: 'distance_km',
  restedH: 'rested_h',
  temperatureC: 'temperature_c',
  operator: 'operator',
};

/** A date and time with its offset; without one it is the reader's own clock. */
const instantOf = (text: string): string | null => {
  const ms = Date.parse(text.includes('T') ? text : text.replace(' ', 'T'));
  return /^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}/.test(text) && Number.isFinite(ms)
    ? new Date(ms).toISOString().replace(/\.\d{3}Z$/, 'Z')
    : null;
};

/**
 * Reads a table.
 * @param pairs ids of the project's pairs by their code
 * @param known keys of the checks that the log has (see {@link checkKey})
 */
export const readBenchTable = (
  text: string,
  project: RecordId,
  pairs: ReadonlyMap<string, RecordId>,
  known: ReadonlySet<string> = new Set(),
): ReadTable => {
  const { data } = Papa.parse(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const [heading = [], ...rows] = rowsSchema.parse(data);
  const names = heading.map((name) => name.trim().toLowerCase().replaceAll(' ', '_'));
  const troubles: ReadTable['troubles'][number][] = [];
  for (const column of required)
    if (!names.includes(column)) troubles.push({ line: 1, column, why: 'missing-column' });
  if (troubles.length > 0) return { checks: [], lines: new Map(), known: 0, troubles };

  const checks = new Map<string, BodyOf<'bench-check'>>();
  const lines = new Map<string, readonly number[]>();
  for (const [at, cells] of rows.entries()) {
    const line = at + 2;
    if (cells.every((one) => one.trim() === '')) continue;
    const before = troubles.length;
    const fail = (column: Column, trouble: TableTrouble) => {
      troubles.push({ line, column, ...trouble });
    };
    if (cells.some((one) => /[\r\n]/.test(one))) {
      // A quote that was never closed has swallowed what follows: nothing after it can be trusted.
      fail('pair', { why: 'open-quote' });
      break;
    }
    if (cells.length !== names.length) {
      fail('pair', { why: 'number-of-cells' });
      continue;
    }
    const cell = (column: Column) => (cells[names.indexOf(column)] ?? '').trim();
    const number = (column: Column, range: Range | null): number | undefined => {
      const said = cell(column);
      if (said === '' && !required.includes(column as never)) return undefined;
      const value = parseDecimal(said);
      if (value === null) fail(column, { why: 'no-number' });
      else if (range && !isIn(value, range)) fail(column, { why: 'out-of-range', range });
      return value ?? undefined;
    };
    const oneOf = <T extends string>(column: Column, of: readonly T[]): T | undefined => {
      const word = of.find((one) => one.toLowerCase() === cell(column).toLowerCase());
      if (word === undefined) fail(column, { why: 'unknown-word', words: of });
      return word;
    };
    const words = (column: Column) => (cell(column) === '' ? undefined : cell(column));

    const pair = pairs.get(cell('pair').toUpperCase());
    if (!pair) fail('pair', { why: 'unknown-pair' });
    const instant = instantOf(cell('measured_at'));
    if (instant === null) fail('measured_at', { why: 'no-date' });
    const site = cell('site').toLowerCase();
    if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(site)) fail('site', { why: 'no-site' });
    const measure = oneOf('measure', measures);
    const unit = oneOf('unit', measure === undefined ? measureUnits : unitsOf[measure]);
    const foot = oneOf('foot', feet);
    const value = number('value', measure && unit ? rangeOf(measure, unit) : null);
    const [km, restedH, room, uncertainty, loadN] = [
      number('distance_km', kilometres),
      number('rested_h', ranges.restedH),
      number('temperature_c', ranges.temperatureC),
      number('uncertainty', ranges.benchWidth),
      number('load_n', ranges.loadN),
    ];
    if (!pair || instant === null || !measure || !unit || !foot || value === undefined) continue;
    if (troubles.length > before) continue;
    const [operator, gauge, method] = [words('operator'), words('gauge'), words('method')];
    const circumstances = {
      ...(km !== undefined && { distanceM: toMetres(km, 'km') }),
      ...(restedH !== undefined && { restedH }),
      ...(room !== undefined && { temperatureC: celsius(room) }),
      ...(operator !== undefined && { operator }),
    };
    const key = checkKey({ pair, at: instant });
    const check = checks.get(key) ?? { project, pair, at: instant, readings: [] };
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
      readings: [
        ...check.readings,
        {
          measure,
          site,
          foot,
          value,
          unit,
          ...(gauge !== undefined && { gauge }),
          ...(uncertainty !== undefined && { uncertainty }),
          ...(loadN !== undefined && { loadN }),
          ...(method !== undefined && { method }),
        },
      ],
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
    troubles,
  };
};

/**
 * The text of a file as a spreadsheet wrote it: UTF-8, or GB 18030 where it is not, which is what a Chinese
 * one writes.
 */
export const tableText = (bytes: ArrayBuffer): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('gb18030').decode(bytes);
  }
};

/** A table with its heading alone, to be filled in. */
export const emptyBenchTable = (): string => `${columns.join(',')}\r\n`;
