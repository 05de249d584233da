/** Invited, joined and logging are told apart: who has joined is not said to be missing until a run comes. */
import { describe, expect, it } from 'vitest';
import { inviteStateOf, openUntil } from '../../../../app/desk/plan/invite-states.ts';
import { plan as en } from '../../../../app/words/places/en/plan.ts';
import { plan as zh } from '../../../../app/words/places/zh/plan.ts';
import { INVITE_HOURS } from '../../../../core/records/index.ts';
import { idOf } from '../../../core/records/make.ts';

const [ada, bo] = [idOf(1), idOf(2)];
const HOUR = 3_600_000;
const NOW = 1_000 * HOUR;
const nobody = {
  joined: new Set<typeof ada>(),
  runs: new Map<typeof ada, number>(),
  until: new Map<typeof ada, number>(),
  nowMs: NOW,
};

describe('a tester on the way in', () => {
  it('is not invited, invited, late, in, and logging', () => {
    const joined = new Set([ada]);
    const runs = new Map([[ada, 3]]);
    expect(inviteStateOf(ada, nobody)).toBe('none');
    expect(inviteStateOf(ada, { ...nobody, until: new Map([[ada, NOW + 1]]) })).toBe('invited');
    expect(inviteStateOf(ada, { ...nobody, until: new Map([[ada, NOW]]) })).toBe('lapsed');
    expect(inviteStateOf(ada, { ...nobody, joined })).toBe('joined');
    expect(inviteStateOf(ada, { ...nobody, joined, runs })).toBe('logs');
    expect(inviteStateOf(ada, { ...nobody, runs })).toBe('by-file');
    expect(inviteStateOf(bo, { ...nobody, joined, runs })).toBe('none');
  });

  it('is in although the code is still good for another phone', () => {
    const until = new Map([[ada, NOW + HOUR]]);
    expect(inviteStateOf(ada, { ...nobody, joined: new Set([ada]), until })).toBe('joined');
  });
});

describe('until when a code is good', () => {
  it('is told by what was done in the group and by what was made here, the latest of each', () => {
    const until = openUntil(
      [
        { what: 'invite tester', atMs: NOW, subject: ada },
        { what: 'invite tester', atMs: NOW - 5 * HOUR, subject: ada },
        { what: 'invite lead', atMs: NOW, subject: null },
        { what: 'revoke', atMs: NOW, subject: bo },
      ],
      [{ tester: bo, code: '0123456789', expiresAt: NOW + HOUR }],
    );
    expect([...until]).toEqual([
      [ada, NOW + INVITE_HOURS * HOUR],
      [bo, NOW + HOUR],
    ]);
  });
});

it('is counted in one line, in both languages', () => {
  expect(en.invites.sub(2, 1, 6)).toBe('2 of 6 have joined, 1 has logged a run.');
  expect(en.invites.sub(2, 0, 6)).toBe('2 of 6 have joined, none has logged a run.');
  expect(en.invites.sub(6, 2, 6)).toBe('6 of 6 have joined, 2 have logged a run.');
  expect(zh.invites.sub(2, 1, 6)).toBe('6 名中 2 名已加入，1 名已有跑步记录。');
});
