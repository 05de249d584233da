/** The languages that lie in the folder of the words, read as they are: each is a folder. */
import { readdirSync } from 'node:fs';
import type { LanguageFile } from '../words/types.ts';

const folder = new URL('../words/languages/', import.meta.url);

const files = new Map<string, LanguageFile>();
for (const language of readdirSync(folder).sort()) {
  const paper = new URL(`../report/${language}/index.ts`, folder);
  const places = new URL(`../places/${language}/index.ts`, folder);
  files.set(language, {
    ...((await import(new URL(`${language}/index.ts`, folder).href)) as LanguageFile),
    ...((await import(paper.href)) as Pick<LanguageFile, 'paper'>),
    ...((await import(places.href)) as Pick<LanguageFile, 'places'>),
  });
}

/** Their ids, such as `en`. */
export const languages: readonly string[] = [...files.keys()];

/** A language by its id, which must be one of {@link languages}. */
export const languageFile = (language: string): LanguageFile => files.get(language) as LanguageFile;
