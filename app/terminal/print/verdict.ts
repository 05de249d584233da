/** Does a round hold against its brief? */
import type { Verdict } from '../../../core/review/index.ts';
import { itemInWords, verdictTitle } from '../../words/say-wear.ts';
import { heading, type Printing } from './printed.ts';

/** A round's verdict, item by item. */
export const verdictOf = (verdict: Verdict, { review, speaker }: Printing): string =>
  [
    heading(verdictTitle(verdict, speaker)),
    ...verdict.items.flatMap((item) => {
      const { title, word, lines, settle } = itemInWords(
        item,
        review.project.brief.distanceM,
        speaker,
      );
      return [
        speaker.desk.joined.of(title, speaker.glossary.holds[word]),
        ...[...lines, ...settle].map((line) => `  ${line}`),
      ];
    }),
  ].join('\n');
