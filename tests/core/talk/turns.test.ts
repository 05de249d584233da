/** Whose turn a finding is, which change comes of a proposal, and a tester's own summary. */
import { describe, expect, it } from 'vitest';
import { readBody, type RecordOf, type Revision } from '../../../core/records/index.ts';
import {
  acceptedOf,
  changeForRound,
  daysOfTurn,
  isLate,
  isTestOver,
  proposalsTo,
  testSummary,
  turnOf,
  type CarryingRound,
} from '../../../core/talk/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../records/make.ts';
import { DAY_MS, day, NOW, said, view } from './said.ts';

const FINDING = idOf(700);
const ROUND = idOf(3);
const collar = {
  ...{ part: 'upper-pattern', line: 'collar', foot: 'left', direction: 'lower' },
  by: { amount: 3, unit: 'mm' },
};
const finding = (more: Readonly<Record<string, unknown>> = {}) =>
  said(FINDING, 'finding', -20, {
    ...{ round: idOf(2), title: 'The left collar rubs', part: 'upper-pattern', priority: 'high' },
    ...{ kind: 'rubbing', zone: 'U8', state: 'asked-for', asked: day(-14), ...more },
  });
const proposal = (days: number, more: Readonly<Record<string, unknown>> = {}, n = 0) =>
  said(idOf(600 + n), 'proposal', days, { finding: FINDING, answer: 'can', ...more });
const reply = (to: Revision, days: number, answer: string, n = 0) =>
  said(idOf(650 + n), 'proposal-reply', days, {
    ...{ finding: FINDING, proposal: to.id, judged: to.stamp, answer },
  });

const turn = (revisions: readonly Revision[], round: CarryingRound | null = null) => {
  const records = view(...revisions);
  const [one] = records.finding;
  if (!one) throw new Error('no finding');
  const standing = proposalsTo(FINDING, records.proposal, records['proposal-reply']);
  const found = turnOf(one, standing, () => round);
  return found && [found.who, found.for, daysOfTurn(found, NOW), isLate(found, NOW)];
};

describe('whose turn a finding is', () => {
  it('is the lead’s until the trade was asked, then the trade’s, by the date that was named', () => {
    expect(turn([finding({ state: 'open', asked: undefined })])).toEqual([
      'lead',
      'ask',
      20,
      false,
    ]);
    expect(turn([finding()])).toEqual(['trade', 'answer', 14, false]);
    expect(turn([finding({ due: day(-1) })])).toEqual(['trade', 'answer', 14, true]);
    expect(turn([finding({ due: day(1) })])).toEqual(['trade', 'answer', 14, false]);
  });

  it('goes back and forth with proposals and replies', () => {
    const first = proposal(-9);
    expect(turn([finding(), first])).toEqual(['lead', 'decide', 9, false]);
    const again = reply(first, -7, 'ask-again');
    expect(turn([finding(), first, again])).toEqual(['trade', 'answer', 7, false]);
    const second = proposal(-5, { answer: 'other' }, 1);
    expect(turn([finding(), first, again, second])).toEqual(['lead', 'decide', 5, false]);
    const taken = reply(second, -4, 'accepted', 1);
    expect(turn([finding(), first, again, second, taken])).toEqual(['lead', 'assign', 4, false]);
  });

  it('comes back to the lead where a proposal was changed after it was accepted', () => {
    const taken = reply(proposal(-9), -7, 'accepted');
    expect(turn([finding(), proposal(-3, { answer: 'cannot' }), taken])).toEqual([
      ...['lead', 'decide', 3, false],
    ]);
  });

  it('follows the round that carries it', () => {
    const carried = finding({ carriedBy: ROUND });
    const accepted = proposal(-9, { sampleAt: day(-2) });
    const all = [carried, accepted, reply(accepted, -8, 'accepted')];
    expect(turn(all)).toEqual(['trade', 'build', 20, true]);
    expect(turn(all, { outMs: null, enoughMs: null })).toEqual(['trade', 'build', 20, true]);
    const worn = { outMs: NOW - 6 * DAY_MS, enoughMs: null };
    expect(turn(all, worn)).toEqual(['tester', 'wear', 6, false]);
    expect(turn(all, { ...worn, enoughMs: NOW - DAY_MS })).toEqual(['lead', 'judge', 1, false]);
    const outcome = { round: ROUND, verdict: 'mended', until: day(-2), lines: [] };
    expect(turn([finding({ carriedBy: ROUND, outcome })], worn)).toEqual([
      ...['lead', 'close', 2, false],
    ]);
    expect(turn([finding({ state: 'closed', outcome })])).toBeNull();
  });

  it('a reply that names another revision, or another proposal, stands for nothing', () => {
    const one = proposal(-9);
    const records = view(finding(), one, reply(proposal(-8, {}, 5), -7, 'accepted'));
    expect(
      acceptedOf(proposalsTo(FINDING, records.proposal, records['proposal-reply'])),
    ).toBeNull();
  });
});

