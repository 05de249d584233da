/** How are a ready-made question, its answers and a structured change said? The same on phone, desk and in files. */
import type { AnswerOption, AskId, Foot, StructuredChange } from '../../core/records/index.ts';
import type { Glossary, TalkWords } from './types.ts';

/** What the words of a question name; empty where it is not about that. */
export interface AskedFacts {
  /** Code of the pair. */
  readonly pair: string;
  readonly distance: string;
  readonly pace: string;
  /** Day and time of the run. */
  readonly when: string;
  readonly attribute: string;
}

/** A ready-made question in the reader's words. */
export const askInWords = (ask: AskId, facts: AskedFacts, { asks }: TalkWords): string =>
  asks[ask](facts);

/** What can be tapped, in the reader's words. @param ask the question that it answers; undefined: one in a lead's words */
export const optionInWords = (
  option: AnswerOption,
  ask: AskId | undefined,
  { options, optionsIn }: TalkWords,
): string => (ask && optionsIn[ask]?.[option]) ?? options[option];

export interface ChangeSpeaker {
  readonly talk: TalkWords;
  readonly glossary: Glossary;
  /** A figure with so many decimals at most. */
  readonly number: (value: number, most: number) => string;
  readonly foot: (foot: Foot) => string;
  /** A place on the sample by its name. */
  readonly site: (site: string) => string;
  /** "What: said", and parts of a sentence one after the other. */
  readonly of: (what: string, said: string) => string;
  readonly clauses: (parts: string[]) => string;
}

/** How far, such as "2 mm". */
export const amountInWords = (
  { amount, unit }: NonNullable<StructuredChange['by']>,
  { talk, glossary, number }: Pick<ChangeSpeaker, 'talk' | 'glossary' | 'number'>,
): string => {
  const figure = number(amount, 2);
  if (unit === 'deg') return talk.degrees(figure);
  return unit === 'grade' ? talk.grades(figure) : `${figure} ${glossary.units[unit]}`;
};

/** What moves, such as "Collar line". */
export const whatInWords = (
  { part, line, dimension }: Pick<StructuredChange, 'part' | 'line' | 'dimension'>,
  { talk, glossary, site, clauses }: ChangeSpeaker,
): string => {
  const what = line
    ? talk.lines[line]
    : dimension
      ? clauses([glossary.measures[dimension.measure], site(dimension.site)])
      : glossary.parts[part].name;
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}`;
};

/** A structured change, such as "Collar line: 2 mm lower, lateral side, left". */
export const changeInWords = (change: StructuredChange, speaker: ChangeSpeaker): string => {
  const { talk } = speaker;
  const { side, foot, direction, by } = change;
  const said = speaker.clauses([
    talk.moved(direction, by ? amountInWords(by, speaker) : null),
    ...(side ? [talk.sides[side]] : []),
    ...(foot ? [speaker.foot(foot)] : []),
  ]);
  return speaker.of(whatInWords(change, speaker), said);
};
