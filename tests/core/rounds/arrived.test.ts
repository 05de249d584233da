/** Whether a change is in the samples: the words by their intervals, figures worked by hand, sizes, gauges, rounding. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { StructuredChange } from '../../../core/records/index.ts';
import {
  amountIn,
  arrivalWord,
  measuredAt,
  nominalFor,
  pairsToTell,
  sampleDifference,
  turned,
  usualGaugeError,
  usualScatter,
  type SampleReading,
} from '../../../core/rounds/index.ts';
import { tQuantile } from '../../../core/statistics/index.ts';
import { idOf } from '../records/make.ts';

/** A reading on the left shoe of a pair. */
const read = (
  pair: number,
  value: number,
  sizeMm = 270,
  more: Partial<SampleReading> = {},
): SampleReading => ({
  pair: idOf(pair),
  measure: 'dimension',
  site: 'collar-height-lateral',
  unit: 'mm',
  foot: 'left',
  value,
  sizeMm,
  gauges: ['C2'],
  uncertainty: null,
  ...more,
});

describe('the word of an interval', () => {
  it.each([
    ['arrived', 3, 2.6, 3.2],
    ['arrived', 3, 0.1, 3],
    ['beyond', 3, 3.1, 4],
    ['partly', 3, 0.4, 1],
    ['not', 3, -0.2, 0.6],
    ['not', 3, -2, -1],
    ['open', 3, -0.2, 3.1],
    ['arrived', null, 0.2, 5],
    ['not', null, -5, -0.2],
    ['open', null, -1, 5],
  ] as const)('%s: of %s, between %s and %s', (word, amount, lower, upper) => {
    expect(arrivalWord(amount, { lower, upper })).toBe(word);
  });

  it('is not measured without one', () => {
    expect(arrivalWord(3, null)).toBe('not-measured');
    expect(arrivalWord(null, null)).toBe('not-measured');
  });

  it('is one word for every interval: it arrived only where nothing is left out and the amount is held', () => {
    const figure = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 9, noNaN: true }), figure, figure, (amount, a, b) => {
        const [lower, upper] = [Math.min(a, b), Math.max(a, b)];
        const word = arrivalWord(amount, { lower, upper });
        if (word === 'arrived') expect(lower > 0 && upper >= amount * (1 - 1e-8)).toBe(true);
        if (word === 'not') expect(lower <= 1e-8 * amount && upper < amount).toBe(true);
        if (word === 'partly') expect(lower > 0 && upper < amount).toBe(true);
        if (word === 'open')
          expect(lower <= 1e-8 * amount && upper >= amount * (1 - 1e-8)).toBe(true);
        if (word === 'beyond') expect(lower > amount).toBe(true);
        // More of it never makes the word worse.
        const order = ['not', 'open', 'partly', 'arrived', 'beyond'];
        const more = arrivalWord(amount, { lower: lower + 20, upper: upper + 20 });
        expect(order.indexOf(more)).toBe(4);
      }),
    );
  });

  it('turns with its direction', () => {
    expect(turned({ lower: -3, upper: -1 }, -1)).toEqual({ lower: 1, upper: 3 });
    expect(turned({ lower: -3, upper: -1 }, 1)).toEqual({ lower: -3, upper: -1 });
  });
});

