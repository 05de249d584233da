/** Agreement exists whatever a panel says, and its intervals cover. The long run: `npm run calibrate -- --only agreement`. */
import { describe, expect, it } from 'vitest';
import { agreementShown } from '../../../core/panel/index.ts';
import { intraclassCorrelations } from '../../../core/statistics/index.ts';
import { agreementOf, coverageOf, sweepPanels } from '../../calibrate/agreement.ts';

const rowsOf = (text: string) => text.split(' / ').map((row) => row.split(' ').map(Number));

describe('agreement of a panel that hardly agrees', () => {
  it('is told, with intervals, where the estimate is negative', () => {
    const answer = agreementOf(rowsOf('87 63 33 76 45 55 / 66 64 53 57 65 54 / 71 76 46 70 68 28'));
    if (!answer.ok) throw new Error(answer.why);
    const { one, oneLevelled, panel } = answer.agreement;
    // Worked out apart from this code (numpy), by the formulas of Shrout & Fleiss 1979.
    // The mean of six comes to −1.41, which no correlation can be.
    expect(one.icc).toBeCloseTo(-0.10792149, 8);
    expect(oneLevelled.icc).toBeCloseTo(-0.2, 8);
    expect(panel.icc).toBe(-1);
    for (const { icc, lower, upper } of [one, oneLevelled, panel]) {
      expect(icc).toBeLessThan(0);
      expect(lower).toBeLessThanOrEqual(upper);
      for (const value of [icc, lower, upper]) expect(Math.abs(value)).toBeLessThanOrEqual(1);
    }
    expect([one, oneLevelled, panel].map(agreementShown)).toEqual(['none', 'none', 'none']);
  });

  it('is a number also where the mean of squares of the judges is small', () => {
    for (const scores of [
      '1 2 / 2 1',
      '1 1 2 2 / 2 2 1 1',
      '5 0 / 0 5',
      '0.1 0.2 0.3 / 0.3 0.1 0.2',
    ]) {
      const found = intraclassCorrelations(rowsOf(scores));
      if (!found) throw new Error(scores);
      for (const key of ['single1', 'mean1', 'single2', 'mean2', 'single3', 'mean3'] as const) {
        const { icc, lower, upper } = found[key];
        for (const value of [icc, lower, upper])
          expect(Math.abs(value), `${scores} ${key}`).toBeLessThanOrEqual(1);
      }
    }
  });

  it('is not told where nothing differs, or everything alike', () => {
    const why = (text: string) => {
      const answer = agreementOf(rowsOf(text));
      return answer.ok || answer.why;
    };
    expect(why('70.1 50.3 / 70.1 50.3')).toBe('same');
    expect(why('60.1 50.3 40.7 / 60.1 50.3 40.7 / 60.1 50.3 40.7')).toBe('same');
    expect(why('60.1 50.3 / 70.1 60.3')).toBe('alike');
    expect(why('60 50 / 70 61')).toBe(true);
  });

  it('is open where the interval reaches 0, and shown above', () => {
    expect(agreementShown({ icc: 0.2, lower: 0, upper: 0.7 })).toBe('open');
    expect(agreementShown({ icc: 0.3, lower: 0.02, upper: 0.7 })).toBe('shown');
    expect(agreementShown({ icc: 0, lower: 0, upper: 0.7 })).toBe('none');
  });
});

describe('agreement of simulated panels', () => {
  it('never throws, is never NaN and never beyond 1, whatever the scores', () => {
    expect(sweepPanels(1200, 14)).toEqual([]);
  });

  it('has 95 % intervals that cover 90 to 98 %, and at least 90 % where there is none', () => {
    for (const [rounds, testers, levels] of [
      [2, 6, 0.3],
      [3, 3, 0.7],
      [6, 4, 0.3],
    ] as const)
      for (const icc of [0, 0.3, 0.6, 0.9]) {
        const design = { rounds, testers, icc, levels };
        const covered = coverageOf(design, 400, 7);
        for (const share of Object.values(covered)) {
          expect(share, JSON.stringify(design)).toBeGreaterThanOrEqual(0.9);
          if (icc > 0) expect(share, JSON.stringify(design)).toBeLessThanOrEqual(0.98);
        }
      }
  });
});
