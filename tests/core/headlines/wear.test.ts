/** How long the shoe lasts, in one sentence: a case for each state in both languages, and never more than the stamp. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wear as en } from '../../../app/words/places/en/wear.ts';
import { wear as zh } from '../../../app/words/places/zh/wear.ts';
import {
  wearHeadline,
  wearRoundSays,
  wearStamp,
  type WearFacts,
} from '../../../core/headlines/index.ts';
import type { Limit } from '../../../core/records/index.ts';
import type { WearCard, WearRound } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../records/make.ts';
import { sayForTests, sayInChinese } from './say.ts';

const [first, latest] = [idOf(1), idOf(2)];
const briefM = metres(600_000);
const tread: Limit = {
  measure: 'tread-depth',
  site: 'heel-lateral',
  bound: 'at-least',
  value: 1,
  basis: 'reading',
};
const stack: Limit = { ...tread, measure: 'stack-height', site: 'heel-centre', value: 34 };

type Word = 'holds' | 'does-not-hold' | 'not-known-yet' | null;
const round = (
  id: typeof first,
  word: Word,
  atM: number | null,
  more: { tooFar?: boolean; greatest?: number; chance?: number } = {},
): WearRound => ({
  round: id,
  points: [],
  curve: null,
  basis: 'checks',
  greatest: metres(more.greatest ?? 300_000),
  reach: metres(600_000),
  pairs: 3,
  outlook: {
    limit: tread,
    distance:
      atM === null ? null : { lower: metres(atM / 2), median: metres(atM), upper: 'beyond-checks' },
    hold: word === null ? null : { chance: more.chance ?? 0.9, word },
    tooFar: more.tooFar ?? false,
  },
  limitAt: 1,
  next: [],
});

const card = (limit: Limit | null, rounds: readonly WearRound[]): WearCard => ({
  limit,
  kind: 'tread-depth mm',
  site: limit?.site ?? 'heel-lateral',
  rounds,
});
const facts = (...cards: WearCard[]): WearFacts => ({ rounds: [first, latest], cards, briefM });

const measure = ({ measure: name }: Limit) =>
  name === 'tread-depth' ? 'Tread depth' : 'Stack height';
const measureZh = ({ measure: name }: Limit) => (name === 'tread-depth' ? '花纹深度' : '厚度');
const said = (of: WearFacts): [string, string] => {
  const headline = wearHeadline(of);
  return [
    en.headline(headline, sayForTests, measure),
    zh.headline(headline, sayInChinese, measureZh),
  ];
};

describe('wear says first', () => {
  it('that nothing was measured, or that the brief sets no limit', () => {
    expect(said(facts())).toEqual(['Nothing has been measured yet.', '还没有任何测量。']);
    expect(said(facts(card(tread, [])))[0]).toBe('Nothing has been measured yet.');
    expect(said(facts(card(null, [round(latest, null, null)])))).toEqual([
      'Measured to 300 km. The brief sets no limit yet.',
      '已测到 300 km，任务书还没有设限值。',
    ]);
  });

  it('which limit fails in the latest round, and about when', () => {
    const failing = facts(
      card(stack, [round(latest, 'not-known-yet', 300_000)]),
      card(tread, [round(latest, 'does-not-hold', 490_000)]),
    );
    expect(wearStamp(failing)).toBe('fails');
    expect(wearHeadline(failing)).toMatchObject({ claims: 'fails', round: latest, limit: tread });
    expect(said(failing)).toEqual([
      'Tread depth fails first, at about 490 km of 600 km.',
      '花纹深度最先不合格，约在 490 km，要求 600 km。',
    ]);
    expect(said(facts(card(tread, [round(latest, 'does-not-hold', null)])))).toEqual([
      'Tread depth fails before 600 km.',
      '花纹深度撑不到 600 km。',
    ]);
  });

  it('which is likely reached first while nothing is proved, in whichever round tells', () => {
    const weak = facts(
      card(stack, [round(first, 'not-known-yet', 590_000)]),
      card(tread, [
        round(first, 'not-known-yet', 490_000),
        round(latest, 'not-known-yet', null, { tooFar: true, greatest: 172_000 }),
      ]),
    );
    expect(wearHeadline(weak)).toMatchObject({
      case: 'weak-point',
      claims: 'likely',
      round: first,
    });
    expect(said(weak)).toEqual([
      'Tread depth likely fails first, at about 490 km of 600 km.',
      '花纹深度很可能最先到限值，约在 490 km，要求 600 km。',
    ]);
  });

  it('that all holds only where every limit does', () => {
    const holds = [card(stack, [round(latest, 'holds', null)])];
    expect(said(facts(...holds))).toEqual([
      'Round 2 keeps every limit of wear to 600 km.',
      '第 2 轮的各项磨损限值都能保持到 600 km。',
    ]);
    expect(wearStamp(facts(...holds, card(tread, [])))).toBe('open');
  });

  it('how far was measured where nothing is decided, or where it is too early', () => {
    expect(said(facts(card(tread, [round(latest, 'not-known-yet', null)])))).toEqual([
      'No limit is decided. Measured to 300 km of 600 km.',
      '各项限值都未定：已测到 300 km，要求 600 km。',
    ]);
    const early = round(latest, 'not-known-yet', null, { tooFar: true, greatest: 172_000 });
    expect(said(facts(card(tread, [early])))).toEqual([
      'Too early to tell: measured to 172 km of 600 km.',
      '为时尚早：只测到 172 km，要求 600 km。',
    ]);
  });

  it('never claims what its stamp does not, in at most twelve words', () => {
    const anyRound = (id: typeof first) =>
      fc
        .tuple(
          fc.constantFrom<Word>('holds', 'does-not-hold', 'not-known-yet', null),
          fc.option(fc.integer({ min: 1, max: 1_200_000 })),
          fc.boolean(),
        )
        .map(([word, atM, tooFar]) => round(id, word, atM, { tooFar }));
    const anyCard = fc
      .tuple(
        fc.constantFrom(tread, stack, null),
        fc.option(anyRound(first)),
        fc.option(anyRound(latest)),
      )
      .map(([limit, a, b]) =>
        card(
          limit,
          [a, b].filter((one) => one !== null),
        ),
      );
    fc.assert(
      fc.property(fc.array(anyCard, { maxLength: 4 }), (cards) => {
        const of = facts(...cards);
        const { claims } = wearHeadline(of);
        if (claims === 'holds' || claims === 'fails') expect(claims).toBe(wearStamp(of));
        expect(said(of)[0].split(' ').length).toBeLessThanOrEqual(12);
      }),
    );
  });
});

describe('a round says of a limit', () => {
  const says = (one: WearRound) => {
    const what = wearRoundSays(one, briefM);
    return [en.roundSays(what, sayForTests), zh.roundSays(what, sayForTests)];
  };
  it.each([
    [round(first, 'holds', null), 'lasts 600 km', '能保持到 600 km'],
    [round(first, 'does-not-hold', 490_000), 'fails at about 490 km', '约 490 km 时不合格'],
    [round(first, 'does-not-hold', null), 'fails', '不合格'],
    [
      round(first, 'not-known-yet', 490_000),
      'likely reached at about 490 km',
      '很可能约 490 km 时到限值',
    ],
    [
      round(first, 'not-known-yet', null, { chance: 0.88 }),
      'about 9 in 10 would last 600 km',
      '10 双中约 9 双能撑到 600 km',
    ],
    [
      round(first, null, null, { greatest: 172_000 }),
      'measured to 172 km, too early to tell',
      '只测到 172 km，为时尚早',
    ],
    // 0 km is no distance that anybody came to.
    [
      round(first, null, null, { greatest: 0 }),
      'measured only when new, too early to tell',
      '只在全新时测过，为时尚早',
    ],
    [
      { ...round(first, null, null), basis: 'prior-only' as const },
      'no pair measured twice yet',
      '还没有一双测过两次',
    ],
  ])('%#', (one, english, chinese) => {
    expect(says(one)).toEqual([english, chinese]);
  });

  it('a limit reached only beyond what the brief asks is not called reached', () => {
    const far = round(first, 'not-known-yet', 900_000, { chance: 0.72 });
    expect(wearRoundSays(far, briefM)).toEqual({ case: 'open', inTen: 7, briefM });
  });
});
