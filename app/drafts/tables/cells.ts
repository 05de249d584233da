/** What does a cell of a table mean: a number, a day, a time? By how the table writes them; pure. */
import {
  parseDecimal,
  parseDuration,
  plainText,
  seconds,
  toMetres,
  type Metres,
  type Seconds,
} from '../../../core/units/index.ts';

export type Decimal = 'point' | 'comma';
export type DateOrder = 'dmy' | 'mdy';
export type TableDistance = 'km' | 'mi' | 'm';
/** How times are written: `clock` is h:mm:ss and m:ss, `h:mm` has no seconds; else plain numbers in that unit. */
export const timeForms = ['clock', 'h:mm', 'min', 'h', 's'] as const;
export type TimeForm = (typeof timeForms)[number];

const COMMA_DECIMAL = /\d,(?:\d{1,2}|\d{4,})$/;

/** A comma before the decimals, where one cell can mean nothing else. */
export const decimalIn = (cells: readonly string[]): Decimal =>
  cells.some((cell) => COMMA_DECIMAL.test(plainText(cell))) ? 'comma' : 'point';

const GROUPED = {
  point: /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/,
  comma: /^[+-]?\d{1,3}(?:\.\d{3})+(?:,\d+)?$/,
};

/** A number with or without marks between its thousands; null where it is none. */
export const readNumber = (cell: string, decimal: Decimal): number | null => {
  const plain = plainText(cell).replace(/(?<=\d) (?=\d{3}\b)/g, '');
  const grouped = GROUPED[decimal].test(plain);
  return parseDecimal(grouped ? plain.replaceAll(decimal === 'point' ? ',' : '.', '') : plain);
};

const CELL_UNITS: readonly (readonly [TableDistance, RegExp])[] = [
  ['km', /\s*(?:km|公里|千米)$/i],
  ['mi', /\s*(?:mi|miles?|英里)$/i],
  ['m', /\s*(?:m|米)$/i],
];

/** A distance; a unit in the cell goes before the table's own. Null where it is none. */
export const readDistance = (
  cell: string,
  unit: TableDistance,
  decimal: Decimal,
): Metres | null => {
  const own = CELL_UNITS.find(([, ending]) => ending.test(cell));
  const value = readNumber(own ? cell.replace(own[1], '') : cell, decimal);
  if (value === null) return null;
  const named = own?.[0] ?? unit;
  return named === 'm' ? toMetres(value / 1000, 'km') : toMetres(value, named);
};

const FACTORS: Readonly<Record<TimeForm, number>> = {
  clock: 60,
  'h:mm': 60,
  min: 60,
  h: 3600,
  s: 1,
};

/** How long a run took. A plain number is minutes, or what `form` says; null where it cannot be read. */
export const readTime = (cell: string, form: TimeForm, decimal: Decimal): Seconds | null => {
  const plain = plainText(cell);
  const two = form === 'h:mm' ? /^(\d{1,3}):(\d\d)$/.exec(plain) : null;
  if (two) return Number(two[2]) > 59 ? null : seconds(3600 * Number(two[1]) + 60 * Number(two[2]));
  const isNumber = /^[\d.,]+$/.test(plain);
  const isWhole = /^\d+$/.test(plain);
  if (!isNumber || (form === 'clock' && !isWhole)) return parseDuration(plain);
  const value = readNumber(plain, decimal);
  return value === null ? null : seconds(Math.round(value * FACTORS[form]));
};

