/** How are shares and signs written, whoever writes the numbers? One rule for desk, terminal and findings. */

/** Writes a number with at most so many decimals. */
export type WriteNumber = (value: number, most: number) => string;

/** A number as a reader reads it: rounded as it is written, which for halves is not as `toFixed` rounds. */
export const written = (value: number, decimals: number): number =>
  Number(
    new Intl.NumberFormat('en', { maximumFractionDigits: decimals, useGrouping: false }).format(
      value,
    ),
  );

/** How all numbers of a column are written: with one decimal where any of them needs it, else whole. */
export const inColumn = (
  values: readonly number[],
): ((value: number, number: (value: number, most: number, least: number) => string) => string) => {
  const decimals = values.every((value) => Number.isInteger(written(value, 1))) ? 0 : 1;
  return (value, number) => number(value, decimals, decimals);
};

/** A share in percent: whole from ten on, one decimal below, two below one; the space is that of ISO 80000-1. */
export const percentOf = (share: number, number: WriteNumber): string => {
  const size = Math.abs(100 * share);
  return `${number(100 * share, size >= 9.95 ? 0 : size >= 0.995 ? 1 : 2)}\u00a0%`;
};

/** A share as somebody set it, with the digits that they typed. */
export const setPercentOf = (share: number, number: WriteNumber): string =>
  `${number(Number((100 * share).toPrecision(12)), 4)}\u00a0%`;

/** A probability: never quite sure. */
export const chanceOf = (chance: number, number: WriteNumber): string =>
  chance > 0.99 ? `> 99\u00a0%` : chance < 0.01 ? `< 1\u00a0%` : percentOf(chance, number);

/** A value with its sign before what `write` makes of its size; nothing before a nought. */
export const signed = (value: number, write: (size: number) => string): string => {
  const size = write(Math.abs(value));
  return /[1-9]/.test(size) ? `${value < 0 ? '−' : '+'}${size}` : size;
};

/** A size that is wanted, mm: what goes down bears a minus, no hyphen; what goes up bears no sign. */
export const wantedSize = (mm: number, number: WriteNumber): string =>
  mm < 0 ? signed(mm, (size) => number(size, 1)) : number(mm, 1);

/** A drawn value with what may be off: "34 ± 0.5", or "34 −0.3/+0.5" where the sides differ. @param lower deviation, below nought */
export const withTolerance = (
  {
    nominal,
    lower,
    upper,
  }: { readonly nominal: number; readonly lower: number; readonly upper: number },
  number: WriteNumber,
): string => {
  const write = (value: number) => signed(value, (size) => number(size, 2));
  const [below, above] = [number(-lower, 2), number(upper, 2)];
  return below === above
    ? `${number(nominal, 2)}\u00a0±\u00a0${above}`
    : `${number(nominal, 2)}\u00a0${write(lower)}/${write(upper)}`;
};

/** Name of a language by its tag, as readers of the locale say it; the tag itself where nobody knows it. */
export const languageIn = (tag: string, locale: string): string => {
  try {
    return new Intl.DisplayNames([locale], { type: 'language' }).of(tag) ?? tag;
  } catch {
    // A tag comes with a record, and need not be one.
    return tag;
  }
};

/** Of `en-GB` the `en`: the language, wherever it is spoken. */
const languageOf = (tag: string): string | undefined => tag.split('-')[0];

/**
 * Whether a text may be in another language than one of its readers', so that it must be said.
 * @param tag the text's language; null where nobody knows it
 */
export const isForeign = (tag: string | null, locales: readonly string[]): boolean =>
  tag === null || locales.some((locale) => languageOf(locale) !== languageOf(tag));
