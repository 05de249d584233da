/** Too little, just right, too much: by testers, what it costs, and whether a change brought it closer. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  LEAST_FOR_COST,
  penaltyOf,
  reviewTwoSided,
  twoSidedChanges,
  type TwoSidedAnswer,
} from '../../../core/complaints/index.ts';
import type { TwoSidedId } from '../../../core/foot/index.ts';
import { idOf } from '../records/make.ts';

interface Published {
  readonly columns: readonly string[];
  /** The figures of one person, a digit a column. */
  readonly answers: readonly string[];
  readonly published: readonly ({ readonly question: string; readonly right: number } & Readonly<
    Record<
      'low' | 'high',
      {
        readonly share: number;
        readonly drop: number;
        readonly weighted: number;
        readonly welch95: readonly [number, number];
      }
    >
  >)[];
}

describe('penalty analysis', () => {
  const example = JSON.parse(
    readFileSync(new URL('../../reference/penalty.json', import.meta.url), 'utf8'),
  ) as Published;

  it.each(example.published)('gives the published figures of $question', (one) => {
    const at = example.columns.indexOf(one.question);
    const answers = example.answers.map((digits) => ({
      mark: 50 * (Number(digits[at]) - 3),
      overall: Number(digits[0]),
    }));
    const { counts, cost } = penaltyOf(answers);
    expect(counts.right / answers.length).toBeCloseTo(one.right, 5);
    for (const side of ['low', 'high'] as const) {
      expect(counts[side] / answers.length).toBeCloseTo(one[side].share, 5);
      expect(cost[side]?.points).toBeCloseTo(one[side].drop, 5);
      expect(cost[side]?.weighted).toBeCloseTo(one[side].weighted, 5);
      expect(cost[side]?.interval.lower).toBeCloseTo(one[side].welch95[0], 6);
      expect(cost[side]?.interval.upper).toBeCloseTo(one[side].welch95[1], 6);
    }
  });

  it('gives the interval of twelve against five that was worked out by hand', () => {
    // Means 70 and 52, standard deviations 10 and 12: standard error 6.09, 6.45 degrees of freedom.
    const spread = (n: number, mean: number, sd: number) => {
      const steps = Array.from({ length: n }, (_, at) => at - (n - 1) / 2);
      const own = Math.sqrt(steps.reduce((sum, one) => sum + one * one, 0) / (n - 1));
      return steps.map((one) => mean + (sd / own) * one);
    };
    const found = penaltyOf([
      ...spread(12, 70, 10).map((overall) => ({ mark: 0, overall })),
      ...spread(5, 52, 12).map((overall) => ({ mark: -50, overall })),
      ...[60, 61, 62].map((overall) => ({ mark: 50, overall })),
    ]).cost.low;
    expect(found?.points).toBeCloseTo(18, 9);
    expect(found?.interval.lower).toBeCloseTo(3.3, 1);
    expect(found?.interval.upper).toBeCloseTo(32.7, 1);
    expect(found?.weighted).toBeCloseTo(4.5, 9);
  });

  it('counts a side of too few and says nothing of what it costs', () => {
    const few = Array.from({ length: LEAST_FOR_COST - 1 }, () => ({ mark: -60, overall: 40 }));
    const right = Array.from({ length: 8 }, (_, at) => ({ mark: 0, overall: 70 + at }));
    expect(penaltyOf([...few, ...right])).toMatchObject({
      counts: { low: LEAST_FOR_COST - 1, right: 8, high: 0 },
      cost: { low: null, high: null },
    });
    const unscored = [...few, ...few].map(({ mark }) => ({ mark, overall: null }));
    expect(penaltyOf([...unscored, ...right]).cost.low).toBeNull();
  });
});

const answer = (
  tester: number,
  mark: number,
  more: Partial<TwoSidedAnswer> & { readonly of?: TwoSidedId } = {},
): TwoSidedAnswer => ({
  tester: idOf(tester),
  marks: { [more.of ?? 'heel-cushioning']: mark },
  overall: 70,
  firstImpression: false,
  ...more,
});
const heel = (answers: readonly TwoSidedAnswer[]) => {
  const [found] = reviewTwoSided(answers);
  if (!found) throw new Error('nothing found');
  return found;
};
const testersAt = (...marks: readonly number[]) => marks.map((mark, at) => answer(at, mark));

