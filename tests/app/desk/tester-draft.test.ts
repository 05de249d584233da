/** A tester in their form comes back as they were, and what is wrong is told of its field. */
import { describe, expect, it } from 'vitest';
import { draftOfTester, readTesterDraft } from '../../../app/desk/tester-draft.ts';
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
    expect(readTesterDraft(draft, tester)).toEqual({ ok: true, body: tester });
  });

  it('lets go of what is cleared', () => {
    const { name: _name, massKg: _mass, ...rest } = tester;
    expect(readTesterDraft({ ...draftOfTester(tester), name: ' ', mass: '' }, tester)).toEqual({
      ok: true,
      body: rest,
    });
  });

  it('takes small letters for capitals', () => {
    expect(readTesterDraft({ ...draftOfTester(null), code: ' t08 ' }, null)).toEqual({
      ok: true,
      body: { code: 'T08' },
    });
  });

  it.each([
    ['code', '', 'missing'],
    ['code', 'tester 7', 'not-a-code'],
    ['length', '265 / x', 'wrong-number'],
    ['width', '100 101 102', 'wrong-number'],
    ['mass', 'sixty', 'wrong-number'],
    ['height', '12', 'wrong-number'],
  ] as const)('says that %s cannot be %o', (field, typed, why) => {
    expect(readTesterDraft({ ...draftOfTester(tester), [field]: typed }, tester)).toEqual({
      ok: false,
      field,
      why,
    });
  });
});
