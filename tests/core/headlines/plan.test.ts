/** The first sentence of the hand-out plan: a case for each state, in both languages. */
import { describe, expect, it } from 'vitest';
import { places as en } from '../../../app/words/places/en/index.ts';
import { places as zh } from '../../../app/words/places/zh/index.ts';
import { planHeadline, type PlanFacts } from '../../../core/headlines/index.ts';
import { idOf } from '../records/make.ts';
import { sayForTests, sayInChinese } from './say.ts';

const say = { ...sayForTests, date: () => '4 Dec' };
const sayZh = { ...sayInChinese, date: () => '12月4日' };

const facts = (more: Partial<NonNullable<PlanFacts['plan']>> = {}): PlanFacts => ({
  pairs: 6,
  testers: 8,
  plan: {
    rounds: [idOf(1), idOf(2)],
    wearers: 8,
    out: 0,
    late: 0,
    lateSinceMs: null,
    open: 0,
    nextMs: null,
    next: 0,
    endMs: 9,
    isOver: false,
    ...more,
  },
});

describe('the plan says first', () => {
  const cases: readonly [string, PlanFacts, string, string][] = [
    [
      'that pairs are missing',
      { pairs: 0, testers: 8, plan: null },
      'No pair to plan for yet. Add the pairs first.',
      '还没有样鞋可安排，请先添加样鞋。',
    ],
    [
      'that testers are missing',
      { pairs: 6, testers: 0, plan: null },
      'No tester to plan for yet. Add the testers first.',
      '还没有试穿员可安排，请先添加试穿员。',
    ],
    [
      'that there is no plan',
      { pairs: 6, testers: 1, plan: null },
      'No plan yet for 6 pairs and 1 tester.',
      '6 双样鞋、1 名试穿员，还没有方案。',
    ],
    [
      'what is late, before all that is to come',
      facts({ late: 4, lateSinceMs: 3, open: 8, nextMs: 7, next: 8 }),
      '4 pairs should be out since 4 Dec.',
      '4 双样鞋本应在 12月4日 发出。',
    ],
    [
      'what is to agree',
      facts({ open: 16, nextMs: 7, next: 8 }),
      '8 testers wear Round 1 and Round 2. Agree the plan.',
      '8 名试穿员试穿 第 1 轮和第 2 轮，请确认方案。',
    ],
    [
      'what is to agree of one round and one tester',
      facts({ rounds: [idOf(1)], wearers: 1, open: 1, nextMs: 7, next: 1 }),
      '1 tester wears Round 1. Agree the plan.',
      '1 名试穿员试穿 第 1 轮，请确认方案。',
    ],
    [
      'what comes next once it is agreed',
      facts({ nextMs: 7, next: 1, out: 8 }),
      '1 pair goes out on 4 Dec.',
      '12月4日 发出 1 双样鞋。',
    ],
    [
      'until when it runs',
      facts({ out: 8 }),
      '8 pairs are out until 4 Dec.',
      '8 双样鞋在外，到 12月4日 为止。',
    ],
    [
      'that it is over',
      facts({ isOver: true }),
      'The plan ended on 4 Dec.',
      '方案已于 12月4日 结束。',
    ],
    [
      'what is still out when it is over',
      facts({ isOver: true, out: 2 }),
      'The plan ended on 4 Dec. Take 2 pairs back.',
      '方案已于 12月4日 结束，请收回 2 双样鞋。',
    ],
  ];
  it.each(cases)('%s', (_, given, english, chinese) => {
    const headline = planHeadline(given);
    expect(headline.claims).toBe('nothing');
    expect(en.plan.headline(headline, say)).toBe(english);
    expect(zh.plan.headline(headline, sayZh)).toBe(chinese);
    expect(english.split(/\s+/).length).toBeLessThanOrEqual(12);
  });
});
