/** When does the phone say that a run was due? */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MOST_REMINDERS,
  ownPace,
  reminderAt,
  roundTheClock,
  usualMinute,
  type DayOfRun,
  type Reminded,
} from '../../../core/mileage/index.ts';

const at = (hour: number, minute = 0) => 60 * hour + minute;
const runsOn = (days: readonly number[], loggedAt: number | null = at(18)): DayOfRun[] =>
  days.map((day) => ({ day, loggedAt }));

describe('the tester’s own pace', () => {
  it.each([
    [[1, 3, 5, 7], 2],
    // Twice on a day is one day; the order does not matter.
    [[7, 1, 3, 3, 5, 1], 2],
    // Of 1, 2, 2, 3: the longer of the middle two.
    [[1, 2, 4, 6, 9], 2],
    [[1, 2, 4, 7], 2],
    // Three weeks of holiday are a break, and leave too little before and after.
    [[1, 3, 5, 26], null],
    [[1, 3, 5, 26, 28], 2],
    [[1, 3, 5], null],
    [[], null],
    // The latest eight gaps: every day now, every third before.
    [[1, 4, 7, 10, 13, 16, 17, 18, 19, 20, 21, 22], 1],
  ])('%j: every %s days', (days, pace) => expect(ownPace(days)).toBe(pace));
});

describe('the usual time of day', () => {
  it.each([
    [[at(18), at(18, 30), at(19)], at(18, 30)],
    // Round midnight, not noon.
    [[at(23, 50), at(0, 10), at(0, 5)], at(0, 5)],
    // One odd log does not move it.
    [[at(7), at(7, 10), at(7, 5), at(15)], at(7, 5)],
    // Of two that are as near, the earlier.
    [[at(7), at(7, 10), at(7, 5), at(21)], at(7)],
    [[at(6), at(18)], null],
  ])('%j: %s', (minutes, usual) => expect(usualMinute(minutes)).toBe(usual));

  const anyMinute = fc.integer({ min: 0, max: 1439 });
  it('is one of them, and none is nearer to all', () => {
    fc.assert(
      fc.property(fc.array(anyMinute, { minLength: 3, maxLength: 20 }), (minutes) => {
        const usual = usualMinute(minutes) as number;
        const farness = (of: number) =>
          minutes.reduce((sum, one) => sum + roundTheClock(of, one), 0);
        expect(minutes).toContain(usual);
        expect(minutes.every((one) => farness(usual) <= farness(one))).toBe(true);
      }),
    );
  });

  it('goes round the clock: never more than half a day apart, the same either way', () => {
    fc.assert(
      fc.property(anyMinute, anyMinute, anyMinute, (a, b, turn) => {
        const apart = roundTheClock(a, b);
        expect(apart).toBeLessThanOrEqual(720);
        expect(apart).toBe(roundTheClock(b, a));
        expect(roundTheClock((a + turn) % 1440, (b + turn) % 1440)).toBe(apart);
      }),
    );
  });
});

describe('a reminder', () => {
  const runs = runsOn([1, 3, 5, 7]);
  it.each([
    [8, at(20), 'not-yet'],
    [9, at(17, 59), 'not-the-hour'],
  ] as const)('is not made on day %i at minute %i: %s', (day, minute, why) => {
    expect(reminderAt(runs, null, { day, minute })).toEqual({ due: false, why });
  });

  it('is made on the day that a run was due, from the hour on at which the tester logs', () => {
    expect(reminderAt(runs, null, { day: 9, minute: at(18) })).toEqual({
      ...{ due: true, everyDays: 2, usualMinute: at(18) },
      reminded: { since: 7, day: 9, count: 1, closed: false },
    });
  });

  it('stays for the day, and is gone when it was put away or a run is logged', () => {
    const made = reminderAt(runs, null, { day: 9, minute: at(18) });
    const kept = made.due ? made.reminded : null;
    expect(reminderAt(runs, kept, { day: 9, minute: at(21) })).toEqual(made);
    const closed = { ...(kept as Reminded), closed: true };
    expect(reminderAt(runs, closed, { day: 9, minute: at(21) })).toMatchObject({ why: 'closed' });
    const logged = runsOn([1, 3, 5, 7, 9]);
    expect(reminderAt(logged, kept, { day: 9, minute: at(21) })).toMatchObject({ why: 'not-yet' });
    expect(reminderAt(logged, closed, { day: 11, minute: at(21) })).toMatchObject({ due: true });
  });

  it('comes three days in a row, then not before the next run', () => {
    let reminded: Reminded | null = null;
    const days: number[] = [];
    for (let day = 8; day < 40; day++) {
      const reminder = reminderAt(runs, reminded, { day, minute: at(19) });
      if (reminder.due) {
        days.push(day);
        ({ reminded } = reminder);
      }
    }
    expect(days).toEqual([9, 10, 11]);
    expect(reminderAt(runs, reminded, { day: 40, minute: at(19) })).toMatchObject({
      why: 'enough',
    });
  });

  it('needs a pace, and times of day that are known', () => {
    const now = { day: 20, minute: at(20) };
    expect(reminderAt(runsOn([1, 3]), null, now)).toMatchObject({ why: 'no-pace' });
    expect(reminderAt(runsOn([1, 3, 5, 7], null), null, now)).toMatchObject({ why: 'no-pace' });
    // A run of a day that is still to come does not put it off.
    expect(reminderAt([...runs, ...runsOn([300])], null, now)).toMatchObject({ due: true });
  });

  const anyRuns = fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 60 }),
      loggedAt: fc.option(fc.integer({ min: 0, max: 1439 })),
    }),
    { maxLength: 30 },
  );
  const anyLooks = fc
    .array(
      fc.record({
        day: fc.integer({ min: 0, max: 90 }),
        minute: fc.integer({ min: 0, max: 1439 }),
        closes: fc.boolean(),
      }),
      { maxLength: 60 },
    )
    .map((looks) => looks.sort((a, b) => a.day - b.day || a.minute - b.minute));

  it('is never made twice on a day, more than three times for a run, before the hour, nor on a day with a run', () => {
    fc.assert(
      fc.property(anyRuns, anyLooks, (logged, looks) => {
        let reminded: Reminded | null = null;
        const made: { day: number; since: number }[] = [];
        for (const { day, minute, closes } of looks) {
          const known = logged.filter((run) => run.day <= day);
          const reminder = reminderAt(known, reminded, { day, minute });
          if (!reminder.due) continue;
          expect(minute).toBeGreaterThanOrEqual(reminder.usualMinute);
          expect(known.some((run) => run.day === day)).toBe(false);
          if (reminder.reminded !== reminded) made.push(reminder.reminded);
          reminded = { ...reminder.reminded, closed: closes };
        }
        expect(new Set(made.map(({ day }) => day)).size).toBe(made.length);
        for (const { since } of made)
          expect(made.filter((one) => one.since === since).length).toBeLessThanOrEqual(
            MOST_REMINDERS,
          );
      }),
    );
  });

  it('is the same whenever the test began', () => {
    fc.assert(
      fc.property(
        anyRuns,
        fc.record({ day: fc.integer({ min: 0, max: 90 }), minute: fc.nat(1439) }),
        fc.integer({ min: 1, max: 20_000 }),
        (logged, now, shift) => {
          const moved = logged.map((run) => ({ ...run, day: run.day + shift }));
          const here = reminderAt(logged, null, now);
          const there = reminderAt(moved, null, { ...now, day: now.day + shift });
          expect({ ...there, reminded: undefined }).toEqual({ ...here, reminded: undefined });
        },
      ),
    );
  });
});
