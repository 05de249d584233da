/** Where a finger or a key puts the mark, and which questions are asked on which line. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedOfComfort, markAfterKey, markAt } from '../../../app/drafts/two-sided.ts';
import { comfortAttributeIds, degreeOf, sideOf, twoSidedIds } from '../../../core/foot/index.ts';
import { markInWords } from '../../../app/words/say-mark.ts';
import { entry as en } from '../../../app/words/languages/en/entry.ts';
import { entry as zh } from '../../../app/words/languages/zh/entry.ts';

it('the questions are all but those with one good end, and one that is new', () => {
  const oneGoodEnd: readonly string[] = ['overall', 'inside-feel', 'weight-feel'];
  expect(twoSidedIds).toEqual([
    ...comfortAttributeIds.filter((one) => !oneGoodEnd.includes(one)),
    'ball-width',
  ]);
});

describe('a finger on the line', () => {
  it('means just right near the middle, and the ends beyond them', () => {
    expect([0.5, 0.43, 0.57].map(markAt)).toEqual([0, 0, 0]);
    expect([0.42, 0.58, 0, 1, -0.2, 1.3].map(markAt)).toEqual([-16, 16, -100, 100, -100, 100]);
  });

  it('leaves no mark that is just right and not in the middle', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.5, max: 1.5, noNaN: true }), (share) => {
        const mark = markAt(share);
        expect(Number.isInteger(mark)).toBe(true);
        expect(Math.abs(mark)).toBeLessThanOrEqual(100);
        expect(degreeOf(mark) === 'right').toBe(mark === 0);
      }),
    );
  });
});

describe('keys on the line', () => {
  it('begin in the middle, leave it to either side and come back to it', () => {
    expect(markAfterKey(null, 'ArrowRight')).toBe(0);
    expect(markAfterKey(0, 'ArrowRight')).toBe(20);
    expect(markAfterKey(20, 'ArrowRight')).toBe(25);
    expect(markAfterKey(20, 'ArrowLeft')).toBe(0);
    expect(markAfterKey(0, 'ArrowDown')).toBe(-20);
    expect(markAfterKey(-25, 'ArrowUp')).toBe(-20);
    expect(markAfterKey(-20, 'PageUp')).toBe(0);
    expect(markAfterKey(100, 'ArrowRight')).toBe(100);
    expect(markAfterKey(40, 'Home')).toBe(-100);
    expect(markAfterKey(null, 'End')).toBe(100);
    expect(markAfterKey(40, 'Tab')).toBeNull();
  });

  it('every press that moves the mark says something else, or goes on to the same side', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -100, max: 100 }),
        fc.constantFrom('ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown'),
        (mark, key) => {
          const next = markAfterKey(mark, key);
          const sides = ['low', 'right', 'high'];
          // Never from one side over the middle to the other.
          if (next !== null)
            expect(
              Math.abs(sides.indexOf(sideOf(next)) - sides.indexOf(sideOf(mark))),
            ).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});

describe('a mark in words', () => {
  const said = (words: typeof en, value: number | null, low: string, high: string) =>
    markInWords({ value, low, high, words: words.twoSided });
  it.each([
    [null, null],
    [0, 'just right'],
    [-15, 'just right'],
    [22, 'a little too firm'],
    [-22, 'a little too soft'],
    [-60, 'too soft'],
    [100, 'far too firm'],
  ] as const)('of cushioning at %s', (value, words) => {
    expect(said(en, value, 'too soft', 'too firm')).toBe(words);
  });
  it('of hold, where no "too" leads', () => {
    expect(said(en, -22, 'slips', 'grips too hard')).toBe('slips a little');
    expect(said(en, -90, 'slips', 'grips too hard')).toBe('slips a lot');
    expect(said(en, 30, 'slips', 'grips too hard')).toBe('grips a little too hard');
  });
  it('in Chinese', () => {
    expect(said(zh, 22, '太软', '太硬')).toBe('略硬');
    expect(said(zh, -60, '太软', '太硬')).toBe('太软');
    expect(said(zh, -22, '不跟脚', '太卡')).toBe('略不跟脚');
    expect(said(zh, 90, '太晃', '管得太死')).toBe('管得非常死');
  });
});

describe('the questions of a run', () => {
  const brief = {
    attributes: ['overall', 'heel-cushioning', 'toe-room', 'weight-feel'],
    alsoAsked: ['ball-width'],
  } as const;
  it('have the good point in the middle but for those with one good end', () => {
    expect(
      askedOfComfort(
        { ...brief, attributes: [...brief.attributes], alsoAsked: ['ball-width'] },
        {},
      ),
    ).toEqual({
      twoSided: ['heel-cushioning', 'toe-room', 'ball-width'],
      oneSided: ['weight-feel'],
    });
  });
  it('stay on the line on which they were answered before', () => {
    expect(
      askedOfComfort({ attributes: [...brief.attributes] }, { 'heel-cushioning': 70, overall: 80 }),
    ).toEqual({ twoSided: ['toe-room'], oneSided: ['heel-cushioning', 'weight-feel'] });
  });
});
