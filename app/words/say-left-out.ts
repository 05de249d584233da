/** Which record cannot be read, and what is wrong in it, in words? The same on desk and terminal. */
import { rangeAt, type LeftOut } from '../../core/records/index.ts';
import type { Speaker } from './say-complaint.ts';
import { rangeInWords } from './say-range.ts';

type Words = Pick<Speaker, 'desk' | 'glossary' | 'number'>;

/** What people call a field of a record, with which one of a list; its name in the file where it has no other. */
export const fieldInWords = (field: string, { desk }: Words): string => {
  const names: Readonly<Record<string, string>> = desk.unread.fields;
  const keys = field.split('.');
  const said = keys.flatMap((key, at) => {
    const name = names[key];
    const which = Number(keys[at + 1] ?? NaN);
    return name === undefined ? [] : [Number.isNaN(which) ? name : `${name} ${which + 1}`];
  });
  return said.length > 0 ? desk.joined.clauses(said) : field;
};

/** What kind of record, and which one. */
export const recordInWords = ({ kind, called, id }: LeftOut, { desk }: Words): string => {
  const kinds: Readonly<Record<string, string>> = desk.unread.kinds;
  return desk.unread.record(kinds[kind] ?? kind, called ?? id);
};

/** What is wrong in it, a line each. */
export const problemsInWords = (
  { kind, problems = [] }: LeftOut,
  words: Words,
): readonly string[] =>
  problems.map(({ field }) => {
    const range = rangeAt(kind, field);
    return words.desk.unread.wrong(
      fieldInWords(field, words),
      range ? rangeInWords(range, words) : words.desk.unread.notValid,
    );
  });
