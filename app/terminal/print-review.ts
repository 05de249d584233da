/** The review of a project as text: the same figures as the desk's, in tables. */
import type { FeetLook, PanelCheck, Review, RoundLook } from '../../core/review/index.ts';
import type { Speaker } from '../words/say-complaint.ts';
import { problemsInWords, recordInWords } from '../words/say-left-out.ts';
import type { LanguageFile } from '../words/types.ts';
import type { Headlines } from './headlines.ts';
import { benchOf, deviationsOf, gaugesOf, sidesOf } from './print/bench.ts';
import { changesOf } from './print/changes.ts';
import { comfortOf, twoSidedOf } from './print/comfort.ts';
import { complaintsOf, recurringOf } from './print/complaints.ts';
import { feetOf, layersOf, panelOf } from './print/feet-and-panel.ts';
import { pairsOf, projectOf } from './print/pairs.ts';
import { heading, printingOf, type Printing } from './print/printed.ts';
import { verdictOf } from './print/verdict.ts';
import { waitingOf } from './print/waiting.ts';

/** The records that cannot be read: which, and what is wrong with each. */
const unreadOf = (
  { leftOut }: Review,
  speaker: Speaker,
  words: LanguageFile['terminal'],
): string[] => {
  const unread = leftOut.filter(({ why }) => why === 'unreadable');
  if (unread.length === 0) return [];
  const lines = unread.flatMap((one) => [
    recordInWords(one, speaker),
    ...problemsInWords(one, speaker).map((line) => `- ${line}`),
  ]);
  return [heading(speaker.desk.unread.title(unread.length)), [...lines, words.unread].join('\n')];
};

/** What a lead must ask about: damage, odd runs, and what this version cannot read. */
const openOf = (printing: Printing): string[] => {
  const {
    review,
    speaker,
    spoken: { terminal: words, glossary },
  } = printing;
  return [
    ...(review.damages.length === 0
      ? []
      : [
          heading(words.damages),
          review.damages
            .map(({ pair, tester, what, at, words: said }) =>
              [speaker.pair(pair), speaker.tester(tester), at, glossary.damages[what], said]
                .filter(Boolean)
                .join('  '),
            )
            .join('\n'),
        ]),
    ...waitingOf(printing),
    ...(review.oddities.length === 0
      ? []
      : [
          heading(words.oddities),
          review.oddities.map(({ run, why }) => `${run}  ${words.oddity[why]}`).join('\n'),
        ]),
    ...(['unknown-kind', 'newer-schema'] as const).flatMap((why) => {
      const count = review.leftOut.filter((one) => one.why === why).length;
      return count > 0 ? [words.leftOut[why](count)] : [];
    }),
    ...unreadOf(review, speaker, words),
  ];
};

/** What is printed. */
export interface Printed {
  readonly review: Review;
  /** One for each round, in their order. */
  readonly looks: readonly RoundLook[];
  readonly feet: FeetLook;
  readonly panel: PanelCheck;
  readonly headlines: Headlines;
}

/**
 * The whole review; ends without a newline. Each part has its answer first.
 * @param howSure with the figures of statistics that stand behind "How sure?" on the desk
 */
export const printReview = (
  { review, looks, feet, panel, headlines }: Printed,
  spoken: LanguageFile,
  howSure: boolean,
): string => {
  const printing = printingOf(review, spoken, howSure);
  return [
    projectOf(printing, headlines.sheet),
    pairsOf(printing, headlines.pairs),
    headlines.shoe,
    ...review.rounds.flatMap((round, at) => [
      complaintsOf(round, printing),
      ...recurringOf(round, looks[at]?.looks ?? [], printing),
      ...twoSidedOf(round, printing),
      ...comfortOf(round, printing),
    ]),
    headlines.verdict,
    ...looks.map(({ verdict, influence }) => verdictOf(verdict, influence, printing)),
    ...looks.flatMap(({ against }, at) =>
      against ? [changesOf(against, printing, headlines.changes[at - 1] ?? '')] : [],
    ),
    benchOf(printing, headlines.wear),
    deviationsOf(printing),
    sidesOf(printing),
    ...(howSure
      ? [
          gaugesOf(printing),
          ...looks.flatMap(({ layers }, at) =>
            layers ? [layersOf(layers, review.rounds[at]?.name ?? '', printing)] : [],
          ),
        ]
      : []),
    feetOf(feet, printing),
    ...(howSure ? panelOf(panel, printing) : []),
    ...openOf(printing),
  ].join('\n\n');
};
