/**
 * What each place of the desk asks of the log: one function a question, of the opened project and of what the
 * place names. A place keeps its questions in a file of its own beside this one and adds them to the list here.
 */
import type { RecordId } from '../../../core/records/index.ts';
import { changesQuestions } from './changes-answers.ts';
import type { Opened } from './opened.ts';
import { peopleQuestions } from './people-answers.ts';
import { runsQuestions } from './runs-answers.ts';
import { searchQuestions } from './search-answers.ts';
import { sheetQuestions } from './sheet-answers.ts';
import { shoeQuestions } from './shoe-answers.ts';
import { tablesQuestions } from './tables-answers.ts';
import { talkQuestions } from './talk-answers.ts';
import { wearQuestions } from './wear-answers.ts';
import { wordsQuestions } from './words-answers.ts';

type Question = (opened: Opened, ...about: never[]) => unknown;

/** By name; the worker answers each of them. */
const questions = {
  ...sheetQuestions,
  ...shoeQuestions,
  ...wearQuestions,
  ...changesQuestions,
  ...peopleQuestions,
  ...runsQuestions,
  ...wordsQuestions,
  ...tablesQuestions,
  ...searchQuestions,
  ...talkQuestions,
} satisfies Readonly<Record<string, Question>>;

type Questions = typeof questions;

/** The same questions as the screens ask them: by the project's id, then what the place names. */
export type PlaceAnswers = {
  readonly [Name in keyof Questions]: Questions[Name] extends (
    opened: Opened,
    ...about: infer About
  ) => infer Answer
    ? (project: RecordId, ...about: About) => Answer
    : never;
};

/** Answers that are kept until the log changes: each asks for much work, and there are few of them. */
const kept: ReadonlySet<string> = new Set([
  'calendar',
  'shoe',
  'comfort',
  'pairList',
  'testerList',
  'wearState',
  'verdictState',
  'changes',
]);

const answersOf = new WeakMap<Opened, Map<string, unknown>>();

const askOnce = (name: string, ask: Question, opened: Opened, about: readonly never[]): unknown => {
  if (!kept.has(name)) return ask(opened, ...about);
  const known = answersOf.get(opened) ?? new Map<string, unknown>();
  answersOf.set(opened, known);
  const key = JSON.stringify([name, ...about]);
  if (!known.has(key)) known.set(key, ask(opened, ...about));
  return known.get(key);
};

/** @param get opens a project, or throws where it is not in the log */
export const placeAnswers = (get: (project: RecordId) => Opened): PlaceAnswers =>
  Object.fromEntries(
    Object.entries<Question>(questions).map(([name, ask]) => [
      name,
      (project: RecordId, ...about: never[]) => askOnce(name, ask, get(project), about),
    ]),
  ) as unknown as PlaceAnswers;
