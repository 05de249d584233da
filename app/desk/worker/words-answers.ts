/** What the list of words and the page of a finding ask of the log. */
import { wordsHeadline, type WordsHeadline } from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  listWords,
  quotesOf,
  type QuoteLook,
  type WordsQuery,
  type WordsSlice,
} from '../../../core/words/index.ts';
import type { Opened } from './opened.ts';

const words = (
  { log }: Opened,
  query: WordsQuery,
): { readonly headline: WordsHeadline; readonly slice: WordsSlice } => {
  const slice = listWords(log, query);
  return { headline: wordsHeadline(slice), slice };
};

const quotes = ({ log }: Opened, finding: RecordId): readonly QuoteLook[] => quotesOf(log, finding);

export const wordsQuestions = { words, quotes };
