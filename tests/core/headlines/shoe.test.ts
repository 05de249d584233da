/** The first sentences of the place Shoe: a case for each state, never more than is proved, and said in both languages. */
import { describe, expect, it } from 'vitest';
import {
  arrivalHeadline,
  comfortHeadline,
  shoeHeadline,
  zoneHeadline,
  type ArrivalHeadline,
  type ComfortHeadline,
  type ShoeHeadline,
  type ZoneHeadline,
} from '../../../core/headlines/index.ts';
import type {
  ArrivalDimension,
  AttributeLook,
  ShoeComplaint,
  ZoneLook,
} from '../../../core/review/index.ts';
import { places as en } from '../../../app/words/places/en/index.ts';
import { places as zh } from '../../../app/words/places/zh/index.ts';
import type { Say } from '../../../app/words/say-names.ts';
import { idOf } from '../records/make.ts';

const [first, second, third] = [idOf(10), idOf(11), idOf(12)];
const [tester, other] = [idOf(20), idOf(21)];
const pair = idOf(30);

type Word = NonNullable<ShoeComplaint['rounds'][number]['word']>;

const inRound = (round: typeof first, word: Word | null, testers: number, askedTesters = 8) => ({
  round,
  word,
  testers,
  askedTesters,
  runs: testers * 2,
  askedRuns: 100,
  share: null,
  interval: null,
  allowedRate: null,
});

const complaint = (
  zone: ShoeComplaint['zone'],
  rounds: readonly ReturnType<typeof inRound>[],
): ShoeComplaint => ({
  zone,
  kind: 'rubbing',
  side: 'both',
  painLike: false,
  rounds,
  surest: rounds.findLast(({ word }) => word !== null) as ShoeComplaint['surest'],
  proved: [tester],
  since: null,
  mostly: null,
});

const said = (complaints: readonly ShoeComplaint[], more: object = {}): ShoeHeadline =>
  shoeHeadline(
    { latest: third, complaints, ...more },
    { rounds: [first, second, third], pains: [], ...more },
  );

describe('complaints', () => {
  it('begin with pain that nobody answered, and not with pain that somebody did', () => {
    const pain = { run: idOf(40), tester, stands: true, answer: null };
    expect(said([], { pains: [pain, pain] })).toEqual({
      case: 'pain',
      claims: 'nothing',
      testers: [tester],
    });
    expect(said([], { pains: [{ ...pain, answer: {} }] }).case).toBe('nothing');
    expect(said([], { pains: [{ ...pain, stands: false }] }).case).toBe('nothing');
  });

  it('say that there is no round, or that nobody was asked', () => {
    expect(said([], { rounds: [] }).case).toBe('no-round');
    expect(said([], { latest: null }).case).toBe('not-asked');
  });

  it('say what recurs in the latest round, and how much more does', () => {
    const now = [
      inRound(first, null, 0),
      inRound(second, null, 0),
      inRound(third, 'recurs-across-testers', 5),
    ];
    expect(said([complaint('U10', now), complaint('U3', now)])).toEqual({
      case: 'recurs',
      claims: 'clear',
      felt: { zone: 'U10', kind: 'rubbing' },
      round: third,
      testers: 5,
      askedTesters: 8,
      more: 1,
    });
  });

  it('never call proved what an earlier round proved alone', () => {
    const before = [
      inRound(first, 'recurs-across-testers', 6),
      inRound(second, null, 0),
      inRound(third, 'early-sign', 3),
    ];
    expect(said([complaint('U10', before)])).toMatchObject({ case: 'watch', claims: 'likely' });
  });

  it('name the one tester for whom it is proved', () => {
    const alone = [inRound(third, 'recurs-for-one-tester', 3)];
    expect(said([complaint('P4', alone)])).toMatchObject({
      case: 'one-tester',
      claims: 'one-tester',
      testers: [tester],
    });
  });

  it('tell how many felt it round by round, as far back as as many were asked', () => {
    const rounds = [
      inRound(first, 'early-sign', 5),
      inRound(second, 'early-sign', 6),
      inRound(third, 'early-sign', 7),
    ];
    const felt = said([complaint('U8', rounds)]);
    expect(felt).toMatchObject({ case: 'watch', counts: [{ testers: 5 }, { testers: 6 }, {}] });
    const fewer = said([complaint('U8', [inRound(first, 'early-sign', 5, 6), ...rounds.slice(1)])]);
    expect(fewer).toMatchObject({ case: 'watch', counts: [{ testers: 6 }, { testers: 7 }] });
    const gap = [rounds[0], inRound(second, null, 0), rounds[2]] as typeof rounds;
    expect(said([complaint('U8', gap)])).toMatchObject({ counts: [{ testers: 7 }] });
  });

  it('watch what most testers felt, whatever its place in the list', () => {
    const few = [inRound(third, 'early-sign', 2)];
    const many = [inRound(third, 'early-sign', 4)];
    expect(said([complaint('P9', few), complaint('U8', many)])).toMatchObject({
      felt: { zone: 'U8' },
    });
  });

  it('say that there are single reports, or none in so many runs', () => {
    expect(said([complaint('U8', [inRound(third, 'seen-once', 1)])])).toEqual({
      case: 'single-reports',
      claims: 'too-early',
      round: third,
      complaints: 1,
    });
    expect(
      said([complaint('U8', [inRound(second, 'seen-once', 1), inRound(third, null, 0)])]),
    ).toEqual({ case: 'nothing', claims: 'nothing', round: third, runs: 100 });
  });
});

