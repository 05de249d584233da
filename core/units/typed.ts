/** What did the person mean by the number or time they typed? Every field that takes a number reads it here. */
import { seconds, type Seconds } from './quantity.ts';

/** Full-width forms of `!` to `~`, as Chinese and Japanese keyboards write them, and how far from the plain ones. */
const FULL_WIDTH = /[！-～]/g;
const FULL_WIDTH_OFFSET = 0xfee0;

/**
 * The text with the characters that stand for plain ones replaced: full-width digits, letters and marks, the
 * ideographic full stop, minus signs and dashes, spaces of every width. A full-width comma stays: it parts, and is
 * never a decimal one.
 */
export const plainText = (text: string): string =>
  text
    .replaceAll('，', '、')
    .replace(FULL_WIDTH, (one) => String.fromCharCode(one.charCodeAt(0) - FULL_WIDTH_OFFSET))
    .replace(/[‐-―−﹣]/g, '-')
    .replaceAll('。', '.')
    .replace(/\s+/g, ' ')
    .trim();

/**
 * A decimal number as people type it: point or comma before the decimals, spaces around it.
 * Null where it is no such number (a thousands separator is not guessed at).
 */
export const parseDecimal = (text: string): number | null => {
  const plain = plainText(text).replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
};

/** A duration as it was understood: 75:30 is 0 h 75 min 30 s, so that it can be shown back as it was typed. */
export interface TypedDuration {
  readonly h: number;
  readonly m: number;
  readonly s: number;
}

/** Minutes pass 59 only where no hours stand before them, seconds never. */
const inOrder = (h: number, m: number, s: number): TypedDuration | null =>
  s > 59 || (h > 0 && m > 59) ? null : { h, m, s };

/** Digits alone: one or two are minutes; of more the last two are seconds, the two before minutes, the rest hours. */
const ofDigits = (plain: string): TypedDuration | null => {
  if (!/^\d{1,6}$/.test(plain)) return null;
  if (plain.length <= 2) return { h: 0, m: Number(plain), s: 0 };
  return inOrder(Number(plain.slice(0, -4)), Number(plain.slice(-4, -2)), Number(plain.slice(-2)));
};

/** `1:05:00`, `75:30`, and `52:30.4` as a watch writes it: parts of a second are dropped. */
const ofClock = (plain: string): TypedDuration | null => {
  const found = /^(?:(\d{1,3}) ?: ?)?(\d{1,3}) ?: ?(\d{1,2})(?:[.,]\d+)?$/.exec(plain);
  if (!found) return null;
  const [, h, m = '', s = ''] = found;
  return h === undefined
    ? inOrder(0, Number(m), Number(s))
    : Number(m) > 59
      ? null
      : inOrder(Number(h), Number(m), Number(s));
};

/**
 * For keypads without a colon: `1.05.00`, `1-05-00`, `1 05 00`; and with two digits at the end `75.30`, `75-30`,
 * `75 30`, which are minutes and seconds. `75.3` is refused: it may be 75 min 3 s, 75 min 30 s or 75.3 min.
 */
const ofKeypad = (plain: string): TypedDuration | null => {
  const three = /^(\d{1,3})([ .,-])(\d{1,2})\2(\d{1,2})$/.exec(plain);
  if (three)
    return Number(three[3]) > 59
      ? null
      : inOrder(Number(three[1]), Number(three[3]), Number(three[4]));
  const two = /^(\d{1,3})[ .,-](\d\d)$/.exec(plain);
  return two && inOrder(0, Number(two[1]), Number(two[2]));
};

const UNITS = [
  { perUnit: 3600, names: /^(?:h|hrs?|hours?|[个個]?小[时時]|[时時])$/ },
  { perUnit: 60, names: /^(?:m|mins?|minutes?|分[钟鐘]?|['′’‘])$/ },
  { perUnit: 1, names: /^(?:s|secs?|seconds?|秒[钟鐘]?|["″”“]|''|′′|’’)$/ },
] as const;

const PART =
  /(\d{1,6}(?:[.,]\d+)?) ?([a-z]+|[个個]?小[时時]|[时時]|[分秒][钟鐘]?|''|′′|’’|['′’‘"″”“])?(?:[ ,、零]|and)*/y;

const ofSeconds = (whole: number): TypedDuration => ({
  h: Math.floor(whole / 3600),
  m: Math.floor((whole % 3600) / 60),
  s: whole % 60,
});

/** `1h15`, `1 h 15 min`, `75m30`, `75' 30"`, `1小时15分`, and one number alone with decimals: `1.5 h`. */
const ofUnits = (plain: string): TypedDuration | null => {
  const values: (number | undefined)[] = [];
  PART.lastIndex = 0;
  let parts = 0;
  let hasDecimals = false;
  while (PART.lastIndex < plain.length) {
    const found = PART.exec(plain);
    if (!found) return null;
    const [, typed = '', name] = found;
    // A number without a unit is of the one below the last, and ends the time.
    const isLast = PART.lastIndex === plain.length;
    const unit =
      name === undefined
        ? isLast && values.length > 0
          ? values.length
          : -1
        : UNITS.findIndex(({ names }) => names.test(name));
    if (unit < values.length || unit >= UNITS.length) return null;
    values[unit] = Number(typed.replace(',', '.'));
    hasDecimals ||= /[.,]/.test(typed);
    parts++;
  }
  if (parts === 0) return null;
  if (parts === 1 && (hasDecimals || values.length === 3))
    return ofSeconds(
      Math.round((values[values.length - 1] ?? 0) * (UNITS[values.length - 1]?.perUnit ?? 0)),
    );
  const [h = 0, m = 0, s = 0] = values;
  return hasDecimals || (values[0] !== undefined && m > 59) ? null : inOrder(h, m, s);
};

/**
 * A duration as people type it, on any keypad: digits alone (`7530`), with colons, with the marks of keypads that have
 * none, or with units in English or Chinese. Null where it is none of these, or could be two of them.
 */
export const readDuration = (text: string): TypedDuration | null => {
  const plain = plainText(text).toLowerCase();
  return ofDigits(plain) ?? ofClock(plain) ?? ofKeypad(plain) ?? ofUnits(plain);
};

/** {@link readDuration} in seconds. */
export const parseDuration = (text: string): Seconds | null => {
  const read = readDuration(text);
  return read && seconds(read.h * 3600 + read.m * 60 + read.s);
};
