/** Files as devices write them: times that lack, coarse clocks, spans, slow walks, either way of counting steps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cutPrivateEnds,
  fingerprintOf,
  measureTrack,
  readGpx,
  type MeasuredTrack,
  type TrackPoint,
} from '../../../core/track/index.ts';
import { isSameTrack } from '../../../core/records/index.ts';
import { seeded } from '../../seeded.ts';
import { seenOn, SHAPES } from './shapes.ts';
import { fixAt, START_MS, trackOf } from './tracks.ts';

/** 900 m north in 300 s, a fix a second. */
const plainRun = (): TrackPoint[] =>
  Array.from({ length: 301 }, (_, s) => fixAt(0, 3 * s, START_MS + 1000 * s));

const changed = (
  fixes: readonly TrackPoint[],
  which: (at: number) => boolean,
  part: Partial<TrackPoint>,
) => fixes.map((fix, at) => (which(at) ? { ...fix, ...part } : fix));

describe('times', () => {
  const whole = measureTrack(trackOf(plainRun()));

  it.each([
    ['in the middle', [150]],
    ['at the start', [0]],
    ['at the end', [300]],
    ['two beside each other and the first', [0, 70, 71]],
  ])('that lack %s cost only themselves', (_, lacking) => {
    const track = trackOf(changed(plainRun(), (at) => lacking.includes(at), { timeMs: null }));
    const measured = measureTrack(track);
    expect(measured.distanceM).toBeCloseTo(whole.distanceM, 1);
    expect(measured.elapsedS).toBeCloseTo(300, 0);
    expect(measured.movingS).toBeCloseTo(300, 0);
    expect(measured.startMs).toBeCloseTo(START_MS, -3);
    expect(measured.paceByKmS).toHaveLength(1);
    expect(isSameTrack(fingerprintOf(track), fingerprintOf(trackOf(plainRun())))).toBe(true);
  });

  it('of a clock that was not set yet do not make a run of decades', () => {
    for (const timeMs of [0, Date.UTC(1999, 7, 22), Date.UTC(2080, 0, 1)]) {
      const measured = measureTrack(trackOf(changed(plainRun(), (at) => at < 2, { timeMs })));
      expect(measured.elapsedS).toBeCloseTo(300, 0);
      expect(measured.distanceM).toBeCloseTo(whole.distanceM, 1);
    }
  });

  it('that most fixes lack are none: the places are left', () => {
    for (const which of [() => true, (at: number) => at % 2 === 0, (at: number) => at > 100]) {
      const measured = measureTrack(trackOf(changed(plainRun(), which, { timeMs: null })));
      expect(measured.distanceM).toBeCloseTo(whole.distanceM, 1);
      expect(measured).toMatchObject({ elapsedS: null, movingS: null, startMs: null });
      expect(measured.stepsPerMinute).toBeNull();
    }
  });

  it('that are all the same are none: the distance is that of the places, not 0', () => {
    const measured = measureTrack(trackOf(changed(plainRun(), () => true, { timeMs: START_MS })));
    expect(measured.distanceM).toBeCloseTo(whole.distanceM, 1);
    expect(measured).toMatchObject({ elapsedS: null, movingS: null });
  });

  it('to the whole minute, as this app itself writes them where asked, keep the distance', () => {
    const run = trackOf(
      seenOn(SHAPES['trail'] as (typeof SHAPES)[string], { lengthM: 5000, everyS: 1 }).fixes,
    );
    const [exact, coarse] = [false, true].map((coarseTimes) =>
      measureTrack(cutPrivateEnds(run, { coarseTimes, privateM: 100 })),
    ) as [MeasuredTrack, MeasuredTrack];
    expect(Math.abs(coarse.distanceM / exact.distanceM - 1)).toBeLessThan(0.005);
    expect(Math.abs((coarse.movingS ?? 0) - (exact.movingS ?? 0))).toBeLessThan(60);
  });
});

describe('spans', () => {
  const at = (east: number, eleM: number, s: number): TrackPoint => ({
    ...fixAt(east, 0, START_MS + 1000 * s),
    eleM,
  });

  it('climb does not count a jump between them, as distance does not', () => {
    const valley = Array.from({ length: 61 }, (_, s) => at(3 * s, 400, s));
    const hill = Array.from({ length: 61 }, (_, s) => at(5000 + 3 * s, 900, 3600 + s));
    const back = Array.from({ length: 61 }, (_, s) => at(3 * s, 400, 7200 + s));
    expect(measureTrack(trackOf(valley, hill, back))).toMatchObject({ climbM: 0, descentM: 0 });
  });

  it('climb over many short ones is that of the whole', () => {
    const slope = Array.from({ length: 301 }, (_, s) => at(3 * s, 400 + s / 5, s));
    const parts = Array.from({ length: 30 }, (_, i) => slope.slice(10 * i, 10 * i + 11));
    expect(measureTrack(trackOf(...parts)).climbM).toBeCloseTo(60, 6);
    // The first fix of a span may lack its elevation.
    const bare = parts.map((part) => changed(part, (i) => i === 0, { eleM: null }));
    expect(measureTrack(trackOf(...bare)).climbM).toBeCloseTo(60 - 30 / 5, 1);
  });
});

