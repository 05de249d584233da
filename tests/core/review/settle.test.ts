/** What would settle an open limit is something that a test can do. */
import { describe, expect, it } from 'vitest';
import { verdict as en } from '../../../app/words/places/en/verdict.ts';
import { verdict as zh } from '../../../app/words/places/zh/verdict.ts';
import { settleRate, testersToShow } from '../../../core/review/index.ts';

describe('a rate that is not proved yet', () => {
  it('asks for as many testers as it takes, while a panel can have them', () => {
    expect(settleRate({ complaint: 0.2, pain: 0.1 }, 8)).toEqual({
      by: 'ask-testers',
      need: testersToShow(0.1),
      have: 8,
    });
  });

  it('asks for a decision by the reports, where no panel is large enough', () => {
    const settle = settleRate({ complaint: 0.05, pain: 0.01 }, 8);
    expect(settle).toEqual({ by: 'decide-by-reports', need: 381 });
    expect([en, zh].map(({ settles }) => settles['decide-by-reports'](381))).toEqual([
      'Decide by what testers report; proof would take 381 of them',
      '按试穿员的反映决定；要证明需 381 名试穿员',
    ]);
  });
});
