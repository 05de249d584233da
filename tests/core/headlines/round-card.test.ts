/** A round's card names the surest complaint: it never says "nothing" of what the shoe beside it calls likely. */
import { describe, expect, it } from 'vitest';
import { sheet as en } from '../../../app/words/places/en/sheet.ts';
import { sheet as zh } from '../../../app/words/places/zh/sheet.ts';
import type { EvidenceWord } from '../../../core/complaints/index.ts';
import { roundCardLine } from '../../../core/headlines/index.ts';

const cell = (word: EvidenceWord, testersOnce: number, zone: 'U10' | 'U3' | 'P6' = 'U10') => ({
  zone,
  kind: 'heel-slip' as const,
  word,
  testersOnce,
  runs: 2,
});

describe('the card of a round', () => {
  it('says that nobody ran, or that there are single reports at most', () => {
    expect(roundCardLine([], 0)).toEqual({ case: 'nobody-ran' });
    expect(roundCardLine([], 12)).toEqual({ case: 'nothing' });
    expect(roundCardLine([cell('seen-once', 1)], 12)).toEqual({ case: 'nothing' });
  });

  it('does not say that nothing recurs of what one tester has in each of their runs', () => {
    const twice = cell('early-sign', 1);
    const often = { ...cell('early-sign', 1, 'P6'), runs: 3 };
    expect(roundCardLine([twice, often], 12)).toEqual({ case: 'early', cell: often });
    expect(roundCardLine([twice, cell('early-sign', 2)], 12)).toMatchObject({ sure: 'likely' });
    expect(en.early('Heel slip', 2)).toBe(
      'Heel slip: one tester, in 2 runs. Too few to say it recurs.',
    );
    expect(zh.early('后跟滑动', 2)).toBe('后跟滑动：一名试穿员有 2 次，还不能说反复出现。');
  });

  it('names what is clear, then what one tester has, then what most testers likely have', () => {
    const likely = [cell('early-sign', 2), cell('early-sign', 7, 'U3')];
    expect(roundCardLine(likely, 131)).toMatchObject({ sure: 'likely', cell: { zone: 'U3' } });
    const alone = cell('recurs-for-one-tester', 1, 'P6');
    expect(roundCardLine([...likely, alone], 131)).toMatchObject({
      sure: 'one-tester',
      cell: alone,
    });
    const clear = cell('recurs-across-testers', 5, 'P6');
    expect(roundCardLine([...likely, alone, clear], 131)).toMatchObject({
      sure: 'clear',
      cell: clear,
    });
  });

  it('says how sure it is, in both languages', () => {
    expect(en.recurs('Heel slip', 'clear', 5, 8)).toBe('Heel slip: 5 of 8 testers.');
    expect(en.recurs('Heel slip', 'likely', 7, 8)).toBe('Heel slip: likely, 7 of 8 testers.');
    expect(en.recurs('Heel slip', 'one-tester', 2, 8)).toBe('Heel slip: recurs for one tester.');
    expect(zh.recurs('后跟滑动', 'likely', 7, 8)).toBe(
      '后跟滑动：很可能反复出现，8 名试穿员中有 7 名。',
    );
    expect(zh.recurs('后跟滑动', 'one-tester', 2, 8)).toBe('后跟滑动：仅一名试穿员反复出现。');
  });
});

describe('what became better', () => {
  it('names the rounds that are compared', () => {
    const both = [en, zh].map(({ callout }, at) =>
      callout.better(
        callout.share(50, 183),
        at === 0 ? 'Round 2' : '第 2 轮',
        callout.share(0, 131),
        at === 0 ? 'Round 3' : '第 3 轮',
      ),
    );
    expect(both).toEqual([
      'Better: 50 of 183 runs in Round 2, 0 of 131 in Round 3',
      '已改善：第 2 轮 183 次中 50 次，第 3 轮 131 次中 0 次',
    ]);
  });
});