const zoneRound = (round: typeof first, word: Word | null, testers: number) => ({
  ...inRound(round, word, testers),
  left: 0,
  right: testers,
  proved: [tester],
  layers: null,
});

const zone = (rounds: readonly object[], more: object = {}): ZoneHeadline =>
  zoneHeadline({
    foot: 'right',
    zone: 'U3',
    kind: 'pressure',
    rounds,
    mostly: null,
    allReports: 3,
    allTesters: 8,
    ...more,
  } as ZoneLook);

describe('one zone', () => {
  it('was not asked about, or nobody felt anything there', () => {
    expect(zone([]).case).toBe('not-asked');
    expect(zone([{ ...zoneRound(first, null, 0), askedRuns: 0 }]).case).toBe('not-asked');
    expect(zone([zoneRound(first, null, 0), zoneRound(second, null, 0)])).toEqual({
      case: 'nothing',
      claims: 'nothing',
      runs: 200,
      testers: 8,
    });
  });

  it('recurs now, or did and is felt less since', () => {
    const proved = zoneRound(second, 'recurs-across-testers', 6);
    expect(zone([zoneRound(first, null, 0), proved])).toMatchObject({
      case: 'recurs',
      claims: 'clear',
      testers: 6,
    });
    expect(zone([proved, zoneRound(third, null, 0)])).toMatchObject({
      case: 'recurred',
      before: { round: second, testers: 6 },
      now: { round: third, testers: 0 },
    });
  });

  it('says whose reports they nearly all are, and claims no more for that', () => {
    const mostly = { tester, runs: 28, of: 31 };
    expect(zone([zoneRound(first, 'early-sign', 3)], { mostly })).toMatchObject({
      case: 'mostly-one',
      claims: 'nothing',
      runs: 28,
    });
    expect(zone([zoneRound(first, 'recurs-for-one-tester', 3)], { mostly }).claims).toBe(
      'one-tester',
    );
    expect(zone([zoneRound(first, 'recurs-across-testers', 3)], { mostly }).case).toBe('recurs');
  });

  it('is proved for one, likely, or too early to tell', () => {
    expect(zone([zoneRound(first, 'recurs-for-one-tester', 3)])).toMatchObject({
      case: 'one-tester',
      testers: [tester],
    });
    expect(zone([zoneRound(first, 'early-sign', 2), zoneRound(second, null, 0)])).toMatchObject({
      case: 'likely',
      round: first,
    });
    expect(zone([zoneRound(first, 'early-sign', 1)])).toMatchObject({ case: 'few', reports: 3 });
  });

  it('of no kind in particular is counted and nothing else', () => {
    const rounds = [zoneRound(first, null, 2), zoneRound(second, null, 1)];
    expect(zone(rounds, { kind: null })).toEqual({
      case: 'any',
      claims: 'nothing',
      round: first,
      testers: 2,
      askedTesters: 8,
    });
  });
});

const scored = (mean: number, round: typeof first, change: object | null = null) => ({
  round,
  wear: { mean, interval: null, n: 8, runs: 100 },
  drift: null,
  testers: [],
  course: [],
  change,
});
const overall = (...rounds: readonly object[]) =>
  ({ attribute: 'overall', rounds }) as unknown as AttributeLook;

