/** The figures as tables and as JSON: nothing is lost, nothing runs in a spreadsheet, and the sums are the review's. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvOf } from '../../../app/report/tables/csv.ts';
import { dictionaryOf, dictionaryTable } from '../../../app/report/tables/dictionary.ts';
import { jsonOf, tableOfKind, tablesOf } from '../../../app/report/tables/index.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import { columns as english } from '../../../app/words/say-columns/en.ts';
import { kinds } from '../../../core/records/index.ts';
import { readDemo } from './demo-report.ts';

const parse = (text: string): string[][] =>
  Papa.parse<string[]>(text.trimEnd(), { newline: '\r\n' }).data;

describe('a table as CSV', () => {
  const cell = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom(
      '=1+1',
      '+A1',
      '-2',
      '@sum',
      '\tx',
      '\rx',
      '\n=1',
      ' =1+1',
      '＝1+1',
      'a "b"',
      'a,b',
      'a\r\nb',
      'a;=1+1',
      'a\n-b; c',
      '鞋楦，"一"',
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer(),
    fc.boolean(),
  );

  it('reads back cell by cell; only a text that would be a formula has an apostrophe before it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }).chain((columns) =>
          fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), {
            minLength: 1,
            maxLength: 6,
          }),
        ),
        (rows) => {
          const columns = (rows[0] ?? []).map((_, at) => `c${at}`);
          // The end line is of the file, not of the last cell.
          const text = csvOf({ columns, rows: [...rows, columns.map(() => 'end')] });
          const [head, ...body] = parse(text);
          expect(head?.map((name) => name.replace('\ufeff', ''))).toEqual(columns);
          expect(body).toHaveLength(rows.length + 1);
          for (const [at, row] of rows.entries())
            for (const [column, value] of row.entries()) {
              const read = body[at]?.[column];
              if (typeof value !== 'string') expect(read).toBe(String(value));
              else if (/^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u.test(value))
                expect(read?.replaceAll(/([;\t\r\n])'/g, '$1')).toBe(
                  `'${value}`.replaceAll(/([;\t\r\n])'/g, '$1'),
                );
              else
                expect(read).toBe(
                  value.replace(/([;\t\r\n])(?=[^\S\t\r\n]*[=+\-@＝＋－＠])/gu, "$1'"),
                );
            }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('leaves no cell that a spreadsheet would run, whatever was typed', () => {
    const text = csvOf({
      columns: ['a', 'b'],
      rows: [
        ['=HYPERLINK("x")', '@x'],
        ['+1', '-1'],
        [' =1+1', '＝1+1'],
      ],
    });
    for (const row of parse(text).slice(1))
      for (const one of row) expect(one).not.toMatch(/^\s*[=+@＝＋－＠-]/);
  });

  it('leaves none either where a spreadsheet parts by semicolons and knows no quotes within a cell', () => {
    const text = csvOf({
      columns: ['a', 'b', 'c'],
      rows: [['felt; =HYPERLINK("x")', 'one\n+1', 'slips;@x\t-2']],
    });
    for (const cell of text.split(/[;\t\r\n]+/))
      expect(cell.replaceAll('"', '')).not.toMatch(/^\s*[=+@-]/);
  });

  it('ends every line as RFC 4180 says and begins with a byte order mark', () => {
    const text = csvOf({ columns: ['a', 'b'], rows: [[1, 'x']] });
    expect(text).toBe('\ufeffa,b\r\n1,x\r\n');
  });

  it('keeps a negative number a number', () => {
    expect(csvOf({ columns: ['a', 'b'], rows: [[-1.5, 0]] })).toContain('\r\n-1.5,0\r\n');
  });
});

describe('the tables of the demo', () => {
  const demo = readDemo();
  const tables = tablesOf(demo);

  it('have in every row as many cells as columns, and no column twice', () => {
    for (const { name, columns, rows } of tables) {
      expect(new Set(columns).size, name).toBe(columns.length);
      for (const row of rows) expect(row.length, name).toBe(columns.length);
    }
  });

  it('say the kilometres and the runs of the review', () => {
    const pairs = tables.find(({ name }) => name === 'pairs');
    const at = (column: string) => pairs?.columns.indexOf(column) ?? -1;
    const sum = (column: string) =>
      (pairs?.rows ?? []).reduce((total, row) => total + Number(row[at(column)]), 0);
    expect(sum('runs')).toBe(demo.review.size.runs);
    expect(sum('total_km') - sum('carried_in_km')).toBeCloseTo(
      demo.review.size.distanceM / 1000,
      1,
    );
  });

  it('name measure, unit and limit of each item of a verdict apart', () => {
    const table = tables.find(({ name }) => name === 'verdicts');
    const wear = table?.rows.find((row) => row[2] === 'wear');
    expect(wear?.slice(3, 9)).toEqual([
      'energy-absorbed',
      'J',
      'heel-centre',
      'at-least',
      0.7,
      'share-of-new',
    ]);
  });

  it('hold every kind of record and every run that is on record, counted or not', () => {
    const names = new Set(tables.map(({ name }) => name));
    expect(names.size).toBe(tables.length);
    for (const kind of kinds) {
      const name = tableOfKind[kind];
      if (name !== null) expect(names, kind).toContain(name);
    }
    const rowsOf = (name: string) => tables.find((one) => one.name === name)?.rows ?? [];
    expect(rowsOf('runs')).toHaveLength(demo.log.everyRun.length);
    const said = demo.log.everyRun.filter(({ body }) => body.words !== undefined);
    expect(said.length).toBeGreaterThan(0);
    for (const { body } of said) expect(rowsOf('runs').flat()).toContain(body.words);
    expect(rowsOf('checks')).toHaveLength(
      demo.log.everyCheck.reduce((sum, { body }) => sum + body.readings.length, 0),
    );
  });

  it('have a dictionary: a meaning in both languages for each column, and no meaning for none', () => {
    const glossaries = { en: languageFile('en'), zh: languageFile('zh') };
    const entries = dictionaryOf(tables, glossaries);
    expect(entries).toHaveLength(tables.reduce((sum, { columns }) => sum + columns.length, 0));
    for (const { table, column, meaning } of entries) {
      expect(meaning.en, `${table}.${column}`).not.toBe('');
      expect(meaning.zh, `${table}.${column}`).not.toBe('');
    }
    const known = new Set(entries.flatMap(({ table, column }) => [column, `${table}.${column}`]));
    expect(Object.keys(english).filter((name) => !known.has(name))).toEqual([]);
    const zone = entries.find(({ column }) => column === 'zone');
    expect(zone?.values).toContainEqual({ value: 'U10', en: 'heel cup', zh: '后套' });
    // What a column says in the words of the code is among the words that the dictionary explains.
    for (const { table, column, values } of entries) {
      if (values.length === 0 || column === 'value' || column === 'pain_signs') continue;
      const own = tables.find(({ name }) => name === table);
      const at = own?.columns.indexOf(column) ?? -1;
      const words = new Set(values.map(({ value }) => value));
      for (const row of own?.rows ?? [])
        if (row[at] !== undefined && row[at] !== null && row[at] !== '')
          expect(words, `${table}.${column}`).toContain(row[at]);
    }
    expect(dictionaryTable(entries).rows).toHaveLength(entries.length);
  });

  it('name every finding with its trade', () => {
    const table = tables.find(({ name }) => name === 'findings');
    expect(table?.rows).toHaveLength(demo.findings.length);
    expect(table?.rows.flat()).toContain('upper');
  });

  it('come as JSON too, with a version, the review, and the findings', () => {
    const read = JSON.parse(jsonOf(demo)) as Record<string, unknown>;
    expect(read).toMatchObject({ format: 'pairlog-review', v: 1, units: { '…M': 'metres' } });
    expect(JSON.stringify(read['testers'])).not.toContain('"name"');
    expect(read['findings']).toHaveLength(demo.findings.length);
    expect(read['rounds']).toHaveLength(demo.review.rounds.length);
    expect((read['pairs'] as unknown[]).length).toBe(demo.review.pairs.length);
    for (const round of read['rounds'] as Record<string, unknown>[])
      expect(Object.keys(round)).toEqual(
        expect.arrayContaining(['cells', 'wear', 'verdict', 'against', 'layers']),
      );
  });
});
