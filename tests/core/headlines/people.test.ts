/** The first sentences of Pairs and Testers: a case for each state, in both languages, and never more than is proved. */
import { describe, expect, it } from 'vitest';
import { places as en } from '../../../app/words/places/en/index.ts';
import { places as zh } from '../../../app/words/places/zh/index.ts';
import type { Say } from '../../../app/words/say-names.ts';
import {
  damageHeadline,
  pairHeadline,
  pairsHeadline,
  surenessForTester,
  testerHeadline,
  testersHeadline,
  testerStamp,
} from '../../../core/headlines/index.ts';
import type {
  FeltByTester,
  PairLook,
  PairRow,
  TesterLook,
  TesterRow,
} from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../records/make.ts';

const pair = idOf(20);
const tester = idOf(4);
const briefM = metres(600_000);

const codes: Readonly<Record<string, string>> = { [pair]: '963', [idOf(21)]: '417' };
const say = (language: 'en' | 'zh'): Say => ({
  round: () => 'Round 2',
  pair: (id) => codes[id] ?? '?',
  tester: (id) => `T0${id === tester ? 4 : 9}`,
  testers: (ids) =>
    ids.map((id) => `T0${id === tester ? 4 : 9}`).join(language === 'en' ? ' and ' : '和'),
  felt: () => (language === 'en' ? 'heel slip at the heel cup' : '后跟滑动'),
  distance: (distance) => `${Math.round(distance / 1000)} km`,
  number: (value, digits = 1) => value.toFixed(digits),
  date: () => '4 May',
  list: (names) => names.join(language === 'en' ? ' and ' : '和'),
  upper: (text) => text.charAt(0).toUpperCase() + text.slice(1),
});

const words = (text: string): number => text.split(/\s+/).length;

const row = (more: Partial<PairRow> = {}): PairRow => ({
  pair,
  code: '963',
  round: idOf(10),
  roundAt: 0,
  sizeMm: 270 as PairRow['sizeMm'],
  holder: null,
  handOut: null,
  sinceMs: null,
  holderSilentDays: null,
  totalM: metres(0),
  carriedInM: metres(0),
  shareOfBrief: 0,
  runs: 0,
  lastRunMs: null,
  asked: 0,
  complained: 0,
  checks: 0,
  stopped: false,
  damage: null,
  outOfTolerance: false,
  ...more,
});
const out = { holder: tester, handOut: idOf(30), runs: 12, totalM: metres(227_000) };

describe('the list of pairs says first', () => {
  const cases: readonly [string, readonly PairRow[], string, string][] = [
    ['that there is none', [], 'No pair yet. Add the first ones.', '还没有样鞋，请先添加。'],
    [
      'what must come back, before all else',
      [row({ ...out, stopped: true }), row({ pair: idOf(21) })],
      'Take back pair 963: nobody may run in it.',
      '请收回样鞋 963：已停穿。',
    ],
    [
      'which nobody may run in',
      [row({ damage: idOf(40) }), row({ ...out, pair: idOf(21) })],
      'Testers have 1 of 2 pairs. Do not run: pair 963.',
      '2 双中有 1 双在试穿员手中。停穿：样鞋 963。',
    ],
    [
      'that all are in',
      [row({ runs: 3 }), row({ pair: idOf(21) })],
      'All 2 pairs are in. Hand out the next ones.',
      '2 双样鞋都在库，可以继续发放。',
    ],
    [
      'that all are in, where nobody ever ran',
      [row(), row({ pair: idOf(21) })],
      'All 2 pairs are in. Nobody has run yet.',
      '2 双样鞋都在库，还没有人跑过。',
    ],
    [
      'that nobody has run',
      [row({ ...out, runs: 0, totalM: metres(0) }), row({ pair: idOf(21) })],
      'Testers have 1 of 2 pairs. Nobody has run yet.',
      '2 双中有 1 双在试穿员手中，还没有人跑过。',
    ],
    [
      'which has come farthest',
      [row(out), row({ pair: idOf(21), runs: 3, totalM: metres(30_000) })],
      'Testers have 1 of 2 pairs. Farthest: 963, 227 of 600 km.',
      '2 双中有 1 双在试穿员手中。最远的是 963：227 km，要求 600 km。',
    ],
  ];
  it.each(cases)('%s', (_, rows, english, chinese) => {
    const headline = pairsHeadline(rows, briefM, 2);
    expect(headline.claims).toBe('nothing');
    expect(en.pairs.headline(headline, say('en'))).toBe(english);
    expect(zh.pairs.headline(headline, say('zh'))).toBe(chinese);
    expect(words(english)).toBeLessThanOrEqual(12);
  });

  it('that a round comes first, where there is none', () => {
    const headline = pairsHeadline([], briefM, 0);
    expect(en.pairs.headline(headline, say('en'))).toBe(
      'No round yet, so no pair. Add the first round.',
    );
    expect(zh.pairs.headline(headline, say('zh'))).toBe(
      '还没有轮次，也就没有样鞋。请先添加第一轮。',
    );
  });
});

