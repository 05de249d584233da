/** How does a question read, and what can be tapped? The same on the phone and at the desk. */
import type { AnswerOption, AskedAbout, AskId, Question, Run } from '../../core/records/index.ts';
import { askInWords, optionInWords, type AskedFacts } from '../words/say-talk.ts';
import { talkWords, terms } from '../words/index.ts';
import { formatDateTime, formatDistance, formatPace } from './format.ts';

export interface AskedThing {
  /** The run that it is about; null: something else, or it is not here. */
  readonly run: Pick<Run, 'startedAt' | 'distanceM' | 'durationS'> | null;
  /** Code of the pair; empty: none. */
  readonly pair: string;
  readonly about: AskedAbout;
}

const factsOf = ({ run, pair, about }: AskedThing): AskedFacts => ({
  pair,
  distance: run ? formatDistance(run.distanceM) : '',
  pace: run ? formatPace(run.distanceM, run.durationS) : '',
  when: run ? formatDateTime(run.startedAt) : '',
  attribute: about.attribute ? terms().attributes[about.attribute].name : '',
});

/** A ready-made question in the reader's language. */
export const askAbout = (ask: AskId, thing: AskedThing): string =>
  askInWords(ask, factsOf(thing), talkWords());

/** A question as it is read: the lead's words, else what is ready-made. */
export const questionInWords = (
  { ask, words }: Pick<Question, 'ask' | 'words'>,
  thing: AskedThing,
): string => words ?? (ask ? askAbout(ask, thing) : '');

/** What can be tapped, or was, in the reader's language. */
export const tapInWords = (option: AnswerOption, ask: AskId | undefined): string =>
  optionInWords(option, ask, talkWords());
