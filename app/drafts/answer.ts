/** What a tester answers or writes, and how it becomes a record. Pure. */
import type { AnswerOption, BodyOf, RecordId, RecordOf } from '../../core/records/index.ts';
import { MOST_WORDS } from './question.ts';
import { typedLine } from './typed.ts';

export interface Writer {
  readonly tester: RecordId;
  readonly at: string;
  /** Of the words that are typed. */
  readonly language: string;
}

type Body = BodyOf<'answer'>;
export type ReadWords =
  | { readonly ok: true; readonly body: Body }
  | { readonly ok: false; readonly why: 'missing' | 'too-long' };

/** One tap. */
export const tappedAnswer = (
  { revision, body }: RecordOf<'question'>,
  option: AnswerOption,
  { tester, at }: Writer,
): Body => ({ project: body.project, tester, at, question: revision.id, option });

const withWords = (body: Body, typed: string, language: string): ReadWords => {
  const words = typedLine(typed);
  if (words === undefined) return { ok: false, why: 'missing' };
  if (words.length > MOST_WORDS) return { ok: false, why: 'too-long' };
  return { ok: true, body: { ...body, words, language } };
};

/** A question answered in words, or words added to what was tapped. @param before what stands already */
export const wordedAnswer = (
  { revision, body }: RecordOf<'question'>,
  typed: string,
  { tester, at, language }: Writer,
  before?: Body,
): ReadWords =>
  withWords(
    before ?? { project: body.project, tester, at, question: revision.id },
    typed,
    language,
  );

/** A message to the lead about a pair, unasked. */
export const messageAbout = (
  { revision, body }: RecordOf<'pair'>,
  typed: string,
  { tester, at, language }: Writer,
): ReadWords =>
  withWords({ project: body.project, tester, at, pair: revision.id }, typed, language);