const look = (more: object = {}): PairLook =>
  ({
    id: pair,
    code: '963',
    totalM: metres(412_000),
    briefM,
    holder: tester,
    hands: [{ tester, untilMs: null }],
    runs: [{}],
    asked: 17,
    felt: [],
    bench: [],
    damages: [],
    stops: [],
    fit: [],
    outOfTolerance: false,
    ...more,
  }) as unknown as PairLook;
const slip = (runs: number) => ({
  felt: [{ zone: 'U10', kind: 'heel-slip', marks: Array.from({ length: runs }, () => ({})) }],
});
const short = { fit: [{ tester, left: { toeMm: 7 }, right: { toeMm: 8 } }] };

describe('a pair’s page says first', () => {
  const cases: readonly [string, PairLook, string, string][] = [
    [
      'that nobody may run in it',
      look({ stops: [{ untilMs: null, reason: 'bond' }], ...short }),
      'Nobody may run in pair 963.',
      '样鞋 963 已停穿，谁都不要再穿。',
    ],
    [
      'that it comes apart',
      look({ damages: [{ stands: true, what: 'sole-peeling' }], ...short }),
      'Pair 963 comes apart. Look at it first.',
      '样鞋 963 开始损坏，请先查看。',
    ],
    [
      'that it is short for whoever wears it, with what they feel',
      look({ ...short, ...slip(5) }),
      'Pair 963 is short for T04: heel slip at the heel cup in 5 of 17 runs.',
      '样鞋 963 对 T04 偏短：17 次中有 5 次出现后跟滑动。',
    ],
    [
      'how short, where nothing was felt twice',
      look({ ...short, ...slip(1) }),
      'Pair 963 is short for T04: 7 mm at the toe.',
      '样鞋 963 对 T04 偏短：趾前仅 7 毫米。',
    ],
    [
      'that it reads past a limit',
      look({ bench: [{ isPast: true, kind: 'tread-depth mm', site: 'heel' }] }),
      'Pair 963 reads past a limit of the brief.',
      '样鞋 963 的读数已超出任务书的限值。',
    ],
    [
      'that it is out of tolerance',
      look({ outOfTolerance: true }),
      'Pair 963 is out of tolerance.',
      '样鞋 963 超差。',
    ],
    [
      'how far it has come, with whom, and what is felt most',
      look(slip(5)),
      'Pair 963, 412 of 600 km, with T04; heel slip at the heel cup in 5 of 17 runs.',
      '样鞋 963 已跑 412 km，要求 600 km，在 T04 手中；17 次中有 5 次出现后跟滑动。',
    ],
    [
      'that nothing came twice',
      look({ ...slip(1), holder: null }),
      'Pair 963, 412 of 600 km. Nothing recurs in 17 runs.',
      '样鞋 963 已跑 412 km，要求 600 km。17 次跑步中没有反复出现的不适。',
    ],
    [
      'that nobody was asked',
      look({ asked: 0, holder: null }),
      'Pair 963, 412 of 600 km. Nobody was asked what they felt.',
      '样鞋 963 已跑 412 km，要求 600 km。还没有问过脚部不适。',
    ],
    [
      'that its tester has not run yet',
      look({ runs: [] }),
      'T04 has pair 963 and has not run yet.',
      'T04 已拿到样鞋 963，还没有跑过。',
    ],
  ];
  it.each(cases)('%s', (_, of, english, chinese) => {
    const headline = pairHeadline(of);
    // A pair alone proves nothing of a shoe.
    expect(headline.claims).toBe('nothing');
    expect(en.pairs.page.headline(headline, say('en'))).toBe(english);
    expect(zh.pairs.page.headline(headline, say('zh'))).toBe(chinese);
  });

  it('nothing of a notice that has ended, and nothing of a former wearer’s foot', () => {
    const ended = look({ stops: [{ untilMs: 5, reason: 'bond' }] });
    expect(pairHeadline(ended).case).toBe('quiet');
    const former = look({ fit: [{ tester: idOf(5), left: { toeMm: 2 }, right: { toeMm: 2 } }] });
    expect(pairHeadline(former).case).toBe('quiet');
  });
});

