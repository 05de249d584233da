/**
 * Which bench checks stand in a table that a shop or a laboratory wrote? One reading a line, RFC 4180; lines
 * of one pair at one instant make one check. Nothing is taken in silence: every line that cannot be read is
 * told with its column, and the lines that can are kept.
 */
import Papa from 'papaparse';
import * as z from 'zod/mini';
import { measures, measureUnits, type BodyOf, type RecordId } from '../../../core/records/index.ts';
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
  | {
      readonly why:
        | 'missing-column'
        | 'unknown-pair'
        | 'no-date'
        | 'no-number'
        | 'out-of-range'
        | 'no-site'
        | 'too-many';
    };

export interface ReadTable {
  readonly checks: readonly BodyOf<'bench-check'>[];
  /** Lines count from 1, the heading included. */
  readonly troubles: readonly (TableTrouble & { readonly line: number; readonly column: Column })[];
}

const MOST_READINGS = 200;
const feet = ['left', 'right'] as const;

const cellSchema = z.catch(z.string(), '');

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
 */
export const readBenchTable = (
  text: string,
  project: RecordId,
  pairs: ReadonlyMap<string, RecordId>,
): ReadTable => {
  const { data, meta } = Papa.parse<Record<string, unknown>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    transformHeader: (name) => name.trim().toLowerCase().replaceAll(' ', '_'),
  });
  const troubles: ReadTable['troubles'][number][] = [];
  for (const column of required)
    if (!meta.fields?.includes(column)) troubles.push({ line: 1, column, why: 'missing-column' });
  if (troubles.length > 0) return { checks: [], troubles };

  const checks = new Map<string, BodyOf<'bench-check'>>();
  for (const [at, row] of data.entries()) {
    const line = at + 2;
    const before = troubles.length;
    const cell = (column: Column) => cellSchema.parse(row[column]).trim();
    const fail = (column: Column, trouble: TableTrouble) => {
      troubles.push({ line, column, ...trouble });
    };
    const number = (column: Column, least = -Infinity): number | undefined => {
      const said = cell(column);
      if (said === '' && !required.includes(column as never)) return undefined;
      const value = parseDecimal(said);
      if (value === null) fail(column, { why: 'no-number' });
      else if (value < least) fail(column, { why: 'out-of-range' });
      return value ?? undefined;
    };
    const oneOf = <T extends string>(column: Column, known: readonly T[]): T | undefined => {
      const word = known.find((one) => one.toLowerCase() === cell(column).toLowerCase());
      if (word === undefined) fail(column, { why: 'unknown-word', words: known });
      return word;
    };
    const words = (column: Column) => (cell(column) === '' ? undefined : cell(column));

    const pair = pairs.get(cell('pair').toUpperCase());
    if (!pair) fail('pair', { why: 'unknown-pair' });
    const instant = instantOf(cell('measured_at'));
    if (instant === null) fail('measured_at', { why: 'no-date' });
    const site = cell('site').toLowerCase();
    if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(site)) fail('site', { why: 'no-site' });
    const [measure, unit, foot] = [
      oneOf('measure', measures),
      oneOf('unit', measureUnits),
      oneOf('foot', feet),
    ];
    const value = number('value');
    const [km, rested, room, uncertainty, loadN] = [
      number('distance_km', 0),
      number('rested_h', 0),
      number('temperature_c', -50),
      number('uncertainty', 0),
      number('load_n', 0),
    ];
    if (troubles.length > before) continue;
    const [operator, gauge, method] = [words('operator'), words('gauge'), words('method')];
    const key = `${pair} ${instant}`;
    const check = checks.get(key) ?? {
      project,
      pair: pair as RecordId,
      at: instant as string,
      readings: [],
      ...(km !== undefined && { distanceM: toMetres(km, 'km') }),
      ...(rested !== undefined && { restedH: rested }),
      ...(room !== undefined && { temperatureC: celsius(room) }),
      ...(operator !== undefined && { operator }),
    };
    if (check.readings.length >= MOST_READINGS) {
      fail('value', { why: 'too-many' });
      continue;
    }
    checks.set(key, {
      ...check,
      readings: [
        ...check.readings,
        {
          measure: measure as (typeof measures)[number],
          site,
          foot: foot as 'left' | 'right',
          value: value as number,
          unit: unit as (typeof measureUnits)[number],
          ...(gauge !== undefined && { gauge }),
          ...(uncertainty !== undefined && { uncertainty }),
          ...(loadN !== undefined && { loadN }),
          ...(method !== undefined && { method }),
        },
      ],
    });
  }
  return { checks: [...checks.values()], troubles };
};

/** A table with its heading alone, to be filled in. */
export const emptyBenchTable = (): string => `${columns.join(',')}\r\n`;
