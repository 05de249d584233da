/** How far pairs go before they come apart, what is felt, and differences: against references and by hand. */
import { describe, expect, it } from 'vitest';
import {
  differenceOfChanges,
  feltStretches,
  fitWear,
  leftAgainstRight,
  reviewStructure,
  wearPrior,
  type WearSeries,
} from '../../../core/wear/index.ts';
import {
  binomialPmf,
  clopperPearson,
  weibull,
  weibullSurvival,
} from '../../../core/statistics/index.ts';
import { metres } from '../../../core/units/index.ts';

const km = (value: number) => metres(1000 * value);
const pair = (distance: number, event = false) => ({ time: 1000 * distance, event });

describe('structure', () => {
  it('says nothing before a pair has gone so far or broken', () => {
    expect(reviewStructure([pair(200), pair(350)], km(600))).toMatchObject({
      pairs: 2,
      failed: 0,
      held: null,
      weibull: null,
      word: 'not-known-yet',
    });
  });

  it('takes the exact interval while nothing has broken: 29 pairs are enough for 90 % at 90 %', () => {
    const of = (count: number) =>
      reviewStructure(
        Array.from({ length: count }, () => pair(650)),
        km(600),
      );
    expect(of(8).held).toMatchObject({ share: 1, reached: 8, ...clopperPearson(8, 8, 0.9) });
    expect(of(8).word).toBe('not-known-yet');
    // 0.05^(1/28) = 0.8985, 0.05^(1/29) = 0.9018 (one side of 90 %).
    expect(of(28).word).toBe('not-known-yet');
    expect(of(29).word).toBe('holds');
  });

  it('follows the curve of Kaplan and Meier once something broke', () => {
    const lifetimes = [
      pair(120, true),
      pair(300, true),
      pair(310),
      pair(700),
      pair(700),
      pair(90, true),
    ];
    const { held, failed, word } = reviewStructure(lifetimes, km(600));
    expect(failed).toBe(3);
    // By hand: 5/6 · 4/5 · 3/4 = 1/2 hold; nobody left before the last failure, so six pairs' worth of it.
    expect(held?.share).toBeCloseTo(0.5, 12);
    const exact = clopperPearson(3, 6, 0.9);
    expect(held?.lower).toBeCloseTo(exact.lower, 9);
    expect(held?.upper).toBeCloseTo(exact.upper, 9);
    expect(held?.reached).toBe(2);
    expect(word).toBe('does-not-hold');
  });

  it('is not sure of anything by one or two pairs, nor where none has come so far', () => {
    const word = (...lifetimes: ReturnType<typeof pair>[]) =>
      reviewStructure(lifetimes, km(500)).word;
    expect(word(pair(50, true))).toBe('not-known-yet');
    expect(word(pair(50, true), pair(600))).toBe('not-known-yet');
    const nine = Array.from({ length: 9 }, () => pair(100));
    expect(word(...nine, pair(300, true))).toBe('not-known-yet');
    const many = Array.from({ length: 59 }, () => pair(100));
    expect(reviewStructure([pair(50, true), ...many], km(500))).toMatchObject({
      held: { lower: 0, reached: 0 },
      word: 'not-known-yet',
    });
  });

  it('counts a pair that broke in its first run', () => {
    const review = reviewStructure(
      [pair(0, true), ...Array.from({ length: 29 }, () => pair(600))],
      km(500),
    );
    expect(review).toMatchObject({ failed: 1, word: 'not-known-yet' });
  });

  it('says "does not hold" of a round that just holds in at most a twentieth of tests', () => {
    // All failures before the distance, nobody leaves earlier: binomial, so the sum is exact.
    for (const count of [1, 2, 5, 6, 10, 12]) {
      let wrong = 0;
      for (let broken = 0; broken <= count; broken++) {
        const lifetimes = Array.from({ length: count }, (_, at) =>
          at < broken ? pair(100 + at, true) : pair(600),
        );
        if (reviewStructure(lifetimes, km(500)).word === 'does-not-hold')
          wrong += binomialPmf(broken, count, 0.1);
      }
      expect(wrong, `${count} pairs`).toBeLessThanOrEqual(0.05);
    }
  });

  it('adds a Weibull curve from three failures on, the one that survreg finds (see weibull.test)', () => {
    const lifetimes = [pair(100, true), pair(250, true), pair(420, true), pair(500), pair(500)];
    const fit = weibull(lifetimes);
    if (!fit) throw new Error('no fit');
    const review = reviewStructure(lifetimes, km(600));
    expect(review.weibull?.shape).toBe(fit.shape);
    expect(review.weibull?.held.share).toBe(weibullSurvival(fit, 600_000, 0.9).survival);
    expect(reviewStructure(lifetimes.slice(1), km(600)).weibull).toBeNull();
  });
});

describe('felt cushioning', () => {
  it('shows testers’ means by stretches of 50 km', () => {
    const stretches = feltStretches([
      { tester: 'a', score: 80, pairM: km(10) },
      { tester: 'a', score: 70, pairM: km(40) },
      { tester: 'b', score: 60, pairM: km(30) },
      { tester: 'b', score: 40, pairM: km(60) },
    ]);
    expect(stretches).toMatchObject([
      { fromM: 0, toM: 50_000, mean: { n: 2, mean: 67.5 } },
      { fromM: 50_000, toM: 100_000, mean: { n: 1, mean: 40 } },
    ]);
  });
});

describe('differences', () => {
  const series = (kept: number): WearSeries<'energy-absorbed J'> => ({
    kind: 'energy-absorbed J',
    site: 'heel-centre',
    checks: ['a', 'b', 'c', 'd'].flatMap((name, at) =>
      [0, 100, 200, 300].map((x) => ({
        kind: 'energy-absorbed J' as const,
        pair: name,
        distance: km(x),
        value: (2 + 0.02 * at) * (1 + x / 50) ** (Math.log(kept) / Math.log(11)),
      })),
    ),
  });
  const fit = (kept: number) => fitWear(series(kept), wearPrior('energy-absorbed J', 'other'));

  it('of two foams leave zero out where they differ, and hold it where they do not', () => {
    const apart = differenceOfChanges(fit(0.9), fit(0.6), km(300));
    expect(apart.lower).toBeGreaterThan(1);
    const same = differenceOfChanges(fit(0.75), fit(0.75), km(300));
    expect(same.median).toBeCloseTo(1, 10);
    expect(same.lower).toBeLessThan(1);
    expect(same.upper).toBeGreaterThan(1);
  });

  it('of left and right are paired within the pair', () => {
    const shoes = [
      { pair: 'a', distance: km(0), left: 30, right: 30.2 },
      { pair: 'a', distance: km(300), left: 29, right: 29.6 },
      { pair: 'b', distance: km(0), left: 31, right: 31 },
      { pair: 'b', distance: km(300), left: 30.2, right: 30.4 },
    ];
    // Left changed by 0.4 and by 0.2 mm more.
    expect(leftAgainstRight(shoes)).toMatchObject({
      n: 2,
      mean: expect.closeTo(-0.3, 10) as number,
    });
    expect(leftAgainstRight(shoes.slice(0, 3))).toBeNull();
  });
});
