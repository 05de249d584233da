/** What a lead types of a question to a tester, and how it becomes a record. Pure. */
import {
  editBody,
  type AnswerOption,
  type AskedAbout,
  type AskId,
  type BodyOf,
  type RecordId,
} from '../../core/records/index.ts';
import { answerSets, asks, type AnswerSet } from '../../core/talk/index.ts';
import { typedLine } from './typed.ts';

/** What can be tapped: as the ready-made question offers, or one of the sets. */
export const ASKS_OWN = 'own';

export interface QuestionDraft {
  /** Empty: nobody is chosen yet. */
  readonly tester: RecordId | '';
  /** Empty: in the lead's own words. */
  readonly ask: AskId | '';
  /** As it stands in the field; what is ready-made and was not touched is read in the tester's language. */
  readonly words: string;
  readonly answers: AnswerSet | typeof ASKS_OWN;
}

/** As long as words of a record may be. */
export const MOST_WORDS = 4000;

/** A draft begins with a ready-made question. @param say its words in the lead's language */
export const beginQuestion = (
  tester: RecordId | '',
  ask: AskId | '',
  say: (ask: AskId) => string,
): QuestionDraft => ({
  tester,
  ask,
  words: ask === '' ? '' : say(ask),
  answers: ask === '' ? 'words' : ASKS_OWN,
});

/** Another question is chosen: words that were typed stay where it is the lead's own now. */
export const chooseAsk = (
  draft: QuestionDraft,
  ask: AskId | '',
  say: (ask: AskId) => string,
): QuestionDraft => {
  const next = beginQuestion(draft.tester, ask, say);
  const isTyped = draft.ask === '' ? draft.words.trim() !== '' : draft.words !== say(draft.ask);
  return ask === '' && isTyped ? { ...next, words: draft.words } : next;
};

/**
 * Somebody else is asked: what is ready-made says their pair.
 * @param say the ready-made words as they were for the tester before, then for the new one
 */
export const chooseTester = (
  draft: QuestionDraft,
  tester: RecordId,
  say: { readonly before: (ask: AskId) => string; readonly now: (ask: AskId) => string },
): QuestionDraft => ({
  ...draft,
  tester,
  ...(draft.ask !== '' && draft.words === say.before(draft.ask) && { words: say.now(draft.ask) }),
});

/** What the tester can tap as the draft stands; what answers every question is not among it. */
export const offeredOptions = ({ ask, answers }: QuestionDraft): readonly AnswerOption[] =>
  answers === ASKS_OWN ? (ask === '' ? [] : asks[ask].options) : answerSets[answers];

export type QuestionField = 'tester' | 'words';
export type QuestionTrouble = 'missing' | 'too-long';

export interface QuestionFacts {
  readonly project: RecordId;
  readonly at: string;
  readonly about: AskedAbout;
  /** Of the words that the lead types. */
  readonly language: string;
  /** The ready-made question in the lead's language. */
  readonly say: (ask: AskId) => string;
}

export type ReadQuestion =
  | { readonly ok: true; readonly body: BodyOf<'question'> }
  | {
      readonly ok: false;
      readonly troubles: Readonly<Partial<Record<QuestionField, QuestionTrouble>>>;
    };

/** Every trouble with its field, or the body. */
export const readQuestion = (draft: QuestionDraft, facts: QuestionFacts): ReadQuestion => {
  const { tester, ask, answers } = draft;
  const { project, at, about, language, say } = facts;
  const words = typedLine(draft.words);
  const isReadyMade = ask !== '' && words === say(ask).trim();
  const troubles: Partial<Record<QuestionField, QuestionTrouble>> = {
    ...(tester === '' && { tester: 'missing' }),
    ...(words === undefined && { words: 'missing' }),
    ...((words?.length ?? 0) > MOST_WORDS && { words: 'too-long' }),
  };
  if (tester === '' || words === undefined || Object.keys(troubles).length > 0)
    return { ok: false, troubles };
  return {
    ok: true,
    body: {
      ...{ project, tester, at },
      ...(Object.keys(about).length > 0 && { about }),
      ...(ask !== '' && { ask }),
      ...(!isReadyMade && { words, language }),
      ...(answers !== ASKS_OWN &&
        (ask !== '' || answers !== 'words') && { options: [...answerSets[answers]] }),
    },
  };
};

/** A question that no longer asks for an answer, or that does again. @param at null: it stands again */
export const withdrawn = (body: BodyOf<'question'>, at: string | null): BodyOf<'question'> =>
  editBody<'question'>(body, { withdrawn: at ?? undefined });
