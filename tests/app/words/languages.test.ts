/** Every language says everything: a file that misses a message does not compile; here is what types cannot see. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { glossaryPage } from '../../../app/terminal/glossary.ts';
import { languageFile, languages } from '../../../app/terminal/languages.ts';

type Tree = Readonly<Record<string, unknown>>;

/** Every message by its path, with what kind of message it is. */
const messages = (tree: Tree, path = ''): [string, unknown][] =>
  Object.entries(tree).flatMap(([key, value]): [string, unknown][] =>
    typeof value === 'object' && value !== null
      ? messages(value as Tree, `${path}${key}.`)
      : [[path + key, value]],
  );

const parts = [
  'about',
  'glossary',
  'phone',
  'file',
  'care',
  'entry',
  'join',
  'talk',
  'propose',
  'own',
  'notices',
  'desk',
  'terminal',
] as const;
const english = languageFile('en');

describe.each(languages)('language file %s', (id) => {
  const file = languageFile(id);

  it.each(parts)('has the messages of the English file in %s, and no other', (part) => {
    const paths = (of: Tree) => messages(of).map(([path]) => path);
    expect(paths(file[part] as unknown as Tree)).toEqual(paths(english[part] as unknown as Tree));
  });

  it('leaves no message empty, and none untrimmed', () => {
    for (const part of parts)
      for (const [path, message] of messages(file[part] as unknown as Tree)) {
        if (typeof message !== 'string') continue;
        expect(message, path).toBe(message.trim());
        if (!path.endsWith('states.idle')) expect(message, path).not.toBe('');
      }
  });

  it('names no two zones, kinds, attributes or parts alike', () => {
    const { zones, kinds, attributes, parts: named, ...others } = file.glossary;
    for (const group of [zones, kinds, attributes, named]) {
      const names = Object.values<{ readonly name: string }>(group).map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
    }
    for (const group of Object.values(others))
      expect(new Set(Object.values(group)).size).toBe(Object.values(group).length);
    for (const { low, high } of Object.values(attributes)) expect(low).not.toBe(high);
  });

  it('has a locale that Intl knows', () => {
    expect(Intl.NumberFormat.supportedLocalesOf(file.about.locale)).toHaveLength(1);
  });
});

describe('Chinese', () => {
  it('writes the terms of zones in Chinese characters and punctuation', () => {
    for (const zone of Object.values(languageFile('zh').glossary.zones))
      for (const term of Object.values(zone)) expect(term).toMatch(/^[\p{Script=Han}、：（）]+$/u);
  });

  it('does not fall back on English words', () => {
    for (const part of [
      'phone',
      'file',
      'care',
      'entry',
      'join',
      'talk',
      'propose',
      'own',
      'notices',
      'desk',
    ] as const)
      for (const [path, message] of messages(languageFile('zh')[part]))
        if (typeof message === 'string' && /[a-z]{4}/i.test(message))
          expect(message, path).toMatch(
            /Pairlog|pairlog|iPhone|Android|Mondopoint|heel-centre|Mills 2010|Hochberg 1995|Fisher 1935|Williams 1949|Bland & Altman|JCGM|AIAG|Am J Sports Med 1985|Footwear Sci 20|J Sports Sci 2012|Procedia Eng 2010|Proc IMechE P 2019/,
          );
  });
});

describe('the glossary page', () => {
  it('is what the language files say', () => {
    const page = new URL('../../../app/words/glossary.md', import.meta.url);
    expect(readFileSync(page, 'utf8'), 'run npm run glossary').toBe(glossaryPage());
  });
});
