/**
 * What is to be different in a shoe, as one shape: a lead asks for it in a finding, a specialist offers it in a
 * proposal, a round carries it, and the sample's measurement says whether it arrived.
 */
import * as z from 'zod/mini';
import { partIds, patternLines } from '../../foot/index.ts';
import { footField, measureField, siteField } from './common.ts';
import * as ranges from './field-ranges.ts';
import type { MeasureUnit } from './measures.ts';
import { numberIn } from './number-in.ts';

/** A quantity goes up or down (`more`, `less`); a line moves. `inward` is towards the foot. */
export const changeDirections = [
  'more',
  'less',
  'higher',
  'lower',
  'forward',
  'back',
  'inward',
  'outward',
] as const;
export type ChangeDirection = (typeof changeDirections)[number];

/** Millimetres, grams, points of hardness, percent, degrees, and grades as the house counts them. */
export const changeUnits = ['mm', 'g', 'asker-c', 'shore-a', '%', 'deg', 'grade'] as const;
export type ChangeUnit = (typeof changeUnits)[number];

export const shoeSides = ['medial', 'lateral'] as const;
export type ShoeSide = (typeof shoeSides)[number];

export interface ChangeRange {
  readonly least: number;
  readonly most: number;
  /** Null: a plain count or an angle, said by the unit itself. */
  readonly unit: MeasureUnit | null;
}

const upTo = (most: number, unit: MeasureUnit | null, least = 0.01): ChangeRange => ({
  least,
  most,
  unit,
});

/** What the amount of a change can be; forms hold to it. Judgement, as in `field-ranges.ts`. */
const changeRanges: Readonly<Record<ChangeUnit, ChangeRange>> = {
  mm: upTo(200, 'mm'),
  g: upTo(2000, 'g'),
  'asker-c': upTo(100, 'asker-c'),
  'shore-a': upTo(100, 'shore-a'),
  '%': upTo(100, '%'),
  deg: upTo(90, null),
  grade: upTo(20, null, 0.5),
};
export const changeRangeOf = (unit: ChangeUnit): ChangeRange => changeRanges[unit];

export const structuredChangeSchema = z.looseObject({
  part: z.enum(partIds),
  /** The line that moves, or else … */
  line: z.optional(z.enum(patternLines)),
  /** … the dimension that grows or shrinks, as the blueprint names it. Neither: the part as a whole. */
  dimension: z.optional(z.looseObject({ measure: measureField, site: siteField })),
  side: z.optional(z.enum(shoeSides)),
  /** Absent: both shoes. */
  foot: z.optional(footField),
  direction: z.enum(changeDirections),
  /** By how much, always positive: the direction has the sign. Absent: not said. */
  by: z.optional(
    z.looseObject({ amount: numberIn(ranges.changeAmount), unit: z.enum(changeUnits) }),
  ),
  /** The limit of the brief that it is to mend; the complaint stands in the finding and in the round's change. */
  limit: z.optional(z.looseObject({ measure: measureField, site: z.optional(siteField) })),
});

export type StructuredChange = z.infer<typeof structuredChangeSchema>;