describe('the change of an accepted proposal', () => {
  const say = () => 'Collar 2 mm lower, left shoe';
  const made = (
    asked: Readonly<Record<string, unknown>>,
    offered: Readonly<Record<string, unknown>>,
  ) => {
    const records = view(finding(asked), proposal(-9, offered));
    return changeForRound(
      records.finding[0] as RecordOf<'finding'>,
      records.proposal[0] as RecordOf<'proposal'>,
      say,
    );
  };
  const two = { ...collar, by: { amount: 2, unit: 'mm' } };

  it('is what was offered, with the complaint that it is to mend and where it came from', () => {
    expect(made({ change: collar }, { answer: 'other', change: two })).toEqual({
      ...{ part: 'upper-pattern', what: 'Collar 2 mm lower, left shoe', structured: two },
      ...{ mends: { kind: 'rubbing', zone: 'U8' }, finding: FINDING, proposal: idOf(600) },
    });
    // It can, without saying what: what was asked for.
    expect(made({ change: collar }, {})?.structured).toEqual(collar);
    // Another way in words alone is not what was asked for.
    const words = 'A softer lining,\n instead.';
    expect(made({ change: collar }, { answer: 'other', words })).toMatchObject({
      what: 'A softer lining, instead.',
    });
    expect(made({ change: collar }, { answer: 'other', words })).not.toHaveProperty('structured');
    expect(made({ change: collar }, { answer: 'cannot' })).toBeNull();
  });

  it('is a change that a round can hold, however long the words', () => {
    for (const words of ['x'.repeat(4000), '鞋'.repeat(400), ' \n ', '👟'.repeat(300)]) {
      const change = made({}, { answer: 'other', words });
      const round = {
        project: idOf(1),
        name: 'R2',
        order: 2,
        stage: 'first-samples',
        blueprint: [],
      };
      expect(readBody('round', { ...round, changes: [change] })).toMatchObject({ ok: true });
    }
  });
});

describe('a tester’s own summary', () => {
  const told = (...cells: readonly (readonly [string, string])[]) => ({
    feet: {
      answer: 'complaints' as const,
      complaints: cells.map(([zone, kind]) => ({ foot: 'left' as const, zone, kind })),
    },
  });
  const run = (n: number, pair: number, km: number, more: object = {}) => ({
    ...{ pair: idOf(pair), startMs: NOW + n * DAY_MS, distanceM: metres(km * 1000) },
    run: more,
  });
  const thank = (n: number, days: number, result: string, zone = 'U3', kind = 'pressure') =>
    said(idOf(800 + n), 'thanks', days, {
      tester: idOf(201),
      finding: FINDING,
      zone,
      kind,
      result,
    });

  it('adds kilometres and pairs, and names what was told twice or was thanked for', () => {
    const runs = [
      run(3, 102, 7.5, told(['U8', 'rubbing'])),
      run(1, 101, 10, told(['U8', 'rubbing'], ['U3', 'pressure'], ['U3', 'pressure'])),
      run(2, 101, 5, told(['P4', 'harsh'])),
    ];
    const { thanks } = view(thank(1, -9, 'carried'), thank(2, -1, 'mended'), thank(3, -5, 'worse'));
    expect(testSummary(runs as never, thanks)).toEqual({
      ...{ runs: 3, distanceM: 22_500, fromMs: NOW + DAY_MS, untilMs: NOW + 3 * DAY_MS },
      pairs: [
        { pair: idOf(101), runs: 2, distanceM: 15_000 },
        { pair: idOf(102), runs: 1, distanceM: 7500 },
      ],
      found: [
        { zone: 'U3', kind: 'pressure', runs: 1, result: 'mended' },
        { zone: 'U8', kind: 'rubbing', runs: 2, result: null },
      ],
    });
    expect(testSummary([], [])).toMatchObject({ runs: 0, pairs: [], found: [], fromMs: null });
  });

  it('is due when every pair went back, or the shoe is put away', () => {
    const out = (until?: string) => ({ until }) as RecordOf<'hand-out'>['body'];
    const shoe = {} as RecordOf<'project'>['body'];
    expect(isTestOver(shoe, [], NOW)).toBe(false);
    expect(isTestOver(shoe, [out(day(-2)), out()], NOW)).toBe(false);
    expect(isTestOver(shoe, [out(day(-2)), out(day(1))], NOW)).toBe(false);
    expect(isTestOver(shoe, [out(day(-2)), out(day(-1))], NOW)).toBe(true);
    expect(isTestOver({ ...shoe, archived: day(-1) }, [out()], NOW)).toBe(true);
  });
});
