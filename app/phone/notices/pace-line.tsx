/** How often and when the tester logs, in a sentence; where that cannot be told yet, from when on. */
import type { RecordOf } from '../../../core/records/index.ts';
import { locale, noticeWords } from '../../words/index.ts';
import { dayOfRun, paceOf } from './reminders.ts';

/** A minute of the day as the language writes it, such as 18:30. */
const hourOf = (minute: number): string =>
  new Intl.DateTimeFormat(locale(), { timeStyle: 'short', timeZone: 'UTC' }).format(
    minute * 60_000,
  );

export const PaceLine = ({ runs }: { readonly runs: readonly RecordOf<'run'>[] }) => {
  const words = noticeWords().reminders;
  const pace = paceOf(runs.map(dayOfRun));
  return <>{pace ? words.pace(pace.everyDays, hourOf(pace.minute)) : words.noPace}</>;
};
