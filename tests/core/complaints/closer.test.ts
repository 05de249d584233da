/** When, where and with whom a complaint comes, and what changed in comfort: small cases by hand, and null cases. */
import { describe, expect, it } from 'vitest';
import {
  associations,
  comfortByAttribute,
  comfortChanges,
  firstRepeat,
  onsetInRun,
  trendsOverDistance,
  type AssociationContext,
  type CellName,
  type ComfortAnswer,
  type ObservedRun,
} from '../../../core/complaints/index.ts';
import type { Complaint } from '../../../core/records/index.ts';
import { holm } from '../../../core/statistics/index.ts';
import { metres } from '../../../core/units/index.ts';
import { seeded } from '../../seeded.ts';
import { idOf } from '../records/make.ts';

const cell: CellName = { zone: 'U10', kind: 'heel-slip' };
const slip = (fromKm?: number, foot: Complaint['foot'] = 'left'): Complaint => ({
  ...cell,
  foot,
  ...(fromKm !== undefined && { fromM: metres(1000 * fromKm) }),
});

let count = 0;
const run = (tester: number, km: number, more: Partial<ObservedRun> = {}): ObservedRun => ({
  run: idOf(10_000 + count++),
  tester: idOf(tester),
  pair: idOf(1000 + tester),
  round: idOf(1),
  startMs: km * 3_600_000,
  pairM: metres(1000 * km),
  complaints: [],
  softShare: null,
  wet: null,
  temperatureC: null,
  sock: null,
  ...more,
});
const nothingKnown: AssociationContext = { traits: [], allRounds: [], layers: () => null };

describe('the trend over kilometres', () => {
  /** Each tester reports it at the first three of six runs: p = 1/20 a tester one-sided, exact over two. */
  const fading = [1, 2].flatMap((tester) =>
    [10, 20, 30, 40, 50, 60].map((km) => run(tester, km, { complaints: km <= 30 ? [slip()] : [] })),
  );

  it('names a complaint that fades, and one that grows', () => {
    const [fades] = trendsOverDistance(fading, [cell]);
    // Exact: both testers at the one extreme of 20 splits each, two-sided 2 / 400.
    expect(fades).toMatchObject({ word: 'fades', chanceLater: 0, testers: 2, method: 'exact' });
    expect(fades?.p).toBeCloseTo(2 / 400, 10);
    const [grows] = trendsOverDistance(
      fading.map((one) => ({ ...one, pairM: metres(70_000 - one.pairM) })),
      [cell],
    );
    expect(grows).toMatchObject({ word: 'grows', chanceLater: 1 });
  });

  it('says nothing where a tester always or never had it', () => {
    const runs = [1, 2].flatMap((tester) =>
      [10, 20, 30].map((km) => run(tester, km, { complaints: tester === 1 ? [slip()] : [] })),
    );
    expect(trendsOverDistance(runs, [cell])[0]).toMatchObject({ word: 'too-few-runs', testers: 0 });
  });

  it('holds every reported cell of the round together by Holm, whichever of them are asked about', () => {
    const rubs: CellName = { zone: 'U1', kind: 'rubbing' };
    const both = fading.map((one, at) => ({
      ...one,
      complaints:
        at % 2 === 0 ? [...one.complaints, { foot: 'left' as const, ...rubs }] : one.complaints,
    }));
    const trends = trendsOverDistance(both, [cell, rubs]);
    expect(trends.map(({ adjustedP }) => adjustedP)).toEqual(holm(trends.map(({ p }) => p)));
    expect(trends[0]?.adjustedP).toBeCloseTo(2 * (2 / 400), 10);
    expect(trendsOverDistance(both, [cell])).toEqual(trends.slice(0, 1));
  });

  it('makes no trend of two reports, wherever they lie', () => {
    const late = [1, 2].flatMap((tester) =>
      Array.from({ length: 16 }, (_, at) =>
        run(tester, 10 * at, { complaints: at === 15 ? [slip()] : [] }),
      ),
    );
    // The two ends of 16 runs each: as rare as 2 in 256, and two runs all the same.
    expect(trendsOverDistance(late, [cell])[0]).toMatchObject({
      word: 'too-few-runs',
      adjustedP: 1,
    });
  });

  it('does not count cells whose few reports could show no trend, and says so of them', () => {
    const once: CellName = { zone: 'U2', kind: 'rubbing' };
    const more = fading.map((one, at) => ({
      ...one,
      complaints:
        at === 5 ? [...one.complaints, { foot: 'left' as const, ...once }] : one.complaints,
    }));
    const [fades, seen] = trendsOverDistance(more, [cell, once]);
    expect(fades?.adjustedP).toBeCloseTo(2 / 400, 10);
    expect(seen).toMatchObject({ word: 'too-few-runs', adjustedP: 1 });
  });
});

