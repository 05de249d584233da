/**
 * Thanks to several testers as they stand in their form: who is left out, whether the change is told, and a few words of
 * the lead's own, read back into a record each, or what is wrong.
 */
import type { RecordId, Tester, Thanks } from '../../core/records/index.ts';
import { thanksOf, type ThanksDue, type ThanksLook } from '../../core/review/index.ts';

export interface ThanksDraft {
  readonly leftOut: ReadonlySet<RecordId>;
  readonly tellChange: boolean;
  readonly words: string;
}

/** Everybody who may be told. The change is told where nobody wears the shoe blind any more: word gets round. */
export const newThanks = ({ blind }: Pick<ThanksLook, 'blind'>): ThanksDraft => ({
  leftOut: new Set(),
  tellChange: blind === 0,
  words: '',
});

/** Whom this draft thanks. */
export const thanked = (
  due: readonly ThanksDue[],
  { leftOut }: Pick<ThanksDraft, 'leftOut'>,
): readonly ThanksDue[] =>
  due.filter(({ tester, withheld }) => withheld === null && !leftOut.has(tester));

/** A tester as words can name one. */
export interface NamedTester extends Pick<Tester, 'code' | 'name'> {
  readonly id: RecordId;
}

const named = (words: string, name: string): boolean => {
  const plain = name.replaceAll(/[$()*+.?[\\\]^{|}]/g, String.raw`\$&`);
  // Han script sets no spaces; elsewhere a name is a word of its own.
  return new RegExp(
    String.raw`(?<![\p{Script=Latin}\p{Nd}])${plain}(?![\p{Script=Latin}\p{Nd}])`,
    'iu',
  ).test(words);
};

/** Shorter names are everyday words. */
const LEAST_NAME = 2;

/** The first tester whom the words name by code or name, other than one who alone reads them; null: none. */
export const testerNamed = (
  words: string,
  testers: readonly NamedTester[],
  readers: readonly RecordId[],
): string | null => {
  for (const { id, code, name } of testers) {
    if (readers.length === 1 && readers[0] === id) continue;
    for (const one of [code, name?.trim() ?? ''])
      if (one.length >= LEAST_NAME && named(words, one)) return one;
  }
  return null;
};

export type ThanksTrouble =
  { readonly field: 'testers' } | { readonly field: 'words'; readonly named: string };

export type ReadThanks =
  | { readonly ok: true; readonly bodies: readonly Thanks[] }
  | { readonly ok: false; readonly troubles: readonly ThanksTrouble[] };

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param testers of the group: a thank-you names none of the others
 * @param language of the lead's own words
 */
export const readThanks = (
  draft: ThanksDraft,
  due: readonly ThanksDue[],
  testers: readonly NamedTester[],
  { language, ...made }: Pick<Thanks, 'project' | 'at'> & { readonly language: string },
): ReadThanks => {
  const to = thanked(due, draft);
  const words = draft.words.trim();
  const names = testerNamed(
    words,
    testers,
    to.map(({ tester }) => tester),
  );
  const troubles: readonly ThanksTrouble[] = [
    ...(to.length === 0 ? [{ field: 'testers' } as const] : []),
    ...(names === null ? [] : [{ field: 'words', named: names } as const]),
  ];
  if (troubles.length > 0) return { ok: false, troubles };
  const { tellChange } = draft;
  return {
    ok: true,
    bodies: to.map((one) => ({
      ...thanksOf(one, { ...made, tellChange }),
      ...(words !== '' && { words, language }),
    })),
  };
};
