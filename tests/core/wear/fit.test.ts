/**
 * The fit of a round's checks: against brute-force integration of the whole model on a fine grid, and what it
 * says of planted truths. Coverage is measured in tests/calibrate/wear.ts.
 */
import type { FoamId } from '../../../core/foot/index.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../../core/statistics/index.ts';
import { metres, type Metres } from '../../../core/units/index.ts';
import {
  fitWear,
  forms,
  nextChecks,
  wearPrior,
  type WearCheck,
  type WearKind,
} from '../../../core/wear/index.ts';

const km = (value: number): Metres => metres(value * 1000);

const check = <Kind extends WearKind>(
  kind: Kind,
  pair: string,
  atKm: number,
  value: number,
): WearCheck<Kind> => ({ kind, pair, distance: km(atKm), value });

const fit = <Kind extends WearKind>(
  kind: Kind,
  checks: readonly WearCheck<Kind>[],
  foam: FoamId = 'eva',
  start?: { readonly value: number; readonly sd: number },
) => fitWear({ kind, site: 'heel-centre', checks }, wearPrior<Kind>(kind, foam, start));

/** Energies that fall by the power law with d0 of 50 km, the change at 500 km given for each pair. */
const energies = (changes: readonly number[], atKm: readonly number[], wobble = 0.01) =>
  changes.flatMap((change, pair) =>
    atKm.map((x, at) =>
      check(
        'energy-absorbed J',
        `pair ${pair}`,
        x,
        5 *
          Math.exp(
            (change * Math.log1p(x / 50)) / Math.log(11) +
              wobble * (((pair * 7 + at * 5) % 3) - 1) +
              0.02 * ((pair % 3) - 1),
          ),
      ),
    ),
  );
const six = energies([-0.3, -0.27, -0.33, -0.29, -0.35, -0.25], [0, 50, 150, 300]);
const keepsThreeQuarters = { bound: 'at-least', value: 0.75, basis: 'share-of-new' } as const;

describe('against brute force', () => {
  it('two pairs, two checks: every unknown on a fine grid', () => {
    const prior = wearPrior('stack-height mm', 'eva');
    const seen = [
      { pair: 0, x: 0, y: 0.2 },
      { pair: 0, x: 200_000, y: -0.7 },
      { pair: 1, x: 0, y: -0.3 },
      { pair: 1, x: 200_000, y: -0.9 },
    ];
    // With two checks a pair, all enters by four normal sums: mean of pairs and half their difference, of
    // starts and of ends. So the likelihood is two densities of two dimensions.
    const middles = (from: number, to: number, count: number) =>
      Array.from({ length: count }, (_, at) => from + ((to - from) * (at + 0.5)) / count);
    const thetas = middles(-3.5, 1.5, 30);
    const pairSds = middles(0, 1.6, 12);
    const logErrors = middles(Math.log(0.3) - 1.6, Math.log(0.3) + 1.6, 10);
    const startSds = middles(0, 5, 25);
    const [start0, end0, start1, end1] = seen.map(({ y }) => y) as [number, number, number, number];
    // The vague mean start is integrated by its own formula: differences of pairs and changes within them.
    const within = [end0 - start0, end1 - start1] as const;
    let [all, below, first] = [0, 0, 0];
    const goal = 500_000;
    const asked = -1.2;
    for (const form of forms) {
      const bends = form.bend
        ? middles(-3, 3, 10).map((z) => ({
            bend: (form.bend?.median ?? 1) * Math.exp((form.bend?.logSd ?? 0) * z),
            weight: (Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)) * (6 / 10),
          }))
        : [{ bend: 1, weight: 1 }];
      for (const { bend, weight } of bends) {
        const g = form.share(200_000, bend);
        const h = form.share(goal, bend);
        for (const pairSd of pairSds)
          for (const logError of logErrors)
            for (const startSd of startSds) {
              const e2 = Math.exp(2 * logError);
              const spreadPrior =
                Math.exp(
                  -0.5 * (pairSd / prior.pairSpread.size) ** 2 -
                    0.5 * ((logError - Math.log(0.3)) / 0.5) ** 2,
                ) *
                (1 + (startSd / prior.startSpread.size) ** 2 / 4) ** -2.5;
              // Start and change within a pair: covariance of (y0, y1 - y0).
              const [v00, v01, v11] = [startSd ** 2 + e2, -e2, 2 * e2 + g * g * pairSd ** 2];
              const slopeOn = v01 / v11;
              const rest = v00 - v01 * slopeOn;
              for (const theta of thetas) {
                const away = within.map((change) => change - theta * g);
                const changes =
                  Math.exp((-0.5 * ((away[0] as number) ** 2 + (away[1] as number) ** 2)) / v11) /
                  v11;
                // Starts given changes, the mean start flat: only the difference of the two tells.
                const [s0, s1] = [
                  start0 - slopeOn * (away[0] as number),
                  start1 - slopeOn * (away[1] as number),
                ];
                const starts = Math.exp((-0.25 * (s0 - s1) ** 2) / rest) / Math.sqrt(rest);
                const mass =
                  form.weight *
                  weight *
                  spreadPrior *
                  changes *
                  starts *
                  Math.exp(-0.5 * ((theta - prior.change.mean) / prior.change.sd) ** 2);
                all += mass;
                if (form.name === 'power') first += mass;
                // A new pair's value: mean start flat given the two, then its own spreads.
                const mu = (s0 + s1) / 2;
                const sd = Math.sqrt(rest / 2 + startSd ** 2 + h * h * pairSd ** 2);
                below += mass * normalCdf((asked - (mu + theta * h)) / sd);
              }
            }
      }
    }
    const found = fit(
      'stack-height mm',
      seen.map(({ pair, x, y }) => check('stack-height mm', `pair ${pair}`, x / 1000, 38 + y)),
    );
    const held = found.chanceToHold(
      { bound: 'at-least', value: 38 + asked, basis: 'reading' },
      km(500),
    );
    expect(Math.abs((held?.chance ?? 0) - (1 - below / all))).toBeLessThan(0.01);
    // Beyond 400 km nothing is sure, and the share of each form is that of the fine grid.
    expect(Math.abs(found.forms.power - first / all)).toBeLessThan(0.01);
  });
});

