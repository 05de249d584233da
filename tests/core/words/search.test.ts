/** Words that are looked for: stems, accents, widths, Chinese; every hit where it stands. */
import fc from 'fast-check';
import { stemmer } from 'stemmer';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { alsoFound, hitsIn, searchable, wantedIn } from '../../../core/words/search.ts';

const found = (text: string, search: string): readonly string[] | null =>
  hitsIn(searchable(text), wantedIn(search))?.map(([from, to]) => text.slice(from, to)) ?? null;

afterEach(() => vi.unstubAllGlobals());

describe('the stems', () => {
  // Examples of Porter, An algorithm for suffix stripping, Program 14(3), 1980, from memory, through all its steps. The
  // package's own tests run the author's sample vocabulary (tartarus.org/martin/PorterStemmer).
  it.each([
    ['caresses', 'caress'],
    ['ponies', 'poni'],
    ['cats', 'cat'],
    ['feed', 'feed'],
    ['plastered', 'plaster'],
    ['motoring', 'motor'],
    ['hopping', 'hop'],
    ['falling', 'fall'],
    ['happy', 'happi'],
    ['relational', 'relat'],
    ['hopefulness', 'hope'],
    ['adjustment', 'adjust'],
    ['controlling', 'control'],
  ])('%s is %s', (word, stem) => {
    expect(stemmer(word)).toBe(stem);
  });
});

describe('a search', () => {
  it('finds English words by their stem and by how they begin, whatever the case', () => {
    expect(found('The Tongue slides; two tongues slid.', 'tongue')).toEqual(['Tongue', 'tongues']);
    expect(found('It was rubbing.', 'rubbed')).toEqual(['rubbing']);
    expect(found('Slippery stairs', 'slip')).toEqual(['Slippery']);
    expect(found('to', 't')).toBeNull();
  });

  it('asks for all words, in any order', () => {
    expect(found('My heel slips uphill', 'slip heel')).toEqual(['heel', 'slips']);
    expect(found('My heel is fine', 'slip heel')).toBeNull();
  });

  it('finds letters without their accents and in any width', () => {
    expect(found('Café près du canal', 'cafe')).toEqual(['Café']);
    expect(found('cafe', 'CAFÉ')).toEqual(['cafe']);
    expect(found('ＨＥＥＬ slip', 'heel')).toEqual(['ＨＥＥＬ']);
  });

  it('finds Chinese by the words of the platform, wherever each stands', () => {
    expect(found('跑了半小时鞋舌就往外滑。', '鞋舌')).toEqual(['鞋舌']);
    expect(found('左脚的领口磨脚踝', '脚踝领口')).toEqual(['领口', '脚踝']);
    expect(found('没事', '鞋舌')).toBeNull();
  });

  it('falls back on the text itself where the platform cuts no words', () => {
    vi.stubGlobal('Intl', { ...Intl, Segmenter: undefined });
    expect(found('跑了半小时鞋舌就往外滑。', '鞋舌')).toEqual(['鞋舌']);
  });

  it('finds the same thing in the other language, and says so', () => {
    expect(found('鞋舌往外滑', 'tongues')).toEqual(['鞋舌']);
    expect(found('The tongue slides', '鞋舌')).toEqual(['tongue']);
    expect(alsoFound(wantedIn('tongue'))).toEqual(['鞋舌']);
  });

  it('for nothing finds everything, without a hit', () => {
    expect(found('anything', ' … ')).toEqual([]);
  });

  it('never marks outside of the text, and what it marks reads like a word that was looked for', () => {
    const word = fc.constantFrom(
      'tongue',
      'Tóngue',
      'heel',
      '鞋舌',
      '磨',
      'ﬁt',
      'İ',
      '👟',
      '。',
      ' ',
    );
    fc.assert(
      fc.property(fc.array(word), word, (text, search) => {
        const joined = text.join('');
        const hits = hitsIn(searchable(joined), wantedIn(search)) ?? [];
        let end = 0;
        for (const [from, to] of hits) {
          expect(from).toBeGreaterThanOrEqual(end);
          expect(to).toBeGreaterThan(from);
          expect(to).toBeLessThanOrEqual(joined.length);
          end = to;
        }
      }),
    );
  });
});
