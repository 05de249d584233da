/** What every part of the printed review shares: the words, who says them, and how figures look in columns. */
import type { Foot, Measure } from '../../../core/records/index.ts';
import { isOutOfTolerance, type Review } from '../../../core/review/index.ts';
import { languageIn } from '../../words/figures.ts';
import type { Speaker } from '../../words/say-complaint.ts';
import { placeName } from '../../words/say-place.ts';
import type { LanguageFile } from '../../words/types.ts';

export interface Printing {
  readonly review: Review;
  readonly spoken: LanguageFile;
  readonly speaker: Speaker;
  /** Whether figures of statistics are printed too. */
  readonly howSure: boolean;
  /** Code of a pair, without the mark of one out of tolerance. */
  readonly code: (pair: string) => string;
}

/** At most so many decimals, without a mark for thousands. */
export const plainNumber = (value: number, most: number): string =>
  String(Number(value.toFixed(most)));
export const fixed = (value: number): string => value.toFixed(2);
export const km = (metres: number): string => (metres / 1000).toFixed(1);

export const heading = (text: string): string => `── ${text} ──`;

/** Lines that stand behind "How sure?": none unless they were asked for. */
export const behind = <T>(
  { howSure }: Pick<Printing, 'howSure'>,
  lines: readonly T[],
): readonly T[] => (howSure ? lines : []);

/** Measure, site and foot of a reading. */
export const placeOf = (
  of: { readonly measure: Measure; readonly site: string; readonly foot: Foot },
  { speaker }: Printing,
): string => speaker.desk.joined.clauses([placeName(of, speaker), speaker.foot(of.foot)]);

/** A review ready to be printed in a language. */
export const printingOf = (review: Review, spoken: LanguageFile, howSure: boolean): Printing => {
  const codes = new Map(review.pairs.map(({ id, code }) => [id as string, code]));
  const out = new Set(
    review.pairs.flatMap(({ id, outOfTolerance }) =>
      isOutOfTolerance(outOfTolerance) ? [id as string] : [],
    ),
  );
  const testers = new Map(review.testers.map(({ id, code }) => [id, code]));
  const rounds = new Map(review.rounds.map(({ id, name }) => [id, name]));
  const code = (id: string) => codes.get(id) ?? '?';
  const { desk, glossary, phone, about } = spoken;
  return {
    review,
    spoken,
    code,
    howSure,
    speaker: {
      desk,
      glossary,
      number: plainNumber,
      distance: (distance) => `${km(distance)} km`,
      tester: (id) => testers.get(id) ?? '?',
      // A pair out of tolerance is marked wherever it is named.
      pair: (id) => (out.has(id) ? `${code(id)} (${desk.blueprint.mark})` : code(id)),
      round: (id) => rounds.get(id) ?? '?',
      foot: (foot) => phone.foot[foot],
      language: (tag) => languageIn(tag, about.locale),
    },
  };
};
