import { describe, expect, it } from 'vitest';
import { cellsOf, readLines } from '../../../app/drafts/lines.ts';
import { draftOfPair, readPairDraft, readPairLine, withDrawn } from '../../../app/drafts/pair.ts';
import type { Pair } from '../../../core/records/index.ts';
import { footLengthOf } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';

const about = { project: idOf(1), round: idOf(2), taken: new Set(['417']) };
const mm = (eu: number) => Math.round(footLengthOf(eu, 'eu'));
const read = (text: string, usual = '') =>
  readLines(text, (line) => readPairLine(line, usual, about));

describe('the cells of a line', () => {
  it.each([
    ['832 42.5 12', ['832', '42.5', '12']],
    ['832\t42,5\t12', ['832', '42,5', '12']],
    ['832; 42,5; 12', ['832', '42,5', '12']],
    ['832\t\t12', ['832', '', '12']],
    ['832\t42\t\t', ['832', '42']],
    ['832;;12', ['832', '', '12']],
    ['832\t42;5', ['832', '42;5']],
    ['832 42,5 12', ['832', '42,5', '12']],
    ['832, 42.5', ['832', '42.5']],
    ['832, 42, 12', ['832', '42', '12']],
    ['832,42', ['832', '42']],
    ['832,,12', ['832', '', '12']],
    ['832,42.5,12', ['832', '42.5', '12']],
    ['832，42，12', ['832', '42', '12']],
    ['A-1,42', ['A-1', '42']],
    ['T07,Ada Kim,265 / 267', ['T07', 'Ada', 'Kim', '265/267']],
    ['T07，Ada Kim，265', ['T07', 'Ada', 'Kim', '265']],
    ['８３２，４２', ['832', '42']],
    ['  ', []],
  ])('of %o are %o', (line, cells) => {
    expect(cellsOf(line).cells).toEqual(cells);
    expect(cellsOf(line).by).not.toBe('unclear');
  });

  it.each(['832,42,5', 'AB,42,100', '832, 42,5', 'T07,265,267', 'T07,Ada Kim,265,5', '832 42,,12'])(
    'of %o are not guessed: a comma may part them or be a decimal one',
    (line) => {
      expect(cellsOf(line).by).toBe('unclear');
    },
  );
});

describe('a list of pairs', () => {
  it('makes a pair of each line, with the usual size where a line has none', () => {
    expect(read('832 42.5\r\n\nb12\n551 41 12', '42')).toMatchObject([
      { line: 1, ok: true, body: { code: '832', sizeMm: mm(42.5) } },
      { line: 3, ok: true, body: { code: 'B12', sizeMm: mm(42) } },
      { line: 4, ok: true, body: { code: '551', sizeMm: mm(41), carriedInM: 12_000 } },
    ]);
  });

  it('tells by line what is wrong: codes there twice or in use, sizes, and more', () => {
    const troubles = read('832 42\n417 42\n833\n834 4x\n835 420\n832 43\nä 42\n836 42 x\n1 42 3 4');
    expect(troubles.map((row) => [row.line, row.ok ? 'ok' : row.why])).toEqual([
      [1, 'ok'],
      [2, 'taken'],
      [3, 'not-a-size'],
      [4, 'not-a-size'],
      [5, 'not-a-size'],
      [6, 'twice'],
      [7, 'not-a-code'],
      [8, 'wrong-carried'],
      [9, 'too-many-cells'],
    ]);
    expect(troubles[5]).toMatchObject({ first: 1, text: '832 43' });
  });

  it('takes an empty cell for not said: the kilometres are not the size', () => {
    for (const line of ['832\t\t50', '832;;50', '832,,50'])
      expect(read(line, '43')).toMatchObject([
        { ok: true, body: { code: '832', sizeMm: mm(43), carriedInM: 50_000 } },
      ]);
    expect(read('832\t\t50')).toMatchObject([{ ok: false, why: 'not-a-size' }]);
  });

  it('refuses what may be thousands, and commas that may be decimal ones', () => {
    expect(read('832\t42\t1,200\nAB\t42,100\n832,42,100\n833 42 1000')).toMatchObject([
      { line: 1, ok: false, why: 'wrong-carried' },
      { line: 2, ok: false, why: 'not-a-size' },
      { line: 3, ok: false, why: 'unclear', text: '832,42,100' },
      { line: 4, ok: true, body: { carriedInM: 1_000_000 } },
    ]);
  });

  it('takes drawn codes in: none that is used or typed, three digits in no order', () => {
    const sizes = Array.from({ length: 12 }, (_, at) => String(38 + at));
    const text = withDrawn('417 42\n', sizes, new Set(['500']), 7) ?? '';
    const rows = readLines(text, (line) => readPairLine(line, '', { ...about, taken: new Set() }));
    expect(rows).toHaveLength(13);
    expect(rows.every(({ ok }) => ok)).toBe(true);
    const codes = text
      .split('\n')
      .slice(1)
      .map((line) => line.split(' ')[0] ?? '');
    for (const code of codes) expect(code).toMatch(/^[1-9]\d\d$/);
    expect(codes).not.toContain('500');
    expect(codes).not.toEqual([...codes].sort());
    expect(rows.slice(1).map((row) => row.ok && row.body.sizeMm)).toEqual(
      sizes.map((size) => mm(Number(size))),
    );
    expect(
      withDrawn(
        '',
        Array.from({ length: 901 }, () => '42'),
        new Set(),
        7,
      ),
    ).toBeNull();
  });
});