describe('slow walking is not standing', () => {
  const speeds = [0.35, 0.45, 0.55, 0.7];

  it.each(speeds)('%d m/s, steady', (mps) => {
    for (const everyS of [1, 2, 5, 10, 20, 60]) {
      const way = SHAPES['straight'] as (typeof SHAPES)[string];
      const { fixes, lengthM } = seenOn(way, { lengthM: 600, everyS, mps });
      const { distanceM, movingS } = measureTrack(trackOf(fixes));
      expect(distanceM / lengthM).toBeCloseTo(1, 1);
      expect((movingS ?? 0) / (lengthM / mps)).toBeCloseTo(1, 1);
    }
  });

  it.each([0.45, 0.55])('%d m/s with 2 m of noise and bends, within a tenth', (mps) => {
    for (const name of ['straight', 'trail', 'city'])
      for (const everyS of [5, 10]) {
        const { fixes, lengthM } = seenOn(SHAPES[name] as (typeof SHAPES)[string], {
          lengthM: 900,
          everyS,
          mps,
          whiteM: 2,
          random: seeded(everyS),
        });
        const share = measureTrack(trackOf(fixes)).distanceM / lengthM;
        expect(Math.abs(share - 1), `${name} every ${everyS} s`).toBeLessThan(0.1);
      }
  });

  it('nor is turning back on the spot', () => {
    for (const [mps, everyS] of [
      [3, 1],
      [3, 5],
      [1.2, 1],
      [1.2, 4],
    ] as const) {
      const there = Math.round(600 / (mps * everyS));
      const fixes = Array.from({ length: 8 * there + 1 }, (_, at) => {
        const leg = Math.floor(at / there);
        const along = at - leg * there;
        const north = (leg % 2 === 0 ? along : there - along) * mps * everyS;
        return fixAt(0, north, START_MS + 1000 * at * everyS);
      });
      const share = measureTrack(trackOf(fixes)).distanceM / (8 * there * mps * everyS);
      expect(Math.abs(share - 1), `${mps} m/s every ${everyS} s`).toBeLessThan(0.003);
    }
  });

  it('standing still is, with errors that last, too', () => {
    for (const seed of [1, 2, 3, 4]) {
      const { fixes } = seenOn(() => [0, 0], {
        lengthM: 1800,
        everyS: 1,
        lastingM: 2,
        lastingS: 30,
        random: seeded(seed),
      });
      const { distanceM, movingS } = measureTrack(trackOf(fixes));
      expect(distanceM).toBeLessThan(30);
      expect(movingS).toBeLessThan(90);
    }
  });
});

describe('cadence', () => {
  const steps = (cadence: number | null, mps: number, share = 1) =>
    measureTrack(
      trackOf(
        Array.from({ length: 400 }, (_, s) => ({
          ...fixAt(0, mps * s, START_MS + 1000 * s),
          cadence: s < 400 * share ? cadence : null,
        })),
      ),
    ).stepsPerMinute;

  it.each([
    // Steps of both feet: kept.
    [110, 1.4, 110],
    [100, 1.1, 100],
    [130, 1.9, 130],
    [80, 0.8, 80],
    [150, 2.2, 150],
    [172, 3, 172],
    [195, 5.5, 195],
    // Of one foot: doubled.
    [55, 1.4, 110],
    [48, 1.1, 96],
    [65, 1.9, 130],
    [78, 2.2, 156],
    [86, 3, 172],
    [98, 5.5, 196],
  ])('%i a minute at %d m/s is %i steps', (cadence, mps, both) => {
    expect(steps(cadence, mps)).toBeCloseTo(both, 9);
  });

  it('is taken back to both feet whichever way it was counted, at every usual pace', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 5.5, noNaN: true }),
        fc.double({ min: 0.92, max: 1.08, noNaN: true }),
        fc.boolean(),
        (mps, own, isOneFoot) => {
          // Walkers by their constant ratio, runners by 150 to 190 a minute: common knowledge, no source.
          const both = own * (mps < 2 ? Math.sqrt((60 * mps) / 0.0064) : 138 + 9 * mps);
          expect(steps(isOneFoot ? both / 2 : both, mps)).toBeCloseTo(both, 6);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is none where few fixes have it, or nothing tells the pace', () => {
    expect(steps(86, 3, 0.3)).toBeNull();
    expect(steps(null, 3)).toBeNull();
    const standing = changed(plainRun(), () => true, { lat: 48, lon: 11, cadence: 80 });
    expect(measureTrack(trackOf(standing)).stepsPerMinute).toBeNull();
  });
});

describe('a file without a place', () => {
  const gpx = (inside: string) => `<gpx version="1.1">\n${inside}\n</gpx>`;
  const problem = (text: string) => {
    const outcome = readGpx(text);
    return outcome.ok ? null : outcome.problem;
  };
  const impossible = '<trkpt lat="91.5" lon="2"/>\n<trkpt lat="48,5" lon="2"/>';

  it('says which: impossible places, only a route, or nothing', () => {
    expect(problem(gpx(`<trk><trkseg>\n${impossible}\n</trkseg></trk>`))).toMatchObject({
      why: 'no-places',
      line: 3,
    });
    expect(
      problem(gpx(`<wpt lat="1" lon="2"/><trk><trkseg>${impossible}</trkseg></trk>`))?.why,
    ).toBe('no-places');
    expect(problem(gpx('<rte><rtept lat="1" lon="2"/></rte>'))?.why).toBe('no-track');
    expect(problem(gpx('<wpt lat="1" lon="2"/>'))?.why).toBe('no-track');
    expect(problem(gpx('<trk><trkseg></trkseg></trk>'))?.why).toBe('no-points');
    expect(problem(gpx(''))?.why).toBe('no-points');
  });
});
