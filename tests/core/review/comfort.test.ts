import { describe, expect, it } from 'vitest';
import { comfortOf, preferencesOf } from '../../../core/review/comfort.ts';
import type { LoggedRun } from '../../../core/mileage/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { idOf } from '../records/make.ts';

const run = (tester: number, overall: number | null, firstImpression = false): LoggedRun =>
  ({
    tester: idOf(tester),
    run: {
      ...(overall !== null && { comfort: { overall } }),
      ...(firstImpression && { firstImpression }),
    },
  }) as unknown as LoggedRun;

describe('comfort of a round', () => {
  it('hears each tester once, however often they ran, and keeps first impressions apart', () => {
    const comfort = comfortOf([
      run(1, 90, true),
      run(1, 40),
      run(1, 50),
      run(1, 60),
      run(2, 80),
      run(2, null),
    ]);
    // Testers' means 50 and 80, by hand.
    expect(comfort.wear).toEqual([
      { attribute: 'overall', testers: 2, scores: 4, mean: 65, lowest: 50, highest: 80 },
    ]);
    expect(comfort.firstImpressions).toEqual([
      { attribute: 'overall', testers: 1, scores: 1, mean: 90, lowest: 90, highest: 90 },
    ]);
  });

  it('says nothing of what nobody answered', () => {
    expect(comfortOf([run(1, null)])).toEqual({ firstImpressions: [], wear: [] });
  });
});

describe('preferences between rounds', () => {
  const [A, B, C] = [idOf(1), idOf(2), idOf(3)] as [RecordId, RecordId, RecordId];
  const pair = (n: number) => idOf(100 + n);
  const roundOf = new Map([
    [pair(1), A],
    [pair(2), B],
    [pair(3), B],
    [pair(4), C],
  ]);
  const ranking = (tester: number, day: number, order: number[][]): RecordOf<'ranking'> =>
    ({
      body: {
        tester: idOf(50 + tester),
        at: new Date(Date.UTC(2026, 4, day)).toISOString(),
        order: order.map((place) => place.map(pair)),
      },
    }) as unknown as RecordOf<'ranking'>;

  it('counts each tester once, by the latest ranking that has both rounds', () => {
    const [found] = preferencesOf(
      [
        ranking(1, 1, [[1], [2]]),
        ranking(1, 9, [[2], [1]]),
        ranking(1, 20, [[4]]),
        ranking(2, 3, [[1], [2]]),
        ranking(3, 3, [[1, 2]]),
      ],
      roundOf,
      [A, B, C],
      [],
    );
    expect(found).toEqual({
      first: A,
      second: B,
      preferFirst: 1,
      preferSecond: 1,
      equal: 1,
      unblinded: 0,
    });
  });

  it('takes the side that is more often before the other where a round has several pairs', () => {
    expect(preferencesOf([ranking(1, 1, [[2], [1], [3]])], roundOf, [A, B], [])).toMatchObject([
      { preferFirst: 0, preferSecond: 0, equal: 1 },
    ]);
    expect(preferencesOf([ranking(1, 1, [[2, 3], [1]])], roundOf, [A, B], [])).toMatchObject([
      { preferSecond: 1 },
    ]);
  });

  it('says how many knew the build of what they ranked', () => {
    const span = {
      id: idOf(7),
      pair: pair(2),
      tester: idOf(51),
      fromMs: 0,
      untilMs: Infinity,
    } as never;
    expect(
      preferencesOf([ranking(1, 1, [[1], [2]])], roundOf, [A, B], [{ span, blind: false }]),
    ).toMatchObject([{ unblinded: 1 }]);
  });

  it('does not speak of rounds that nobody compared', () => {
    expect(preferencesOf([ranking(1, 1, [[1], [2]])], roundOf, [A, B, C], [])).toHaveLength(1);
  });
});