describe('what the checks say', () => {
  it('a foam that loses energy falls, and its change is near the truth', () => {
    const found = fit('energy-absorbed J', six);
    expect(found.basis).toBe('checks');
    expect(found.direction).toBe('falls');
    const { median, lower, upper, beyondChecks } = found.changeAt(km(300));
    const truth = Math.exp((-0.298 * Math.log(7)) / Math.log(11));
    expect(Math.abs(median - truth)).toBeLessThan(0.02);
    expect(lower).toBeLessThan(truth);
    expect(upper).toBeGreaterThan(truth);
    expect(beyondChecks).toBe(false);
    expect(found.changeAt(km(301)).beyondChecks).toBe(true);
    expect(found.reach).toBe(600_000);
    // The pair's own value is known better than a new pair's.
    const width = (pair?: string) => {
      const at = found.valueAt(km(300), pair === undefined ? {} : { pair });
      return (at?.upper ?? NaN) - (at?.lower ?? NaN);
    };
    expect(width('pair 0')).toBeLessThan(width() / 2);
    expect(width('never seen')).toBe(width());
  });

  it('a foam that softens is said to: the peak falls, against a prior that it rises', () => {
    const softer = [-0.06, -0.07, -0.05, -0.08].flatMap((change, pair) =>
      [0, 100, 200, 300].map((x) =>
        check('impact-peak N', `pair ${pair}`, x, (970 + 5 * pair) * Math.exp((change * x) / 300)),
      ),
    );
    expect(fit('impact-peak N', softer).direction).toBe('falls');
    expect(fit('impact-peak N', softer, 'pu').direction).toBe('falls');
  });

  it('readings that only scatter show no change', () => {
    const scatter = [0, 1, 2].flatMap((pair) =>
      [0, 100, 300].map((x, at) =>
        check('hardness asker-c', `pair ${pair}`, x, 45 + (((pair + 1) * (at + 2) * 3) % 4) - 1.5),
      ),
    );
    expect(fit('hardness asker-c', scatter).direction).toBe('no-change-shown');
  });

  it('forms: three points of distance do not tell them apart, many exact ones do', () => {
    const few = fit('energy-absorbed J', energies([-0.3, -0.3, -0.3], [0, 100, 300]));
    expect(few.toldApart).toBeNull();
    expect(few.forms.power + few.forms.plateau + few.forms.line).toBeCloseTo(1, 9);
    const many = fit(
      'energy-absorbed J',
      energies([-0.3, -0.3, -0.3, -0.3], [0, 10, 25, 50, 100, 200, 400, 800], 0.003),
    );
    expect(many.toldApart).toBe('power');
  });
});

