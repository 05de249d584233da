/** A fit trial as it is answered on the phone: one foot apart, the rest right in one press, pain with its caution. */
import { describe, expect, it } from 'vitest';
import {
  fitCaution,
  keptFitForm,
  newFitForm,
  openPlaces,
  readFitTrial,
  restRight,
  shownAnswer,
  suggestedMoves,
  wantedOf,
  whoTroubles,
  withFit,
  withMm,
  withPain,
  withSpot,
  type FitForm,
} from '../../../app/drafts/fit-trial.ts';
import { moveKey } from '../../../core/fitting/index.ts';
import { fitPlaces } from '../../../core/foot/index.ts';
import { readBody } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const [PROJECT, SESSION, ME, PAIR] = [idOf(1), idOf(2), idOf(11), idOf(60)];
const at = '2026-12-02T10:00:00+01:00';
const begin = newFitForm('me', 'T01-1', PAIR);
const read = (form: FitForm, taken: readonly string[] = ['T01']) =>
  readFitTrial(form, { project: PROJECT, session: SESSION, member: ME, at }, new Set(taken));
const bodyOf = (form: FitForm) => {
  const outcome = read(form);
  if (!outcome.ok) throw new Error(outcome.troubles.join());
  expect(readBody('fit-trial', outcome.body)).toMatchObject({ ok: true });
  return outcome.body;
};
const loose = withMm(withFit(begin, 'heel', 'much'), 'heel', 2);
const on = (form: FitForm, foot: FitForm['foot']): FitForm => ({ ...form, foot });

describe('an answer to a place', () => {
  it('keeps its estimate while it stays on its side', () => {
    expect(shownAnswer(loose, 'heel')).toEqual({ fit: 'much', mm: 2 });
    expect(shownAnswer(withFit(loose, 'heel', 'much'), 'heel')).toEqual({ fit: 'much', mm: 2 });
    expect(shownAnswer(withFit(loose, 'heel', 'little'), 'heel')).toEqual({
      fit: 'little',
      mm: null,
    });
  });

  it('takes an estimate only where it is off', () => {
    expect(withMm(begin, 'heel', 2)).toBe(begin);
    const right = withFit(begin, 'heel', 'right');
    expect(withMm(right, 'heel', 2)).toBe(right);
  });

  it('of one foot begins with what was said of both, and stands apart from it', () => {
    const left = on(loose, 'left');
    expect(shownAnswer(left, 'heel')).toEqual({ fit: 'much', mm: 2 });
    const apart = withMm(left, 'heel', 5);
    expect(shownAnswer(apart, 'heel')).toEqual({ fit: 'much', mm: 5 });
    expect(shownAnswer(on(apart, 'right'), 'heel')).toEqual({ fit: 'much', mm: 2 });
    expect(bodyOf(apart).standing).toEqual([
      { place: 'heel', fit: 'much', mm: 2 },
      { place: 'heel', fit: 'much', mm: 5, foot: 'left' },
    ]);
    // Said of both again it is of both.
    expect(bodyOf(withFit(on(apart, 'both'), 'heel', 'right')).standing).toEqual([
      { place: 'heel', fit: 'right' },
    ]);
  });

  it('is "right" for all the rest in one press, and changes none that was given', () => {
    expect(openPlaces(loose)).toHaveLength(fitPlaces.length - 1);
    const rest = restRight(loose);
    expect(openPlaces(rest)).toEqual([]);
    expect(shownAnswer(rest, 'heel')).toEqual({ fit: 'much', mm: 2 });
    expect(bodyOf(rest).standing).toHaveLength(fitPlaces.length);
  });

  it('of one foot alone leaves the other open', () => {
    const left = withFit(on(begin, 'left'), 'ball', 'little');
    expect(openPlaces(left)).toContain('ball');
    const rest = restRight(left);
    expect(shownAnswer(on(rest, 'right'), 'ball')).toEqual({ fit: 'right', mm: null });
    expect(shownAnswer(on(rest, 'left'), 'ball')).toEqual({ fit: 'little', mm: null });
  });
});

