/**
 * What can a number be? `ranges` is what a record may hold: outside of it the record cannot be read. A bench check
 * holds many readings, and one missed decimal point must not cost the others: there the record takes any
 * `ranges.benchFigure`, and {@link rangeOf} says what a reading of that measure can be. A reading outside of it is
 * refused where it is typed or imported. Forms and readers of tables say these ranges in their messages.
 *
 * Sources: hardness is read on scales from 0 to 100 (ASTM D2240, ISO 48-4:2018; Asker C likewise, from memory);
 * percentages of energy by definition. Everything else is judgement, as in `field-ranges.ts`.
 */
import type { Range } from './field-ranges.ts';
import { unitsOf, type Measure, type MeasureUnit } from './measures.ts';
import type { ChangeUnit } from './structured-change.ts';

export type { Range, RangeUnit } from './field-ranges.ts';
export * as ranges from './field-ranges.ts';

const from = (least: number, most: number, unit: MeasureUnit): Range => ({ least, most, unit });

/** What a reading of a measure can be, in each unit it is given in. */
const readingRanges: Readonly<Record<Measure, Partial<Record<MeasureUnit, Range>>>> = {
  'stack-height': { mm: from(1, 100, 'mm') },
  hardness: { 'asker-c': from(0, 100, 'asker-c'), 'shore-a': from(0, 100, 'shore-a') },
  mass: { g: from(20, 2000, 'g') },
  'tread-depth': { mm: from(0, 30, 'mm') },
  'impact-peak': { N: from(10, 20_000, 'N') },
  'energy-absorbed': { J: from(0, 100, 'J'), '%': from(0, 100, '%') },
  'energy-returned': { '%': from(0, 100, '%'), J: from(0, 100, 'J') },
  dimension: { mm: from(0, 600, 'mm') },
};

/** Where a measure is given in a unit that is not its own. */
const unitRanges: Readonly<Record<MeasureUnit, Range>> = {
  mm: from(0, 600, 'mm'),
  g: from(0, 2000, 'g'),
  'asker-c': from(0, 100, 'asker-c'),
  'shore-a': from(0, 100, 'shore-a'),
  N: from(0, 20_000, 'N'),
  J: from(0, 100, 'J'),
  '%': from(0, 100, '%'),
  kPa: from(0, 5000, 'kPa'),
};

/** What a reading of this measure can be; without a unit in the first that the measure is given in. */
export const rangeOf = (measure: Measure, unit: MeasureUnit = unitsOf[measure][0]): Range =>
  readingRanges[measure][unit] ?? unitRanges[unit];

/** By how much a shoe can be changed, and the step that a change is given in; in the unit itself. */
const changeRanges: Readonly<Record<ChangeUnit, { readonly most: number; readonly step: number }>> =
  {
    mm: { most: 200, step: 0.1 },
    g: { most: 2000, step: 1 },
    'asker-c': { most: 100, step: 1 },
    'shore-a': { most: 100, step: 1 },
    '%': { most: 100, step: 1 },
    deg: { most: 90, step: 0.5 },
    grade: { most: 20, step: 0.5 },
  };

/** What the amount of a structured change can be, from its smallest step on; judgement. Degrees and grades name no unit. */
export const changeRangeOf = (unit: ChangeUnit): Range => {
  const { most, step } = changeRanges[unit];
  return { least: step, most, unit: unit === 'deg' || unit === 'grade' ? null : unit };
};
