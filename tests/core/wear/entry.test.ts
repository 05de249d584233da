/** Is a wrong reading asked about as it is typed, and a right one left in peace? Simulated rounds, seeded. */
import { describe, expect, it } from 'vitest';
import type { Dimension, Measure, MeasureUnit } from '../../../core/records/index.ts';
import {
  doubtAtEntry,
  doubtInLog,
  gaugesApart,
  knownReadings,
  type KnownReading,
} from '../../../core/wear/index.ts';
import { seeded } from '../../seeded.ts';

const DAY_MS = 86_400_000;

/** How a kind of reading starts, changes by 500 km, and scatters; widths as shares of the start. */
interface Truth {
  readonly measure: Measure;
  readonly unit: MeasureUnit;
  readonly start: number;
  readonly change: number;
  /** Between pairs, between left and right, of one check. */
  readonly spread: readonly [pair: number, side: number, check: number];
}

/** Starts and changes as in the tables of `foams.ts`, scatter of a plain shop. */
const truths: readonly Truth[] = [
  { measure: 'stack-height', unit: 'mm', start: 36, change: -0.05, spread: [0.012, 0.006, 0.008] },
  { measure: 'hardness', unit: 'asker-c', start: 45, change: 0.09, spread: [0.04, 0.02, 0.025] },
  { measure: 'mass', unit: 'g', start: 248, change: -0.015, spread: [0.015, 0.005, 0.004] },
  { measure: 'tread-depth', unit: 'mm', start: 3.2, change: -0.55, spread: [0.04, 0.03, 0.05] },
  { measure: 'impact-peak', unit: 'N', start: 950, change: 0.05, spread: [0.022, 0.02, 0.02] },
  { measure: 'energy-absorbed', unit: 'J', start: 5, change: -0.3, spread: [0.03, 0.02, 0.02] },
  { measure: 'energy-returned', unit: '%', start: 68, change: -0.1, spread: [0.02, 0.02, 0.02] },
  { measure: 'dimension', unit: 'mm', start: 101, change: 0.01, spread: [0.01, 0.006, 0.006] },
];

const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The right readings of a round, by time: six pairs, both shoes, five checks to 500 km. */
const drawRound = (truth: Truth, random: () => number): readonly KnownReading[] =>
  Array.from({ length: 6 }, (_, p) => {
    const pair = normal(random) * truth.spread[0];
    const change = truth.change * (1 + 0.25 * normal(random));
    const sides = [normal(random), normal(random)].map((one) => one * truth.spread[1]);
    return [0, 60, 150, 300, 500].flatMap((km, n) =>
      (['left', 'right'] as const).map((foot, side): KnownReading => ({
        pair: `P${p}`,
        atMs: (10 * n + 0.1 * p) * DAY_MS,
        measure: truth.measure,
        site: 'heel',
        foot,
        unit: truth.unit,
        value: Number(
          (
            truth.start *
            Math.max(
              // Worn tread still reads something.
              0.05,
              1 +
                pair +
                (sides[side] ?? 0) +
                change * (km / 500) ** 0.6 +
                truth.spread[2] * normal(random),
            )
          ).toPrecision(4),
        ),
      })),
    );
  })
    .flat()
    .sort((a, b) => a.atMs - b.atMs);

const blueprintOf = ({ measure, unit, start }: Truth): Dimension[] => [
  { measure, site: 'heel', unit, nominal: start, lower: -0.03 * start, upper: 0.03 * start },
];

/** Types each round reading by reading: how many right ones, and how many with the point slipped, are asked about. */
const typeIn = (truth: Truth, rounds: number, drawn: boolean) => {
  const random = seeded(truth.start * 100);
  const found = { right: 0, rightAsked: 0, wrong: 0, wrongAsked: 0, namesIt: 0 };
  for (let n = 0; n < rounds; n++) {
    const readings = drawRound(truth, random);
    for (const [at, reading] of readings.entries()) {
      const before = readings.slice(0, at);
      const hasOwn = before.some(({ pair }) => pair === reading.pair);
      if (!hasOwn && !drawn) continue;
      const known = knownReadings(before, drawn ? blueprintOf(truth) : []);
      found.right++;
      if (doubtAtEntry(reading, known)) found.rightAsked++;
      const doubt = doubtAtEntry({ ...reading, value: 10 * reading.value }, known);
      found.wrong++;
      if (doubt) found.wrongAsked++;
      if (doubt && doubt.instead === reading.value) found.namesIt++;
    }
  }
  return found;
};