describe('comfort', () => {
  it('is not scored, or scored in one round alone', () => {
    expect(comfortHeadline([]).case).toBe('not-scored');
    expect(comfortHeadline([overall(scored(74, first))])).toEqual({
      case: 'score',
      claims: 'nothing',
      mean: 74,
      round: first,
    });
  });

  it('changes only by the rule of its changes', () => {
    const cases = [
      ['better', 'better', 'clear'],
      ['worse', 'worse', 'clear'],
      ['no-relevant', 'same', 'clear'],
      ['open', 'open', 'nothing'],
    ] as const;
    for (const [word, named, claims] of cases)
      expect(
        comfortHeadline([overall(scored(69, first), scored(74, second, { word, difference: 5 }))]),
      ).toMatchObject({ case: named, claims, mean: 74, before: 69 });
  });

  it('names an attribute that got worse while the whole did not', () => {
    const heel = {
      attribute: 'heel-hold',
      rounds: [scored(70, first), scored(55, second, { word: 'worse', difference: -15 })],
    } as unknown as AttributeLook;
    const whole = overall(scored(69, first), scored(70, second, { word: 'open', difference: 1 }));
    expect(comfortHeadline([whole, heel])).toEqual({
      case: 'attribute-worse',
      claims: 'clear',
      attribute: 'heel-hold',
      by: 15,
    });
  });
});

const tolerance = (proved: number, outside: number, undecided: number, judged = 4) => ({
  judged,
  proved,
  outside,
  undecided,
});
const dimension = {
  measure: 'dimension',
  site: 'heel-cup-width',
  rounds: [{ points: [{ pair, foot: 'left', word: 'not-conforming' }] }],
} as unknown as ArrivalDimension;

describe('arrival', () => {
  const of = (...all: readonly ReturnType<typeof tolerance>[]) =>
    arrivalHeadline(
      all.map((outOfTolerance, at) => ({ id: at === 0 ? pair : idOf(50 + at), outOfTolerance })),
      [dimension],
    );

  it('was not measured, or nothing is out', () => {
    expect(of(tolerance(0, 0, 0, 0)).case).toBe('not-measured');
    expect(of(tolerance(0, 0, 0), tolerance(0, 0, 0, 0))).toEqual({
      case: 'all-in',
      claims: 'nothing',
      pairs: 1,
    });
  });

  it('names the one pair and dimension that is out, or counts the pairs', () => {
    expect(of(tolerance(1, 0, 0), tolerance(0, 0, 0))).toMatchObject({
      case: 'one-out',
      claims: 'clear',
      pair,
      site: 'heel-cup-width',
      measured: 2,
    });
    expect(of(tolerance(0, 1, 0), tolerance(0, 2, 0))).toMatchObject({
      case: 'out',
      claims: 'likely',
      measured: 2,
    });
  });

  it('says what is too close to the limit to tell', () => {
    expect(of(tolerance(0, 0, 2), tolerance(0, 0, 0))).toMatchObject({
      case: 'undecided',
      claims: 'too-early',
      pairs: 1,
    });
  });
});

const names: Readonly<Record<string, string>> = {
  [first]: 'Round 1',
  [second]: 'Round 2',
  [third]: 'Round 3',
  [tester]: 'T11',
  [other]: 'T05',
  [pair]: '229',
};

const say = (felt: string): Say => ({
  round: (id) => names[id] ?? '?',
  pair: (id) => names[id] ?? '?',
  tester: (id) => names[id] ?? '?',
  testers: (ids) => ids.map((id) => names[id]).join(', '),
  felt: () => felt,
  distance: (distance) => `${distance / 1000} km`,
  number: (value) => String(Math.round(value)),
  date: String,
  list: (all) => all.join(', '),
  upper: (text) => text.charAt(0).toUpperCase() + text.slice(1),
});

const felt = { zone: 'U8', kind: 'rubbing' } as const;
const counts = { round: third, testers: 7, askedTesters: 8 };
const claims = 'nothing';

