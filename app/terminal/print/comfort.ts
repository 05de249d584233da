/** How comfortable a round is, and whether that changes with the kilometres. */
import type { RoundReview } from '../../../core/review/index.ts';
import { driftInWords, scoreInWords } from '../../words/say-comfort.ts';
import { table } from '../table.ts';
import { heading, type Printing } from './printed.ts';

/** Wear scores by attribute with their change per 100 km; nothing where nobody scored any. */
export const comfortOf = (
  { name, comfort }: RoundReview,
  { speaker, howSure }: Printing,
): string[] => {
  const { desk, glossary } = speaker;
  const rows = comfort.flatMap(({ attribute, wear, drift }) =>
    wear
      ? [
          [
            glossary.attributes[attribute].name,
            scoreInWords(howSure ? wear : { ...wear, interval: null }, speaker),
            ...(howSure ? [drift ? driftInWords(drift, speaker) : desk.none] : []),
          ],
        ]
      : [],
  );
  return rows.length === 0
    ? []
    : [
        heading(desk.joined.of(desk.tabs.comfort, name)),
        table(
          [
            { title: desk.comfort.attribute },
            { title: desk.comfort.wear },
            ...(howSure ? [{ title: desk.comfort.drift }] : []),
          ],
          rows,
        ),
      ];
};
