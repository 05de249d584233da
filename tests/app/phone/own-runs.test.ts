import { describe, expect, it } from 'vitest';
import { courseOf, lastScores } from '../../../app/phone/own/own-runs.ts';
import { isOtherTrack, isPhoto } from '../../../app/phone/own/shared-photo.ts';
import type { RecordOf } from '../../../core/records/index.ts';

const run = (startedAt: string, distanceM: number, overall?: number): RecordOf<'run'> =>
  ({
    body: { startedAt, distanceM, ...(overall !== undefined && { comfort: { overall } }) },
  }) as unknown as RecordOf<'run'>;

describe('the course of a pair', () => {
  const course = courseOf([
    run('2026-06-03T07:00:00.000Z', 5000, 40),
    run('2026-06-01T07:00:00.000Z', 8000, 70),
    run('2026-06-02T07:00:00.000Z', 10_000),
  ]);

  it('goes by the day, with the distance behind each run', () => {
    expect(course.map(({ afterM }) => afterM)).toEqual([8000, 18_000, 23_000]);
  });

  it('gives the latest scores, the oldest first, and leaves out runs without one', () => {
    expect(lastScores(course, 8)).toEqual([70, 40]);
    expect(lastScores(course, 1)).toEqual([40]);
  });
});

describe('a file that was shared', () => {
  const file = (name: string, type = '') => new File(['x'], name, { type });

  it('is a photo by its type or its name', () => {
    expect(isPhoto(file('a', 'image/heic'))).toBe(true);
    expect(isPhoto(file('IMG_1.JPG'))).toBe(true);
    expect(isPhoto(file('run.gpx', 'application/gpx+xml'))).toBe(false);
  });

  it('is a track of another format by its name', () => {
    expect(isOtherTrack(file('morning.fit'))).toBe(true);
    expect(isOtherTrack(file('morning.TCX'))).toBe(true);
    expect(isOtherTrack(file('morning.gpx'))).toBe(false);
  });
});
