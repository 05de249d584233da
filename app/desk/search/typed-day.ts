/** Which day or month does somebody mean who types it into the search? Pure. */
import { readMoment } from '../../drafts/tables/cells.ts';

export interface Span {
  readonly fromMs: number;
  readonly untilMs: number;
}

const dayAt = (text: string): Date | null => {
  const read = readMoment(text, 'dmy');
  return read?.dayOnly ? new Date(read.ms) : null;
};

const spanOf = (from: Date, days: number, months: number): Span => ({
  fromMs: from.getTime(),
  untilMs: new Date(from.getFullYear(), from.getMonth() + months, from.getDate() + days).getTime(),
});

/** The first reading that a calendar has. */
const firstOf = (texts: readonly string[]): Date | null => {
  for (const text of texts) {
    const day = dayAt(text);
    if (day) return day;
  }
  return null;
};

/**
 * "17 Nov 2026", "17.11.", "11月17日", "Nov 2026", "2026-11"; the day stands before the month where both are numbers.
 * Without a year it is the latest one that is not ahead.
 * @returns null where the text is neither a day nor a month
 */
export const spanTyped = (typed: string, nowMs: number): Span | null => {
  const text = typed.trim();
  if (!/\d/.test(text)) return null;
  const whole = dayAt(text);
  if (whole) return spanOf(whole, 1, 0);
  const month = firstOf([`1 ${text}`, `${text}-1`, `${text}1日`]);
  if (month) return spanOf(month, 0, 1);
  const year = new Date(nowMs).getFullYear();
  const inYear = (one: number) =>
    firstOf([`${text} ${one}`, `${text}${one}`, `${text}/${one}`, `${one}年${text}`]);
  const now = inYear(year);
  const day = now && now.getTime() > nowMs ? inYear(year - 1) : now;
  return day && spanOf(day, 1, 0);
};
