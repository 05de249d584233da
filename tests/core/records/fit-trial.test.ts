/** Whose is a fit trial? What goes when a tester takes everything back, and how a body must be. */
import { describe, expect, it } from 'vitest';
import { isToTakeBack, readBody } from '../../../core/records/index.ts';
import { idOf } from './make.ts';

const [ADA, BEN, LEAD] = [idOf(201), idOf(202), idOf(203)];
const tester = { member: ADA, role: 'tester' } as const;
const of = (author: typeof ADA, body: Record<string, unknown> | null) => ({
  ...{ id: idOf(7), kind: 'fit-trial', author, body },
});

describe('a tester who takes everything back', () => {
  it('takes along the fit trials they wrote, also of somebody without a membership', () => {
    expect(isToTakeBack(tester, of(ADA, { tester: ADA }))).toBe(true);
    expect(isToTakeBack(tester, of(ADA, { fitter: 'T01-1' }))).toBe(true);
  });

  it('takes along what a lead wrote of them, and nothing of anybody else', () => {
    expect(isToTakeBack(tester, of(LEAD, { tester: ADA }))).toBe(true);
    expect(isToTakeBack(tester, of(LEAD, { tester: BEN }))).toBe(false);
    expect(isToTakeBack(tester, of(LEAD, { fitter: 'L0A-1' }))).toBe(false);
    expect(isToTakeBack({ member: LEAD, role: 'lead' }, of(BEN, { tester: BEN }))).toBe(false);
  });
});

describe('the body of a fit trial', () => {
  const body = {
    ...{ project: idOf(1), session: idOf(2), pair: idOf(3), at: '2026-12-02T10:00:00+01:00' },
    ...{ tester: ADA, standing: [{ place: 'heel', fit: 'much', mm: 2 }] },
  };

  it.each([
    ['a name in place of a code', { fitter: 'Ada B.' }, 'fitter'],
    ['an estimate that no shoe is off by', { standing: [{ ...body.standing[0], mm: 60 }] }, 'mm'],
    ['a place that there is not', { standing: [{ place: 'knee', fit: 'much' }] }, 'place'],
    ['a zone that there is not', { spots: [{ foot: 'left', zone: 'U99', what: 'rubs' }] }, 'zone'],
  ])('cannot hold %s', (_, wrong, field) => {
    expect(readBody('fit-trial', body).ok).toBe(true);
    const read = readBody('fit-trial', { ...body, ...wrong });
    expect(read.ok ? [] : read.problems.map((one) => one.field.split('.').at(-1))).toEqual([field]);
  });
});
