import { describe, expect, it } from 'vitest';
import { peakInBodyWeights, runLoad, stepsPerKm, sumLoads } from '../../../core/mileage/index.ts';
import { kilograms, metres, seconds } from '../../../core/units/index.ts';

const inches = (value: number) => value * 0.0254;
const perMile = (minutes: number) => (minutes * 60_000) / 1609.344;

describe('steps per kilometre', () => {
  it('are those of Hoeger et al. 2008 (66 in: 1055, 1342, 1629, 1916 steps a mile)', () => {
    for (const [minutes, steps] of [
      [6, 1055],
      [8, 1342],
      [10, 1629],
      [12, 1916],
    ] as const)
      expect(stepsPerKm(perMile(minutes), inches(66)) * 1.609344).toBeCloseTo(steps, -0.3);
  });

  it('agree within 3 % with the strides of van Oeveren et al. 2017 at 1.75 m', () => {
    for (const [strides, speed, steps] of [
      [77, 2.4, 1069.4],
      [79, 2.6, 1012.8],
      [80, 2.9, 919.5],
    ] as const) {
      expect((2 * strides * (1000 / speed)) / 60).toBeCloseTo(steps, 0);
      const ours = stepsPerKm(1000 / speed, 1.75);
      expect(Math.abs(ours / steps - 1)).toBeLessThan(0.03);
    }
  });
});

describe('force', () => {
  it('of a step is within 5 % of what Matijevich et al. 2019 measured at 3 and 4 m/s', () => {
    expect(peakInBodyWeights(3)).toBeCloseTo(2.51, 9);
    expect(peakInBodyWeights(4)).toBeCloseTo(2.67, 9);
    expect(Math.abs(peakInBodyWeights(3) / 2.5 - 1)).toBeLessThan(0.05);
    expect(Math.abs(peakInBodyWeights(4) / 2.605 - 1)).toBeLessThan(0.05);
  });
});

describe('load of a run', () => {
  const run = {
    distance: metres(10_000),
    time: seconds(3600),
    stepsFromTrack: null,
    heightM: 1.75,
    mass: kilograms(70),
  };

  it('takes the steps of the track before those of the regression, and says so', () => {
    expect(runLoad({ ...run, stepsFromTrack: 5100 })).toMatchObject({
      stepsPerShoe: 5100,
      stepsBy: 'cadence',
    });
    const regressed = runLoad(run);
    expect(regressed).toMatchObject({ stepsBy: 'height-and-pace', stepsInRange: true });
    // 957 steps a kilometre at 6:00 for 1.75 m, half of them in each shoe.
    expect(regressed?.stepsPerShoe).toBeCloseTo(4785, -1);
  });

  it('marks what lies outside of the published range', () => {
    expect(runLoad({ ...run, time: seconds(6000) })).toMatchObject({
      stepsInRange: false,
      peakInRange: false,
    });
  });

  it('says nothing where nothing is known', () => {
    expect(runLoad({ ...run, heightM: null })).toBeNull();
    expect(runLoad({ ...run, time: null })).toBeNull();
    expect(runLoad({ ...run, mass: null })).toMatchObject({ loadKN: null, peakN: null });
  });

  it('sums with how much of the distance each figure stands on', () => {
    const load = runLoad(run);
    expect(
      sumLoads([
        { distance: metres(10_000), load },
        { distance: metres(5000), load: null },
        { distance: metres(4000), load: runLoad({ ...run, stepsFromTrack: 2000, mass: null }) },
      ]),
    ).toEqual({
      stepsPerShoe: (load?.stepsPerShoe ?? 0) + 2000,
      loadKN: load?.loadKN,
      stepsFrom: { cadence: 4000, 'height-and-pace': 10_000, unknown: 5000 },
      loadKnownM: 10_000,
    });
  });
});