describe('a report of damage says first', () => {
  const of = { pair, what: 'sole-peeling' as const };
  it.each([
    ['stands', { stands: true, answer: null }],
    ['out', { stands: true, answer: { advice: 'stay-out' as const, at: '', words: null } }],
    ['settled', { stands: false, answer: { advice: 'go-on' as const, at: '', words: null } }],
  ] as const)('%s', (name, state) => {
    const headline = damageHeadline({ ...of, ...state });
    expect(headline).toEqual({ claims: 'nothing', case: name, ...of });
    for (const language of [en, zh])
      expect(language.pairs.damage[headline.case]('963', 'sole')).toContain('963');
  });
});

const testerRow = (more: Partial<TesterRow> = {}): TesterRow => ({
  tester,
  code: 'T04',
  name: null,
  pairs: [pair],
  runs: 9,
  distanceM: metres(90_000),
  lastRunMs: 1,
  silentDays: null,
  asked: 9,
  complained: 0,
  most: null,
  pain: null,
  ...more,
});

describe('the list of testers says first', () => {
  it('once that nobody has logged, where the whole test went quiet', () => {
    const quiet = { sinceMs: 1, days: 13, testers: [tester] };
    const headline = testersHeadline([testerRow({ silentDays: 13 })], quiet);
    expect(en.testers.headline(headline, say('en'))).toBe(
      'Nobody has logged since 4 May (13 days).',
    );
    expect(zh.testers.headline(headline, say('zh'))).toBe('自 4 May 起没有人记录（13 天）。');
  });

  const cases: readonly [string, readonly TesterRow[], string, string][] = [
    ['that there is none', [], 'No tester yet. Add the first ones.', '还没有试穿员，请先添加。'],
    [
      'who is in pain, before who is silent',
      [testerRow({ pain: { run: idOf(50), score: 4, stands: true }, silentDays: 9 })],
      'T04 reports pain. Answer that first.',
      'T04 反映疼痛，请先答复。',
    ],
    [
      'who is silent, the longest first',
      [testerRow({ tester: idOf(9), silentDays: 8 }), testerRow({ silentDays: 12 })],
      'T04 and T09 are silent, the longest for 12 days.',
      'T04 和 T09 久无消息，最长 12 天。',
    ],
    [
      'that nobody holds a pair',
      [testerRow({ pairs: [] })],
      'Nobody holds a pair. 1 tester could run.',
      '样鞋都在库，1 名试穿员可以开始跑。',
    ],
    [
      'that all were heard of',
      [testerRow(), testerRow({ tester: idOf(9), pairs: [] })],
      'The one tester with a pair has run, and has not gone silent.',
      '手中有鞋的 1 名试穿员都跑过，没有人久无消息。',
    ],
    [
      'that nobody has run yet, however short they have had their pairs',
      [testerRow({ runs: 0 }), testerRow({ tester: idOf(9), runs: 0 })],
      '2 testers have a pair. Nobody has run yet.',
      '2 名试穿员手中有鞋，还没有人跑过。',
    ],
    [
      'how many have run, where some have not yet',
      [testerRow(), testerRow({ tester: idOf(9), runs: 0 })],
      '1 of 2 testers with a pair has run. Nobody has gone silent.',
      '手中有鞋的 2 名试穿员中，1 名跑过，没有人久无消息。',
    ],
  ];
  it.each(cases)('%s', (_, rows, english, chinese) => {
    const headline = testersHeadline(rows);
    expect(headline.claims).toBe('nothing');
    expect(en.testers.headline(headline, say('en'))).toBe(english);
    expect(zh.testers.headline(headline, say('zh'))).toBe(chinese);
  });
});

const felt = (more: object = {}): FeltByTester =>
  ({
    zone: 'U10',
    kind: 'heel-slip',
    marks: Array.from({ length: 5 }, () => ({})),
    others: { testers: 1, askedTesters: 7, runs: 2, askedRuns: 138 },
    word: 'recurs-for-one-tester',
    reporters: 2,
    isProved: true,
    ...more,
  }) as unknown as FeltByTester;
