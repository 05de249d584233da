/** The readings of a check in a few lines: one for each measure and site, left before right. Pure. */
import type { ListedReading, ReadingStanding } from '../../../core/review/index.ts';
import { groupBy } from '../../../core/statistics/index.ts';
import type { Speaker } from '../../words/say-complaint.ts';
import { placeName } from '../../words/say-place.ts';

export interface MeasuredLine {
  readonly name: string;
  readonly unit: string;
  /** Without the unit. */
  readonly values: readonly { readonly text: string; readonly standing: ReadingStanding }[];
  readonly gauges: readonly string[];
}

/** A value with its unit. */
export const readingValue = (
  { value, unit }: Pick<ListedReading, 'value' | 'unit'>,
  { number, glossary }: Pick<Speaker, 'number' | 'glossary'>,
): string => `${number(value, 2)} ${glossary.units[unit]}`;

export const measuredLines = (
  readings: readonly ListedReading[],
  speaker: Speaker,
): readonly MeasuredLine[] =>
  [...groupBy(readings, ({ measure, site, unit }) => `${measure} ${site} ${unit}`).values()].map(
    (own) => ({
      name: own[0] ? placeName(own[0], speaker) : '',
      unit: own[0] ? speaker.glossary.units[own[0].unit] : '',
      gauges: [...new Set(own.flatMap(({ gauge }) => (gauge === undefined ? [] : [gauge])))],
      values: own
        .toSorted((a, b) => (a.foot < b.foot ? -1 : a.foot > b.foot ? 1 : 0))
        .map((one) => ({ text: speaker.number(one.value, 2), standing: one.standing })),
    }),
  );
