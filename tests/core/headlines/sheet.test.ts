/** The sheet's first sentence: a case for each state, and never more than the stamp. */
import { describe, expect, it } from 'vitest';
import type { EvidenceWord } from '../../../core/complaints/index.ts';
import {
  sheetHeadline,
  sheetStamp,
  shoesHeadline,
  urgencyOf,
  type SheetFacts,
} from '../../../core/headlines/index.ts';
import type { Callout, Verdict } from '../../../core/review/index.ts';
import { sheet as en } from '../../../app/words/places/en/sheet.ts';
import { sheet as zh } from '../../../app/words/places/zh/sheet.ts';
import { idOf } from '../records/make.ts';
import { sayForTests } from './say.ts';

const round = idOf(10);
const earlier = idOf(9);
const pair = idOf(20);

const complaint = (word: EvidenceWord, more: object = {}): Callout => ({
  what: 'complaint',
  zone: 'U10',
  side: 'both',
  kind: 'heel-slip',
  round,
  word,
  proved: [],
  rounds: 1,
  testers: 5,
  askedTesters: 8,
  runs: 57,
  askedRuns: 172,
  ...more,
});
const better = { what: 'better', zone: 'U3', side: 'right', kind: 'pressure' } as Callout;
const damage = { what: 'damage', zone: 'P9', pair, damage: idOf(30), kind: 'sole-peeling' };

const facts = (
  word: Verdict['word'],
  more: {
    callouts?: readonly Callout[];
    next?: readonly object[];
    runs?: number;
    rounds?: number;
    cells?: readonly object[];
  } = {},
): SheetFacts =>
  ({
    review: {
      project: { brief: { distanceM: 600_000 } },
      rounds:
        more.rounds === 0
          ? []
          : [
              { id: earlier, size: { runs: more.runs ?? 10 } },
              {
                id: round,
                size: { runs: more.runs ?? 10 },
                complaints: { cells: more.cells ?? [] },
              },
            ],
      pairs: [
        { id: pair, round, totalM: 227_000 },
        { id: idOf(21), round: earlier, totalM: 381_000 },
      ],
    },
    verdicts: [
      { round: earlier, word: 'does-not-hold', items: [] },
      { round, word, items: [] },
    ],
    overview: { next: more.next ?? [] },
    callouts: more.callouts ?? [],
  }) as unknown as SheetFacts;

