/** The pictures of the six steps show what the shoe has, and nothing invented beside it. */
import { describe, expect, it } from 'vitest';
import { drawnBrief, ownFeet, ownPairs, ownPlan } from '../../../../app/desk/start/drawn.ts';
import type { DeskRecords } from '../../../../app/desk/worker/desk-work.ts';
import { idOf } from '../../../core/records/make.ts';

const PROJECT = idOf(1);
const record = (id: number, body: object) => ({ revision: { id: idOf(id) }, body });
const pair = (id: number, code: string, sizeMm: number, project = PROJECT) =>
  record(id, { project, code, sizeMm });
const handOut = (id: number, pairId: number, tester: number, from: string, project = PROJECT) =>
  record(id, { project, pair: idOf(pairId), tester: idOf(tester), from });
const records = (part: object) =>
  ({ pair: [], tester: [], 'hand-out': [], ...part }) as unknown as DeskRecords;

describe('the brief', () => {
  const brief = { distanceM: 500_000, limits: [] } as unknown as Parameters<typeof drawnBrief>[0];

  it('has its own distance, and no limit or foot that nobody set', () => {
    expect(drawnBrief(brief)).toEqual({ distanceM: 500_000, share: null, feet: null });
  });

  it('has the share of new and the feet that were set', () => {
    const limits = [
      { basis: 'reading', value: 1 },
      { basis: 'share-of-new', value: 0.75 },
    ];
    expect(
      drawnBrief({ ...brief, limits, feet: { lengthMm: [250, 290] } } as unknown as typeof brief),
    ).toEqual({ distanceM: 500_000, share: 0.75, feet: [250, 290] });
  });
});

describe('pairs and testers', () => {
  it('are the shoe’s own, the smallest first, and none where there are none', () => {
    const own = records({
      pair: [pair(3, 'B2', 270), pair(2, 'A1', 260), pair(4, 'X', 250, idOf(9))],
    });
    expect(ownPairs(own, PROJECT)?.map(({ code }) => code)).toEqual(['A1', 'B2']);
    expect(ownPairs(records({}), PROJECT)).toBeNull();
    const testers = records({
      tester: [
        record(6, { code: 'T02' }),
        record(5, { code: 'T01', footLengthMm: { left: 250, right: 252 } }),
      ],
    });
    expect(ownFeet(testers)).toEqual([
      { code: 'T01', mm: 252 },
      { code: 'T02', mm: null },
    ]);
    expect(ownFeet(records({}))).toBeNull();
  });
});

describe('the plan', () => {
  it('has who wears which pair first and next, with the first day of each', () => {
    const own = records({
      pair: [pair(2, '146', 260), pair(3, '260', 270)],
      tester: [record(5, { code: 'T01' }), record(6, { code: 'T02' })],
      'hand-out': [
        handOut(12, 2, 6, '2026-06-22T10:00:00Z'),
        handOut(10, 2, 5, '2026-06-01T10:00:00Z'),
        handOut(11, 3, 6, '2026-06-02T10:00:00Z'),
        handOut(13, 3, 5, '2026-05-01T10:00:00Z', idOf(9)),
      ],
    });
    expect(ownPlan(own, PROJECT)).toEqual({
      days: [Date.parse('2026-06-01T10:00:00Z'), Date.parse('2026-06-22T10:00:00Z')],
      rows: [
        ['146', 'T01', 'T02'],
        ['260', 'T02'],
      ],
    });
    expect(ownPlan(own, idOf(8))).toBeNull();
  });
});