describe('the difference of samples', () => {
  it('counts a pair once, by the mean of its shoes, worked by hand', () => {
    // Pairs 60, 62 before; 63, 65 after: 3 more, Welch on two and two: se √(2/2 + 2/2) = √2, 2 degrees of freedom.
    const both = (pair: number, left: number, right: number) => [
      read(pair, left),
      read(pair, right, 270, { foot: 'right' }),
    ];
    const found = sampleDifference(
      [...both(1, 59, 61), ...both(2, 61.5, 62.5)],
      [...both(3, 63, 63), ...both(4, 64, 66)],
    );
    expect(found?.difference).toBeCloseTo(3, 12);
    expect(found?.later.n).toBe(2);
    expect(found?.interval?.upper).toBeCloseTo(3 + tQuantile(0.975, 2) * Math.SQRT2, 9);
    expect(found).toMatchObject({ against: 'round', sizes: [270], gaugesUnknown: false });
  });

  it('never takes a size for a change: only pairs of one size are set against each other', () => {
    // The later round is two sizes longer and 1 mm a size higher for that alone.
    const at = (size: number) => 60 + (size - 260) / 5;
    const earlier = [260, 265, 270].map((size, n) => read(n + 1, at(size), size));
    const later = [270, 275, 280].map((size, n) => read(n + 11, at(size), size));
    expect(sampleDifference(earlier, later)).toMatchObject({ difference: 0, sizes: [270] });
    expect(sampleDifference(earlier, later.slice(1))).toBeNull();
    const longer = [260, 265, 270].map((size, n) => read(n + 21, at(size) + 3, size));
    expect(sampleDifference(earlier, longer)?.difference).toBeCloseTo(3, 12);
  });

  it('compares deviations where every size has its own nominal', () => {
    const graded = (size: number) => 60 + (size - 260) / 5;
    const found = sampleDifference(
      [read(1, 60.2, 260), read(2, 61.2, 265)],
      [read(3, 65.3, 270), read(4, 66.1, 275)],
      graded,
    );
    // Deviations 0.2 and 0.2 before, 3.3 and 3.1 now.
    expect(found?.difference).toBeCloseTo(3, 12);
    expect(found?.later.mean).toBeCloseTo(62.5 + 3.2, 12);
    expect(found?.sizes).toEqual([260, 265, 270, 275]);
  });

  it('holds it against the drawing of the round before where that was not read, at its size alone', () => {
    const nominal = (size: number) => nominalFor({ nominal: 58 }, size, 270);
    const found = sampleDifference([], [read(1, 60.9), read(2, 61.1), read(3, 70, 300)], nominal);
    expect(found).toMatchObject({ against: 'nominal', sizes: [270], earlier: { n: 0, mean: 58 } });
    expect(found?.difference).toBeCloseTo(3, 12);
    expect(sampleDifference([], [read(3, 70, 300)], nominal)).toBeNull();
    expect(sampleDifference([], [read(1, 60)])).toBeNull();
    expect(sampleDifference([read(1, 60)], [])).toBeNull();
  });

  it('is no surer than the figures are written: whole millimetres that agree are not exact', () => {
    const whole = sampleDifference([read(1, 60), read(2, 60)], [read(3, 63), read(4, 63)]);
    const half = (tQuantile(0.975, 2) * 1) / Math.sqrt(12);
    expect(whole?.interval?.lower).toBeCloseTo(3 - half, 9);
    const tenths = sampleDifference([read(1, 60.1), read(2, 60.1)], [read(3, 63.1), read(4, 63.1)]);
    expect(tenths?.interval?.lower).toBeCloseTo(3 - half / 10, 9);
  });

  it('adds what two gauges err by, and nothing where one gauge read both rounds', () => {
    const of = (gauge: string, uncertainty: number | null) => ({ gauges: [gauge], uncertainty });
    const before = [59, 60, 61].map((value, n) => read(n + 1, value, 270, of('C2', 0.3)));
    const after = (more: Partial<SampleReading>) =>
      [62, 63, 64].map((value, n) => read(n + 11, value, 270, more));
    const [same, other, unknown] = [of('C2', 0.3), of('C9', 0.4), of('C9', null)].map((more) =>
      sampleDifference(before, after(more)),
    );
    const width = (one: typeof same) => (one?.interval?.upper ?? 0) - (one?.interval?.lower ?? 0);
    expect(width(other)).toBeGreaterThan(width(same));
    // Scatter 1 in each round: √(2/3) on four degrees of freedom; gauges 0.5 together.
    expect(width(other) / 2).toBeCloseTo(
      Math.hypot(tQuantile(0.975, 4) * Math.sqrt(2 / 3), 1.959963985 * 0.5),
      6,
    );
    expect(unknown?.gaugesUnknown).toBe(true);
    // What nobody knows of the other gauge is taken as usual; what is known of the first stays.
    const usual = sampleDifference(before, after(of('C9', null)), () => null, 0.4);
    expect(width(usual)).toBeCloseTo(width(other), 12);
    expect(usualGaugeError('dimension', 'collar-height-lateral', null)).toBeCloseTo(0.2, 12);
    expect(usualGaugeError('dimension', 'own-place', null)).toBe(0);
  });

  it('of one pair each says what was read, and no interval', () => {
    expect(sampleDifference([read(1, 60)], [read(2, 63)])).toMatchObject({
      difference: 3,
      interval: null,
      differs: null,
      p: null,
    });
  });
});