const shoeCases: readonly (readonly [ShoeHeadline, string, string])[] = [
  [
    { case: 'no-round', claims },
    'No round yet. Add the first one.',
    '还没有轮次，请先添加第一轮。',
  ],
  [{ case: 'not-asked', claims }, 'No answers about feet yet.', '还没有人回答脚部感受。'],
  [
    { case: 'pain', claims, testers: [tester] },
    'T11 reports pain. Answer that first.',
    'T11 反映疼痛，请先答复。',
  ],
  [
    { case: 'pain', claims, testers: [tester, other] },
    '2 testers report pain. Answer them first.',
    '2 名试穿员反映疼痛，请先答复。',
  ],
  [
    { case: 'recurs', claims: 'clear', felt, more: 0, ...counts },
    'Rubbing at the ankle recurs: 7 of 8 testers.',
    '脚踝磨脚反复出现：8 人中 7 人。',
  ],
  [
    { case: 'one-tester', claims: 'one-tester', felt, testers: [tester], round: third, more: 0 },
    'Only T11 keeps having rubbing at the ankle.',
    '只有 T11 反复出现脚踝磨脚。',
  ],
  [
    { case: 'one-tester', claims: 'one-tester', felt, testers: [], round: third, more: 0 },
    'Rubbing at the ankle: proved for single testers only.',
    '脚踝磨脚：只在个别试穿员身上证实。',
  ],
  [
    {
      case: 'watch',
      claims: 'likely',
      felt,
      counts: [{ ...counts, testers: 5 }, { ...counts, testers: 6 }, counts],
    },
    'Watch rubbing at the ankle: 5, 6, now 7 of 8 testers.',
    '请留意脚踝磨脚：先前 5、6 人，现在 8 人中 7 人。',
  ],
  [
    { case: 'watch', claims: 'likely', felt, counts: [counts] },
    'Watch rubbing at the ankle: 7 of 8 testers in Round 3.',
    '请留意脚踝磨脚：Round 3，8 人中 7 人。',
  ],
  [
    { case: 'single-reports', claims: 'too-early', round: third, complaints: 2 },
    '2 complaints in Round 3, nothing proved. Too early to tell.',
    'Round 3 反映了 2 种不适，均未证实，为时尚早。',
  ],
  [
    { case: 'nothing', claims, round: third, runs: 131 },
    'No complaint in 131 runs of Round 3.',
    'Round 3 的 131 次跑步没有不适。',
  ],
];

const zoneCases: readonly (readonly [ZoneHeadline, string, string])[] = [
  [{ case: 'not-asked', claims }, 'No answers about the ankle yet.', '还没有人回答脚踝的感觉。'],
  [
    { case: 'nothing', claims, runs: 486, testers: 12 },
    'Nobody has felt anything at the ankle in 486 runs.',
    '486 次跑步中，无人在脚踝感到不适。',
  ],
  [
    { case: 'recurs', claims: 'clear', felt, ...counts },
    'Rubbing at the ankle recurs: 7 of 8 testers.',
    '脚踝磨脚反复出现：8 人中 7 人。',
  ],
  [
    {
      case: 'recurred',
      claims: 'clear',
      felt,
      before: { ...counts, round: second },
      now: { ...counts, testers: 0 },
    },
    'Rubbing at the ankle: 7 of 8 in Round 2, now nobody.',
    '脚踝磨脚：Round 2，8 人中 7 人；Round 3，无人反映。',
  ],
  [
    {
      case: 'recurred',
      claims: 'clear',
      felt,
      before: { ...counts, round: first },
      now: { ...counts, testers: 1 },
    },
    'Rubbing at the ankle: 7 of 8 in Round 1, now 1.',
    '脚踝磨脚：Round 1，8 人中 7 人；Round 3，8 人中 1 人。',
  ],
  [
    { case: 'one-tester', claims: 'one-tester', felt, testers: [tester], round: third },
    'Only T11 keeps having rubbing at the ankle.',
    '只有 T11 反复出现脚踝磨脚。',
  ],
  [
    { case: 'mostly-one', claims, felt, tester, runs: 28, of: 34 },
    'Rubbing at the ankle: 28 of 34 reports come from T11.',
    '脚踝磨脚：34 次反映中有 28 次来自 T11。',
  ],
  [
    { case: 'likely', claims: 'likely', felt, ...counts },
    'Rubbing at the ankle: 7 of 8 testers in Round 3.',
    '脚踝磨脚：Round 3，8 人中 7 人。',
  ],
  [
    { case: 'few', claims: 'too-early', felt, reports: 1 },
    'Rubbing at the ankle: 1 report so far. Too early to tell.',
    '脚踝磨脚：目前只有 1 次反映，为时尚早。',
  ],
  [
    { case: 'any', claims, ...counts },
    'Ankle: felt by 7 of 8 testers in Round 3.',
    '脚踝：Round 3，8 人中 7 人有感觉。',
  ],
];

