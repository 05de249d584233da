/**
 * Which gauge study stands in a table that a shop wrote or copied out of a spreadsheet? One reading a line: part,
 * operator, value, under a heading; comma, semicolon or tab between. Every line that cannot be read is told.
 */
import type { GaugeStudy } from '../../core/records/index.ts';
import { parseDecimal } from '../../core/units/index.ts';
import { emptyTable, typedTable } from './table.ts';

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
  /** The line of each reading. */
  readonly lines: readonly number[];
  readonly troubles: readonly GaugeTableTrouble[];
}

const MOST_READINGS = 1000;
const LONGEST_NAME = 200;

/** Reads a table; what cannot be read is left out and told. */
export const readGaugeTable = (text: string): ReadGaugeTable => {
  const { missing, lines } = typedTable<Column>(text, columns);
  if (missing.length > 0)
    return {
      readings: [],
      lines: [],
      troubles: missing.map((column) => ({ why: 'missing-column', line: 1, column })),
    };
  const readings: GaugeStudy['readings'] = [];
  const of: number[] = [];
  const troubles: GaugeTableTrouble[] = [];
  for (const { line, cell } of lines) {
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
    if (value === null || troubles.length > before) continue;
    readings.push({ part, operator, value });
    of.push(line);
  }
  return { readings, lines: of, troubles };
};

/** A table with its heading alone, to be filled in. */
export const emptyGaugeTable = (): string => emptyTable(columns);
