/** What became of a finding, in order, whatever the clocks say. */
import { describe, expect, it } from 'vitest';
import type { RecordOf, Revision } from '../../../core/records/index.ts';
import { proposalsTo, storyOf } from '../../../core/talk/index.ts';
import { idOf } from '../records/make.ts';
import { day, said, view } from './said.ts';

const FINDING = idOf(700);
const story = (...revisions: readonly Revision[]) => {
  const records = view(...revisions);
  const standing = proposalsTo(FINDING, records.proposal, records['proposal-reply']);
  return storyOf(records.finding[0] as RecordOf<'finding'>, standing).map((item) =>
    item.what === 'proposal'
      ? `${item.proposal.body.answer}${item.isOpen ? ' waits' : ''}`
      : item.what === 'reply'
        ? item.reply.body.answer
        : item.what === 'asked' && !item.isAsked
          ? 'written'
          : item.what,
  );
};
const finding = (more: Readonly<Record<string, unknown>> = {}) =>
  said(FINDING, 'finding', -20, {
    ...{ round: idOf(2), title: 'The left collar rubs', part: 'upper-pattern', priority: 'high' },
    ...{ state: 'asked-for', asked: day(-14), ...more },
  });
const proposal = (days: number, answer: string, n: number) =>
  said(idOf(600 + n), 'proposal', days, { finding: FINDING, answer });
const reply = (to: Revision, days: number, answer: string, n: number) =>
  said(idOf(650 + n), 'proposal-reply', days, {
    ...{ finding: FINDING, proposal: to.id, judged: to.stamp, answer },
  });

describe('the story of a finding', () => {
  it('goes from asking to the result', () => {
    expect(story(finding())).toEqual(['asked']);
    expect(story(finding({ state: 'open', asked: undefined }))).toEqual(['written']);
    const first = proposal(-9, 'cannot', 0);
    const second = proposal(-5, 'other', 1);
    // The lead's clock is slow: the reply still stands after what it answers.
    const replies = [reply(first, -12, 'ask-again', 0), reply(second, -4, 'accepted', 1)];
    expect(story(finding(), second, first)).toEqual(['asked', 'cannot waits', 'other waits']);
    expect(story(finding(), second, first, ...replies)).toEqual([
      ...['asked', 'cannot', 'ask-again', 'other', 'accepted'],
    ]);
    const outcome = { round: idOf(3), verdict: 'mended', until: day(-1), lines: ['Gone.'] };
    expect(
      story(finding({ carriedBy: idOf(3), outcome }), second, first, ...replies).slice(-3),
    ).toEqual(['accepted', 'carried', 'outcome']);
  });
});