describe('where in a run it begins', () => {
  it('takes the median of each tester, then the quartiles over testers', () => {
    const runs = [
      run(1, 1, { complaints: [slip(2)] }),
      run(1, 2, { complaints: [slip(4)] }),
      run(1, 3, { complaints: [slip(9)] }),
      run(2, 1, { complaints: [slip(6), slip(5, 'right')] }),
      run(3, 1, { complaints: [slip()] }),
    ];
    // Testers' medians 4 and 5 km; the third did not say.
    expect(onsetInRun(runs, cell)).toEqual({
      medianM: 4500,
      lowerM: 4250,
      upperM: 4750,
      testers: 2,
      runs: 4,
    });
    expect(onsetInRun([run(3, 1, { complaints: [slip()] })], cell)).toBeNull();
  });
});

describe('kilometres to the first repeat', () => {
  it('counts the second report as the event and censors the others at their last asked run', () => {
    const runs = [
      run(1, 10, { complaints: [slip()] }),
      run(1, 20, { complaints: [slip()] }),
      run(1, 30),
      run(2, 10, { complaints: [slip()] }),
      run(2, 40),
      run(3, 15),
    ];
    const { steps, testers, repeated, medianM } = firstRepeat(runs, cell);
    expect({ testers, repeated }).toEqual({ testers: 3, repeated: 1 });
    // By hand, in kilometres of their own: one ran once, one has it after 10 km, one is without it at 30.
    expect(steps.map(({ time, survival }) => [time, survival])).toEqual([
      [0, 1],
      [10_000, 0.5],
      [30_000, 0.5],
    ]);
    // Two at risk are too few to name a median.
    expect(medianM).toBeNull();
  });

  it('counts a pair that came worn from where the tester took it, and each pair by itself', () => {
    const worn = [300, 310, 320].map((km) => run(1, km, { complaints: km > 305 ? [slip()] : [] }));
    expect(firstRepeat(worn, cell).steps.at(-1)).toMatchObject({ time: 20_000, events: 1 });
    const two = [
      run(1, 400, { complaints: [slip()] }),
      run(1, 5, { pair: idOf(77), startMs: 9e9, complaints: [slip()] }),
    ];
    expect(firstRepeat(two, cell).repeated).toBe(0);
  });

  it('names the median of enough testers', () => {
    const runs = Array.from({ length: 6 }, (_, tester) =>
      [0, 10, 20, 30].map((km) =>
        run(tester, km, { complaints: tester < 4 && km >= 10 ? [slip()] : [] }),
      ),
    ).flat();
    expect(firstRepeat(runs, cell)).toMatchObject({ medianM: 20_000, repeated: 4, testers: 6 });
  });

  it('names no median where all runs began at the same kilometre', () => {
    const runs = Array.from({ length: 6 }, (_, tester) =>
      [10, 10, 10].map((km) => run(tester, km, { complaints: [slip()] })),
    ).flat();
    expect(firstRepeat(runs, cell)).toMatchObject({ medianM: null, repeated: 6, testers: 6 });
  });
});

