/** When a pair is expected at a check: from its tester's own pace; and whether the whole test went quiet. */
import { describe, expect, it } from 'vitest';
import { addRevisions, emptyLog, viewOfLog, type Revision } from '../../../core/records/index.ts';
import { expectedAt, openProject, reviewProject } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../records/make.ts';
import { handOut, own, pair, project, PROJECT, round, run } from './log-for-tests.ts';

const [shoe, tester, other] = [idOf(20), idOf(30), idOf(31)];
const second = idOf(21);
const day = (n: number) => `2026-05-${String(n).padStart(2, '0')}T08:00:00Z`;
const base = [
  project(),
  round(idOf(10), 1),
  pair(shoe, idOf(10), '637'),
  pair(second, idOf(10), '638'),
  own(tester, 'tester', { code: 'T01' }),
  own(other, 'tester', { code: 'T02' }),
];
const runsOn = (days: readonly number[], of = { pair: shoe, tester }, from = 100) =>
  days.map((n, at) => run(idOf(from + at), of, day(n)));
const opened = (more: readonly Revision[], now: number) => {
  const log = openProject(
    viewOfLog(addRevisions(emptyLog, [...base, ...more])),
    PROJECT,
    Date.parse(day(now)),
  );
  if (!log) throw new Error('no project');
  return log;
};
const out = handOut(idOf(50), { pair: shoe, tester }, day(1));

describe('when a pair is expected', () => {
  it('follows the kilometres a day of its hand-out so far', () => {
    // Four runs of 10 km in ten days: 4 km a day; 20 km are left.
    const log = opened([out, ...runsOn([3, 5, 7, 9])], 11);
    const expected = expectedAt(log, shoe, metres(60_000));
    expect(expected.when).toBe('later');
    expect(expected.when === 'later' && Math.round(expected.atMs / 60_000)).toBe(
      Date.parse(day(16)) / 60_000,
    );
  });

  it('counts a pause as a week at most', () => {
    // Twelve days of pause count as seven: 40 km in 14 days.
    const log = opened([out, ...runsOn([3, 5, 17, 19])], 20);
    const expected = expectedAt(log, shoe, metres(60_000));
    expect(expected.when === 'later' && expected.atMs - Date.parse(day(20))).toBeCloseTo(
      7 * 86_400_000,
      -1,
    );
  });

  it('is not said of a pair in nobody’s hands, nor of one that a silent tester never ran in', () => {
    expect(expectedAt(opened([], 11), shoe, metres(60_000))).toEqual({ when: 'not-run' });
    expect(expectedAt(opened([out], 11), shoe, metres(60_000))).toEqual({ when: 'not-run' });
  });

  it('hangs on a silent tester: at their pace, from today on', () => {
    // 10 km in 9 days, the pause of eight days counting as seven; 50 km are left.
    const expected = expectedAt(opened([out, ...runsOn([3])], 11), shoe, metres(60_000));
    expect(expected).toMatchObject({ when: 'if-resumed', tester });
    expect(expected.when === 'if-resumed' && expected.atMs - Date.parse(day(11))).toBeCloseTo(
      45 * 86_400_000,
      -1,
    );
  });

  it('is not told of a first week with one run, nor beyond the day on which the pair comes back', () => {
    const one = opened([out, ...runsOn([2])], 3);
    expect(expectedAt(one, shoe, metres(60_000))).toEqual({ when: 'not-known' });
    const planned = handOut(idOf(50), { pair: shoe, tester }, day(1), { until: day(14) });
    const log = opened([planned, ...runsOn([3, 5, 7, 9])], 11);
    expect(expectedAt(log, shoe, metres(60_000))).toEqual({
      when: 'comes-back-first',
      atMs: Date.parse(day(14)),
    });
    expect(expectedAt(log, shoe, metres(50_000)).when).toBe('later');
  });

  it('is not known before the first run, and past where the pair has come so far', () => {
    expect(expectedAt(opened([out], 3), shoe, metres(60_000))).toEqual({ when: 'not-known' });
    expect(expectedAt(opened([out, ...runsOn([2])], 3), shoe, metres(10_000))).toEqual({
      when: 'now',
    });
  });
});

describe('silence', () => {
  const others = handOut(idOf(51), { pair: second, tester: other }, day(1));
  const theirs = (days: readonly number[]) => runsOn(days, { pair: second, tester: other }, 200);

  it('of the whole test is one, since the last run of anybody', () => {
    const log = opened([out, others, ...runsOn([3, 9]), ...theirs([8])], 20);
    const { quiet } = reviewProject(log);
    expect(quiet).toMatchObject({ days: 11, testers: [other, tester] });
    expect(quiet?.sinceMs).toBeGreaterThanOrEqual(Date.parse(day(9)));
  });

  it('of one tester while others run is theirs alone', () => {
    const log = opened([out, others, ...runsOn([3]), ...theirs([8, 19])], 20);
    expect(reviewProject(log).quiet).toBeNull();
  });

  it('of somebody who was silent a week before the rest stays theirs', () => {
    const log = opened([out, others, ...runsOn([3]), ...theirs([12])], 20);
    expect(reviewProject(log).quiet).toBeNull();
  });
});
