/** An accepted answer becomes a change of a round: prefilled, edited, written once. */
import { describe, expect, it } from 'vitest';
import {
  draftOfRoundChange,
  readRoundChange,
  roundChangeTroubles,
} from '../../../app/drafts/round-change.ts';
import { readBody, type Change, type Finding, type Round } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const made: Change = {
  part: 'upper-pattern',
  what: 'Collar line: 2 mm lower, left',
  mends: { kind: 'rubbing', zone: 'U8' },
  structured: {
    part: 'upper-pattern',
    line: 'collar',
    foot: 'left',
    direction: 'lower',
    by: { amount: 2, unit: 'mm' },
  },
  finding: idOf(700),
  proposal: idOf(600),
};
const round = {
  project: idOf(1),
  name: 'Round 4',
  order: 4,
  stage: 'first-samples',
  changes: [{ part: 'outsole', what: 'Deeper tread' }],
  blueprint: [],
  later: 1,
} as unknown as Round;
const finding: Finding = {
  project: idOf(1),
  round: idOf(2),
  title: 'The left collar rubs',
  part: 'upper-pattern',
  priority: 'high',
  state: 'asked-for',
};
const begin = draftOfRoundChange(made, idOf(4), String);

describe('the change of a round', () => {
  it('is what was accepted where nothing is edited, beside the changes that were there', () => {
    const read = readRoundChange(begin, made, round, finding);
    if (!read.ok) throw new Error('should read');
    expect(read.round).toEqual({ ...round, changes: [...round.changes, made] });
    expect(read.finding).toEqual({ ...finding, carriedBy: idOf(4) });
    expect(readBody('round', read.round).ok).toBe(true);
    // Once more with less: the same change, corrected, not a second one.
    const edited = { ...begin, line: ' Less ', change: { ...begin.change, amount: '1' } };
    const again = readRoundChange(edited, made, read.round, read.finding);
    if (!again.ok) throw new Error('should read');
    expect(again.round.changes).toEqual([
      round.changes[0],
      { ...made, what: 'Less', structured: { ...made.structured, by: { amount: 1, unit: 'mm' } } },
    ]);
  });

  it('has no structure where words alone were accepted and nothing was added', () => {
    const { structured: _structured, ...words } = made;
    const draft = draftOfRoundChange(words, idOf(4), String);
    const read = readRoundChange(draft, words, round, finding);
    expect(read.ok && read.round.changes[1]).toEqual(words);
  });

  it('everything that is wrong is said at once', () => {
    const draft = {
      round: '' as const,
      line: ' ',
      change: { ...begin.change, direction: '' as const, amount: '900' },
    };
    expect(roundChangeTroubles(draft).map(({ field }) => field)).toEqual([
      'round',
      'line',
      'direction',
      'amount',
    ]);
    expect(readRoundChange(draft, made, round, finding).ok).toBe(false);
    expect(roundChangeTroubles(begin)).toEqual([]);
  });
});
