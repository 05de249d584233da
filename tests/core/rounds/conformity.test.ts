/** Decisions against the published examples of conformity probability, and readings put together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combine,
  decide,
  leftAgainstRightShoe,
  practiceDimensions,
  type GaugeUncertainty,
  type OneReading,
} from '../../../core/rounds/index.ts';
import { unitsOf } from '../../../core/records/index.ts';

describe('conformity', () => {
  it('has the probabilities of JCGM 106:2012: the diode and the motor oil', () => {
    expect(decide(-5.47, { low: null, high: -5.4 }, 0.05).chance).toBeCloseTo(0.9192, 4);
    expect(decide(13.6, { low: 12.5, high: 16.3 }, 1.8).chance).toBeCloseTo(0.6626, 4);
  });

  it('decides a collar of 62 ± 2 mm read with a standard uncertainty of 0.25 mm', () => {
    const collar = { low: 60, high: 64 };
    const of = (value: number) => decide(value, collar, 0.25);
    expect(of(63.5875).chance).toBeCloseTo(0.95053, 5);
    expect(of(63.4).chance).toBeCloseTo(0.9918, 5);
    expect(of(63.7).chance).toBeCloseTo(0.88493, 5);
    expect(of(64.3).chance).toBeCloseTo(0.11507, 5);
    expect(of(62).guard).toBeCloseTo(0.4112, 4);
    const words = [60.4125, 63.5875, 63.7, 64.3, 64.42, 59.58].map((value) => of(value).word);
    expect(words).toEqual([
      'conforming',
      'conforming',
      'undecided',
      'undecided',
      'not-conforming',
      'not-conforming',
    ]);
    expect(of(63.4).risk).toBeCloseTo(0.0082, 5);
    expect(of(64.5).risk).toBeCloseTo(0.02275, 5);
    expect(of(63.7).risk).toBeNull();
  });

  it('says which side, and never more, where the uncertainty is not known', () => {
    const limits = { low: 35, high: 37 };
    for (const unknown of [null, 0]) {
      expect(decide(37, limits, unknown)).toEqual({
        word: 'inside',
        inside: true,
        chance: null,
        risk: null,
        guard: null,
      });
      expect(decide(37.01, limits, unknown).word).toBe('outside');
    }
  });

  it('cannot decide ± 1 mm with a gauge of 0.8 mm, wherever it reads inside', () => {
    for (let value = 35; value <= 37; value += 0.1)
      expect(decide(value, { low: 35, high: 37 }, 0.8).word).toBe('undecided');
    // Nor does a gauge coarser than the tolerance prove a sample out by being coarse.
    expect(decide(37.1, { low: 35, high: 37 }, 40).word).toBe('undecided');
  });

  it('never proves both, asks no more of a better gauge, and mirrors', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(-5, 5), number(0.1, 3), number(0.001, 5), (value, half, u) => {
        const limits = { low: -half, high: half };
        const one = decide(value, limits, u);
        expect(decide(-value, limits, u).word).toBe(one.word);
        const better = decide(value, limits, u / 2).word;
        if (one.word === 'conforming') expect(better).toBe('conforming');
        if (one.word === 'not-conforming') expect(better).toBe('not-conforming');
        if (one.word === 'conforming') expect(one.inside).toBe(true);
        if (one.word === 'not-conforming') expect(one.inside).toBe(false);
        if (one.risk !== null) expect(one.risk).toBeLessThanOrEqual(0.05 + 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});

const stated = (size: number): GaugeUncertainty => ({
  repeatable: 0,
  lasting: size,
  betweenOperators: false,
  from: 'reading',
});
const studied = (repeatable: number, lasting: number): GaugeUncertainty => ({
  repeatable,
  lasting,
  betweenOperators: true,
  from: 'gauge-study',
});
const reading = (
  value: number,
  uncertainty: GaugeUncertainty | null,
  gauge = 'C2',
  operator = 'A',
): OneReading => ({ value, uncertainty, gauge, operator });

describe('several readings of one dimension', () => {
  it('are none where there is none', () => {
    expect(combine([])).toBeNull();
  });

  it('gain by repeating only in what repeats', () => {
    const whole = combine([35.9, 36, 36.1, 36].map((value) => reading(value, stated(0.4))));
    expect(whole).toMatchObject({ value: 36, uncertainty: 0.4, readings: 4, disagree: false });
    const parts = combine([35.9, 36, 36.1, 36].map((value) => reading(value, studied(0.4, 0.3))));
    expect(parts?.uncertainty).toBeCloseTo(Math.hypot(0.2, 0.3), 12);
    const operators = combine(
      ['A', 'B', 'A', 'B'].map((operator) => reading(36, studied(0.4, 0.3), 'C2', operator)),
    );
    expect(operators?.uncertainty).toBeCloseTo(Math.hypot(0.2, 0.3 / Math.SQRT2), 12);
    expect(operators?.from).toBe('gauge-study');
  });

  it('weigh each operator and each gauge once', () => {
    const one = [reading(30, stated(3)), reading(30, stated(3)), reading(33, stated(3), 'C2', 'B')];
    expect(combine(one)?.value).toBe(31.5);
    const two = combine([...one, reading(34.5, stated(4), 'C3')]);
    expect(two?.value).toBe(33);
    expect(two?.uncertainty).toBeCloseTo(2.5, 12);
    expect(two?.gauges).toEqual(['C2', 'C3']);
  });

  it('stay of unknown uncertainty where one gauge’s is not known', () => {
    const some = combine([reading(36, stated(0.2)), reading(36, null, 'C9')]);
    expect(some).toMatchObject({ uncertainty: null, from: null, disagree: false });
  });

  it('are said to disagree where they lie farther apart than they can', () => {
    expect(combine([reading(36, stated(0.1)), reading(36.2, stated(0.1))])?.disagree).toBe(false);
    expect(combine([reading(36, stated(0.1)), reading(37, stated(0.1))])?.disagree).toBe(true);
  });
});

describe('left against right', () => {
  const tolerance = { lower: -2, upper: 2 };
  const shoe = (deviation: number, uncertainty: number | null = null) => ({
    deviation,
    uncertainty,
  });

  it('is as uncertain as both shoes: √2 of one', () => {
    const sides = leftAgainstRightShoe(shoe(0.5, 0.3), shoe(-0.2, 0.3), tolerance, 1);
    expect(sides.difference).toBeCloseTo(0.7, 12);
    expect(sides.uncertainty).toBeCloseTo(0.3 * Math.SQRT2, 12);
    expect(sides).toMatchObject({ word: 'undecided', allowed: 1, allowedFrom: 'blueprint' });
  });

  it('takes half of the tolerance’s width where the blueprint names no difference', () => {
    expect(leftAgainstRightShoe(shoe(1.2), shoe(-1), tolerance, null)).toMatchObject({
      word: 'outside',
      allowed: 2,
      allowedFrom: 'practice',
    });
    expect(leftAgainstRightShoe(shoe(0), shoe(-1, 0.1), tolerance, null).word).toBe('inside');
  });
});

describe('the usual dimensions', () => {
  it('stand once each, at a site that a record takes, in a unit of their measure', () => {
    const keys = practiceDimensions.map(({ measure, site }) => `${measure} ${site}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { measure, site, unit, tolerance } of practiceDimensions) {
      expect(site).toMatch(/^[a-z0-9][a-z0-9-]{0,39}$/);
      expect(unitsOf[measure]).toContain(unit);
      expect(tolerance.value).toBeGreaterThan(0);
    }
  });
});