describe('where a change is measured', () => {
  const change = (more: Partial<StructuredChange>): StructuredChange => ({
    part: 'upper-pattern',
    direction: 'higher',
    ...more,
  });
  const mm = { by: { amount: 3, unit: 'mm' as const } };

  it('is the dimension itself, or the usual one at a line, with the sign of its direction', () => {
    const dimension = { measure: 'dimension', site: 'own-place' } as const;
    expect(measuredAt(change({ dimension, direction: 'less', ...mm }), [])).toEqual([
      { ...dimension, unit: 'mm', sign: -1 },
    ]);
    expect(measuredAt(change({ line: 'collar', side: 'lateral', ...mm }), [])).toEqual([
      { measure: 'dimension', site: 'collar-height-lateral', unit: 'mm', sign: 1 },
    ]);
    expect(measuredAt(change({ line: 'collar', direction: 'lower' }), [])).toHaveLength(2);
    expect(measuredAt(change({ line: 'throat', direction: 'forward' }), [])[0]?.sign).toBe(-1);
  });

  it('is nowhere for a line that no usual dimension ends at, an angle, or a part as a whole by mm', () => {
    expect(measuredAt(change({ line: 'saddle' }), [])).toEqual([]);
    expect(measuredAt(change({ line: 'collar', direction: 'inward', ...mm }), [])).toEqual([]);
    expect(measuredAt(change({ line: 'collar', by: { amount: 3, unit: 'deg' } }), [])).toEqual([]);
    expect(measuredAt(change({ direction: 'more', ...mm }), [])).toEqual([]);
  });

  it('is hardness where a sole grows harder, at every place that was read, and mass by grams', () => {
    const harder = change({
      part: 'midsole-foam',
      direction: 'more',
      by: { amount: 4, unit: 'asker-c' },
    });
    const place = { measure: 'hardness', unit: 'asker-c' } as const;
    expect(
      measuredAt(harder, [
        { ...place, site: 'forefoot-centre' },
        { ...place, site: 'heel-centre' },
      ]).map(({ site }) => site),
    ).toEqual(['forefoot-centre', 'heel-centre']);
    expect(measuredAt(harder, [])).toEqual([{ ...place, site: 'heel-centre', sign: 1 }]);
    expect(measuredAt({ ...harder, by: { amount: 9, unit: 'g' }, direction: 'less' }, [])).toEqual([
      { measure: 'mass', site: 'shoe', unit: 'g', sign: -1 },
    ]);
  });

  it('takes a per cent of what was measured before', () => {
    expect(amountIn({ amount: 5, unit: '%' }, 'mm', 60)).toBe(3);
    expect(amountIn({ amount: 5, unit: '%' }, 'mm', null)).toBeNull();
    expect(amountIn({ amount: 5, unit: 'mm' }, 'mm', null)).toBe(5);
    expect(amountIn({ amount: 5, unit: 'g' }, 'mm', 60)).toBeNull();
    expect(amountIn(undefined, 'mm', 60)).toBeNull();
  });
});

describe('how many pairs would tell', () => {
  it('is the least with which the interval cannot hold nothing and the amount at once', () => {
    const n = pairsToTell(3, 1, 'round');
    const width = (pairs: number) => 2 * tQuantile(0.975, 2 * pairs - 2) * Math.sqrt(2 / pairs);
    expect(n).not.toBeNull();
    expect(width(n ?? 0)).toBeLessThan(3);
    expect(width((n ?? 0) - 1)).toBeGreaterThanOrEqual(3);
    expect(pairsToTell(3, 1, 'nominal')).toBeLessThanOrEqual(n ?? 0);
    expect(pairsToTell(0.01, 5, 'round')).toBeNull();
  });

  it('takes half of the usual tolerance for the scatter where nobody measured it', () => {
    expect(usualScatter('dimension', 'collar-height-lateral', null)).toBe(1);
    expect(usualScatter('dimension', 'own-place', null)).toBeNull();
    expect(usualScatter('mass', 'shoe', 250)).toBe(6.25);
    expect(usualScatter('mass', 'shoe', null)).toBeNull();
    expect(usualScatter('hardness', 'forefoot-centre', null)).toBe(1.5);
  });
});
