/** What was too little or too much, in words? The same on the desk, in a report, in a finding and on the terminal. */
import type {
  Cost,
  TwoSidedChange,
  TwoSidedReview,
  TwoSidedWord,
} from '../../core/complaints/index.ts';
import type { Side, TwoSidedId } from '../../core/foot/index.ts';
import type { RecordId } from '../../core/records/index.ts';
import type { ProposedOutcome } from '../../core/review/index.ts';
import { signed } from './figures.ts';
import type { Speaker } from './say-complaint.ts';

interface Bounds {
  readonly lower: number;
  readonly upper: number;
}

/** What is said of a question in one round. */
export interface TwoSidedFigures extends Pick<TwoSidedReview, 'attribute' | 'counts' | 'sure'> {
  readonly word: TwoSidedWord;
}

/** "too soft 5, just right 3, too firm 0". */
export const sidesInWords = (
  { attribute, counts }: Pick<TwoSidedFigures, 'attribute' | 'counts'>,
  { desk, glossary }: Pick<Speaker, 'desk' | 'glossary'>,
): string => {
  const { low, high } = glossary.twoSided[attribute];
  return desk.comfort.twoSided.sides(low, counts.low, counts.right, high, counts.high);
};

/** "too soft, likely"; how sure stands only beside what is off. */
export const knownInWords = (
  { attribute, word, sure }: TwoSidedFigures,
  { desk, glossary }: Pick<Speaker, 'desk' | 'glossary'>,
): string => {
  const { low, high } = glossary.twoSided[attribute];
  const words = desk.comfort.twoSided;
  const said = words.word[word](low, high);
  return word === 'low' || word === 'high' ? desk.joined.clauses([said, words.sure[sure]]) : said;
};

const between = (interval: Bounds | null, write: (value: number) => string): string =>
  interval === null ? '' : ` (${write(interval.lower)} … ${write(interval.upper)})`;

/** What is said of a cost. */
type SideCost = Pick<Cost, 'points' | 'onSide' | 'right'> & { readonly interval: Bounds };

/** Points lost in overall comfort, and both ends of their interval: a loss is below nought. */
export const lostFigures = (
  { points, interval }: Pick<SideCost, 'points' | 'interval'>,
  { number }: Pick<Speaker, 'number'>,
): readonly [points: string, least: string, most: string] => {
  const whole = (value: number) => signed(value, (size) => number(size, 0));
  return [whole(-points), whole(-interval.upper), whole(-interval.lower)];
};

const pointsLost = (cost: SideCost, speaker: Pick<Speaker, 'number'>): string => {
  const [points, least, most] = lostFigures(cost, speaker);
  return `${points} (${least} … ${most})`;
};

/** What each side costs, as far as there are testers enough. */
export const costsInWords = (
  attribute: TwoSidedId,
  cost: Readonly<Record<Exclude<Side, 'right'>, SideCost | null>>,
  speaker: Pick<Speaker, 'desk' | 'glossary' | 'number'>,
): readonly string[] =>
  (['low', 'high'] as const).flatMap((side) => {
    const own = cost[side];
    return own
      ? [
          speaker.desk.comfort.twoSided.costOf(
            speaker.glossary.twoSided[attribute][side],
            pointsLost(own, speaker),
            own.onSide,
            own.right,
          ),
        ]
      : [];
  });

/** By how much closer to just right, with its interval: positive is closer. */
export const closerInWords = (
  { closer, interval }: Pick<TwoSidedChange, 'closer' | 'interval'>,
  { number }: Pick<Speaker, 'number'>,
): string => {
  const whole = (value: number) => signed(value, (size) => number(size, 0));
  return `${whole(closer)}${between(interval, whole)}`;
};

/** The same with what it is called. */
export const moveInWords = (change: TwoSidedChange, speaker: Speaker): string =>
  speaker.desk.comfort.twoSided.moved(
    closerInWords(change, speaker),
    speaker.glossary.comfortChanges[change.word],
  );

/** A question as a sentence of its own. */
export const twoSidedLine = (figures: TwoSidedFigures, speaker: Speaker): string =>
  speaker.desk.comfort.twoSided.says(
    speaker.glossary.twoSided[figures.attribute].name,
    sidesInWords(figures, speaker),
    knownInWords(figures, speaker),
  );

/** What came of something that was too little or too much, from one round to the other. */
export const twoSidedOutcomeLines = (
  {
    attribute,
    moved,
    verdict,
  }: Pick<
    Extract<ProposedOutcome, { readonly of: 'two-sided' }>,
    'attribute' | 'moved' | 'verdict'
  >,
  rounds: { readonly earlier: RecordId; readonly later: RecordId },
  speaker: Speaker,
): string[] => {
  const words = speaker.desk.comfort.twoSided;
  const of = (round: RecordId, counts: TwoSidedChange['earlier']) =>
    speaker.desk.joined.of(speaker.round(round), sidesInWords({ attribute, counts }, speaker));
  const meaning = speaker.desk.joined.of(
    speaker.glossary.twoSided[attribute].name,
    words.outcome[verdict],
  );
  return moved
    ? [
        meaning,
        of(rounds.earlier, moved.earlier),
        of(rounds.later, moved.later),
        speaker.desk.joined.of(words.closer, closerInWords(moved, speaker)),
      ]
    : [meaning];
};