export interface Moment {
  /** Local, such as `2026-03-04`. */
  readonly day: string;
  readonly ms: number;
  /** No hour stands in the cell: `ms` is the day's beginning. */
  readonly dayOnly: boolean;
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const two = (value: number): string => String(value).padStart(2, '0');

type Parts = readonly [year: number, month: number, day: number];

const yearOf = (text: string): number => (text.length === 2 ? 2000 + Number(text) : Number(text));

/** Year, month and day at the beginning of a cell, and what follows. */
const partsOf = (plain: string, order: DateOrder): readonly [Parts, string] | null => {
  const first = /^(\d{4})[-/.年 ]+(\d{1,2})[-/.月 ]+(\d{1,2})日?(?!\d)/.exec(plain);
  if (first)
    return [[Number(first[1]), Number(first[2]), Number(first[3])], plain.slice(first[0].length)];
  const last = /^(\d{1,2})([-/. ]+)(\d{1,2})\2(\d{4}|\d{2})(?!\d)/.exec(plain);
  if (last) {
    const [, a = '', mark = '', b = '', year = ''] = last;
    // Between points the day stands first, wherever that is written.
    const dayFirst = order === 'dmy' || mark.includes('.');
    const [day, month] = dayFirst ? [a, b] : [b, a];
    return [[yearOf(year), Number(month), Number(day)], plain.slice(last[0].length)];
  }
  const named =
    /^(\d{1,2})[. ]*([a-z]{3})[a-z]*[., ]*(\d{4})/i.exec(plain) ??
    /^([a-z]{3})[a-z]*[. ]*(\d{1,2})[a-z]*[, ]*(\d{4})/i.exec(plain);
  if (!named) return null;
  const [, a = '', b = '', year = ''] = named;
  const [day, month] = /^\d/.test(a) ? [a, b] : [b, a];
  const at = MONTHS.indexOf(month.toLowerCase());
  return [[Number(year), at + 1, Number(day)], plain.slice(named[0].length)];
};

/** Minutes of the day: `7:30`, `7.30 pm`, `下午 7:30`; null where it is no such time. */
export const readClock = (cell: string): number | null => {
  const plain = plainText(cell).toLowerCase();
  const found =
    /^(上午|下午|晚上)? ?(\d{1,2})[:.时点](\d\d)?(?::\d\d(?:\.\d+)?)?分? ?([ap])?\.?m?\.?$/.exec(
      plain,
    );
  if (!found) return null;
  const [, half, hour = '', minute = '0', letter] = found;
  const late = letter === 'p' || half === '下午' || half === '晚上';
  const h =
    Number(hour) + (late && Number(hour) < 12 ? 12 : letter === 'a' && hour === '12' ? -12 : 0);
  return h > 23 || Number(minute) > 59 ? null : 60 * h + Number(minute);
};

/** The instant of local parts; null where no calendar has such a day. */
const localMs = ([year, month, day]: Parts, minutes: number): number | null => {
  const at = new Date(year, month - 1, day, 0, minutes);
  return at.getFullYear() === year && at.getMonth() === month - 1 && at.getDate() === day
    ? at.getTime()
    : null;
};

const localDay = (ms: number): string => {
  const at = new Date(ms);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

/** A day, with its hour where there is one; null where it is no day of the calendar. */
export const readMoment = (cell: string, order: DateOrder): Moment | null => {
  const plain = plainText(cell);
  if (/^\d{4}-\d\d-\d\d[T ]\d\d:\d\d.*(?:Z|[+-]\d\d:?\d\d)$/.test(plain)) {
    const ms = Date.parse(plain.replace(' ', 'T'));
    return Number.isNaN(ms) ? null : { day: localDay(ms), ms, dayOnly: false };
  }
  const read = partsOf(plain, order);
  if (!read) return null;
  const [parts, rest] = read;
  const hour = rest.replace(/^[T,\s]+/, '');
  const minutes = hour === '' ? 0 : readClock(hour);
  const ms = minutes === null ? null : localMs(parts, minutes);
  return ms === null ? null : { day: localDay(ms), ms, dayOnly: hour === '' };
};

/** Day or month first, as the cells show it; null: each could be either, so a person must say. */
export const orderIn = (cells: readonly string[]): DateOrder | null => {
  let [dayFirst, monthFirst, unclear] = [0, 0, 0];
  for (const cell of cells) {
    const found = /^(\d{1,2})([-/ ])(\d{1,2})\2\d{2,4}/.exec(plainText(cell));
    if (!found) continue;
    const [a, b] = [Number(found[1]), Number(found[3])];
    if (a > 12 && b <= 12) dayFirst++;
    else if (b > 12 && a <= 12) monthFirst++;
    else if (a !== b) unclear++;
  }
  if (dayFirst === monthFirst) return unclear === 0 && dayFirst === 0 ? 'dmy' : null;
  return dayFirst > monthFirst ? 'dmy' : 'mdy';
};
