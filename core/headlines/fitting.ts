/** What does a session of fit trials say, in one sentence? Where most agree that the shoe is off, and by how much. */
import type { FitPlace } from '../foot/index.ts';
import { FEWEST_TO_AGREE, type PlaceAgreement } from '../fitting/index.ts';
import type { Claim } from './stamp.ts';

type Side = 'little' | 'much';

export type FitHeadline = { readonly claims: Claim } &
  /** Nobody tried anything on yet; fewer than make a majority. */
  (
    | { readonly case: 'nobody' }
    | { readonly case: 'few'; readonly people: number }
    | {
        readonly case: 'off';
        readonly place: FitPlace;
        readonly side: Side;
        readonly people: number;
        readonly of: number;
        /** In the middle, as those on the side estimate it; null: none did. */
        readonly mm: number | null;
        /** So many other places are off for most. */
        readonly more: number;
      }
    /** Nowhere do most agree that it is off; here they are divided. */
    | { readonly case: 'divided'; readonly place: FitPlace; readonly of: number }
    | { readonly case: 'fits'; readonly people: number }
  );

const isSide = (word: PlaceAgreement['word']): word is Side => word === 'little' || word === 'much';

/** @param people who tried something on */
export const fitHeadline = (places: readonly PlaceAgreement[], people: number): FitHeadline => {
  const claims = 'nothing' as const;
  if (people === 0) return { case: 'nobody', claims };
  if (people < FEWEST_TO_AGREE) return { case: 'few', claims, people };
  const off = places
    .flatMap(({ place, word, said, answered, mm }) =>
      isSide(word)
        ? [
            {
              place,
              side: word,
              people: said[word].length,
              of: answered,
              mm: mm[word]?.median ?? null,
            },
          ]
        : [],
    )
    // Most people first; where as many say it, the place that is further off.
    .sort((a, b) => b.people / b.of - a.people / a.of || (b.mm ?? 0) - (a.mm ?? 0));
  const [first, ...others] = off;
  if (first) return { case: 'off', claims, ...first, more: others.length };
  const [divided] = places
    .filter(({ word }) => word === 'divided')
    .sort((a, b) => a.said.right.length / a.answered - b.said.right.length / b.answered);
  if (divided) return { case: 'divided', claims, place: divided.place, of: divided.answered };
  return places.some(({ word }) => word === 'right')
    ? { case: 'fits', claims, people }
    : { case: 'few', claims, people };
};
