/**
 * Which language does this device speak? A language is a folder in `languages`: whatever lies there is
 * offered. Its files are loaded as a screen needs them, so that a tester's first page does not wait for
 * the desk's words. Numbers and dates follow the platform's Intl.
 */
import { signal } from '@preact/signals';
import type {
  CareWords,
  DeskWords,
  EntryWords,
  FileWords,
  FitWords,
  Glossary,
  JoinWords,
  LanguageName,
  OwnWords,
  NoticeWords,
  PaperWords,
  PhoneWords,
  PlaceWords,
  ProposeWords,
  TalkWords,
} from './types.ts';

interface Parts {
  readonly phone: PhoneWords;
  readonly glossary: Glossary;
  readonly file: FileWords;
  readonly care: CareWords;
  readonly entry: EntryWords;
  readonly join: JoinWords;
  readonly talk: TalkWords;
  readonly propose: ProposeWords;
  readonly own: OwnWords;
  readonly notices: NoticeWords;
  readonly fit: FitWords;
  readonly desk: DeskWords;
  readonly places: PlaceWords;
  readonly paper: PaperWords;
}

/** What no document is written with. */
type PhoneOnly = 'care' | 'entry' | 'file' | 'fit' | 'join' | 'own' | 'notices' | 'propose';

/** A folder's name, such as `en`. */
export type Language = string;

const byLanguage = <T>(files: Readonly<Record<string, T>>): ReadonlyMap<Language, T> =>
  new Map(
    Object.entries(files).map(([path, file]) => [
      /^[.]\/\w+\/([^/]+)\//.exec(path)?.[1] as string,
      file,
    ]),
  );

const names = byLanguage(
  import.meta.glob<LanguageName>('./languages/*/about.ts', { import: 'about', eager: true }),
);
const loaders: {
  readonly [P in keyof Parts]: ReadonlyMap<Language, () => Promise<Parts[P]>>;
} = {
  phone: byLanguage(import.meta.glob<PhoneWords>('./languages/*/phone.ts', { import: 'phone' })),
  glossary: byLanguage(
    import.meta.glob<Glossary>('./languages/*/glossary.ts', { import: 'glossary' }),
  ),
  file: byLanguage(import.meta.glob<FileWords>('./languages/*/file.ts', { import: 'file' })),
  care: byLanguage(import.meta.glob<CareWords>('./languages/*/care.ts', { import: 'care' })),
  entry: byLanguage(import.meta.glob<EntryWords>('./languages/*/entry.ts', { import: 'entry' })),
  join: byLanguage(import.meta.glob<JoinWords>('./languages/*/join.ts', { import: 'join' })),
  talk: byLanguage(import.meta.glob<TalkWords>('./languages/*/talk.ts', { import: 'talk' })),
  propose: byLanguage(
    import.meta.glob<ProposeWords>('./languages/*/propose.ts', { import: 'propose' }),
  ),
  own: byLanguage(import.meta.glob<OwnWords>('./languages/*/own.ts', { import: 'own' })),
  notices: byLanguage(
    import.meta.glob<NoticeWords>('./languages/*/notices.ts', { import: 'notices' }),
  ),
  fit: byLanguage(import.meta.glob<FitWords>('./languages/*/fit.ts', { import: 'fit' })),
  desk: byLanguage(import.meta.glob<DeskWords>('./languages/*/desk/index.ts', { import: 'desk' })),
  places: byLanguage(import.meta.glob<PlaceWords>('./places/*/index.ts', { import: 'shown' })),
  paper: byLanguage(import.meta.glob<PaperWords>('./report/*/index.ts', { import: 'paper' })),
};

export const languages: readonly Language[] = [...names.keys()];

const nameOf = (language: Language): LanguageName => names.get(language) as LanguageName;

export const nameOfLanguage = (language: Language): string => nameOf(language).name;

const current = signal<{ readonly language: Language; readonly words: Partial<Parts> } | null>(
  null,
);
const needed = new Set<keyof Parts>(['phone']);

const load = async (language: Language, parts: ReadonlySet<keyof Parts>): Promise<Partial<Parts>> =>
  Object.fromEntries(
    await Promise.all(
      [...parts].map(async (part) => [part, await loaders[part].get(language)?.()]),
    ),
  ) as Partial<Parts>;

