/** The names that the desk's sentences use, for the printed review. */
import type { Review } from '../../core/review/index.ts';
import type { Say } from '../words/say-names.ts';
import type { LanguageFile } from '../words/types.ts';

/** More names than this in one sentence are counted, not read. */
const MOST_NAMES = 4;

/** Distances in kilometres: whole from 100 on, else to a tenth; days of the calendar in UTC. */
export const sayOf = (
  review: Pick<Review, 'rounds' | 'pairs' | 'testers'>,
  { places, glossary, about: { locale } }: LanguageFile,
): Say => {
  const named = <T extends string>(all: readonly (readonly [T, string])[]) => {
    const names = new Map<string, string>(all);
    return (id: T) => names.get(id) ?? '?';
  };
  const number = (value: number, digits = 1) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits }).format(value);
  const list = (some: readonly string[]) =>
    new Intl.ListFormat(locale, { type: 'conjunction' }).format(some);
  const tester = named(review.testers.map(({ id, code }) => [id, code] as const));
  return {
    round: named(review.rounds.map(({ id, name }) => [id, name] as const)),
    pair: named(review.pairs.map(({ id, code }) => [id, code] as const)),
    tester,
    testers: (ids) =>
      ids.length <= MOST_NAMES
        ? list(ids.map(tester))
        : `${ids.slice(0, MOST_NAMES).map(tester).join(', ')} ${places.sheet.more(ids.length - MOST_NAMES)}`,
    felt: ({ zone, kind }) =>
      places.frame.felt(glossary.kinds[kind].name, glossary.zones[zone].name),
    distance: (metres) => `${number(metres / 1000, metres >= 100_000 ? 0 : 1)} km`,
    number,
    date: (at) =>
      new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(
        new Date(at),
      ),
    list,
    upper: (text) => text.charAt(0).toLocaleUpperCase(locale) + text.slice(1),
  };
};
