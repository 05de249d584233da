/**
 * Which gauge study stands in a table that a shop wrote or copied out of a spreadsheet? One reading a line: part,
 * operator, value, under a heading; comma, semicolon or tab between. Every line that cannot be read is told.
 */
import Papa from 'papaparse';
import * as z from 'zod/mini';
import type { GaugeStudy } from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/index.ts';

const columns = ['part', 'operator', 'value'] as const;
type Column = (typeof columns)[number];

export interface GaugeTableTrouble {
  readonly why: 'missing-column' | 'no-number' | 'no-name' | 'too-many';
  /** Counts from 1, the heading included. */
  readonly line: number;
  readonly column: Column;
}

export interface ReadGaugeTable {
  readonly readings: GaugeStudy['readings'];
  readonly troubles: readonly GaugeTableTrouble[];
}

const MOST_READINGS = 1000;
const LONGEST_NAME = 200;
const rowsSchema = z.array(z.array(z.string()));

/** Reads a table; what cannot be read is left out and told. */
export const readGaugeTable = (text: string): ReadGaugeTable => {
  const { data } = Papa.parse(text.replace(/^\uFEFF/, ''), {
    skipEmptyLines: false,
    delimitersToGuess: ['\t', ';', ','],
  });
  const [heading = [], ...rows] = rowsSchema.parse(data);
  const names = heading.map((name) => name.trim().toLowerCase());
  const missing = columns.filter((column) => !names.includes(column));
  if (missing.length > 0)
    return {
      readings: [],
      troubles: missing.map((column) => ({ why: 'missing-column', line: 1, column })),
    };
  const readings: GaugeStudy['readings'] = [];
  const troubles: GaugeTableTrouble[] = [];
  for (const [at, cells] of rows.entries()) {
    if (cells.every((cell) => cell.trim() === '')) continue;
    const line = at + 2;
    const cell = (column: Column) => (cells[names.indexOf(column)] ?? '').trim();
    const before = troubles.length;
    const [part, operator] = (['part', 'operator'] as const).map((column) => {
      const name = cell(column).slice(0, LONGEST_NAME);
      if (name === '') troubles.push({ why: 'no-name', line, column });
      return name;
    }) as [string, string];
    const value = parseDecimal(cell('value'));
    if (value === null) troubles.push({ why: 'no-number', line, column: 'value' });
    if (readings.length >= MOST_READINGS) {
      troubles.push({ why: 'too-many', line, column: 'value' });
      break;
    }
    if (value !== null && troubles.length === before) readings.push({ part, operator, value });
  }
  return { readings, troubles };
};

/** A table with its heading alone, to be filled in. */
export const emptyGaugeTable = (): string => `${columns.join(',')}\r\n`;