describe('a pair’s form', () => {
  it('refuses a code that another pair of the project has', () => {
    expect(readPairDraft({ code: ' 417', size: '42', carried: '' }, about)).toEqual({
      ok: false,
      troubles: ['taken'],
    });
  });

  it('takes kilometres before the test, but no fewer than none', () => {
    const carried = (typed: string) =>
      readPairDraft({ code: '418', size: '42', carried: typed }, about);
    expect(carried('12,5')).toMatchObject({ body: { carriedInM: 12_500 } });
    expect(carried('-1')).toEqual({ ok: false, troubles: ['wrong-carried'] });
  });
});

it('a pair’s form says everything that is wrong at once', () => {
  expect(readPairDraft({ code: ' ', size: '4x', carried: '1,200' }, about)).toEqual({
    ok: false,
    troubles: ['no-code', 'not-a-size', 'wrong-carried'],
  });
  expect(readPairDraft({ code: 'ä', size: '420', carried: '' }, about)).toEqual({
    ok: false,
    troubles: ['not-a-code', 'not-a-size'],
  });
});

describe('a pair that is put right', () => {
  const old = {
    ...{ project: idOf(1), round: idOf(2), code: '417', sizeMm: 271 },
    carriedInM: 12_345,
    fromNewerApp: 'kept',
  } as unknown as Pair;
  const about = { project: idOf(1), round: idOf(2), taken: new Set(['418']) };

  it('keeps its exact size and kilometres where the form still says what it showed', () => {
    const read = readPairDraft({ ...draftOfPair(old), code: '419' }, about, old);
    expect(read).toEqual({ ok: true, body: { ...old, code: '419' } });
  });

  it('changes what was typed, drops what was emptied, keeps what no form knows', () => {
    const read = readPairDraft({ code: '417', size: '44', carried: '' }, about, old);
    expect(read).toEqual({
      ok: true,
      body: {
        ...{ project: idOf(1), round: idOf(2), code: '417', sizeMm: 280 },
        fromNewerApp: 'kept',
      },
    });
  });

  it('cannot take another pair’s code', () => {
    expect(readPairDraft({ ...draftOfPair(old), code: '418' }, about, old)).toEqual({
      ok: false,
      troubles: ['taken'],
    });
  });
});
