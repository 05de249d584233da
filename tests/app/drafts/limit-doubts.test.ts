/** A limit that makes no sense is asked about, one that does is not. */
import { describe, expect, it } from 'vitest';
import { isAsSaved, limitDoubt } from '../../../app/drafts/limit-doubts.ts';
import { draftOfLimit, emptyLimit, type LimitDraft } from '../../../app/drafts/project.ts';

const drawn = [
  { measure: 'tread-depth', site: 'heel-lateral', nominal: 3 },
  { measure: 'tread-depth', site: 'forefoot', nominal: 2.5 },
  { measure: 'stack-height', site: 'heel-centre', nominal: 36 },
] as const;
const doubt = (limit: Partial<LimitDraft>) => limitDoubt({ ...emptyLimit, ...limit }, drawn);

describe('a share of the new pair', () => {
  it('is asked about where a new pair fails already', () => {
    expect(doubt({ measure: 'stack-height', value: '150' })).toEqual({
      what: 'above-new',
      typed: 150,
    });
    expect(doubt({ bound: 'at-most', measure: 'hardness', value: '90' })).toEqual({
      what: 'below-new',
      typed: 90,
    });
  });

  it('is asked about where no pair gets there', () => {
    const most = { bound: 'at-most' } as const;
    expect(doubt({ ...most, measure: 'mass', value: '265' })).toEqual({
      what: 'never-reached',
      typed: 265,
    });
    expect(doubt({ ...most, measure: 'mass', value: '105' })).toBeNull();
    expect(doubt({ ...most, measure: 'hardness', value: '265' })).toBeNull();
    expect(doubt({ ...most, measure: 'impact-peak', value: '301' })).toMatchObject({
      what: 'never-reached',
    });
  });

  it('is asked about where it looks like a fraction', () => {
    expect(doubt({ value: '0,75' })).toEqual({ what: 'share-typed', typed: 0.75, meant: 75 });
  });

  it('is not asked about where it makes sense or cannot be read', () => {
    for (const value of ['75', '100', '', 'x', '-3']) expect(doubt({ value })).toBeNull();
  });
});

describe('a limit as read', () => {
  const read = { basis: 'reading', measure: 'tread-depth' } as const;
  it('is asked about where the blueprint draws a new pair that fails', () => {
    expect(doubt({ ...read, site: '', value: '2.8' })).toEqual({
      what: 'above-drawn',
      typed: 2.8,
      drawn: 2.5,
    });
    expect(doubt({ ...read, site: ' heel-lateral ', value: '2.8' })).toBeNull();
    expect(
      doubt({ ...read, measure: 'stack-height', site: '', bound: 'at-most', value: '30' }),
    ).toEqual({ what: 'below-drawn', typed: 30, drawn: 36 });
  });
  it('is not asked about where nothing is drawn', () => {
    expect(doubt({ ...read, measure: 'mass', site: '', value: '900' })).toBeNull();
    expect(doubt({ ...read, site: 'midfoot', value: '9' })).toBeNull();
  });
});

describe('a limit as saved', () => {
  it('is one that was read from the brief and not touched since', () => {
    const old = { measure: 'mass', bound: 'at-most', basis: 'share-of-new', value: 2.65 } as const;
    expect(isAsSaved(draftOfLimit(old))).toBe(true);
    expect(isAsSaved({ ...draftOfLimit(old), value: '110' })).toBe(false);
    expect(isAsSaved(emptyLimit)).toBe(false);
  });
});
