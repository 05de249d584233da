/** What goes out as a table comes in again, however numbers, days and times are written; and no text is read wrongly. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvOf } from '../../../../app/report/tables/csv.ts';
import { runsTable, testersTable, handOutsTable } from '../../../../app/report/tables/wearing.ts';
import { pairsTable } from '../../../../app/report/tables/pairs.ts';
import { namesOf } from '../../../../app/report/tables/written.ts';
import {
  orderIn,
  readClock,
  readDistance,
  readMoment,
  readNumber,
  readTime,
} from '../../../../app/drafts/tables/cells.ts';
import { columnsIn, kindOf, readHead } from '../../../../app/drafts/tables/columns.ts';
import { readSheet } from '../../../../app/drafts/tables/sheet.ts';
import { readTable, type TableContext } from '../../../../app/drafts/tables/table.ts';
import { guessWays } from '../../../../app/drafts/tables/ways.ts';
import { groundNames, sockNames, surfaceNames } from '../../../../app/drafts/tables/names.ts';
import { languageFile } from '../../../../app/terminal/languages.ts';
import { idOf } from '../../../core/records/make.ts';
import { readDemo } from '../../report/demo-report.ts';

const two = (value: number): string => String(value).padStart(2, '0');

describe('what goes out', () => {
  const demo = readDemo();
  const { log } = demo;
  const names = namesOf(demo);
  const context: TableContext = {
    project: log.id,
    rounds: log.rounds,
    testers: log.records.tester,
    pairs: log.pairs.map(({ record }) => record),
    handOuts: log.records['hand-out'],
    runs: log.everyRun.map(({ body }) => ({ ...body, dayOnly: false })),
    by: log.id,
    nowMs: log.nowMs,
  };
  const empty: TableContext = { ...context, runs: [] };
  const read = (text: string, about: TableContext) => {
    const sheet = readSheet(text);
    const kind = kindOf(sheet.head);
    if (kind === null || kind === 'bench') throw new Error(sheet.head.join());
    const columns = columnsIn(sheet.head, kind);
    const ways = guessWays(sheet, columns, { distance: 'mi', round: null });
    return { kind, rows: readTable(sheet, { kind, columns, ways }, about) };
  };

  it.each([
    ['testers', () => testersTable(log, demo.feet)],
    ['pairs', () => pairsTable(demo.review, names.round)],
    ['hand-outs', () => handOutsTable(log, names)],
    ['runs', () => runsTable(log, names)],
  ] as const)('as a table of %s adds nothing when it comes in again', (kind, table) => {
    const again = read(csvOf(table()), context);
    expect(again.kind).toBe(kind);
    expect(again.rows.length).toBeGreaterThan(0);
    expect(again.rows.filter(({ fate }) => fate !== 'same')).toEqual([]);
  });

  it('as runs says the same of each when none is here', () => {
    const { rows } = read(csvOf(runsTable(log, names)), empty);
    const records = new Map(
      log.everyRun.map(({ body }) => [`${body.tester} ${Date.parse(body.startedAt)}`, body]),
    );
    const came = rows.filter(({ record }) => record !== undefined);
    expect(came.length).toBeGreaterThan(0.98 * rows.length);
    for (const { record } of came) {
      if (record?.kind !== 'run') throw new Error('no run');
      const { body } = record;
      const was = records.get(`${body.tester} ${Date.parse(body.startedAt)}`);
      expect(body).toMatchObject({
        pair: was?.pair,
        distanceM: Math.round(was?.distanceM ?? 0),
        ...(was?.durationS !== undefined && { durationS: Math.round(was.durationS) }),
        ...(was?.words && { words: was.words.trim() }),
        ...(was?.pain && { pain: { score: was.pain.score } }),
        ...(was?.comfort2 && { comfort2: was.comfort2 }),
        ...(was?.comfort?.overall !== undefined && { comfort: { overall: was.comfort.overall } }),
      });
    }
  });
});

describe('two-sided questions', () => {
  const runOf = (head: string, cell: string) => {
    const sheet = readSheet(`tester,pair,date,distance km,${head}\nT1,P1,2026-05-01,8,${cell}\n`);
    const columns = columnsIn(sheet.head, 'runs');
    const ways = guessWays(sheet, columns, { distance: 'km', round: null });
    const person = { revision: { id: idOf(1) }, body: { code: 'T1' } };
    const pair = { revision: { id: idOf(2) }, body: { code: 'P1' } };
    const about = {
      project: idOf(3),
      rounds: [],
      testers: [person],
      pairs: [pair],
      handOuts: [],
      runs: [],
      by: idOf(4),
      nowMs: Date.UTC(2026, 5, 1),
    } as unknown as TableContext;
    const [row] = readTable(sheet, { kind: 'runs', columns, ways }, about);
    const body = row?.record?.kind === 'run' ? row.record.body : null;
    return { column: columns[4], marks: body?.comfort2, troubles: row?.troubles ?? [] };
  };

  it.each([
    ['heel cushioning two-sided', '-40', 'heel-cushioning', -40],
    ['heel_cushioning_two_sided', '0', 'heel-cushioning', 0],
    ['Heel cushioning (two-sided: -100 to 100)', 'too soft', 'heel-cushioning', -58],
    ['toe room mark', 'a little too much', 'toe-room', 28],
    ['heel hold two-sided', 'slips a lot', 'heel-hold', -88],
    ['后跟缓震（双向）', '略硬', 'heel-cushioning', 28],
    ['跖围处宽度（双向）', '正好', 'ball-width', 0],
    ['稳定性（标记）', '管得太死', 'stability', 58],
  ] as const)('of the head %s, cell %s', (head, cell, question, mark) => {
    expect(runOf(head, cell)).toMatchObject({
      column: `mark-${question}`,
      marks: { [question]: mark },
      troubles: [],
    });
  });

  it('are not read from a column that may score from bad to good', () => {
    expect(runOf('heel cushioning', '70')).toMatchObject({ column: null, troubles: [] });
    expect(runOf('heel cushioning', '70').marks).toBeUndefined();
  });

  it('that nobody can have meant are told by their cell', () => {
    expect(runOf('arch two-sided', '140').troubles).toMatchObject([{ why: 'out-of-range' }]);
    expect(runOf('arch two-sided', 'soso').troubles).toMatchObject([
      { why: 'unknown-word', words: ['low', 'right', 'high'] },
    ]);
  });
});

describe('a cell', () => {
  const moments = fc.date({
    min: new Date(2001, 0, 1),
    max: new Date(2098, 11, 31),
    noInvalidDate: true,
  });

  it('with a day reads back from any way of writing it', () => {
    fc.assert(
      fc.property(moments, fc.boolean(), (at, dayFirst) => {
        const [y, m, d] = [at.getFullYear(), at.getMonth() + 1, at.getDate()];
        const day = `${y}-${two(m)}-${two(d)}`;
        const slashed = dayFirst ? `${d}/${m}/${y}` : `${m}/${d}/${y}`;
        const order = dayFirst ? 'dmy' : 'mdy';
        for (const text of [day, `${y}/${m}/${d}`, `${y}年${m}月${d}日`, `${d}.${m}.${y}`, slashed])
          expect(readMoment(text, order), text).toMatchObject({ day, dayOnly: true });
        const hour = `${two(at.getHours())}:${two(at.getMinutes())}`;
        expect(readMoment(`${slashed} ${hour}`, order)).toMatchObject({ day, dayOnly: false });
        const found = orderIn([slashed]);
        if (d > 12 || m === d) expect([order, 'dmy']).toContain(found);
        else expect(found).toBeNull();
      }),
    );
  });

  it('with a number reads back with either decimal mark, with or without thousands', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (hundredths) => {
        const value = hundredths / 100;
        const english = new Intl.NumberFormat('en', { minimumFractionDigits: 2 }).format(value);
        const german = new Intl.NumberFormat('de', { minimumFractionDigits: 2 }).format(value);
        expect(readNumber(english, 'point'), english).toBe(value);
        expect(readNumber(german, 'comma'), german).toBe(value);
        expect(readNumber(value.toFixed(2), 'point')).toBe(value);
        expect(readNumber(value.toFixed(2).replace('.', ','), 'comma')).toBe(value);
      }),
    );
  });

  it('with a time reads back as clock, minutes, hours or seconds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 35_999 }), (seconds) => {
        const [h, m, s] = [
          Math.floor(seconds / 3600),
          Math.floor((seconds % 3600) / 60),
          seconds % 60,
        ];
        expect(readTime(`${h}:${two(m)}:${two(s)}`, 'clock', 'point')).toBe(seconds);
        expect(readTime(`${h}:${two(m)}:${two(s)}`, 'h:mm', 'point')).toBe(seconds);
        expect(readTime(String(seconds), 's', 'point')).toBe(seconds);
        expect(readTime(`${h}:${two(m)}`, 'h:mm', 'point')).toBe(seconds - s);
        expect(readTime((seconds / 60).toFixed(4), 'min', 'point')).toBe(seconds);
        expect(readTime((seconds / 3600).toFixed(6).replace('.', ','), 'h', 'comma')).toBe(seconds);
      }),
    );
  });

  it('of any text at all is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), (text) => {
        for (const read of [
          readMoment(text, 'mdy'),
          readClock(text),
          readTime(text, 'clock', 'comma'),
          readNumber(text, 'point'),
          readDistance(text, 'mi', 'comma'),
          kindOf([text, text]),
        ])
          expect(read).not.toBeNaN();
      }),
      { numRuns: 500 },
    );
  });

  it('that could be two things is refused, or told by what the table says', () => {
    expect(readMoment('31/02/2026', 'dmy')).toBeNull();
    expect(readMoment('4/13/2026', 'dmy')).toBeNull();
    expect(readMoment('1/2/2026', 'mdy')?.day).toBe('2026-01-02');
    expect(readMoment('2 Mar 2026', 'mdy')?.day).toBe('2026-03-02');
    expect(readMoment('March 2, 2026 7:05 pm', 'dmy')?.ms).toBe(
      new Date(2026, 2, 2, 19, 5).getTime(),
    );
    expect(readNumber('1,234', 'point')).toBe(1234);
    expect(readNumber('1,234', 'comma')).toBe(1.234);
    expect(readNumber('12o', 'point')).toBeNull();
    expect(readDistance('6 mi', 'km', 'point')).toBeCloseTo(9656.064, 6);
    expect(readDistance('5000 m', 'km', 'point')).toBe(5000);
    expect(readTime('105', 'clock', 'point')).toBe(6300);
    expect(readClock('下午 7:30')).toBe(19 * 60 + 30);
    expect(readClock('25:00')).toBeNull();
  });
});

describe('a head', () => {
  it('says its column and unit in English and Chinese', () => {
    expect(readHead('Distance (km)')).toEqual({ name: 'distance', unit: 'km' });
    expect(readHead('距离（公里）')).toEqual({ name: '距离', unit: 'km' });
    expect(readHead('Time [min]')).toEqual({ name: 'time', unit: 'min' });
    expect(readHead('Weight (kg)')).toEqual({ name: 'weight', unit: null });
    const head = ['日期', '试穿员', '样鞋', '公里', '用时', '路面', '备注'];
    expect(kindOf(head)).toBe('runs');
    expect(columnsIn(head, 'runs')).toEqual([
      ...['date', 'tester', 'pair', 'distance', 'time', 'surface', 'words'],
    ]);
    expect(kindOf(['Pair', 'Measured at', 'Measure', 'Site', 'Value'])).toBe('bench');
    expect(kindOf(['something', 'else'])).toBeNull();
    expect(columnsIn(['Tester', 'Runner', 'Pair'], 'runs')).toEqual(['tester', null, 'pair']);
  });
});

describe('a word', () => {
  it.each(['en', 'zh'])('that the screen offers is read: %s', (language) => {
    const { surfaces, grounds, socks } = languageFile(language).glossary;
    for (const [names, terms] of [
      [surfaceNames, surfaces],
      [groundNames, grounds],
      [sockNames, socks],
    ] as const)
      for (const [id, name] of Object.entries<string>(terms))
        expect((names as ReadonlyMap<string, string>).get(name.toLowerCase()), name).toBe(id);
  });
});

describe('how a table writes', () => {
  const ways = (text: string) => {
    const sheet = readSheet(text);
    const kind = kindOf(sheet.head);
    if (kind === null || kind === 'bench') throw new Error(text);
    return guessWays(sheet, columnsIn(sheet.head, kind), { distance: 'km', round: null });
  };
  it('is asked where no cell tells it', () => {
    expect(ways('Tester\tPair\tDate\tkm\nA\tB\t3/4/2026\t10').dates).toBeNull();
    expect(ways('Pair;Size\nA;8').size).toBeNull();
    expect(ways('Pair;Size\nA;265').size).toBe('mondopoint');
    expect(ways('Pair;Size UK\nA;8').size).toBe('uk');
  });
  it('of times is what makes paces that people run', () => {
    const table = (time: string) => `tester,pair,date,km,time\nA,B,2026-03-04,10,${time}`;
    expect(ways(table('0:52')).time).toBe('h:mm');
    expect(ways(table('52:10')).time).toBe('clock');
    expect(ways(table('52')).time).toBe('clock');
    expect(ways(table('0.87')).time).toBe('h');
    expect(ways(table('3130')).time).toBe('s');
  });
});
