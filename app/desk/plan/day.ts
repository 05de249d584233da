/** A plan goes by days: which instant is a day that was typed? Local. Pure. */
import { toLocalDay } from '../../parts/instant.ts';

/**
 * A plan's day begins at three, before anybody runs: summer time moves it by an hour, and it stays the same day.
 */
const MORNING = 'T03:00';

/** When a plan begins that is drawn for a day: on its morning, or now where that is still to come today. */
export const startOf = (day: string, nowMs: number): number =>
  toLocalDay(nowMs) === day ? Math.min(morningOf(day), nowMs) : morningOf(day);

/** Milliseconds since 1970 of the day's morning, some days later; not a number where no day was typed. */
export const morningOf = (day: string, later = 0): number => {
  const at = new Date(`${day}${MORNING}`);
  at.setDate(at.getDate() + later);
  return at.getTime();
};
