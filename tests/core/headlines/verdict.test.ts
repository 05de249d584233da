/** The verdict in one sentence, in both languages, and never more than its stamp. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdict as en } from '../../../app/words/places/en/verdict.ts';
import { verdict as zh } from '../../../app/words/places/zh/verdict.ts';
import { verdictHeadline, verdictStamp } from '../../../core/headlines/index.ts';
import type { GridRow, NextVisit, VerdictGrid } from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import { sayForTests, sayInChinese } from './say.ts';

const [first, latest] = [idOf(1), idOf(2)];
type Word = 'holds' | 'does-not-hold' | 'not-known-yet';
const whats = ['wear', 'structure', 'allowed-rate', 'complaints', 'stop-use'] as const;

/** A verdict's word follows from its items as `core/review/verdict.ts` has it. */
const wordOf = (words: readonly Word[]): Word =>
  words.includes('does-not-hold')
    ? 'does-not-hold'
    : words.every((word) => word === 'holds')
      ? 'holds'
      : 'not-known-yet';

const gridOf = (words: readonly Word[], ran = true): VerdictGrid => ({
  rounds: [
    { id: first, word: 'does-not-hold' },
    { id: latest, word: wordOf(words) },
  ],
  latest: ran ? latest : null,
  rows: words.map((word, at): GridRow => ({
    key: String(at),
    what: whats[at % whats.length] as GridRow['what'],
    limit: null,
    kind: null,
    site: null,
    cells: [
      { round: first, item: { word: 'does-not-hold' } as never, picture: null },
      { round: latest, item: { word } as never, picture: null },
    ],
    settle: null,
  })),
});

const said = (grid: VerdictGrid) => {
  const headline = verdictHeadline(grid);
  return [en.headline(headline, sayForTests), zh.headline(headline, sayInChinese)];
};

describe('the verdict says first', () => {
  it('that there is no round, or that nobody has run', () => {
    expect(said({ rounds: [], latest: null, rows: [] })).toEqual([
      'No round yet, so nothing to decide.',
      '还没有轮次，无从判定。',
    ]);
    expect(said(gridOf(['holds'], false))).toEqual([
      'Nobody has run yet, so nothing is decided.',
      '还没有人跑过，无从判定。',
    ]);
  });

  it('what fails, by name where it is one thing', () => {
    expect(said(gridOf(['not-known-yet', 'holds', 'does-not-hold']))).toEqual([
      'Round 2 fails: a complaint recurs.',
      '第 2 轮不合格：有问题反复出现。',
    ]);
    expect(said(gridOf(['does-not-hold', 'does-not-hold', 'holds']))).toEqual([
      'Round 2 fails 2 of 3 limits.',
      '第 2 轮的 3 项要求中有 2 项不合格。',
    ]);
    for (const what of whats) expect(en.failing[what] && zh.failing[what]).toBeTruthy();
  });

  it('that all holds, or how much is open', () => {
    expect(said(gridOf(['holds', 'holds']))).toEqual([
      'Round 2 holds all 2 limits of the brief.',
      '第 2 轮达到任务书的全部 2 项要求。',
    ]);
    expect(said(gridOf(['holds', 'not-known-yet', 'not-known-yet']))).toEqual([
      'Not decided: 2 of 3 limits are open in Round 2.',
      '尚无定论：第 2 轮的 3 项要求中有 2 项未定。',
    ]);
  });

  it('never claims what its stamp does not, in at most twelve words', () => {
    const anyWord = fc.constantFrom<Word>('holds', 'does-not-hold', 'not-known-yet');
    fc.assert(
      fc.property(fc.array(anyWord, { minLength: 1, maxLength: 7 }), fc.boolean(), (words, ran) => {
        const grid = gridOf(words, ran);
        const { claims } = verdictHeadline(grid);
        const stamp = verdictStamp(grid);
        if (claims === 'holds' || claims === 'fails') expect(claims).toBe(stamp);
        // And what is decided is said.
        if (ran && stamp !== 'open') expect(claims).toBe(stamp);
        expect(said(grid)[0]?.split(' ').length).toBeLessThanOrEqual(12);
      }),
    );
  });
});

describe('the next check', () => {
  const visit = { pair: idOf(5), atM: 390_000, also: [idOf(6)] };
  it.each([
    [
      { when: 'later', atMs: 12 },
      'Measure pair 5 at 390 km (about 12); also pair 6',
      '样鞋 5 到 390 km 时测量（约 12）；也可测样鞋 6',
    ],
    [
      { when: 'if-resumed', tester: idOf(20), atMs: 12 },
      'Measure pair 5 at 390 km (about 12, if T20 runs again); also pair 6',
      '样鞋 5 到 390 km 时测量（T20 若继续跑，约 12）；也可测样鞋 6',
    ],
    [
      { when: 'not-run' },
      'Measure pair 5 at 390 km (not being run now); also pair 6',
      '样鞋 5 到 390 km 时测量（目前没有人在跑）；也可测样鞋 6',
    ],
    [
      { when: 'not-known' },
      'Measure pair 5 at 390 km (too few runs in it to say when); also pair 6',
      '样鞋 5 到 390 km 时测量（跑的次数太少，说不准何时）；也可测样鞋 6',
    ],
    [
      { when: 'now' },
      'Measure pair 5 at 390 km (it has come so far); also pair 6',
      '样鞋 5 到 390 km 时测量（已跑到）；也可测样鞋 6',
    ],
  ] as const)('says when: %j', (expected, english, chinese) => {
    const one = { ...visit, expected } as unknown as NextVisit;
    expect(en.settles.measure(one, sayForTests)).toBe(english);
    expect(zh.settles.measure(one, sayInChinese)).toBe(chinese);
  });
});
