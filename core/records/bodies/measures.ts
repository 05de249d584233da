/** What the bench measures, and in which units. */

/** What a bench reading measures, with the unit it is given in. */
export const measures = [
  'stack-height',
  'hardness',
  'mass',
  'tread-depth',
  'impact-peak',
  'energy-absorbed',
  'energy-returned',
  'dimension',
] as const;
export type Measure = (typeof measures)[number];

/** mm, g, Asker C and Shore A points, newtons, joules, percent, kilopascals. */
export const measureUnits = ['mm', 'g', 'asker-c', 'shore-a', 'N', 'J', '%', 'kPa'] as const;
export type MeasureUnit = (typeof measureUnits)[number];

/** In which units a measure is given; a limit or a blueprint without a unit means the first. */
export const unitsOf: Readonly<Record<Measure, readonly [MeasureUnit, ...MeasureUnit[]]>> = {
  'stack-height': ['mm'],
  hardness: ['asker-c', 'shore-a'],
  mass: ['g'],
  'tread-depth': ['mm'],
  'impact-peak': ['N'],
  'energy-absorbed': ['J', '%'],
  'energy-returned': ['%', 'J'],
  dimension: ['mm'],
};
