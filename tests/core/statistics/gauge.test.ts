/** Gauge studies against the worked example of AIAG, Measurement Systems Analysis, 4th ed., figure III-B 15. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gaugeStudy, type GaugeReading } from '../../../core/statistics/index.ts';

const TABLE = `
A 0.29 -0.56 1.34 0.47 -0.80 0.02 0.59 -0.31 2.26 -1.36
A 0.41 -0.68 1.17 0.50 -0.92 -0.11 0.75 -0.20 1.99 -1.25
A 0.64 -0.58 1.27 0.64 -0.84 -0.21 0.66 -0.17 2.01 -1.31
B 0.08 -0.47 1.19 0.01 -0.56 -0.20 0.47 -0.63 1.80 -1.68
B 0.25 -1.22 0.94 1.03 -1.20 0.22 0.55 0.08 2.12 -1.62
B 0.07 -0.68 1.34 0.20 -1.28 0.06 0.83 -0.34 2.19 -1.50
C 0.04 -1.38 0.88 0.14 -1.46 -0.29 0.02 -0.46 1.77 -1.49
C -0.11 -1.13 1.09 0.20 -1.07 -0.67 0.01 -0.56 1.45 -1.77
C -0.15 -0.96 0.67 0.11 -1.45 -0.49 0.21 -0.49 1.87 -2.16`;

const example: readonly GaugeReading[] = TABLE.trim()
  .split('\n')
  .flatMap((line) => {
    const [operator = '', ...values] = line.split(' ');
    return values.map((value, part) => ({ operator, part: `part ${part}`, value: Number(value) }));
  });

const read = (readings: readonly GaugeReading[], width: number | null = null) => {
  const result = gaugeStudy(readings, width);
  if (!result.ok) throw new Error(result.why);
  return result;
};

describe('the handbook’s example', () => {
  const { anova, ranges, ...rest } = read(example);

  it('has 10 parts, 3 operators and 3 trials, and its gauge is conditional', () => {
    expect(rest).toMatchObject({
      parts: 10,
      operators: 3,
      trials: 3,
      word: 'conditional',
      wordFrom: 'total',
    });
  });

  it('comes out by average and range', () => {
    expect(ranges?.repeatability).toBeCloseTo(0.20186, 4);
    expect(ranges?.reproducibility).toBeCloseTo(0.22967, 4);
    expect(ranges?.gauge).toBeCloseTo(0.30577, 4);
    expect(ranges?.parts).toBeCloseTo(1.1046, 3);
    expect(ranges?.total).toBeCloseTo(1.14613, 3);
    expect(100 * (ranges?.share ?? 0)).toBeCloseTo(26.68, 2);
    expect(Math.floor(ranges?.categories ?? 0)).toBe(5);
    expect(ranges?.rangeLimit).toBeCloseTo(0.8815, 4);
    expect(ranges?.above).toEqual([{ operator: 'B', part: 'part 3' }]);
  });

  it('comes out by analysis of variance, with the interaction pooled', () => {
    const { table } = anova;
    expect(table.operators.squares).toBeCloseTo(3.1673, 4);
    expect(table.parts.squares).toBeCloseTo(88.3619, 4);
    expect(table.interaction.squares).toBeCloseTo(0.359, 4);
    expect(table.repeatability.squares).toBeCloseTo(2.7589, 4);
    expect(anova.interaction?.f).toBeCloseTo(0.4337, 4);
    expect(anova.interaction?.p).toBeCloseTo(0.9741, 4);
    expect(anova.pooled).toBe(true);
    expect(anova.f?.parts).toBeCloseTo(245.614, 3);
    expect(anova.f?.operators).toBeCloseTo(39.617, 3);
    expect(anova.repeatability).toBeCloseTo(0.199933, 6);
    expect(anova.reproducibility).toBeCloseTo(0.226838, 6);
    expect(anova.gauge).toBeCloseTo(0.302372, 5);
    expect(anova.parts).toBeCloseTo(1.042327, 5);
    expect(anova.total).toBeCloseTo(1.0853, 5);
    expect(100 * anova.share).toBeCloseTo(27.86, 2);
    expect(100 * anova.share ** 2).toBeCloseTo(7.76, 2);
    expect(Math.floor(anova.categories ?? 0)).toBe(4);
  });

  it('says how little three operators tell of the gauge', () => {
    expect(anova.interval.lower).toBeGreaterThan(0.15);
    expect(anova.interval.lower).toBeLessThan(anova.gauge);
    expect(anova.interval.upper).toBeGreaterThan(2 * anova.gauge);
  });

  it('is judged by the tolerance where one is given', () => {
    const wide = read(example, 20);
    expect(wide.anova.shareOfTolerance).toBeCloseTo((6 * 0.302372) / 20, 5);
    expect(wide).toMatchObject({ word: 'good', wordFrom: 'tolerance' });
    expect(read(example, 2).word).toBe('not-good-enough');
  });
});

describe('a gauge study', () => {
  it('keeps the interaction apart where operators read parts unlike each other', () => {
    const crossed = example.map((one) => ({
      ...one,
      value: one.value + (one.operator === 'A' && one.part < 'part 5' ? 1 : 0),
    }));
    const { anova } = read(crossed);
    expect(anova.pooled).toBe(false);
    expect(anova.reproducibility).toBeGreaterThan(0.3);
  });

  it('is refused with its reason where it is too small or not balanced', () => {
    const of = (keep: (one: GaugeReading, at: number) => boolean) =>
      gaugeStudy(example.filter(keep));
    expect(of(({ part }) => part === 'part 0')).toMatchObject({ why: 'too-few-parts' });
    expect(of(({ operator }) => operator === 'A')).toMatchObject({ why: 'too-few-operators' });
    expect(of((_, at) => at % 30 < 10)).toMatchObject({ why: 'too-few-trials' });
    expect(of((_, at) => at !== 35)).toEqual({
      ok: false,
      why: 'unbalanced',
      operator: 'B',
      part: 'part 5',
      have: 2,
      need: 3,
    });
    expect(gaugeStudy(example.map((one) => ({ ...one, value: 7 })))).toMatchObject({
      why: 'nothing-varies',
    });
  });

  it('leaves ranges out beyond the handbook’s tables', () => {
    const many = Array.from({ length: 6 }, () => example).flat();
    expect(read(many).ranges).toBeNull();
  });

  it('is the same in any order, shifts with nothing, and scales with the unit', () => {
    const order = fc.shuffledSubarray([...example], { minLength: example.length });
    fc.assert(
      fc.property(order, fc.double({ min: 0.1, max: 10, noNaN: true }), (shuffled, scale) => {
        const { anova } = read(shuffled.map((one) => ({ ...one, value: 5 + scale * one.value })));
        expect(anova.gauge / scale).toBeCloseTo(0.302372, 5);
        expect(anova.share).toBeCloseTo(0.27861, 4);
      }),
      { numRuns: 20 },
    );
  });

  it('covers the true spread of the gauge about as often as it says', () => {
    let seed = 7;
    const uniform = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let covered = 0;
    const STUDIES = 300;
    for (let study = 0; study < STUDIES; study++) {
      const own = [0, 1, 2].map(() => 0.5 * normal());
      const parts = Array.from({ length: 6 }, () => 2 * normal());
      const readings = own.flatMap((bias, operator) =>
        parts.flatMap((part, at) =>
          [0, 1].map(() => ({
            operator: String(operator),
            part: String(at),
            value: part + bias + 0.5 * normal(),
          })),
        ),
      );
      const { lower, upper } = read(readings).anova.interval;
      if (lower <= Math.SQRT1_2 && Math.SQRT1_2 <= upper) covered++;
    }
    expect(covered / STUDIES).toBeGreaterThan(0.9);
    expect(covered / STUDIES).toBeLessThan(0.99);
  });
});
