import { describe, expect, it } from 'vitest';
import {
  checkKey,
  emptyBenchTable,
  filledBenchTable,
  readBenchTable,
} from '../../../app/drafts/check-table.ts';
import { newCheckDraft, typedCheck } from '../../../app/drafts/check.ts';
import { emptyReading } from '../../../app/drafts/check-readings.ts';
import { metres } from '../../../core/units/index.ts';
import { tableText } from '../../../app/drafts/table.ts';
import { rangeOf, readBody } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const PROJECT = idOf(1);
const pairs = new Map([
  ['146', idOf(2)],
  ['A-7', idOf(3)],
]);
const read = (...lines: string[]) => readBenchTable(lines.join('\r\n'), PROJECT, pairs);
const heading = emptyBenchTable().trim();

describe('a table of bench checks', () => {
  it('makes one check of the lines of one pair at one instant, as the records want it', () => {
    const { checks, troubles } = read(
      heading,
      '146,2026-05-01T09:30:00+02:00,stack-height,heel-centre,left,"35,8",mm,120,30,23,"Shop, A",calliper C1,0.05,50,ISO x',
      '146,2026-05-01T09:30:00+02:00,stack-height,heel-centre,right,35.9,mm,120,30,23,"Shop, A",calliper C1,0.05,50,ISO x',
      'a-7,2026-05-02 10:00Z,hardness,heel-centre,left,45.5,asker-c,,,,,,,,',
    );
    expect(troubles).toEqual([]);
    expect(checks).toHaveLength(2);
    expect(checks[0]).toMatchObject({
      pair: idOf(2),
      at: '2026-05-01T07:30:00Z',
      distanceM: 120_000,
      restedH: 30,
      temperatureC: 23,
      operator: 'Shop, A',
      readings: [
        { foot: 'left', value: 35.8, gauge: 'calliper C1', uncertainty: 0.05, loadN: 50 },
        { foot: 'right', value: 35.9 },
      ],
    });
    for (const check of checks) expect(readBody('bench-check', check).ok).toBe(true);
  });

  it('takes a line without a day for that of the line of the same pair above, also where a later line bears another', () => {
    const { checks, troubles } = read(
      heading,
      '146,2026-05-01,stack-height,heel-centre,left,35.8,mm,,,,,,,,',
      '146,,stack-height,heel-centre,right,35.9,mm,,,,,,,,',
      'a-7,2026-05-03,stack-height,heel-centre,left,36,mm,,,,,,,,',
      '146,2026-05-20,stack-height,heel-centre,left,35.1,mm,,,,,,,,',
      '146,,stack-height,heel-centre,right,35.2,mm,,,,,,,,',
    );
    expect(troubles).toEqual([]);
    const values = checks.map(({ readings }) => readings.map(({ value }) => value));
    expect(values).toEqual([[35.8, 35.9], [36], [35.1, 35.2]]);
  });

  it('tells every line that it cannot read, by line and column, and keeps the others', () => {
    const { checks, troubles } = read(
      heading,
      '999,2026-05-01T09:30Z,stack-height,heel,left,35,mm,,,,,,,,',
      '146,yesterday,stack-height,heel,left,35,mm,,,,,,,,',
      '146,2026-05-01T09:30Z,thickness,heel,left,35,mm,,,,,,,,',
      '146,2026-05-01T09:30Z,stack-height,Heel/centre,both,thick,inch,-3,,,,,,,',
      '146,2026-05-01T09:30Z,stack-height,heel,left,35,mm,,,,,,,,',
    );
    expect(checks).toHaveLength(1);
    expect(troubles.map(({ line, column, why }) => `${line} ${column} ${why}`)).toEqual([
      '2 pair unknown-pair',
      '3 measured_at no-date',
      '4 measure unknown-word',
      '5 site no-site',
      '5 unit unknown-word',
      '5 foot unknown-word',
      '5 value no-number',
      '5 distance_km out-of-range',
    ]);
  });

  it('comes filled for a round, and is read back without what nobody measured', () => {
    const filled = filledBenchTable(
      ['146', 'A-7'],
      [
        { measure: 'stack-height', site: 'heel-centre', unit: 'mm' },
        { measure: 'mass', site: 'shoe', unit: 'g', foot: 'left' },
      ],
      { 'stack-height mm': 'Calliper, long', 'hardness asker-c': 'durometer A1' },
    ).split('\r\n');
    expect(filled).toHaveLength(8);
    expect(filled.slice(1, 4).map((line) => line.replace(/,+$/, ''))).toEqual([
      '146,,stack-height,heel-centre,left,,mm,,,,,"Calliper, long"',
      '146,,stack-height,heel-centre,right,,mm,,,,,"Calliper, long"',
      '146,,mass,shoe,left,,g',
    ]);
    expect(read(...filled)).toMatchObject({ checks: [], troubles: [], unmeasured: 6 });
    const typed = filled.map((line, at) =>
      at === 1
        ? line.replace('146,,', '146,2026-05-01T09:30Z,').replace('left,,', 'left,35.8,')
        : line.replace('right,,', 'right,35.9,'),
    );
    const { checks, troubles, unmeasured } = read(...typed);
    expect(checks).toHaveLength(1);
    expect(checks[0]?.readings.map(({ foot, value }) => [foot, value])).toEqual([
      ['left', 35.8],
      ['right', 35.9],
    ]);
    // Each kind of reading has its own gauge in the table.
    expect(checks[0]?.readings.map(({ gauge }) => gauge)).toEqual([
      'Calliper, long',
      'Calliper, long',
    ]);
    // Of the second pair nobody wrote when it was measured.
    expect(troubles).toMatchObject([{ line: 6, column: 'measured_at', why: 'no-day' }]);
    expect(unmeasured).toBe(3);
  });

  it('says of a reading what its measure can be in its unit', () => {
    const { checks, troubles } = read(
      'pair,measured_at,measure,site,foot,value,unit',
      '146,2026-05-01T09:30Z,stack-height,heel,left,350,mm',
      '146,2026-05-01T09:30Z,hardness,heel,left,-1,asker-c',
      '146,2026-05-01T09:30Z,stack-height,heel,left,35,mm',
    );
    expect(checks[0]?.readings).toHaveLength(1);
    expect(troubles).toEqual([
      ...[
        {
          line: 2,
          column: 'value',
          typed: '350',
          why: 'out-of-range',
          range: rangeOf('stack-height', 'mm'),
        },
      ],
      ...[
        {
          line: 3,
          column: 'value',
          typed: '-1',
          why: 'out-of-range',
          range: rangeOf('hardness', 'asker-c'),
        },
      ],
    ]);
  });

  it('names the columns that are missing, and takes them in any order and spelling', () => {
    const { checks, troubles } = read('pair,value', '146,35');
    expect(checks).toEqual([]);
    expect(troubles.map(({ column }) => column)).toEqual([
      'measured_at',
      'measure',
      'site',
      'foot',
      'unit',
    ]);
    const mixed = read(
      '\uFEFFValue,Unit,Foot,Site,Measure,Measured at,Pair',
      '2.95,mm,LEFT,heel-lateral,Tread-Depth,2026-05-01T09:30Z,146',
    );
    expect(mixed.troubles).toEqual([]);
    expect(mixed.checks[0]?.readings[0]).toMatchObject({ measure: 'tread-depth', value: 2.95 });
  });

  it('tells of a quote that swallows lines, of cells too many, of contradictions and of wrong units', () => {
    const { checks, troubles } = read(
      'pair,measured_at,measure,site,foot,value,unit,distance_km,operator',
      '146,2026-05-01T09:30Z,stack-height,heel,left,35,mm,250,A',
      '',
      '146,2026-05-01T09:30Z,stack-height,heel,right,35,mm,260,A',
      '146,2026-05-02T09:30Z,stack-height,heel,right,35,mm,250,5,A',
      '146,2026-05-03T09:30Z,stack-height,heel,right,35,g,250,A',
      '146,2026-05-03T09:30Z,hardness,heel,right,45,asker-c,1500000,A',
      '146,2026-05-04T09:30Z,stack-height,heel,right,35,mm,250,"A',
      '146,2026-05-05T09:30Z,stack-height,heel,right,35,mm,250,A',
    );
    expect(checks).toHaveLength(1);
    expect(troubles.map(({ line, column, why }) => `${line} ${column} ${why}`)).toEqual([
      '4 distance_km differs',
      '5 pair number-of-cells',
      '6 unit unknown-word',
      '7 distance_km out-of-range',
      '8 pair open-quote',
    ]);
  });

  it('takes circumstances from whichever line has them, and nothing that the log has already', () => {
    const lines = [
      'pair,measured_at,measure,site,foot,value,unit,temperature_c',
      '146,2026-05-01T09:30Z,stack-height,heel,left,35,mm,',
      '146,2026-05-01T09:30Z,stack-height,heel,right,35,mm,23',
    ];
    const { checks } = read(...lines);
    expect(checks[0]).toMatchObject({ temperatureC: 23, readings: [{}, {}] });
    const again = readBenchTable(lines.join('\n'), PROJECT, pairs, new Set(checks.map(checkKey)));
    expect(again).toEqual({ checks: [], lines: new Map(), known: 1, unmeasured: 0, troubles: [] });
  });

  it('reads what a Chinese spreadsheet writes', () => {
    // 张 in GB 18030.
    expect(tableText(new Uint8Array([0xd5, 0xc5]).buffer)).toBe('张');
    expect(tableText(new TextEncoder().encode('张').buffer)).toBe('张');
  });

  it('reads what semicolons or tabs part, with decimal commas, and what stands on the clipboard', () => {
    for (const mark of [';', '\t']) {
      const { checks, troubles } = read(
        ['pair', 'measured_at', 'measure', 'site', 'foot', 'value', 'unit'].join(mark),
        ['146', '2026-05-01', 'stack-height', 'heel-centre', 'left', '35,8', 'mm'].join(mark),
        ['146', '', 'stack-height', 'heel-centre', 'right', '36', 'mm'].join(mark),
      );
      expect(troubles).toEqual([]);
      expect(checks[0]?.readings.map(({ value }) => value)).toEqual([35.8, 36]);
    }
    // One line, whose only comma is a decimal one: a guess by the commas would find two cells.
    const { checks } = read(
      'pair;measured_at;measure;site;foot;value;unit',
      '146;2026-05-01;mass;shoe;left;281,5;g',
    );
    expect(checks[0]?.readings[0]?.value).toBe(281.5);
  });

  it('understands what the reader’s language calls measures, sites, feet and units', () => {
    const { checks, troubles } = readBenchTable(
      'pair,measured_at,measure,site,foot,value,unit\n146,2026-05-01,厚度,后跟中心,左,35.8,毫米',
      PROJECT,
      pairs,
      new Set(),
      {
        measures: { 'stack-height': '厚度' } as never,
        sites: { 'heel-centre': '后跟中心' },
        feet: { left: '左' },
        units: { mm: '毫米' } as never,
      },
    );
    expect(troubles).toEqual([]);
    expect(checks[0]?.readings).toEqual([
      { measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 35.8, unit: 'mm' },
    ]);
  });

  it('reads an empty table as nothing', () => {
    expect(readBenchTable(emptyBenchTable(), PROJECT, pairs)).toEqual({
      checks: [],
      lines: new Map(),
      unmeasured: 0,
      known: 0,
      troubles: [],
    });
  });
});

