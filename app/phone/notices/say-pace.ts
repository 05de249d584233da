/** How often and when the tester logs, in a sentence; where that cannot be told yet, from when on. */
import type { RecordOf } from '../../../core/records/index.ts';
import { locale, noticeWords } from '../../words/index.ts';
import { dayOfRun, paceOf } from './reminders.ts';

const QUARTER = 15;

/** About when, as the language writes it, such as 18:30; nobody logs to the minute. */
const hourOf = (minute: number): string =>
  new Intl.DateTimeFormat(locale(), { timeStyle: 'short', timeZone: 'UTC' }).format(
    Math.round(minute / QUARTER) * QUARTER * 60_000,
  );

export const sayPace = (runs: readonly RecordOf<'run'>[]): string => {
  const words = noticeWords().reminders;
  const pace = paceOf(runs.map(dayOfRun));
  return pace ? words.pace(pace.everyDays, hourOf(pace.minute)) : words.noPace;
};
