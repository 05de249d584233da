/** What the list of checks, one check and the gauges say first, in both languages. */
import { describe, expect, it } from 'vitest';
import { wear as en } from '../../../app/words/places/en/wear.ts';
import { wear as zh } from '../../../app/words/places/zh/wear.ts';
import { checkHeadline, checksHeadline, gaugesHeadline } from '../../../core/headlines/index.ts';
import type { CheckLook, GaugeReview, ReadingStanding } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../records/make.ts';
import { sayForTests, sayInChinese } from './say.ts';

const standing = {
  counts: { state: 'counts' },
  waits: { state: 'waits' },
  'set-aside': { state: 'set-aside', decision: idOf(9), why: 'misread', at: '2026-01-01T00:00Z' },
} as const satisfies Record<string, ReadingStanding>;

const look = (distanceM: number, ...states: (keyof typeof standing)[]): CheckLook =>
  ({
    id: idOf(5),
    pair: idOf(7),
    distanceM: metres(distanceM),
    readings: states.map((state) => ({ standing: standing[state] })),
  }) as unknown as CheckLook;

describe('the list of checks', () => {
  const said = (...checks: CheckLook[]) => {
    const headline = checksHeadline(checks);
    return [en.checks.headline(headline, sayForTests), zh.checks.headline(headline, sayInChinese)];
  };
  it('says how many there are, and what waits before that', () => {
    expect(said()).toEqual(['Nothing has been measured yet.', '还没有任何测量。']);
    expect(said(look(0, 'counts'), look(312_000, 'set-aside'))).toEqual([
      '2 checks of 1 pair, to 312 km.',
      '1 双样鞋共 2 次测量，最远 312 km。',
    ]);
    expect(said(look(0, 'counts', 'waits'))).toEqual([
      'One reading waits for you: does it count?',
      '有 1 个读数等你决定是否计入。',
    ]);
    expect(said(look(0, 'waits', 'waits'))[0]).toBe('2 readings wait for you: do they count?');
  });
});

describe('one check', () => {
  const said = (one: CheckLook) => {
    const headline = checkHeadline(one);
    return [en.check.headline(headline, sayForTests), zh.check.headline(headline, sayInChinese)];
  };
  it('says what waits, then what is set aside, else how far the pair had come', () => {
    expect(said(look(172_000, 'counts', 'counts'))).toEqual([
      'Pair 7 at 172 km: 2 readings.',
      '样鞋 7，172 km：2 个读数。',
    ]);
    expect(said(look(0, 'counts'))).toEqual([
      'Pair 7, new: 1 reading.',
      '样鞋 7，新鞋：1 个读数。',
    ]);
    expect(said(look(0, 'counts', 'set-aside'))).toEqual([
      'Pair 7: 1 of 2 readings is set aside.',
      '样鞋 7：2 个读数中有 1 个已搁置。',
    ]);
    expect(said(look(0, 'waits', 'set-aside'))).toEqual([
      'Pair 7: 1 of 2 readings waits for your decision.',
      '样鞋 7：2 个读数中有 1 个等你决定。',
    ]);
  });
});

describe('the gauges', () => {
  const study = (gauge: string, word: string | null) =>
    ({
      gauge,
      result: word === null ? { ok: false } : { ok: true, word },
    }) as unknown as GaugeReview;
  const said = (...studies: GaugeReview[]) => {
    const headline = gaugesHeadline(studies);
    return [
      en.gaugesPlace.headline(headline, sayForTests.list),
      zh.gaugesPlace.headline(headline, sayInChinese.list),
    ];
  };
  it('say the worst first', () => {
    expect(said()).toEqual(['No gauge has been studied yet.', '还没有做过量具分析。']);
    const good = study('C2', 'good');
    expect(said(good)).toEqual(['The gauge is good enough.', '量具的精度够用。']);
    expect(said(good, good)[0]).toBe('All 2 gauge studies say good enough.');
    expect(said(good, study('D1', null))).toEqual([
      'A study is too small to judge its gauge.',
      '有一项研究数据太少，还不能评判量具。',
    ]);
    expect(said(good, study('D1', 'conditional'))).toEqual([
      'D1 is just good enough.',
      'D1 的精度勉强够用。',
    ]);
    expect(said(study('D1', 'conditional'), study('C2', 'not-good-enough'))).toEqual([
      'C2 is not good enough.',
      'C2 的精度不够。',
    ]);
  });
});
