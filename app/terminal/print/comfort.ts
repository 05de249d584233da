/** How comfortable a round is, and whether that changes with the kilometres. */
import type { RoundReview } from '../../../core/review/index.ts';
import { driftInWords, scoreInWords } from '../../words/say-comfort.ts';
import { costsInWords, knownInWords, sidesInWords } from '../../words/say-two-sided.ts';
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

/** What is too little and too much, with what it costs; nothing where nobody answered. */
export const twoSidedOf = (
  { name, twoSided }: RoundReview,
  { speaker, howSure }: Printing,
): string[] => {
  const { desk, glossary } = speaker;
  const words = desk.comfort.twoSided;
  return twoSided.length === 0
    ? []
    : [
        heading(desk.joined.of(words.title, name)),
        table(
          [
            { title: words.question },
            { title: words.testers },
            { title: words.known },
            ...(howSure ? [{ title: words.cost }] : []),
          ],
          twoSided.map((one) => [
            glossary.twoSided[one.attribute].name,
            sidesInWords(one, speaker),
            knownInWords(one, speaker),
            ...(howSure
              ? [costsInWords(one.attribute, one.cost, speaker).join('; ') || words.noCost]
              : []),
          ]),
        ),
      ];
};
