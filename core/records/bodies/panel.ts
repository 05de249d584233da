/** What is recorded of how the group measures and hands out: gauge studies and hand-out plans. */
import * as z from 'zod/mini';
import {
  idField,
  instantField,
  lineField,
  measureField,
  measureUnitField,
  figureOfBenchField,
  millimetresIn,
  numberIn,
  wholeIn,
  siteField,
} from './common.ts';
import * as ranges from './field-ranges.ts';

/** The same parts measured by the same operators again and again: how far the gauge can be trusted. */
export const gaugeStudySchema = z.looseObject({
  project: idField,
  at: instantField,
  gauge: lineField,
  measure: measureField,
  site: z.optional(siteField),
  unit: measureUnitField,
  /** Width of the tolerance that the gauge must decide, in the unit: upper minus lower. */
  toleranceWidth: z.optional(numberIn(ranges.toleranceWidth)),
  /** In the order measured; a part and an operator are named by the words of the shop. */
  readings: z
    .array(z.looseObject({ part: lineField, operator: lineField, value: figureOfBenchField }))
    .check(z.minLength(4), z.maxLength(1000)),
});

const planBases = ['carry-over-balanced', 'balanced-blocks', 'best-found'] as const;

/** Who wears which pair when, as it was drawn from a seed. Only leads see it: it tells pairs apart. */
export const handOutPlanSchema = z.looseObject({
  project: idField,
  at: instantField,
  /** Draws the same plan again from the same rounds, testers, sizes and weeks. */
  seed: wholeIn(ranges.seed),
  /** The rounds that are compared, in the order in which the plan letters them. */
  rounds: z.array(idField).check(z.minLength(1), z.maxLength(12)),
  basis: z.enum(planBases),
  /** Day on which the first period begins. */
  from: instantField,
  periods: wholeIn(ranges.periods),
  /** How far a pair's size may lie from the tester's foot length; absent: not said. */
  allowedMm: z.optional(millimetresIn(ranges.sizeAllowanceMm)),
  weeksPerPeriod: wholeIn(ranges.weeks),
  testers: z
    .array(
      z.looseObject({
        tester: idField,
        /** Periods in which the tester is away, counted from 0. */
        away: z.optional(z.array(wholeIn(ranges.periodAt))),
        /** From this period on the tester takes no part any more. */
        droppedOutAt: z.optional(wholeIn(ranges.periodAt)),
      }),
    )
    .check(z.maxLength(200)),
  /** One entry a tester and period: the pair, or none where nothing fitted. */
  places: z
    .array(
      z.looseObject({
        tester: idField,
        period: wholeIn(ranges.periodAt),
        pair: idField,
        round: idField,
        /** Its own days, where a tester stopped or took over within the period; absent: the period's. */
        from: z.optional(instantField),
        until: z.optional(instantField),
      }),
    )
    .check(z.maxLength(2400)),
});

export type GaugeStudy = z.infer<typeof gaugeStudySchema>;
export type HandOutPlan = z.infer<typeof handOutPlanSchema>;
