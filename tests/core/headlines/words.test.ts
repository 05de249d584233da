/** The first sentence of what testers say: a case each, in both languages, and never more people than wrote. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { places as en } from '../../../app/words/places/en/index.ts';
import { places as zh } from '../../../app/words/places/zh/index.ts';
import { wordsHeadline } from '../../../core/headlines/index.ts';
import type { WordsFacts } from '../../../core/words/index.ts';

const facts = (more: Partial<WordsFacts> = {}): WordsFacts => ({
  ...{ all: 124, allTesters: 12, allUntapped: 9, found: 124, foundTesters: 12, foundUntapped: 9 },
  ...{ searched: null, narrowed: false },
  ...more,
});

describe('the words say first', () => {
  it.each([
    [
      'that there are none',
      facts({ all: 0, found: 0 }),
      'Nobody has written anything yet.',
      '还没有人写过什么。',
    ],
    [
      'how many, and what nobody tapped',
      facts(),
      '124 remarks from 12 testers; 9 may name something nobody tapped.',
      '12 名试穿员写了 124 条留言，9 条可能提到没有点选的问题。',
    ],
    [
      'how many, where all was tapped',
      facts({ allUntapped: 0 }),
      '124 remarks from 12 testers.',
      '12 名试穿员写了 124 条留言。',
    ],
    [
      'who mentions what was searched for',
      facts({ found: 9, foundTesters: 5, searched: 'tongue' }),
      'Five testers mention “tongue”.',
      '5 名试穿员提到“tongue”。',
    ],
    [
      'that one does',
      facts({ found: 1, foundTesters: 1, searched: 'tongue' }),
      'One tester mentions “tongue”.',
      '1 名试穿员提到“tongue”。',
    ],
    [
      'that only the shop does',
      facts({ found: 1, foundTesters: 0, searched: 'tongue' }),
      'Only the shop mentions “tongue”.',
      '只有车间提到“tongue”。',
    ],
    [
      'that nobody does',
      facts({ found: 0, foundTesters: 0, searched: 'tongue' }),
      'No remark here holds “tongue”.',
      '没有留言提到“tongue”。',
    ],
    [
      'how many the filters leave',
      facts({ found: 14, foundTesters: 5, narrowed: true }),
      '14 of 124 remarks fit, from 5 testers.',
      '124 条留言中有 14 条符合，来自 5 名试穿员。',
    ],
    [
      'that the filters leave none',
      facts({ found: 0, narrowed: true }),
      'No remark fits these filters.',
      '没有符合筛选条件的留言。',
    ],
  ] as const)('%s', (_, of, english, chinese) => {
    const said = wordsHeadline(of);
    expect(en.words.headline(said)).toBe(english);
    expect(zh.words.headline(said)).toBe(chinese);
    expect(english.split(/\s+/).length).toBeLessThanOrEqual(12);
    expect(said.claims).toBe('nothing');
  });

  it('names a search only where one was made, and never more than was found', () => {
    fc.assert(
      fc.property(
        fc.record({
          ...{ all: fc.nat(50), found: fc.nat(50), allTesters: fc.nat(9), allUntapped: fc.nat(50) },
          ...{ foundTesters: fc.nat(9), foundUntapped: fc.nat(9) },
          ...{ searched: fc.option(fc.constant('x')), narrowed: fc.boolean() },
        }),
        (some) => {
          const said = wordsHeadline(some);
          if (said.case === 'mention') {
            expect(said.searched).toBe(some.searched);
            expect(said.testers).toBe(some.foundTesters);
          }
          if (said.case === 'all') expect(some.searched).toBeNull();
          if (some.all > 0 && some.found === 0) expect(said.case).toBe('nothing');
        },
      ),
    );
  });
});