describe('when a check was made', () => {
  const at = (typed: string) =>
    read(
      'pair,measured_at,measure,site,foot,value,unit',
      `146,${typed},stack-height,heel,left,35,mm`,
    ).checks[0]?.at;

  it.each([
    ['2026-05-01', '2026-05-01T12:00'],
    ['2026/5/1', '2026-05-01T12:00'],
    ['2026.05.01', '2026-05-01T12:00'],
    ['２０２６－０５－０１', '2026-05-01T12:00'],
    ['2026/5/1 9:30', '2026-05-01T09:30'],
    ['2026-05-01 09:30:15', '2026-05-01T09:30:15'],
  ])('is %s as the shop’s own clock has it', (typed, local) => {
    expect(Date.parse(at(typed) ?? '')).toBe(new Date(local).getTime());
  });

  it('has its offset where one is written', () => {
    expect(at('2026-05-01T09:30:00+02:00')).toBe('2026-05-01T07:30:00Z');
    expect(at('2026-05-01 09:30z')).toBe('2026-05-01T09:30:00Z');
  });

  it.each(['5/1/2026', '1.5.26', '2026-13-01', '2026-06-31', '2026-05-01 25:00', 'May 1', '46143'])(
    'is not guessed from %s',
    (typed) => {
      expect(at(typed)).toBeUndefined();
    },
  );
});

