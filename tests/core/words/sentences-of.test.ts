/** A quote is a sentence that was said, and nothing else. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quoteOf, type ChosenRemark } from '../../../app/desk/words/quote-writes.ts';
import { isPartOf, sentencesOf } from '../../../core/words/index.ts';
import { idOf } from '../records/make.ts';

describe('the sentences of a remark', () => {
  it.each([
    ['', []],
    ['It slips.', ['It slips.']],
    ['It slips. The tongue moves! Why?', ['It slips.', 'The tongue moves!', 'Why?']],
    ['下坡打滑。鞋舌会移位！', ['下坡打滑。', '鞋舌会移位！']],
    ['first line\nsecond line', ['first line', 'second line']],
  ])('%j', (text, sentences) => {
    expect(sentencesOf(text)).toEqual(sentences);
  });

  it('are each a part of it, whatever was written', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        for (const sentence of sentencesOf(text)) expect(isPartOf(text, sentence)).toBe(true);
      }),
    );
  });
});

describe('a quote', () => {
  const remark = {
    ...{ source: idOf(100), sourceKind: 'run', field: 'words', tester: idOf(30) },
    text: 'It slips. The tongue moves.',
  } as ChosenRemark;
  const words = (of: ChosenRemark) => quoteOf(of, idOf(1), null, '2026-05-01T08:00:00Z').words;

  it('has the whole remark, or the sentence that was chosen', () => {
    expect(words(remark)).toBe('It slips. The tongue moves.');
    expect(words({ ...remark, sentence: 'The tongue moves.' })).toBe('The tongue moves.');
  });

  it('has nothing that was not said', () => {
    expect(words({ ...remark, sentence: 'It falls apart.' })).toBe(remark.text);
    expect(words({ ...remark, sentence: '  ' })).toBe(remark.text);
  });
});
