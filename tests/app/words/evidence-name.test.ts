/** One word for one fact: how sure a complaint is reads the same in a report, a table and on the desk. */
import { describe, expect, it } from 'vitest';
import { evidenceWords, surenessOf } from '../../../core/complaints/index.ts';
import { evidenceName } from '../../../app/words/say-complaint.ts';
import { languageFile } from '../../../app/terminal/languages.ts';

const name = (language: 'en' | 'zh', word: (typeof evidenceWords)[number], testersOnce: number) =>
  evidenceName({ word, testersOnce }, languageFile(language));

describe('how sure a complaint is', () => {
  it('is said by the words of the desk', () => {
    expect(name('en', 'early-sign', 7)).toBe('likely');
    expect(name('en', 'early-sign', 1)).toBe('too early to tell');
    expect(name('en', 'seen-once', 1)).toBe('too early to tell');
    expect(name('en', 'recurs-across-testers', 5)).toBe('clear: recurs across testers');
    expect(name('zh', 'early-sign', 7)).toBe('很可能');
    expect(name('zh', 'recurs-across-testers', 5)).toBe('已证实：多名试穿员反复出现');
  });

  it('begins with the word of its sureness wherever anybody reported it', () => {
    for (const language of ['en', 'zh'] as const)
      for (const word of evidenceWords)
        for (const testers of [1, 2, 5]) {
          if (word === 'not-seen' || word === 'too-few-runs') continue;
          const { sureness } = languageFile(language).glossary;
          expect(name(language, word, testers)).toContain(sureness[surenessOf(word, testers)].name);
        }
  });

  it('is not to be mistaken where it stands alone: "clear" says that it recurs', () => {
    expect(languageFile('en').glossary.sureness.clear.alone).toBe('clearly recurs');
    expect(languageFile('zh').glossary.sureness.clear.alone).toContain('反复出现');
  });
});