describe('a reading as it is typed', () => {
  it.each(
    truths.flatMap((truth) => [true, false].map((drawn) => [truth.measure, drawn, truth] as const)),
  )(
    '%s (blueprint: %s): ten times too high is asked about in 99 % and more, right ones in 1 % at most',
    (_, drawn, truth) => {
      const { right, rightAsked, wrong, wrongAsked, namesIt } = typeIn(truth, 12, drawn);
      expect(right).toBeGreaterThan(500);
      expect(rightAsked / right).toBeLessThanOrEqual(0.01);
      expect(wrongAsked / wrong).toBeGreaterThanOrEqual(0.99);
      expect(namesIt / wrong).toBeGreaterThanOrEqual(0.97);
    },
  );

  it('says what was to be expected, from the closest that tells', () => {
    const shoe = {
      pair: 'P0',
      measure: 'stack-height',
      site: 'heel',
      foot: 'left',
      unit: 'mm',
    } as const;
    const read = (value: number, day: number, more: Partial<KnownReading> = {}): KnownReading => ({
      ...shoe,
      value,
      atMs: day * DAY_MS,
      ...more,
    });
    const typo = read(285, 9);
    const from = (...known: KnownReading[]) =>
      doubtAtEntry(typo, knownReadings(known, blueprintOf(truths[0] as Truth)))?.expected;
    expect(from(read(28.8, 1), read(27.9, 5))).toMatchObject({
      from: 'same-shoe',
      least: 27.9,
      most: 28.8,
      readings: 2,
    });
    expect(from(read(28.8, 1, { foot: 'right' }))?.from).toBe('other-shoe');
    expect(from(read(28.8, 1, { pair: 'P1' }))?.from).toBe('other-pairs');
    expect(from()).toMatchObject({ from: 'blueprint', readings: 0 });
    expect(doubtAtEntry(typo, knownReadings([], []))).toMatchObject({
      why: 'impossible',
      expected: null,
    });
    expect(doubtAtEntry(read(28.5, 9), knownReadings([], []))).toBeNull();
    // Tread may wear down to nothing.
    const worn = { measure: 'tread-depth', unit: 'mm' } as const;
    expect(doubtAtEntry(read(0, 9, worn), knownReadings([read(2, 1, worn)], []))).toBeNull();
  });

  it('is found in the log wherever it stands, and none beside it', () => {
    for (const truth of truths) {
      const random = seeded(15);
      for (let n = 0; n < 12; n++) {
        const right = drawRound(truth, random);
        const wrongAt = Math.floor(random() * right.length);
        const readings = right.map((one, at) =>
          at === wrongAt ? { ...one, value: 10 * one.value } : one,
        );
        const known = knownReadings(readings, []);
        const doubted = readings.flatMap((one, at) => (doubtInLog(one, known) ? [at] : []));
        expect(doubted).toEqual([wrongAt]);
      }
    }
  });
});

describe('a second gauge', () => {
  /** From the third check on it reads higher by this share. */
  const withGauge = (truth: Truth, share: number, random: () => number) =>
    drawRound(truth, random).map((one): KnownReading => {
      const isSecond = one.atMs >= 20 * DAY_MS;
      return { ...one, gauge: isSecond ? 'B' : 'A', value: one.value * (isSecond ? 1 + share : 1) };
    });
  const named = (share: number) => {
    const random = seeded(4);
    const tries = Array.from({ length: 40 }, () =>
      gaugesApart(withGauge(truths[0] as Truth, share, random)),
    );
    return tries.filter((found) => found.length > 0).length / tries.length;
  };

  it('that reads 4 or 8 % higher is named, one that reads the same is not', () => {
    expect(named(0.04)).toBeGreaterThanOrEqual(0.95);
    expect(named(0.08)).toBe(1);
    expect(named(0)).toBeLessThanOrEqual(0.025);
    const [apart] = gaugesApart(withGauge(truths[0] as Truth, 0.08, seeded(4)));
    expect(apart).toMatchObject({ gauge: 'B', than: 'A', places: 12 });
    expect(apart?.share).toBeCloseTo(0.08, 1);
  });
});
