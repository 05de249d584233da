/** Agreement in words: no agreement is said as such, never as a negative number. */
import { describe, expect, it } from 'vitest';
import { spokenIn } from '../../../app/report/spoken.tsx';
import { languageFile } from '../../../app/terminal/languages.ts';
import { panelInWords } from '../../../app/words/say-panel.ts';
import type { PanelCheck } from '../../../core/review/index.ts';
import { agreementOf } from '../../calibrate/agreement.ts';

const names = { rounds: {}, pairs: {}, testers: {} };
const linesOf = (text: string, language: string): readonly string[] => {
  const check: PanelCheck = {
    agreement: agreementOf(text.split(' / ').map((row) => row.split(' ').map(Number))),
    ...{ sessionError: null, questions: [], testers: 6, testersEnough: 0 },
  };
  const { speaker } = spokenIn(languageFile(language), names, 'km', 'UTC');
  const said = panelInWords(check, speaker);
  return said ? [said.agreement, ...said.correlations] : [];
};

describe('agreement of the panel in words', () => {
  it('says that none is shown where the estimate is negative', () => {
    const panel = '87 63 33 76 45 55 / 66 64 53 57 65 54 / 71 76 46 70 68 28';
    expect(linesOf(panel, 'en').slice(1)).toEqual([
      'one tester’s score: no agreement shown',
      'after each tester’s own level is taken off: no agreement shown',
      'the panel’s mean: no agreement shown',
    ]);
    expect(linesOf('80 50 66 / 70 60 62', 'en')[1]).toMatch(
      /: no agreement shown \(95 % interval 0 to 0\.\d/,
    );
    expect(linesOf(panel, 'zh').slice(1).join()).toMatch(/看不出一致.*看不出一致.*看不出一致/);
  });

  it('says that it is open where the interval reaches 0, and gives it where it is shown', () => {
    expect(linesOf('60 50 55 / 66 61 50 / 70 59 62', 'en')[1]).toMatch(
      /agreement is not shown yet/,
    );
    const [, ...shown] = linesOf('20 25 22 / 50 52 55 / 80 84 79', 'en');
    for (const line of shown) expect(line).toMatch(/: (0\.9\d*|1) \(95 % interval 0\.\d+ to \d/);
  });

  it('says in words why nothing can be compared', () => {
    for (const [panel, words] of [
      ['70 50 / 70 50', /nothing to agree on/],
      ['60 50 / 70 60', /exactly the same/],
    ] as const) {
      expect(linesOf(panel, 'en')).toEqual([expect.stringMatching(words)]);
      expect(linesOf(panel, 'zh')[0]).not.toMatch(/[a-z]/i);
    }
  });
});