const testerLook = (more: object = {}): TesterLook =>
  ({
    id: tester,
    code: 'T04',
    pairs: [pair],
    runs: 9,
    asked: 9,
    silentDays: null,
    felt: [],
    pains: [],
    ...more,
  }) as unknown as TesterLook;

describe('a tester’s page says first', () => {
  const cases: readonly [string, TesterLook, string, string, string][] = [
    [
      'pain',
      testerLook({ pains: [{ stands: true, score: 6 }], felt: [felt()] }),
      'nothing',
      'T04 reports pain, 6 of 10. Answer that first.',
      'T04 反映疼痛，6 分（满分 10），请先答复。',
    ],
    [
      'that they have not run',
      testerLook({ runs: 0 }),
      'nothing',
      'T04 has pair 963 and has not run yet.',
      'T04 已拿到样鞋 963，还没有跑过。',
    ],
    [
      'what is proved of them alone',
      testerLook({ felt: [felt()] }),
      'one-tester',
      'T04: heel slip at the heel cup in 5 of 9 runs, others 2 of 138.',
      'T04：9 次中有 5 次后跟滑动；其他人 138 次中有 2 次。',
    ],
    [
      'what is proved across testers',
      testerLook({ felt: [felt({ word: 'recurs-across-testers', others: { testers: 5 } })] }),
      'clear',
      'T04 and 5 others felt heel slip at the heel cup.',
      'T04 和另外 5 人都有后跟滑动。',
    ],
    [
      'only a count, where it is not proved of them',
      testerLook({ felt: [felt({ isProved: false })] }),
      'too-early',
      'T04 felt heel slip at the heel cup in 5 of 9 runs.',
      'T04 在 9 次中有 5 次后跟滑动。',
    ],
    [
      'only a count, where the others feel it nearly as often',
      testerLook({
        felt: [felt({ others: { testers: 6, askedTesters: 7, runs: 60, askedRuns: 138 } })],
      }),
      'one-tester',
      'T04 felt heel slip at the heel cup in 5 of 9 runs.',
      'T04 在 9 次中有 5 次后跟滑动。',
    ],
    [
      'that they are silent',
      testerLook({ silentDays: 9 }),
      'nothing',
      'T04 has been silent for 9 days.',
      'T04 已有 9 天没有消息。',
    ],
    [
      'that they felt nothing',
      testerLook(),
      'nothing',
      'T04 felt nothing in 9 runs.',
      'T04 跑了 9 次，没有任何不适。',
    ],
    [
      'that nothing came twice',
      testerLook({ felt: [felt({ marks: [{}] })] }),
      'nothing',
      'Nothing came twice in 9 runs of T04.',
      'T04 跑了 9 次，没有反复出现的不适。',
    ],
    [
      'that they were never asked',
      testerLook({ asked: 0 }),
      'nothing',
      'T04 ran 9 times and never said what they felt.',
      'T04 跑了 9 次，从未回答过脚部不适。',
    ],
  ];
  it.each(cases)('%s', (_, of, claims, english, chinese) => {
    const headline = testerHeadline(of);
    expect(headline.claims).toBe(claims);
    expect(en.testers.page.headline(headline, say('en'))).toBe(english);
    expect(zh.testers.page.headline(headline, say('zh'))).toBe(chinese);
  });

  it('never more than the stamp beside it', () => {
    for (const word of [
      'recurs-across-testers',
      'recurs-for-one-tester',
      'early-sign',
      'seen-once',
    ])
      for (const isProved of [true, false])
        for (const reporters of [1, 2, 7])
          for (const runs of [0, 2, 90]) {
            const one = felt({
              ...{ word, isProved, reporters },
              others: { testers: 3, askedTesters: 7, runs, askedRuns: 138 },
            });
            const headline = testerHeadline(testerLook({ felt: [one] }));
            expect(headline.claims).toBe(testerStamp(testerLook({ felt: [one] })));
            expect(headline.claims).toBe(surenessForTester(one));
            if (headline.case === 'alone')
              expect([word, isProved]).toEqual(['recurs-for-one-tester', true]);
            if (headline.case === 'shared') expect(word).toBe('recurs-across-testers');
          }
  });
});
