/** Does a round hold against its brief? */
import type { RoundInfluence, Verdict } from '../../../core/review/index.ts';
import { influenceLines } from '../../words/say-waiting.ts';
import { itemInWords, verdictTitle } from '../../words/say-verdict.ts';
import { behind, heading, type Printing } from './printed.ts';

/** A round's verdict, item by item, and who alone decides it. */
export const verdictOf = (
  verdict: Verdict,
  influence: RoundInfluence,
  printing: Printing,
): string => {
  const { review, speaker } = printing;
  return [
    heading(verdictTitle(verdict, speaker)),
    ...influenceLines(influence, speaker),
    ...verdict.items.flatMap((item) => {
      const { title, word, lines, settle } = itemInWords(
        item,
        review.project.brief.distanceM,
        speaker,
      );
      return [
        speaker.desk.joined.of(title, speaker.glossary.holds[word]),
        ...behind(printing, [...lines, ...settle]).map((line) => `  ${line}`),
      ];
    }),
  ].join('\n');
};
