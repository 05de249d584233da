/** In which units may a measure be given? The first is the usual one. */
import type { Measure, MeasureUnit } from '../../../core/records/index.ts';

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
