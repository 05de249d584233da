import { describe, expect, it } from 'vitest';
import { preferencesOf } from '../../../core/review/preferences.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { idOf } from '../records/make.ts';

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
