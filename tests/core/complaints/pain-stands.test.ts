/** Until when do the pain of a run and a report of damage stand? What of several answers counts? */
import { describe, expect, it } from 'vitest';
import { answerToPain, callsForCaution, painStands } from '../../../core/complaints/index.ts';
import {
  damageStands,
  sealRevision,
  standingReplies,
  viewOfHeads,
  type Advice,
  type Reply,
  type Revision,
  type Run,
} from '../../../core/records/index.ts';
import { own } from '../review/log-for-tests.ts';
import { idOf, stampAt } from '../records/make.ts';

const [RUN, TESTER] = [idOf(10), idOf(20)];
const day = (day: number) => `2026-05-${String(day).padStart(2, '0')}T12:00:00Z`;
const pain = (more: Record<string, unknown> = {}) =>
  ({ score: 5, isNew: true, ...more }) as NonNullable<Run['pain']>;
const reply = (advice: Advice | undefined, at: string): Reply => ({
  project: idOf(1),
  tester: TESTER,
  about: RUN,
  at,
  advice,
});

describe('the pain of a run', () => {
  it('stands from the run on, where it calls for the caution', () => {
    expect(painStands(pain(), undefined)).toBe(true);
    expect(painStands(pain({ score: 1, signs: ['limp'] }), undefined)).toBe(true);
  });

  it('does not stand where it does not call for the caution, or was not asked about', () => {
    expect(painStands(pain({ score: 2 }), undefined)).toBe(false);
    expect(painStands(pain({ isNew: false }), undefined)).toBe(false);
    expect(painStands(undefined, undefined)).toBe(false);
    expect(callsForCaution(undefined)).toBe(false);
  });

  it('takes an unanswered “is it new” as yes', () => {
    expect(painStands({ score: 3 }, undefined)).toBe(true);
  });

  it('stands until a lead says go on; stay out keeps it standing', () => {
    expect(painStands(pain(), reply('stay-out', day(2)))).toBe(true);
    expect(painStands(pain(), reply('go-on', day(2)))).toBe(false);
  });

  it('is over when the tester says so, also after a stay out', () => {
    expect(painStands(pain({ over: day(3) }), undefined)).toBe(false);
    expect(painStands(pain({ over: day(3) }), reply('stay-out', day(2)))).toBe(false);
  });

  it('stands again where a lead says stay out after that', () => {
    expect(painStands(pain({ over: day(3) }), reply('stay-out', day(4)))).toBe(true);
    expect(painStands(pain({ over: day(3) }), reply('go-on', day(4)))).toBe(false);
  });

  it('stands again where it was told anew after the answer', () => {
    const anew = pain({ score: 8, toldAt: day(5) });
    expect(painStands(anew, reply('go-on', day(2)))).toBe(true);
    expect(answerToPain(anew, reply('go-on', day(2)))).toBeUndefined();
    expect(painStands(anew, reply('go-on', day(6)))).toBe(false);
  });

  it('reads instants with different offsets as the instants they are', () => {
    const anew = pain({ toldAt: '2026-05-02T09:00:00+08:00' });
    expect(painStands(anew, reply('go-on', '2026-05-02T02:00:00+00:00'))).toBe(false);
  });
});

describe('a report of damage', () => {
  it('stands until a lead says go on', () => {
    expect(damageStands(undefined)).toBe(true);
    expect(damageStands(reply('stay-out', day(2)))).toBe(true);
    expect(damageStands(reply('go-on', day(2)))).toBe(false);
  });
});

describe('of several replies about one record', () => {
  const said = (n: number, ms: number, advice: Advice | undefined) =>
    sealRevision(
      {
        id: idOf(n),
        kind: 'reply',
        author: idOf(9),
        sv: 1,
        body: {
          project: idOf(1),
          tester: TESTER,
          about: RUN,
          at: day(1),
          ...(advice && { advice }),
        },
      },
      stampAt(ms),
      null,
    );
  const standing = (heads: readonly Revision[]) =>
    standingReplies(viewOfHeads(heads).reply).get(RUN)?.body.advice;

  it('the latest by its stamp stands, in whatever order they come', () => {
    const [first, second] = [said(31, 100, 'go-on'), said(30, 200, 'stay-out')];
    expect(standing([first, second])).toBe('stay-out');
    expect(standing([second, first])).toBe('stay-out');
  });

  it('words without advice settle nothing, and leave what was advised', () => {
    expect(standing([said(31, 100, 'go-on'), said(30, 200, undefined)])).toBe('go-on');
    expect(standing([said(30, 200, undefined)])).toBeUndefined();
  });

  it('each record has its own', () => {
    const other = own(idOf(40), 'reply', {
      tester: TESTER,
      about: idOf(11),
      at: day(1),
      advice: 'go-on',
    });
    const map = standingReplies(viewOfHeads([other, said(31, 100, 'stay-out')]).reply);
    expect([...map.keys()].sort()).toEqual([RUN, idOf(11)].sort());
  });
});
