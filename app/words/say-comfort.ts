/** How comfortable was a round, in a sentence? The same in a report and in the evidence of a finding. */
import type { ComfortChange, ComfortDrift, ComfortScore } from '../../core/complaints/index.ts';
import { signed } from './figures.ts';
import type { Speaker } from './say-complaint.ts';

interface Bounds {
  readonly lower: number;
  readonly upper: number;
}

/** What is said of a score. */
export interface ScoreFigures extends Pick<ComfortScore, 'mean' | 'n' | 'runs'> {
  readonly interval: Bounds | null;
}

/** What is said of a change. */
export interface ComfortChangeFigures extends Pick<ComfortChange, 'difference' | 'word'> {
  readonly interval: Bounds | null;
}

const between = (interval: Bounds | null, write: (value: number) => string): string =>
  interval === null ? '' : ` (${write(interval.lower)} … ${write(interval.upper)})`;

/** Mean with its interval, and how many testers and scores stand behind it. */
export const scoreInWords = (score: ScoreFigures, { desk, number }: Speaker): string => {
  const whole = (value: number) => number(value, 0);
  return desk.joined.apart([
    `${whole(score.mean)}${between(score.interval, whole)}`,
    desk.comfort.of(score.n, score.runs),
  ]);
};

/** How scores change over the kilometres on the pair, with its interval and the testers behind it. */
export const driftInWords = (
  { per100Km, interval, testers }: ComfortDrift,
  { desk, number }: Speaker,
): string => {
  const tenths = (value: number) => signed(value, (size) => number(size, 1));
  return desk.joined.apart([
    `${tenths(per100Km)}${between(interval, tenths)}`,
    desk.comfort.driftOf(testers),
  ]);
};

/** Difference to the round before with its interval, and what it is called. */
export const comfortChangeInWords = (
  { difference, interval, word }: ComfortChangeFigures,
  { desk, glossary, number }: Speaker,
): string => {
  const whole = (value: number) => signed(value, (size) => number(size, 0));
  return desk.joined.of(
    `${whole(difference)}${between(interval, whole)}`,
    glossary.comfortChanges[word],
  );
};

const withInterval = (
  mean: number,
  interval: Bounds | null,
  write: (value: number) => string,
  { desk }: Speaker,
): string =>
  interval === null
    ? write(mean)
    : desk.comfort.between(write(mean), write(interval.lower), write(interval.upper));

/** A score as a sentence of its own, where no heading says what its figures are. */
export const scoreLine = (attribute: string, score: ScoreFigures, speaker: Speaker): string => {
  const { comfort } = speaker.desk;
  const whole = (value: number) => speaker.number(value, 0);
  return comfort.scored(
    attribute,
    withInterval(score.mean, score.interval, whole, speaker),
    comfort.of(score.n, score.runs),
  );
};

/** A change as a sentence of its own. */
export const comfortChangeLine = (
  rounds: { readonly earlier: string; readonly later: string },
  { difference, interval, word }: ComfortChangeFigures,
  speaker: Speaker,
): string => {
  const { comfort } = speaker.desk;
  const points = (value: number) => signed(value, (size) => speaker.number(size, 0));
  return comfort.changed(
    comfort.changes(rounds.earlier, rounds.later),
    withInterval(difference, interval, points, speaker),
    speaker.glossary.comfortChanges[word],
  );
};
