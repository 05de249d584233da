/** A tester in their form comes back as they were, and what is wrong is told of its field. */
import { describe, expect, it } from 'vitest';
import {
  draftOfTester,
  readTesterDraft,
  readTesterLine,
  withCodes,
} from '../../../app/drafts/tester.ts';
import { cellsOf, readLines } from '../../../app/drafts/lines.ts';
import { readBody } from '../../../core/records/index.ts';

const read = readBody('tester', {
  code: 'T07',
  name: 'Ada',
  footLengthMm: { left: 265.5, right: 267 },
  ballGirthMm: { left: 245, right: 245 },
  massKg: 62.5,
  heightM: 1.71,
  footStrike: 'rearfoot',
  ofANewerApp: true,
});
if (!read.ok) throw new Error('no tester');
const tester = read.body;
const none: ReadonlySet<string> = new Set();

describe('a tester’s draft', () => {
  it('shows what is known and reads back to the same tester', () => {
    const draft = draftOfTester(tester);
    expect(draft).toEqual({
      code: 'T07',
      name: 'Ada',
      length: '265.5 / 267',
      width: '',
      girth: '245',
      mass: '62.5',
      height: '171',
    });
    expect(readTesterDraft(draft, tester, none)).toEqual({ ok: true, body: tester });
  });

  it('lets go of what is cleared', () => {
    const { name: _name, massKg: _mass, ...rest } = tester;
    expect(
      readTesterDraft({ ...draftOfTester(tester), name: ' ', mass: '' }, tester, none),
    ).toEqual({
      ok: true,
      body: rest,
    });
  });

  it('takes small letters for capitals', () => {
    expect(readTesterDraft({ ...draftOfTester(null), code: ' t08 ' }, null, none)).toEqual({
      ok: true,
      body: { code: 'T08' },
    });
  });

  it.each([
    ['code', '', 'missing'],
    ['code', 'tester 7', 'not-a-code'],
    ['length', '265 / x', 'wrong-length'],
    ['length', '26.5', 'wrong-length'],
    ['length', '265,267', 'wrong-length'],
    ['width', '100 101 102', 'wrong-number'],
    ['mass', 'sixty', 'wrong-number'],
    ['height', '12', 'wrong-number'],
    ['width', '10', 'wrong-number'],
    ['girth', '2500', 'wrong-number'],
  ] as const)('says that %s cannot be %o', (field, typed, why) => {
    expect(readTesterDraft({ ...draftOfTester(tester), [field]: typed }, tester, none)).toEqual({
      ok: false,
      troubles: [{ field, why }],
    });
  });
});

it('a tester’s form says everything that is wrong at once', () => {
  const typed = { code: 't07', length: '26.5', width: 'x', girth: '245', mass: '1', height: '17' };
  expect(readTesterDraft({ ...draftOfTester(null), ...typed }, null, new Set(['T07']))).toEqual({
    ok: false,
    troubles: [
      { field: 'code', why: 'taken' },
      { field: 'length', why: 'wrong-length' },
      { field: 'width', why: 'wrong-number' },
      { field: 'mass', why: 'wrong-number' },
      { field: 'height', why: 'wrong-number' },
    ],
  });
});

describe('a line of a list of testers', () => {
  const line = (text: string) => readTesterLine(cellsOf(text), new Set(['T01']));

  it('is code, name and foot length, of which only the code must be there', () => {
    expect(line('t07 Ada Kim 265/267')).toEqual({
      ok: true,
      body: { code: 'T07', name: 'Ada Kim', footLengthMm: { left: 265, right: 267 } },
    });
    expect(line('T08 264.5')).toMatchObject({ body: { footLengthMm: { left: 264.5 } } });
    expect(line('T09')).toEqual({ ok: true, body: { code: 'T09' } });
  });

  it('tells what is wrong with it', () => {
    expect(line('t01 Ada')).toEqual({ ok: false, why: 'taken' });
    expect(line('Ada! T07')).toEqual({ ok: false, why: 'not-a-code' });
    expect(line('T07 Ada 1/2/3')).toEqual({ ok: false, why: 'wrong-length' });
  });

  it('keeps a name whole in its cell, whatever stands in it', () => {
    expect(line('T07\tAda 2')).toEqual({ ok: true, body: { code: 'T07', name: 'Ada 2' } });
    for (const text of ['T07\t\t265', 'T07;265', 'T07,265'])
      expect(line(text)).toEqual({
        ok: true,
        body: { code: 'T07', footLengthMm: { left: 265, right: 265 } },
      });
  });

  it.each([
    ['T07\t\t265\t267', 'too-many-cells'],
    ['T07\t265\t267', 'too-many-cells'],
    ['T07 265 267', 'too-many-cells'],
    ['T07 Ada 265 mm', 'too-many-cells'],
    ['T07\tAda\t\tlate', 'too-many-cells'],
    ['T07\tAda\t265 mm', 'wrong-length'],
    ['T07\t\t265,267', 'wrong-length'],
    ['T07 Ada 2', 'wrong-length'],
    ['T07 Ada 26.5', 'wrong-length'],
  ])('does not guess at %o', (text, why) => {
    expect(line(text)).toEqual({ ok: false, why });
  });
});

describe('codes for a list of testers', () => {
  it('go before the names, and on after the highest that the group has', () => {
    expect(withCodes('Ada 265/267\nB7 Bo\n\nCleo Lee', 0, new Set(['T03', 'X99']))).toBe(
      'T04 Ada 265/267\nB7 Bo\n\nT05 Cleo Lee',
    );
    expect(withCodes('Ada\t265\nBo; 270', 0, none)).toBe('T01\tAda\t265\nT02; Bo; 270');
  });

  it('fill the list up to as many as are asked for', () => {
    expect(withCodes('', 3, none)).toBe('T01\nT02\nT03');
    expect(withCodes('Ada 265\n', 2, none)).toBe('T01 Ada 265\nT02');
    expect(withCodes('T01\nT02', 2, none)).toBe('T01\nT02');
    expect(withCodes('', 1, new Set(['T99']))).toBe('T100');
  });

  it('make lines that are read as testers', () => {
    const rows = readLines(withCodes('Ada 265/267\nBo', 4, new Set(['T01'])), (line) =>
      readTesterLine(line, new Set(['T01'])),
    );
    expect(rows).toMatchObject([
      { ok: true, body: { code: 'T02', name: 'Ada', footLengthMm: { left: 265, right: 267 } } },
      { ok: true, body: { code: 'T03', name: 'Bo' } },
      { ok: true, body: { code: 'T04' } },
      { ok: true, body: { code: 'T05' } },
    ]);
  });
});
