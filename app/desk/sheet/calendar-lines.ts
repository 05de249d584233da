/** Where each line of the calendar stands, and at which days a tick does. Pure. */
import type { RecordId } from '../../../core/records/index.ts';
import type { Calendar as Days, CalendarRow } from '../../../core/review/index.ts';

export const DAY_MS = 86_400_000;
export const ROW = 15;
export const HEAD = 22;
/** Room for the round and the pair, and for the tester's code before a hand-out. */
export const [LEFT, RIGHT] = [132, 56] as const;

/**
 * How far a picture that is wider than its window is scrolled at first, in px: today stands near its right edge, and what
 * is planned next peeks in.
 */
export const scrollToLatest = (nowX: number, window: number, picture: number): number =>
  Math.min(Math.max(0, nowX - 0.85 * window), Math.max(0, picture - window));

/** Days at which a line stands: Mondays, fewer of them where the span is long. */
export const ticksOf = (fromMs: number, untilMs: number, width: number): number[] => {
  const days = (untilMs - fromMs) / DAY_MS;
  const step = [1, 7, 14, 28, 56, 112, 224, 448].find((one) => (days / one) * 74 < width) ?? 896;
  const first = Math.ceil(fromMs / DAY_MS);
  // 1 January 1970 was a Thursday.
  const monday = step === 1 ? first : first + ((11 - (first % 7)) % 7);
  const ticks: number[] = [];
  for (let day = monday; day * DAY_MS < untilMs; day += step) ticks.push(day * DAY_MS);
  return ticks;
};

/** Room for a day such as "25 Jan" or “12月25日”, in px. */
const DAY_WIDTH = 54;

/** Where the day stands beside its tick; near the right edge it ends there, or it would be cut. */
export const besideTick = (
  x: number,
  right: number,
): { readonly x: number; readonly 'text-anchor'?: 'end' } =>
  x + 3 + DAY_WIDTH > right ? { x: right, 'text-anchor': 'end' } : { x: x + 3 };

export interface Line {
  readonly key: string;
  readonly y: number;
  /** Stands at the first line of its round. */
  readonly round: RecordId | null;
  readonly row: CalendarRow | null;
  readonly fold: Days['folds'][number] | null;
}

/** Rows and folded rounds in the order of the rounds, with room between rounds. */
export const linesOf = (days: Days, rounds: readonly RecordId[]): readonly Line[] => {
  let y = HEAD;
  return rounds.flatMap((round): Line[] => {
    const rows = days.rows.filter((row) => row.round === round);
    const fold = days.folds.find((one) => one.round === round) ?? null;
    const own = rows.length > 0 ? rows : fold ? [null] : [];
    const lines = own.map((row, at): Line => {
      const line = {
        key: row?.pair ?? `fold ${round}`,
        y,
        round: at === 0 ? round : null,
        row,
        fold: row ? null : fold,
      };
      y += ROW;
      return line;
    });
    if (lines.length > 0) y += 5;
    return lines;
  });
};