/** Loads a language, in all parts that were needed so far, and makes it the page's. */
export const speak = async (language: Language): Promise<void> => {
  const words = await load(language, needed);
  document.documentElement.lang = nameOf(language).locale;
  current.value = { language, words };
};

/** The words of any language, for a document that is not written in the page's own. */
export const wordsOf = async (
  language: Language,
): Promise<Omit<Parts, PhoneOnly> & { readonly about: LanguageName }> => ({
  about: nameOf(language),
  ...((await load(
    language,
    new Set(['phone', 'glossary', 'desk', 'places', 'paper', 'talk']),
  )) as Omit<Parts, PhoneOnly>),
});

/** Fetches what the language will need, before it is known that it is the one. */
export const fetchAhead = (language: Language): void =>
  // Whoever speaks the language is told where it could not be fetched.
  void load(language, needed).catch(() => undefined);

/** Parts that are on their way: whoever needs one too waits for it. */
const coming = new Map<keyof Parts, Promise<void>>();

const fetchParts = async (missing: ReadonlySet<keyof Parts>): Promise<void> => {
  if (!current.value) return;
  const { language } = current.value;
  const words = await load(language, missing);
  if (current.value.language === language)
    current.value = { language, words: { ...current.value.words, ...words } };
};

/** Loads one more part of the language that is spoken, before a screen that reads it is drawn. */
export const need = async (...parts: readonly (keyof Parts)[]): Promise<void> => {
  const missing = new Set(parts.filter((part) => !needed.has(part)));
  for (const part of missing) needed.add(part);
  if (missing.size > 0) {
    const fetched = fetchParts(missing);
    for (const part of missing) coming.set(part, fetched);
  }
  await Promise.all(parts.flatMap((part) => coming.get(part) ?? []));
};

const spoken = <P extends keyof Parts>(part: P): Parts[P] => {
  const words = current.value?.words[part];
  if (!words) throw new Error(`a screen was drawn before its words were loaded: ${part}`);
  return words;
};

/** The phone's words; a screen that reads them is drawn anew when the language changes. */
export const t = (): PhoneWords => spoken('phone');
/** Parts of a sentence side by side, as the language sets them apart: "a, b", in Chinese by its own comma. */
export const clauses = (...parts: readonly string[]): string => t().joined.clauses(parts);
/** "What: said". */
export const saidOf = (what: string, said: string): string => t().joined.of(what, said);
/** Sentences' halves, set further apart than by a comma. */
export const halves = (parts: readonly string[]): string => t().joined.apart(parts);
/** What stands between names. */
export const comma = (): string => t().joined.names(['', '']);
/** Names one after the other. */
export const listed = (names: readonly string[]): string => t().joined.names(names);
/** The terms of the trade. */
export const terms = (): Glossary => spoken('glossary');
/** What is said of a file that is opened. */
export const fileWords = (): FileWords => spoken('file');
/** What a tester must know before a shoe goes on. */
export const careWords = (): CareWords => spoken('care');
/** What is said of an entry while it is typed and before it is saved. */
export const entryWords = (): EntryWords => spoken('entry');
/** What a code makes of a device. */
export const joinWords = (): JoinWords => spoken('join');
/** What is asked and answered between testers, leads and specialists. */
export const talkWords = (): TalkWords => spoken('talk');
/** A finding as a specialist answers it, and what the lead does with the answer. */
export const proposeWords = (): ProposeWords => spoken('propose');
/** What a tester reads about their own pair and runs. */
export const ownWords = (): OwnWords => spoken('own');
/** Notices on a closed phone, and reminders. */
export const noticeWords = (): NoticeWords => spoken('notices');
/** What a fit trial asks. */
export const fitWords = (): FitWords => spoken('fit');
/** The desk's words. */
export const d = (): DeskWords => spoken('desk');
/** The words of the desk's places, by place. */
export const p = (): PlaceWords => spoken('places');

export const locale = (): string => nameOf(current.value?.language ?? 'en').locale;

/** The language that the device asks for, as far as there is one here. */
export const preferredLanguage = (): Language =>
  navigator.languages
    .map((tag) => tag.slice(0, 2).toLowerCase())
    .find((tag) => languages.includes(tag)) ?? 'en';