describe('limits', () => {
  it('distance to a limit and chance to hold speak of the same thing', () => {
    const found = fit('energy-absorbed J', six);
    const { lower, median, upper } = found.limitDistance(keepsThreeQuarters) ?? {};
    expect(lower).toBeGreaterThan(0);
    for (const [at, chance] of [
      [lower, 0.95],
      [median, 0.5],
      [upper, 0.05],
    ] as const)
      if (typeof at === 'number')
        expect(found.chanceToHold(keepsThreeQuarters, at)?.chance).toBeCloseTo(chance, 2);
    expect(found.chanceToHold(keepsThreeQuarters, km(20))?.word).toBe('holds');
    expect(found.chanceToHold({ ...keepsThreeQuarters, value: 0.95 }, km(500))?.word).toBe(
      'does-not-hold',
    );
    expect(found.chanceToHold({ ...keepsThreeQuarters, value: 0.74 }, km(500))?.word).toBe(
      'not-known-yet',
    );
  });

  it('nothing is told beyond twice the greatest distance', () => {
    const found = fit('energy-absorbed J', six);
    const far = { ...keepsThreeQuarters, value: 0.4 };
    expect(found.limitDistance(far)).toEqual({
      lower: 'beyond-checks',
      median: 'beyond-checks',
      upper: 'beyond-checks',
    });
    expect(found.chanceToHold(far, km(600))?.word).toBe('holds');
    expect(found.chanceToHold(far, km(601))?.word).toBe('not-known-yet');
  });

  it('a limit by share and the same limit by reading agree for a pair whose start is known well', () => {
    const stack = [0, 1, 2].flatMap((pair) =>
      [0, 0, 0, 0, 100, 200, 300].map((x) => check('stack-height mm', `p${pair}`, x, 40 - x / 250)),
    );
    const found = fit('stack-height mm', stack);
    const share = { bound: 'at-least', value: 0.975, basis: 'share-of-new' } as const;
    const reading = { bound: 'at-least', value: 39, basis: 'reading' } as const;
    const [one, other] = [share, reading].map(
      (limit) => found.chanceToHold(limit, km(260), { pair: 'p0' })?.chance ?? NaN,
    ) as [number, number];
    expect(Math.abs(one - other)).toBeLessThan(0.05);
    const above = found.chanceToHold({ ...reading, bound: 'at-most' }, km(260), { pair: 'p0' });
    expect((above?.chance ?? 0) + other).toBeCloseTo(1, 9);
  });
});

describe('before any check', () => {
  it('only the prior speaks, and says so', () => {
    const found = fit('energy-absorbed J', []);
    expect(found.basis).toBe('prior-only');
    expect(found.direction).toBe('no-change-shown');
    expect(found.pairs).toEqual([]);
    expect(found.reach).toBe(500_000);
    expect(found.valueAt(km(100))).toBeNull();
    expect(
      found.chanceToHold({ bound: 'at-least', value: 4, basis: 'reading' }, km(100)),
    ).toBeNull();
    expect(found.limitDistance({ bound: 'at-least', value: 4, basis: 'reading' })).toBeNull();
    expect(found.chanceToHold(keepsThreeQuarters, km(500))?.word).toBe('not-known-yet');
    expect(found.forms.power).toBeCloseTo(forms[0]?.weight ?? NaN, 1);
    // The mean of the round: prior -0.30 with SD 0.12, pairs half-normal 0.09 around it.
    const { lower, median, upper } = found.changeAt(km(500));
    expect(median).toBeCloseTo(Math.exp(-0.3), 2);
    expect(lower).toBeLessThan(Math.exp(-0.3 - 1.645 * 0.12));
    expect(upper).toBeGreaterThan(Math.exp(-0.3 + 1.645 * 0.12));
  });

  it('a blueprint gives the start', () => {
    const found = fit('stack-height mm', [], 'eva', { value: 38, sd: 0.3 });
    expect(found.valueAt(km(0))?.median).toBeCloseTo(38, 6);
    expect(found.valueAt(km(500))?.median).toBeCloseTo(37, 1);
    const energy = fit('energy-absorbed J', [], 'eva', { value: 5, sd: 0.1 });
    expect(energy.valueAt(km(0))?.median).toBeCloseTo(5, 6);
  });

  it('checks at one distance alone show the start and no change', () => {
    const found = fit('energy-absorbed J', energies([-0.3, -0.3], [0]));
    expect(found.basis).toBe('prior-only');
    expect(found.direction).toBe('no-change-shown');
    expect(found.valueAt(km(0))?.median).toBeCloseTo(5, 0);
  });
});