describe('testers on a line with the good point in the middle', () => {
  it('count once each, whatever the number of their runs', () => {
    const many = Array.from({ length: 30 }, () => answer(1, -60));
    const found = heel([...many, answer(2, 0), answer(3, 0), answer(3, 4)]);
    expect(found).toMatchObject({
      counts: { low: 1, right: 2, high: 0 },
      runs: 33,
      mean: { n: 3 },
    });
    expect(found.testers.map(({ mark, runs }) => [mark, runs])).toEqual([
      [-60, 30],
      [0, 1],
      [2, 2],
    ]);
  });

  it('are on a side only beyond what counts as just right', () => {
    expect(heel(testersAt(-16, -15, 0, 15, 16)).counts).toEqual({ low: 1, right: 3, high: 1 });
  });

  it('leave first wearings out', () => {
    expect(reviewTwoSided([answer(1, -60, { firstImpression: true })])).toEqual([]);
    const found = heel([answer(1, -60, { firstImpression: true }), answer(1, 0), answer(2, 0)]);
    expect(found.counts).toEqual({ low: 0, right: 2, high: 0 });
  });

  it('find it clearly too soft where eight of eight do, and likely where five do and three do not', () => {
    expect(heel(testersAt(-30, -40, -50, -60, -30, -40, -50, -60))).toMatchObject({
      word: 'low',
      sure: 'clear',
      p: 2 / 2 ** 8,
    });
    const five = heel(testersAt(-30, -40, -50, -60, -30, 0, 0, 0));
    expect(five).toMatchObject({ word: 'low', sure: 'likely', p: 2 / 2 ** 5 });
    expect(five.counts).toEqual({ low: 5, right: 3, high: 0 });
    const firm = heel(testersAt(30, 40, 50, 60, 30, 0, 0, 0));
    expect(firm).toMatchObject({ word: 'high', sure: 'likely' });
  });

  it('are never called clear where most find it right, however sure the lean', () => {
    const found = heel(testersAt(-50, -40, -12, -13, -14, -12, -13, -14));
    expect(found.adjustedP).toBeLessThan(0.05);
    expect(found).toMatchObject({ word: 'low', sure: 'likely' });
  });

  it('say nothing of either side where a fifth does not lie on one, or where few answered', () => {
    expect(heel(testersAt(-10, -12, -14, -10, -12, -14, -10, -12)).word).not.toBe('low');
    expect(heel(testersAt(-60, -60, -60, -60)).word).toBe('open');
    expect(heel(testersAt(-60)).word).toBe('open');
  });

  it('lie on both sides, and opposite ones do not make it just right', () => {
    expect(heel(testersAt(-60, -50, -40, 40, 50, 60)).word).toBe('split');
  });

  it('are shown to find it right only where the interval lies within', () => {
    expect(heel(testersAt(0, 0, 4, -4, 0, 3, -3, 0)).word).toBe('right');
    expect(heel(testersAt(0, 14, 14, 14, -2)).word).toBe('open');
  });

  it('pay for every further question that is asked', () => {
    const noisy = (at: number) => [
      answer(at, at < 5 ? -40 : 0),
      ...(['toe-room', 'heel-hold', 'arch', 'stability'] as const).map((of, nth) =>
        answer(at, ((at * 37 + nth * 53) % 80) - 40, { of }),
      ),
    ];
    const all = reviewTwoSided(Array.from({ length: 8 }, (_, at) => noisy(at)).flat());
    const found = all.find(({ attribute }) => attribute === 'heel-cushioning');
    expect(found?.p).toBeCloseTo(2 / 2 ** 5, 12);
    expect(found?.adjustedP).toBeGreaterThan(found?.p ?? 1);
  });

  it('cost what penalty analysis says, from the runs in which they answered both', () => {
    const overall = (at: number) => (at < 4 ? 50 + at : 70 + at);
    const answers = Array.from({ length: 8 }, (_, at) => [
      answer(at, at < 4 ? -50 : 0, { overall: overall(at) }),
      answer(at, at < 4 ? -50 : 0, { overall: null }),
    ]).flat();
    expect(heel(answers).cost.low?.points).toBeCloseTo(24, 9);
  });
});

describe('two rounds', () => {
  const round = (...marks: readonly number[]) => testersAt(...marks);

  it('are compared by those who answered in both, and closer to the middle is better', () => {
    const [change] = twoSidedChanges(
      [...round(-60, -50, -55, -60, -50), answer(50, 90)],
      [...round(-10, 0, -5, -10, 0), answer(60, -90)],
    );
    expect(change).toMatchObject({
      attribute: 'heel-cushioning',
      word: 'better',
      testers: 5,
      from: -55,
      to: -5,
      closer: 50,
      earlier: { low: 5, right: 0, high: 0 },
      later: { low: 0, right: 5, high: 0 },
    });
    expect(twoSidedChanges(round(-10, 0, -5), round(-60, -50, -55))[0]?.word).toBe('worse');
  });

  it('that overshoot are not called better', () => {
    expect(twoSidedChanges(round(-50, -55, -45, -50), round(50, 45, 55, 50))[0]).toMatchObject({
      word: 'no-relevant',
      closer: 0,
    });
  });

  it('of different testers are not compared', () => {
    expect(twoSidedChanges([answer(1, -50), answer(2, -50)], [answer(3, 0), answer(2, 0)])).toEqual(
      [],
    );
  });
});