describe('one reader', () => {
  it('takes the same reading from the form and from a line of a table, and refuses the same', () => {
    const line = (value: string, km: string) =>
      readBenchTable(
        `pair,measured_at,measure,site,foot,value,unit,distance_km\r\nP1,2026-03-02 10:00,stack-height,heel-centre,left,"${value}",mm,"${km}"\r\n`,
        idOf(1),
        new Map([['P1', idOf(2)]]),
      );
    const form = (value: string, km: string) =>
      typedCheck(
        {
          ...newCheckDraft(0),
          pair: idOf(2),
          at: '2026-03-02T10:00',
          km,
          readings: [{ ...emptyReading, value }],
        },
        idOf(1),
        metres(0),
        null,
      );
    for (const [value, km] of [
      ['35,5', '１２０'],
      ['−1', '1'],
      ['35', '-1'],
      ['x', '1'],
      ['35', 'far'],
      ['99999', '1'],
    ] as const) {
      const [table, typed] = [line(value, km), form(value, km)];
      if ('check' in typed) {
        expect(table.checks[0]?.readings).toEqual(typed.check.readings);
        expect(table.checks[0]?.distanceM).toBe(typed.check.distanceM);
      } else expect(table.troubles).toHaveLength(1);
      expect(table.checks).toHaveLength('check' in typed ? 1 : 0);
    }
  });
});