describe('pairs', () => {
  it('one that wears otherwise is named, with its side', () => {
    const odd = energies([-0.3, -0.27, -0.33, -0.29, -1.1, -0.25], [0, 50, 150, 300]);
    const found = fit('energy-absorbed J', odd).outlyingPairs();
    expect(found.map(({ pair, change }) => [pair, change])).toEqual([['pair 4', 'lower']]);
    expect(found[0]?.p).toBeLessThan(0.01);
  });

  it('none among like ones, and none sought among fewer than three', () => {
    expect(fit('energy-absorbed J', six).outlyingPairs()).toEqual([]);
    const two = energies([-0.1, -1.5], [0, 50, 150, 300]);
    expect(fit('energy-absorbed J', two).outlyingPairs()).toEqual([]);
  });
});

describe('next checks', () => {
  it('ranks by the narrowing, which is a share, and prefers the far check of the pair asked about', () => {
    const found = fit('energy-absorbed J', six);
    const candidates = [
      { pair: 'pair 0', distance: km(0) },
      { pair: 'pair 0', distance: km(450) },
      { pair: 'pair 1', distance: km(450) },
    ];
    const ranked = nextChecks(found, candidates, km(500), { pair: 'pair 0' });
    expect(ranked[0]).toMatchObject({ pair: 'pair 0', distance: 450_000 });
    for (const { narrowing } of ranked) {
      expect(narrowing).toBeGreaterThanOrEqual(0);
      expect(narrowing).toBeLessThan(1);
    }
    const ofNew = nextChecks(found, [...candidates, { pair: 'new', distance: km(450) }], km(500));
    expect(ofNew[0]?.narrowing).toBeLessThan(ranked[0]?.narrowing ?? 0);
  });

  it('what is promised is what comes: the check is made and the interval narrows by about that', () => {
    const found = fit('energy-absorbed J', six);
    const width = (of: typeof found) => {
      const at = of.changeAt(km(500), { pair: 'pair 0' });
      return Math.log(at.upper / at.lower);
    };
    const promised = found.narrowing({ pair: 'pair 0', distance: km(500) }, km(500), {
      pair: 'pair 0',
    });
    const value = found.valueAt(km(500), { pair: 'pair 0' })?.median ?? NaN;
    const after = fit('energy-absorbed J', [
      ...six,
      check('energy-absorbed J', 'pair 0', 500, value),
    ]);
    expect(Math.abs(1 - width(after) / width(found) - promised)).toBeLessThan(0.15);
  });
});

describe('the same answer every time', () => {
  it('bit for bit, whatever the order of the checks', () => {
    const say = (checks: readonly WearCheck<'energy-absorbed J'>[]) => {
      const found = fit('energy-absorbed J', checks);
      return JSON.stringify([
        found.forms,
        found.pairs,
        found.valueAt(km(500)),
        found.valueAt(km(500), { pair: 'pair 2' }),
        found.limitDistance(keepsThreeQuarters),
      ]);
    };
    const once = say(six);
    fc.assert(
      fc.property(fc.shuffledSubarray(six, { minLength: six.length }), (order) => {
        expect(say(order)).toBe(once);
      }),
      { numRuns: 10 },
    );
  });

  it('in another unit of the same scale: a ratio does not care', () => {
    const found = fit('energy-absorbed J', six);
    const tenfold = fit(
      'energy-absorbed J',
      six.map((one) => ({ ...one, value: one.value * 10 })),
    );
    expect(tenfold.changeAt(km(500)).median).toBeCloseTo(found.changeAt(km(500)).median, 6);
  });

  it('any plausible checks give finite, ordered answers', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            pair: fc.constantFrom('a', 'b', 'c'),
            x: fc.integer({ min: 0, max: 1500 }),
            value: fc.double({ min: 1, max: 30, noNaN: true }),
          }),
          { minLength: 1, maxLength: 12 },
        ),
        (rows) => {
          const found = fit(
            'energy-absorbed J',
            rows.map(({ pair, x, value }) => check('energy-absorbed J', pair, x, value)),
          );
          for (const of of [{}, { pair: 'a' }]) {
            const at = found.valueAt(km(500), of);
            expect(at).not.toBeNull();
            expect(Number.isFinite(at?.lower) && Number.isFinite(at?.upper)).toBe(true);
            expect(at?.lower).toBeLessThanOrEqual(at?.median ?? NaN);
            expect(at?.median).toBeLessThanOrEqual(at?.upper ?? NaN);
          }
          for (const { p } of found.outlyingPairs()) expect(p).toBeLessThanOrEqual(0.01);
        },
      ),
      { numRuns: 60 },
    );
  });
});
