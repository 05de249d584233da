/** On which day was the run? What the log screen offers, and the start that each choice makes. Pure. */
import { parseDuration } from '../../../core/units/index.ts';
import { toLocalDay, toLocalMinute } from '../../parts/instant.ts';
import type { RunForm } from '../../drafts/run.ts';

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
    return toLocalDay(day.getTime()) as RunDay;
  });

/** The local date and time at which the form's run began, for the browser's control; empty where it just ended. */
const startOf = ({ start, startMs }: RunForm): string =>
  start === '' && startMs !== null ? toLocalMinute(startMs) : start;

/** What the browser's control shows: nothing while the day is still to be typed. */
export const shownStart = (form: RunForm): string => {
  const start = startOf(form);
  return start === NOT_SAID ? '' : start;
};

type Start = Pick<RunForm, 'start' | 'startMs' | 'isHourMade'>;

/** The start that was typed; a half-typed one is not taken for "just now". */
export const typedStart = (typed: string): Pick<RunForm, 'start' | 'isHourMade'> => ({
  start: typed === '' ? NOT_SAID : typed,
  isHourMade: false,
});

const onLocalDay = (ms: number, start: string): boolean => toLocalDay(ms) === start.slice(0, 10);

/** The form's start once a track says when the run began: that of the track, unless somebody typed another. */
export const withTrackStart = (form: RunForm, trackMs: number | null): Partial<Start> => {
  const isOpen = form.start === '' || form.start === NOT_SAID;
  if (trackMs === null) return {};
  return isOpen || (form.isHourMade && onLocalDay(trackMs, form.start))
    ? { start: '', startMs: trackMs, isHourMade: false }
    : {};
};

/** When a run began that ends at an instant. */
const beganMs = (form: RunForm, endMs: number): number =>
  endMs - 1000 * (parseDuration(form.time) ?? 0);

/** The hour for a day on which none was said: of today the present one less the run's time, within the day. */
const madeStart = (day: string, form: RunForm, nowMs: number): string => {
  if (!onLocalDay(nowMs, day)) return `${day}T${toLocalMinute(nowMs).slice(11)}`;
  const began = toLocalMinute(beganMs(form, nowMs));
  return began.startsWith(day) ? began : `${day}T00:00`;
};

/** The form with another time of running: an hour of today that nobody typed moves with it. */
export const withTime = (time: string, form: RunForm, nowMs: number): Partial<RunForm> => {
  const moves = form.isHourMade && onLocalDay(nowMs, form.start);
  return {
    time,
    ...(moves && { start: madeStart(form.start.slice(0, 10), { ...form, time }, nowMs) }),
  };
};

/** A form of another day, whose run "has just ended", says that day, as long as nothing else says when it was. */
export const onItsDay = (form: RunForm, nowMs: number): RunForm => {
  const { start, startMs, touchedMs } = form;
  const isOpen = start === '' && startMs === null;
  if (!isOpen || touchedMs === null || onLocalDay(touchedMs, toLocalMinute(nowMs))) return form;
  return { ...form, start: toLocalMinute(beganMs(form, touchedMs)), isHourMade: true };
};

/** Which of the choices the form's start is. */
export const dayOf = (form: RunForm, nowMs: number): RunDay => {
  const start = startOf(form);
  if (start === '') return 'now';
  return recentDays(nowMs).find((day) => start.startsWith(day)) ?? 'other';
};

/** The form with another day: the hour that was said stays; where none was, the track's or a likely one is taken. */
export const onDay = (day: RunDay, form: RunForm, nowMs: number): Start => {
  const { startMs } = form;
  if (day === 'now') return { start: '', startMs: null, isHourMade: false };
  if (day === 'other') return { start: NOT_SAID, startMs, isHourMade: false };
  const hour = /T(\d\d:\d\d)/.exec(startOf(form))?.[1];
  if (hour !== undefined && !form.isHourMade)
    return { start: `${day}T${hour}`, startMs, isHourMade: false };
  const made = { start: madeStart(day, form, nowMs), startMs, isHourMade: true };
  return { ...made, ...withTrackStart({ ...form, ...made }, form.track?.startMs ?? null) };
};

/** The form with the hour of a day of the list; an empty one is open again. @param hour such as `18:30` */
export const withHour = (
  hour: string,
  day: RunDay,
  form: RunForm,
  nowMs: number,
): Partial<Start> =>
  hour === '' ? onDay(day, { ...form, isHourMade: true }, nowMs) : typedStart(`${day}T${hour}`);
