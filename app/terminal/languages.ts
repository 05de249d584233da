/** The languages that lie in the folder of the words, read as they are: each is one file. */
import { readdirSync } from 'node:fs';
import type { LanguageFile } from '../words/types.ts';

const folder = new URL('../words/languages/', import.meta.url);

const files = new Map<string, LanguageFile>();
for (const file of readdirSync(folder).sort()) {
  const id = file.replace(/\.ts$/, '');
  const paper = new URL(`../report/${id}/index.ts`, folder);
  files.set(id, {
    ...((await import(new URL(file, folder).href)) as LanguageFile),
    ...((await import(paper.href)) as Pick<LanguageFile, 'paper'>),
  });
}

/** Their ids, such as `en`. */
export const languages: readonly string[] = [...files.keys()];

/** A language by its id, which must be one of {@link languages}. */
export const languageFile = (language: string): LanguageFile => files.get(language) as LanguageFile;
