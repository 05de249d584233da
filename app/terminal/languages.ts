/** The languages that lie in the folder of the words, read as they are: each is one file. */
import { readdirSync } from 'node:fs';
import type { LanguageFile } from '../words/types.ts';

const folder = new URL('../words/languages/', import.meta.url);

const files = new Map<string, LanguageFile>();
for (const file of readdirSync(folder).sort())
  files.set(file.replace(/\.ts$/, ''), (await import(new URL(file, folder).href)) as LanguageFile);

/** Their ids, such as `en`. */
export const languages: readonly string[] = [...files.keys()];

/** A language by its id, which must be one of {@link languages}. */
export const languageFile = (language: string): LanguageFile => files.get(language) as LanguageFile;