describe('with whom it goes together', () => {
  const wetWeather = [1, 2, 3, 4].flatMap((tester) =>
    Array.from({ length: 8 }, (_, at) =>
      run(tester, 10 * at, { wet: at % 2 === 0, complaints: at % 2 === 0 ? [slip()] : [] }),
    ),
  );

  it('finds what changes with the ground, within testers', () => {
    const [first] = associations(wetWeather, [cell], nothingKnown);
    expect(first).toMatchObject({ factor: 'wet-ground', goesWith: 'more', hint: true, testers: 4 });
  });

  it('finds the foot that has it', () => {
    const runs = Array.from({ length: 8 }, (_, tester) =>
      run(tester, 10, { complaints: [slip(undefined, 'right')] }),
    );
    const foot = associations(runs, [cell], nothingKnown).find(
      ({ factor }) => factor === 'left-or-right',
    );
    // All eight on the right: 2 of 2^8 sign patterns are as far out.
    expect(foot?.p).toBeCloseTo(2 / 256, 10);
    expect(foot?.goesWith).toBe('less');
  });

  it('compares testers, one vote each, however often they ran', () => {
    const runs = Array.from({ length: 10 }, (_, tester) =>
      [10, 20, 30].map((km) => run(tester, km, { complaints: tester < 5 ? [slip()] : [] })),
    ).flat();
    const traits = Array.from({ length: 10 }, (_, tester) => ({
      tester: idOf(tester),
      sizeMm: 265,
      lengthOverMm: tester < 5 ? 6 + tester : tester - 9,
      widthMm: null,
      forefootStrike: tester % 2 === 0,
      outOfTolerance: null,
    }));
    const found = associations(runs, [cell], { ...nothingKnown, traits });
    const length = found.find(({ factor }) => factor === 'foot-length-against-last');
    // Complete separation of 5 and 5: 2 / C(10, 5).
    expect(length?.p).toBeCloseTo(2 / 252, 10);
    expect(length?.goesWith).toBe('more');
    expect(found.map(({ factor }) => factor)).not.toContain('foot-width');
  });

  it('gives hints in at most a tenth of the cases where nothing goes together', () => {
    const random = seeded(11);
    let hinted = 0;
    const cases = 200;
    for (let at = 0; at < cases; at++) {
      const runs = Array.from({ length: 6 }, (_, tester) =>
        Array.from({ length: 10 }, (__, n) =>
          run(tester, 10 * n, {
            wet: random() < 0.4,
            temperatureC: Math.round(20 * random()),
            sock: Math.floor(4 * random()),
            softShare: random(),
            complaints: random() < 0.4 ? [slip(undefined, random() < 0.5 ? 'left' : 'right')] : [],
          }),
        ),
      ).flat();
      if (associations(runs, [cell], nothingKnown).some(({ hint }) => hint)) hinted++;
    }
    expect(hinted / cases).toBeLessThanOrEqual(0.1 + 3 * Math.sqrt((0.1 * 0.9) / cases));
  });
});

describe('comfort', () => {
  const answer = (
    tester: number,
    overall: number,
    km = 10,
    firstImpression = false,
  ): ComfortAnswer => ({
    tester: idOf(tester),
    comfort: { overall },
    firstImpression,
    pairM: 1000 * km,
  });

  it('hears each tester once, however often they ran, and keeps first impressions apart', () => {
    const [overall] = comfortByAttribute([
      answer(1, 90, 0, true),
      answer(1, 40),
      answer(1, 50),
      answer(1, 60),
      answer(2, 80),
    ]);
    // Testers' means 50 and 80, by hand; t(0.975; 1) = 12.7062.
    expect(overall?.wear).toMatchObject({ n: 2, runs: 4, mean: 65 });
    expect(overall?.wear?.interval?.upper).toBeCloseTo(
      65 + 12.7062 * (30 / Math.SQRT2 / Math.SQRT2),
      2,
    );
    expect(overall?.firstImpression).toMatchObject({ n: 1, mean: 90, interval: null });
    expect(comfortByAttribute([])).toEqual([]);
  });

  it('follows each tester over the kilometres', () => {
    const answers = [1, 2].flatMap((tester) =>
      [0, 100, 200, 300].map((km, at) =>
        answer(tester, 80 - tester * (km / 100) + ([0.5, -0.5, -0.5, 0.5][at] ?? 0), km),
      ),
    );
    // Slopes −1 and −2 a hundred kilometres, by hand; as many scores of each.
    const drift = comfortByAttribute(answers)[0]?.drift;
    expect(drift?.testers).toBe(2);
    expect(drift?.per100Km).toBeCloseTo(-1.5, 9);
  });

  it.each([
    ['better', [50, 52, 48, 51], [66, 67, 63, 68]],
    ['worse', [70, 71, 69, 72], [55, 55, 56, 54]],
    ['no-relevant', [60, 61, 59, 60], [62, 62, 62, 61]],
    ['open', [50, 70, 40, 60], [70, 60, 65, 55]],
  ] as const)('is called %s only with the published difference in view', (word, before, after) => {
    const of = (scores: readonly number[]) => scores.map((score, tester) => answer(tester, score));
    expect(comfortChanges(of(before), of(after))).toMatchObject([{ word, by: 'same-testers' }]);
  });

  it('compares different testers where none scored both', () => {
    const [change] = comfortChanges(
      [answer(1, 50), answer(2, 52), answer(3, 51)],
      [answer(4, 80), answer(5, 82), answer(6, 81)],
    );
    expect(change).toMatchObject({ word: 'better', by: 'different-testers', testers: 6 });
  });
});
