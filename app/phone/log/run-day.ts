/** On which day was the run? What the log screen offers, and the start that each choice makes. Pure. */
import { toLocalMinute } from '../../parts/instant.ts';
import type { RunForm } from './run-form.ts';

/** The run has just ended; a recent day as `2026-06-01`; or any day, typed. */
export type RunDay = 'now' | 'other' | `${number}-${string}`;

/** So many days are in the list, today among them. Judgement, no source. */
const LISTED_DAYS = 7;

/** The start of a form whose day is still to be typed: no date, so that saving asks for it. */
const NOT_SAID = 'not said';

/** The local days that are in the list, today first. By the calendar: a day may have 23 or 25 hours. */
export const recentDays = (nowMs: number): readonly RunDay[] =>
  Array.from({ length: LISTED_DAYS }, (_, back) => {
    const day = new Date(nowMs);
    day.setDate(day.getDate() - back);
    return toLocalMinute(day.getTime()).slice(0, 10) as RunDay;
  });

/** The local date and time at which the form's run began, for the browser's control; empty where it just ended. */
const startOf = ({ start, startMs }: RunForm): string =>
  start === '' && startMs !== null ? toLocalMinute(startMs) : start;

/** What the browser's control shows: nothing while the day is still to be typed. */
export const shownStart = (form: RunForm): string => {
  const start = startOf(form);
  return start === NOT_SAID ? '' : start;
};

/** The start that was typed; a half-typed one is not taken for "just now". */
export const typedStart = (typed: string): string => (typed === '' ? NOT_SAID : typed);

/** Which of the choices the form's start is. */
export const dayOf = (form: RunForm, nowMs: number): RunDay => {
  const start = startOf(form);
  if (start === '') return 'now';
  return recentDays(nowMs).find((day) => start.startsWith(day)) ?? 'other';
};

/** The form with another day: the hour stays, or is the present one where none was said. */
export const onDay = (
  day: RunDay,
  form: RunForm,
  nowMs: number,
): Pick<RunForm, 'start' | 'startMs'> => {
  if (day === 'now') return { start: '', startMs: null };
  if (day === 'other') return { start: NOT_SAID, startMs: form.startMs };
  const hour = /T(\d\d:\d\d)/.exec(startOf(form))?.[1] ?? toLocalMinute(nowMs).slice(11);
  return { start: `${day}T${hour}`, startMs: form.startMs };
};
