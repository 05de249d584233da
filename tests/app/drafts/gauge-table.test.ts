/** Gauge studies from a shop's table. */
import { describe, expect, it } from 'vitest';
import { emptyGaugeTable, readGaugeTable } from '../../../app/drafts/gauge-table.ts';

describe('a table of a gauge study', () => {
  it('is read from a file, and from what a spreadsheet puts on the clipboard', () => {
    const readings = [
      { part: 'S1', operator: 'Shop A', value: 58.02 },
      { part: 'S1', operator: 'Lab, C', value: 57.9 },
    ];
    expect(
      readGaugeTable('\uFEFFpart,operator,value\r\nS1,Shop A,58.02\r\nS1,"Lab, C","57,9"\r\n'),
    ).toEqual({ readings, lines: [2, 3], troubles: [] });
    expect(
      readGaugeTable('Operator\tPart\tValue\nShop A\tS1\t58,02\n\nLab, C\tS1\t57.9\n'),
    ).toEqual({ readings, lines: [2, 4], troubles: [] });
  });

  it('tells each line that it cannot read, and keeps the others', () => {
    const { readings, troubles } = readGaugeTable(
      'part,operator,value\nS1,A,58\n,A,58\nS2,,x\nS3,B,59\n',
    );
    expect(readings.map(({ part }) => part)).toEqual(['S1', 'S3']);
    expect(troubles).toEqual([
      { why: 'no-name', line: 3, column: 'part' },
      { why: 'no-name', line: 4, column: 'operator' },
      { why: 'no-number', line: 4, column: 'value' },
    ]);
  });

  it('needs its three columns, and takes no more than a record holds', () => {
    expect(readGaugeTable('part;wert\nS1;3').troubles).toEqual([
      { why: 'missing-column', line: 1, column: 'operator' },
      { why: 'missing-column', line: 1, column: 'value' },
    ]);
    const many = readGaugeTable(`${emptyGaugeTable()}${'S1,A,58\r\n'.repeat(1003)}`);
    expect(many.readings).toHaveLength(1000);
    expect(many.troubles).toEqual([{ why: 'too-many', line: 1002, column: 'value' }]);
  });
});