describe('what they want moved', () => {
  it('is nothing until they say yes to what follows from their answers', () => {
    const [move] = suggestedMoves(loose);
    if (!move) throw new Error('nothing suggested');
    expect(move).toMatchObject({ line: 'back-curve', direction: 'inward', by: { amount: 2 } });
    expect(wantedOf(loose)).toEqual([]);
    expect(bodyOf(loose)).not.toHaveProperty('wanted');
    const wanted = { ...loose, accepted: [moveKey(move)] };
    expect(bodyOf(wanted).wanted).toEqual([move]);
    // A later estimate goes with it; an answer that is right takes it away.
    expect(bodyOf(withMm(wanted, 'heel', 3)).wanted?.[0]?.by?.amount).toBe(3);
    expect(bodyOf(withFit(wanted, 'heel', 'right'))).not.toHaveProperty('wanted');
  });

  it('is of one shoe where its answer is', () => {
    const left = withFit(on(begin, 'left'), 'ball', 'little');
    expect(suggestedMoves(left)).toMatchObject([{ direction: 'more', foot: 'left' }]);
    const apart = withFit(on(loose, 'left'), 'heel', 'right');
    expect(suggestedMoves(apart)).toMatchObject([{ line: 'back-curve', foot: 'right' }]);
  });

  it('holds what they added besides', () => {
    const other = { part: 'upper-pattern', line: 'tongue', direction: 'forward' } as const;
    expect(bodyOf({ ...begin, others: [other] }).wanted).toEqual([other]);
  });
});

describe('pain or numbness', () => {
  it('is not saved before its caution is read', () => {
    expect(fitCaution(begin)).toBe('none');
    const numb = withPain(begin, 'numbness');
    expect(fitCaution(numb)).toBe('unread');
    const known = { ...numb, cautionRead: true };
    expect(fitCaution(known)).toBe('read');
    expect(fitCaution(withPain(known, 'pain'))).toBe('read');
    // Taken back and told anew it is read anew.
    expect(fitCaution(withPain(withPain(known, 'numbness'), 'numbness'))).toBe('unread');
    expect(bodyOf(known).pain).toEqual(['numbness']);
  });

  it('that is neither is an answer of its own', () => {
    expect(bodyOf({ ...begin, pain: [] }).pain).toEqual([]);
    expect(bodyOf(loose)).not.toHaveProperty('pain');
  });
});

describe('a trial', () => {
  it('is of the member of the phone, of somebody by a code, or of a tester whom a lead chose', () => {
    expect(bodyOf(loose)).toMatchObject({ tester: ME, pair: PAIR, session: SESSION });
    const other = bodyOf({ ...loose, who: 'another', code: ' t01-2 ' });
    expect(other).toMatchObject({ fitter: 'T01-2' });
    expect(other).not.toHaveProperty('tester');
    expect(bodyOf({ ...loose, who: idOf(12) })).toMatchObject({ tester: idOf(12) });
  });

  it('has no distance, and none of the fields of a run', () => {
    const said = bodyOf({ ...restRight(loose), walked: 'stair', heel: { both: 'lifts' } });
    expect(Object.keys(said).sort()).toEqual(
      ['at', 'heel', 'pair', 'project', 'session', 'standing', 'tester', 'walked'].sort(),
    );
  });

  it('needs a pair, a code that is no tester’s, and something that was said', () => {
    expect(whoTroubles({ ...begin, pair: '' }, new Set())).toEqual(['pair']);
    const by = (code: string): FitForm => ({ ...loose, who: 'another', code });
    expect(read(by('Ada B.'))).toEqual({ ok: false, troubles: ['code'] });
    expect(read(by('t01'))).toEqual({ ok: false, troubles: ['code-taken'] });
    expect(read(begin)).toEqual({ ok: false, troubles: ['nothing-said'] });
    expect(read({ ...begin, spots: [] }).ok).toBe(true);
  });

  it('holds each spot once, and loses it by the same tap', () => {
    const spot = { foot: 'left', zone: 'U8', what: 'rubs' } as const;
    const told = withSpot(withSpot(begin, spot), { ...spot, what: 'presses' });
    expect(bodyOf(told).spots).toHaveLength(2);
    expect(withSpot(told, spot).spots).toEqual([{ ...spot, what: 'presses' }]);
  });

  it('is taken up again as it was left, and not where another version wrote it', () => {
    const left = { ...restRight(loose), step: 'walking' as const, spots: [], accepted: ['x'] };
    expect(keptFitForm(structuredClone(left))).toEqual(left);
    expect(keptFitForm({ ...left, pain: ['itch'] })).toBeNull();
    expect(keptFitForm(undefined)).toBeNull();
  });
});
