/** What a press on the list of waiting runs and readings writes down. Pure. */
import {
  isIn,
  rangeOf,
  type BenchCheck,
  type Decision,
  type RecordId,
  type Ruling,
} from '../../../core/records/index.ts';
import {
  decisionOn,
  type DecidedItem,
  type Subject,
  type WaitingItem,
} from '../../../core/review/index.ts';
import { toInstant } from '../../parts/instant.ts';
import type { DeskWords } from '../../words/types.ts';

/** What of the list a lead decides about. */
export type Decidable = WaitingItem | DecidedItem;

/** Each run or reading that one press decides about. */
export const subjectsOf = (item: Decidable): readonly Subject[] =>
  item.about === 'gauge' ? item.subjects : [item.subject];

/** The records of one press: a decision for each run or reading, all at one instant. */
export const decisionsOn = (
  item: Decidable,
  said: { readonly project: RecordId; readonly ruling: Ruling; readonly why: string },
  nowMs: number,
): readonly Decision[] =>
  subjectsOf(item).map((subject) =>
    decisionOn(subject, { ...said, why: said.why.trim(), at: toInstant(nowMs) }),
  );

/** The reason that stands in the field before anything is typed. */
export const usualReason = (item: Decidable, { reasons }: DeskWords['waiting']): string => {
  if (item.about !== 'run') return reasons[item.about];
  const isElsewhere = 'whys' in item && item.whys.some(({ why }) => why === 'not-handed-out');
  return isElsewhere ? reasons['wrong-pair'] : reasons.run;
};

/**
 * A check with one reading corrected: every reading of that place that has the value.
 * @returns null where the new value cannot be one of that measure
 */
export const correctedCheck = (
  check: BenchCheck,
  { measure, site, foot, unit, value }: Extract<WaitingItem, { about: 'reading' }>['reading'],
  right: number,
): BenchCheck | null =>
  isIn(right, rangeOf(measure, unit))
    ? {
        ...check,
        readings: check.readings.map((one) =>
          one.measure === measure &&
          one.site === site &&
          one.foot === foot &&
          one.unit === unit &&
          one.value === value
            ? { ...one, value: right }
            : one,
        ),
      }
    : null;