describe('the sheet says first', () => {
  it('that there is no round, or that nobody has run', () => {
    expect(sheetHeadline(facts('not-known-yet', { rounds: 0 }))).toEqual({
      case: 'no-round',
      claims: 'nothing',
    });
    expect(sheetHeadline(facts('not-known-yet', { runs: 0 }))).toEqual({
      case: 'nobody-ran',
      claims: 'nothing',
      round,
      pairs: 1,
    });
  });

  it('who reports pain, before damage, and damage before all that is decided', () => {
    const pain = { step: 'ask-about-pain', testers: [idOf(1)], count: 1 };
    const look = { step: 'look-at-damage', pairs: [pair], count: 1 };
    const callouts = [damage as Callout, complaint('recurs-across-testers')];
    expect(sheetHeadline(facts('does-not-hold', { next: [pain, look], callouts })).case).toBe(
      'pain',
    );
    expect(sheetHeadline(facts('does-not-hold', { next: [look], callouts }))).toEqual({
      case: 'damage',
      claims: 'nothing',
      pair,
      what: 'sole-peeling',
    });
  });

  it('what recurs where that is why the round fails, and else that it fails', () => {
    const callouts = [complaint('recurs-across-testers')];
    expect(sheetHeadline(facts('does-not-hold', { callouts }))).toMatchObject({
      case: 'recurs',
      claims: 'fails',
      felt: [{ zone: 'U10', kind: 'heel-slip' }],
      testers: 5,
      askedTesters: 8,
    });
    expect(sheetHeadline(facts('does-not-hold')).case).toBe('fails');
    const ofEarlier = [complaint('recurs-across-testers', { round: earlier })];
    expect(sheetHeadline(facts('does-not-hold', { callouts: ofEarlier })).case).toBe('fails');
  });

  it('that all holds', () => {
    expect(sheetHeadline(facts('holds', { callouts: [better] }))).toEqual({
      case: 'holds',
      claims: 'holds',
      round,
    });
  });

  it('what a change mended while all is open, with how far the farthest pair is', () => {
    const callouts = [complaint('early-sign'), better];
    expect(sheetHeadline(facts('not-known-yet', { callouts }))).toEqual({
      case: 'better',
      claims: 'nothing',
      felt: [{ zone: 'U3', kind: 'pressure' }],
      farthestM: 381_000,
      briefM: 600_000,
    });
  });

  it('what is proved while the verdict is open: across testers, or for one alone', () => {
    const said = (word: EvidenceWord) =>
      sheetHeadline(facts('not-known-yet', { callouts: [complaint(word)] }));
    expect(said('recurs-across-testers')).toMatchObject({ case: 'recurs', claims: 'clear' });
    expect(said('recurs-for-one-tester')).toMatchObject({
      case: 'one-tester',
      claims: 'one-tester',
    });
  });

  it('what to watch, or that nothing recurs', () => {
    expect(
      sheetHeadline(facts('not-known-yet', { callouts: [complaint('early-sign')] })),
    ).toMatchObject({ case: 'watch', claims: 'likely', felt: { zone: 'U10' } });
    expect(sheetHeadline(facts('not-known-yet')).case).toBe('nothing-recurs');
  });

  it('what one tester has in both of two runs, which is too few to say that it recurs', () => {
    const cell = (word: EvidenceWord, reported: number, asked: number, testers = 1) => ({
      zone: 'U10',
      kind: 'heel-slip',
      word,
      testersOnce: testers,
      byTester: [{ tester: idOf(40), reported, asked }],
    });
    const said = (...cells: object[]) => sheetHeadline(facts('not-known-yet', { cells }));
    expect(said(cell('early-sign', 3, 9), cell('early-sign', 2, 2))).toEqual({
      case: 'early',
      claims: 'too-early',
      round,
      felt: { zone: 'U10', kind: 'heel-slip' },
      tester: idOf(40),
      reported: 2,
      asked: 2,
    });
    expect(said(cell('seen-once', 1, 2)).case).toBe('nothing-recurs');
    // A surer one, and pain, stand before it.
    expect(
      sheetHeadline(
        facts('not-known-yet', {
          cells: [cell('early-sign', 2, 2)],
          callouts: [complaint('early-sign')],
        }),
      ).case,
    ).toBe('watch');
    const words = [en, zh].map(({ headline }) =>
      headline(said(cell('early-sign', 2, 2)), sayForTests),
    );
    expect(words).toEqual([
      'Too early: heel-slip at U10 in both runs of T40.',
      '为时尚早：T40 的 2 次跑步中有 2 次heel-slip at U10。',
    ]);
  });

  it('reads its stamp from the latest round that anybody has run in', () => {
    expect(sheetStamp(facts('holds'))).toBe('holds');
    expect(sheetStamp(facts('does-not-hold'))).toBe('fails');
    expect(sheetStamp(facts('holds', { rounds: 0 }))).toBe('open');
  });
});

describe('all shoes', () => {
  const state = (
    name: string,
    headline: 'pain' | 'damage' | 'holds',
    steps: readonly string[],
  ) => ({
    name,
    headline: { case: headline },
    next: steps.map((step) => ({ step: step as 'hand-out' })),
  });

  it('those where somebody may be hurt come first', () => {
    const shoes = [
      state('quiet', 'holds', []),
      state('waits', 'holds', ['hand-out']),
      state('notice', 'holds', ['reach-about-stop-use']),
      state('hurts', 'pain', ['ask-about-pain']),
    ];
    expect(shoes.map(urgencyOf)).toEqual([3, 2, 1, 0]);
    expect(shoesHeadline(shoes)).toEqual({
      case: 'urgent',
      claims: 'nothing',
      names: ['hurts', 'notice'],
    });
  });

  it('says what waits, and when nothing does', () => {
    expect(shoesHeadline([])).toMatchObject({ case: 'none' });
    expect(
      shoesHeadline([state('a', 'holds', ['hand-out']), state('b', 'holds', [])]),
    ).toMatchObject({ case: 'waiting', count: 1, of: 2 });
    expect(shoesHeadline([state('a', 'holds', [])])).toMatchObject({ case: 'quiet', of: 1 });
  });
});
