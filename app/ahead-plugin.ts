/**
 * Writes into index.html which files to fetch beside the entry's own: the words of the device's language and, at the
 * address of a run's log, that screen. The app asks for the same ones, but only once it has come itself.
 */
import { minifySync, type Plugin, type Rolldown } from 'vite';

interface Ahead {
  /** By language: what the first page reads. */
  readonly first: Readonly<Record<string, readonly string[]>>;
  /** By language: what the log's screen reads beyond that. */
  readonly log: Readonly<Record<string, readonly string[]>>;
}

/** Runs in the page, from its text; so it uses nothing around it. */
const fetchFiles = ({ first, log }: Ahead, path: string, spoken: readonly string[]): void => {
  const language =
    spoken.map((tag) => tag.slice(0, 2).toLowerCase()).find((tag) => tag in first) ?? 'en';
  const files = [
    ...(first[language] ?? []),
    ...(path.startsWith('/log/') ? (log[language] ?? []) : []),
  ];
  for (const file of files) {
    const link = document.createElement('link');
    const isStyle = file.endsWith('.css');
    link.rel = isStyle ? 'preload' : 'modulepreload';
    if (isStyle) link.as = 'style';
    link.href = `/assets/${file}`;
    document.head.append(link);
  }
};

const chunksIn = (bundle: Rolldown.OutputBundle): readonly Rolldown.OutputChunk[] =>
  Object.values(bundle).filter((one) => one.type === 'chunk');

/** The files that bring a source file, without those of `had`. Throws where none does: it has moved. */
const filesOf = (
  bundle: Rolldown.OutputBundle,
  source: RegExp,
  had: ReadonlySet<string>,
): readonly string[] => {
  const found = new Set<string>();
  const visit = (chunk: Rolldown.OutputChunk | undefined) => {
    if (!chunk || had.has(chunk.fileName) || found.has(chunk.fileName)) return;
    found.add(chunk.fileName);
    for (const file of chunk.viteMetadata?.importedCss ?? []) if (!had.has(file)) found.add(file);
    for (const next of chunk.imports) {
      const imported = bundle[next];
      visit(imported?.type === 'chunk' ? imported : undefined);
    }
  };
  const first = chunksIn(bundle).find(({ facadeModuleId }) => source.test(facadeModuleId ?? ''));
  if (!first) throw new Error(`no file of the build brings ${source.source}`);
  visit(first);
  return [...found].map((file) => file.replace(/^assets\//, ''));
};

/** @param languages folders of `words/languages` */
export const aheadFiles = (languages: readonly string[]): Plugin => ({
  name: 'pairlog-ahead-files',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const had = new Set(
        [...html.matchAll(/(?:src|href)="\/(assets\/[^"]+)"/g)].map(([, file = '']) => file),
      );
      const wordsOf = (language: string, ...parts: readonly string[]) =>
        parts.flatMap((part) =>
          filesOf(bundle, RegExp(`/languages/${language}/${part}\\.ts$`), had),
        );
      const by = (files: (language: string) => readonly string[]) =>
        Object.fromEntries(languages.map((language) => [language, [...new Set(files(language))]]));
      const ahead: Ahead = {
        first: by((language) => wordsOf(language, 'phone')),
        log: by((language) => [
          ...filesOf(bundle, /\/phone\/log\/log-screen\.tsx$/, had),
          ...wordsOf(language, 'glossary', 'entry', 'care'),
        ]),
      };
      const { code } = minifySync(
        'ahead.js',
        `(${fetchFiles.toString()})(${JSON.stringify(ahead)},location.pathname,navigator.languages)`,
      );
      return html.replace(
        '<link rel="manifest"',
        () => `<script>${code.trim()}</script><link rel="manifest"`,
      );
    },
  },
});
