/**
 * Is a run due that was not logged, and may the phone say so now? By the tester's own runs alone: how many days usually
 * lie between two of them, and at what time of day they usually log. At most one reminder a day, three in a row, then
 * none until the next run. All thresholds: judgement, no source.
 *
 * Days are whole days since 1 January 1970 and minutes are since midnight, both by the device's own calendar.
 */

const MINUTES_PER_DAY = 1440;
/** So many of the latest gaps between days with a run make the pace. */
const GAPS_FOR_PACE = 8;
const LEAST_GAPS = 3;
/** A longer gap is a break, not a pace. */
const LONGEST_GAP_DAYS = 14;
/** So many of the latest logs make the usual time of day. */
const LOGS_FOR_MINUTE = 20;
const LEAST_LOGS = 3;
/** After so many reminders without a run the phone is quiet until the next one. */
export const MOST_REMINDERS = 3;

/** A run as the reminder reads it. */
export interface DayOfRun {
  readonly day: number;
  /** When it was logged, minutes since midnight; null where that is not known. */
  readonly loggedAt: number | null;
}

/** What the device keeps of the reminders since the latest run. */
export interface Reminded {
  /** The day of the latest run when it was made. */
  readonly since: number;
  /** The day of the latest reminder. */
  readonly day: number;
  /** Reminders since that run, one a day. */
  readonly count: number;
  /** Whether the tester put today's away. */
  readonly closed: boolean;
}

export type Reminder =
  /** `everyDays` and `usualMinute` are the tester's own; `reminded` is what the device keeps from now on. */
  | {
      readonly due: true;
      readonly everyDays: number;
      readonly usualMinute: number;
      readonly reminded: Reminded;
    }
  | {
      readonly due: false;
      readonly why: 'no-pace' | 'not-yet' | 'not-the-hour' | 'closed' | 'enough';
    };

const inOrder = (numbers: Iterable<number>): number[] =>
  [...new Set(numbers)].sort((a, b) => a - b);

/**
 * The days that usually lie between two days with a run: the median of the latest gaps, breaks left out; of an even
 * number the longer of the middle two.
 * @returns null where there are fewer than three gaps
 */
export const ownPace = (days: readonly number[]): number | null => {
  const ordered = inOrder(days);
  const gaps = ordered
    .slice(1)
    .map((day, at) => day - (ordered[at] as number))
    .filter((gap) => gap <= LONGEST_GAP_DAYS)
    .slice(-GAPS_FOR_PACE)
    .sort((a, b) => a - b);
  return gaps.length < LEAST_GAPS ? null : (gaps[Math.floor(gaps.length / 2)] as number);
};

/** Minutes between two times of day, the shorter way round the clock. */
export const roundTheClock = (a: number, b: number): number => {
  const apart = Math.abs(a - b) % MINUTES_PER_DAY;
  return Math.min(apart, MINUTES_PER_DAY - apart);
};

/**
 * The usual time of day: the one of these that is nearest to all of them, round the clock (Mardia & Jupp, Directional
 * Statistics, 2000, section 2.3.1: the circular median); of several the earliest.
 * @returns minutes since midnight, null where there are fewer than three
 */
export const usualMinute = (minutes: readonly number[]): number | null => {
  if (minutes.length < LEAST_LOGS) return null;
  const farness = (of: number) => minutes.reduce((sum, one) => sum + roundTheClock(of, one), 0);
  return inOrder(minutes).reduce((best, one) => (farness(one) < farness(best) ? one : best));
};

/** The next reminder of a day, or today's once more; null where nothing is to be said any more. */
const nextReminder = (
  before: Reminded | null,
  since: number,
  today: number,
): Reminded | 'closed' | 'enough' => {
  const known = before?.since === since ? before : null;
  // A clock that was set back makes no second reminder of a day.
  if (known && known.day >= today) return known.closed ? 'closed' : known;
  if (known && known.count >= MOST_REMINDERS) return 'enough';
  return { since, day: today, count: (known?.count ?? 0) + 1, closed: false };
};

/**
 * Whether the phone may say now that a run was due.
 * @param runs the tester's own, in any order
 * @param before what the device kept of the last reminder
 */
export const reminderAt = (
  runs: readonly DayOfRun[],
  before: Reminded | null,
  now: { readonly day: number; readonly minute: number },
): Reminder => {
  const past = runs.filter(({ day }) => day <= now.day).sort((a, b) => a.day - b.day);
  const everyDays = ownPace(past.map(({ day }) => day));
  const minute = usualMinute(
    past.flatMap(({ loggedAt }) => loggedAt ?? []).slice(-LOGS_FOR_MINUTE),
  );
  const since = past.at(-1)?.day;
  if (everyDays === null || minute === null || since === undefined)
    return { due: false, why: 'no-pace' };
  if (now.day < since + everyDays) return { due: false, why: 'not-yet' };
  if (now.minute < minute) return { due: false, why: 'not-the-hour' };
  const reminded = nextReminder(before, since, now.day);
  return typeof reminded === 'string'
    ? { due: false, why: reminded }
    : { due: true, everyDays, usualMinute: minute, reminded };
};