const scores = { mean: 74, before: 69, round: second, earlier: first };

const comfortCases: readonly (readonly [ComfortHeadline, string, string])[] = [
  [{ case: 'not-scored', claims }, 'Nobody has scored the comfort yet.', '还没有人给舒适度打分。'],
  [
    { case: 'score', claims, mean: 74, round: first },
    'Comfort is 74 of 100 in Round 1.',
    'Round 1 舒适度为 74 分（满分 100）。',
  ],
  [
    { case: 'better', claims: 'clear', ...scores },
    'Comfort is better: 74 of 100, after 69.',
    '舒适度提高：从 69 分到 74 分。',
  ],
  [
    { case: 'worse', claims: 'clear', ...scores },
    'Comfort is worse: 74 of 100, after 69.',
    '舒适度下降：从 69 分到 74 分。',
  ],
  [
    { case: 'same', claims: 'clear', ...scores },
    'Comfort is 74 of 100, after 69. No real difference.',
    '舒适度 74 分，之前 69 分，没有实际差别。',
  ],
  [
    { case: 'open', claims, ...scores },
    'Comfort is 74 of 100, after 69. Too early to compare.',
    '舒适度 74 分，之前 69 分，尚难比较。',
  ],
  [
    { case: 'attribute-worse', claims: 'clear', attribute: 'heel-hold', by: 15 },
    'Heel hold got worse by 15 points.',
    '后跟包裹下降了 15 分。',
  ],
];

const arrivalCases: readonly (readonly [ArrivalHeadline, string, string])[] = [
  [
    { case: 'not-measured', claims },
    'No sample has been measured against a blueprint yet.',
    '还没有样鞋对照图纸测量。',
  ],
  [
    { case: 'all-in', claims, pairs: 24 },
    'No dimension out of tolerance on 24 measured pairs.',
    '24 双已测样鞋没有超差尺寸。',
  ],
  [
    {
      case: 'one-out',
      claims: 'clear',
      pair,
      measure: 'dimension',
      site: 'x',
      foot: 'left',
      measured: 24,
    },
    'Pair 229 is out of tolerance: heel cup.',
    '样鞋 229 超差：后套。',
  ],
  [
    { case: 'out', claims: 'clear', pairs: [pair, idOf(31)], measured: 24 },
    '2 of 24 measured pairs are out of tolerance.',
    '24 双已测样鞋中有 2 双超差。',
  ],
  [
    { case: 'undecided', claims: 'too-early', pairs: 3, measured: 24 },
    'Too close to the limit to tell for 3 pairs.',
    '3 双样鞋太接近限值，无法判定。',
  ],
];

describe('in words', () => {
  const [inEnglish, inChinese] = [say('rubbing at the ankle'), say('脚踝磨脚')];

  it.each(shoeCases)('complaints: %o', (one, english, chinese) => {
    expect(en.shoe.headline(one, inEnglish)).toBe(english);
    expect(zh.shoe.headline(one, inChinese)).toBe(chinese);
  });

  it.each(zoneCases)('a zone: %o', (one, english, chinese) => {
    expect(en.shoe.zone.headline(one, inEnglish, 'ankle')).toBe(english);
    expect(zh.shoe.zone.headline(one, inChinese, '脚踝')).toBe(chinese);
  });

  it.each(comfortCases)('comfort: %o', (one, english, chinese) => {
    expect(en.shoe.comfort.headline(one, inEnglish, () => 'Heel hold')).toBe(english);
    expect(zh.shoe.comfort.headline(one, inChinese, () => '后跟包裹')).toBe(chinese);
  });

  it.each(arrivalCases)('arrival: %o', (one, english, chinese) => {
    expect(en.shoe.arrival.headline(one, inEnglish, () => 'heel cup')).toBe(english);
    expect(zh.shoe.arrival.headline(one, inChinese, () => '后套')).toBe(chinese);
  });

  it('has at most twelve words', () => {
    const all = [...shoeCases, ...zoneCases, ...comfortCases, ...arrivalCases];
    for (const [, english] of all)
      expect(english.split(/\s+/).length, english).toBeLessThanOrEqual(12);
  });
});
