/**
 * Chinese keeps to its own commas and colons, also where a screen puts words together: the words themselves are walked,
 * and no screen sets a comma, colon or semicolon between two of them by itself (`clauses`, `saidOf`, `halves`, `listed`
 * of `app/words` know the language's own).
 */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { languageFile } from '../../../app/terminal/languages.ts';

/** A half-width mark beside a Chinese sign; a colon only before a space, as times are written 时:分:秒. */
const half = /[\u3400-\u9fff）”》]\s*(?:[,;?!]|: )|(?:[,;!]|: )\s*[\u3400-\u9fff（“《]/u;

/** A list of names; where a sentence takes one name, the first of it. */
const names = Object.assign(['左脚', '右脚'], { toString: () => '左脚' });

/** Every text of some words, those with names filled in by a figure, a Chinese name and a list of them. */
const texts = (value: unknown, path: string): [string, string][] => {
  if (typeof value === 'string') return [[path, value]];
  if (value === null || value === undefined) return [];
  if (typeof value === 'object')
    return Object.entries(value).flatMap(([key, own]) => texts(own, `${path}.${key}`));
  if (typeof value !== 'function') return [];
  return ['左脚', 3, names].flatMap((about) => {
    try {
      const sentence = value as (...about: unknown[]) => unknown;
      return texts(sentence(about, about, about, about, about, about), `${path}()`);
    } catch {
      // A sentence about a case: its own tests say it.
      return [];
    }
  });
};

describe('Chinese words', () => {
  it('set full-width commas, colons and semicolons', () => {
    const { places, paper, ...rest } = languageFile('zh');
    const all = Object.entries({ ...rest, places, paper }).flatMap(([part, words]) =>
      texts(words, part),
    );
    expect(all.length).toBeGreaterThan(2500);
    expect(all.filter(([, text]) => half.test(text))).toEqual([]);
  });

  it('are told from those of an older page', () => {
    expect(half.test('清除: 总体舒适度')).toBe(true);
    expect(half.test('左脚, 脚踝')).toBe(true);
    expect(half.test('左脚，脚踝：3:20，时:分')).toBe(false);
  });
});

const root = new URL('../../../', import.meta.url);
const sources = ['desk', 'phone', 'parts', 'reader'].flatMap((folder) =>
  (readdirSync(new URL(`app/${folder}`, root), { recursive: true }) as string[])
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => `app/${folder}/${file}`),
);

/** Not read by anybody: CSS and a colour. */
const STYLE = /\b(?:max|rgba?)\(/;

/** Where a source puts two texts together with a mark of its own, by line. */
const marksIn = (file: string, code: string): string[] => {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true, kind);
  const found: string[] = [];
  const note = (node: ts.Node) =>
    found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`);
  const visit = (node: ts.Node): void => {
    if (ts.isTemplateExpression(node)) {
      const { head, templateSpans: spans } = node;
      const isStyle = STYLE.test(head.text);
      const between = [head, ...spans.map(({ literal }) => literal)].map(({ text }) => text);
      if (!isStyle && between.some((text) => /^[,:;] |[,:;] $/.test(text))) note(node);
    } else if (ts.isStringLiteralLike(node) && /^[,:;] $/.test(node.text)) note(node);
    else if (ts.isJsxText(node) && /^\s*[,:;]\s/.test(node.text)) note(node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

describe('screens', () => {
  it('leave the comma between two texts to the language', () => {
    expect(sources.length).toBeGreaterThan(300);
    const code = (file: string) => readFileSync(new URL(file, root), 'utf8');
    expect(sources.flatMap((file) => marksIn(file, code(file)))).toEqual([]);
  });

  it('are found out where they do not', () => {
    const old = [
      '<b aria-label={`${words.clear}: ${label}`} />;',
      '<b aria-label={`${foot}, ${zone}`} />;',
      "names.join(', ');",
      "<i>{at > 0 && ', '}</i>;",
      '<i><a />, {date}</i>;',
    ];
    for (const line of old) expect(marksIn('old.tsx', line), line).toHaveLength(1);
    const fine = ['<path d={`M${x},${y}H${right}`} />;', '({ inlineSize: `max(6px, ${x})` });'];
    for (const line of fine) expect(marksIn('fine.tsx', line), line).toEqual([]);
  });
});
