/** `npm run glossary`: writes the terms of the trade, all languages side by side, as one page to read and correct. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { TalkWords } from '../words/types.ts';
import { languageFile, languages } from './languages.ts';

const page = fileURLToPath(new URL('../words/glossary.md', import.meta.url));

type Tree = { readonly [key: string]: string | Tree };

const leaves = (tree: Tree, path = ''): [string, string][] =>
  Object.entries(tree).flatMap(([key, value]): [string, string][] => {
    const at = path === '' ? key : `${path}.${key}`;
    return typeof value === 'string' ? [[at, value]] : leaves(value, at);
  });

/** The terms of the trade among the words of questions and proposals. */
const termsOfTalk = ({ lines, moves, otherUnits, sides, proposalAnswers }: TalkWords) => ({
  ...{ lines, moves, otherUnits, sides, proposalAnswers },
});

/** The page as Markdown: one table a group of terms, one column a language. */
export const glossaryPage = (): string => {
  const glossaries = languages.map((id): Readonly<Record<string, Tree>> => {
    const { glossary, talk } = languageFile(id);
    return { ...(glossary as unknown as Record<string, Tree>), ...termsOfTalk(talk) };
  });
  const groups = Object.keys(glossaries[0] ?? {});
  const header = ['Id', ...languages.map((id) => languageFile(id).about.name)];
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const tables = groups.map((group) => {
    const columns = glossaries.map((glossary) => leaves({ [group]: glossary[group] ?? {} }));
    const rows = (columns[0] ?? []).map(([id], at) =>
      row([`\`${id}\``, ...columns.map((column) => column[at]?.[1] ?? '')]),
    );
    return [`## ${group}`, '', row(header), row(header.map(() => '---')), ...rows].join('\n');
  });
  return [
    '# Glossary',
    '',
    'The terms of the trade that every screen and report uses. Made from `languages/` by',
    '`npm run glossary`: change a term there, not here.',
    '',
    tables.join('\n\n'),
    '',
  ].join('\n');
};

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(page, glossaryPage());
