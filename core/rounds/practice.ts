/**
 * Which dimensions does a blueprint usually hold, with which tolerance? Common practice, no source, from memory: no
 * standard for shoes was found. Offered to be edited, never taken for granted.
 */
import type { Measure, MeasureUnit } from '../records/index.ts';

export interface PracticeDimension {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  /** Either way from nominal, in the unit; or a share of nominal. */
  readonly tolerance: { readonly by: 'unit' | 'share'; readonly value: number };
  /** Greatest difference of left and right; absent: not usual to name. */
  readonly leftRight?: number;
}

const of = (
  measure: Measure,
  site: string,
  unit: MeasureUnit,
  value: number,
  leftRight?: number,
): PracticeDimension => ({
  measure,
  site,
  unit,
  tolerance: { by: 'unit', value },
  ...(leftRight !== undefined && { leftRight }),
});

/** Where each measure is usually taken, the most usual site first. Common practice, no source, from memory. */
export const practiceSites: Readonly<Record<Measure, readonly string[]>> = {
  'stack-height': ['heel-centre', 'forefoot-centre'],
  hardness: ['heel-centre', 'forefoot-centre'],
  mass: ['shoe'],
  'tread-depth': ['heel-lateral', 'heel-medial', 'forefoot-lateral', 'forefoot-medial'],
  'impact-peak': ['heel-centre', 'forefoot-centre'],
  'energy-absorbed': ['heel-centre', 'forefoot-centre'],
  'energy-returned': ['heel-centre', 'forefoot-centre'],
  dimension: ['internal-length', 'back-height'],
};

/** The usual dimensions, from the heel round to the toe, then the sole, then mass and hardness. */
export const practiceDimensions: readonly PracticeDimension[] = [
  of('dimension', 'internal-length', 'mm', 2, 1),
  of('dimension', 'back-height', 'mm', 2, 2),
  of('dimension', 'collar-height-medial', 'mm', 2, 2),
  of('dimension', 'collar-height-lateral', 'mm', 2, 2),
  of('dimension', 'heel-cup-width', 'mm', 1),
  of('dimension', 'toe-cap-length', 'mm', 2, 2),
  of('dimension', 'vamp-length', 'mm', 2, 2),
  of('dimension', 'eyestay-length', 'mm', 2),
  of('dimension', 'eyelet-pitch', 'mm', 1),
  of('dimension', 'tongue-length', 'mm', 3),
  of('dimension', 'stitch-margin', 'mm', 0.5),
  of('stack-height', 'heel-centre', 'mm', 1),
  of('stack-height', 'forefoot-centre', 'mm', 1),
  of('dimension', 'sockliner-thickness', 'mm', 0.5),
  of('dimension', 'outsole-length', 'mm', 1),
  of('dimension', 'outsole-width', 'mm', 1),
  of('dimension', 'last-stick-length', 'mm', 0.5),
  of('dimension', 'last-ball-girth', 'mm', 1.5),
  of('dimension', 'last-instep-girth', 'mm', 1.5),
  of('dimension', 'last-bottom-width', 'mm', 0.5),
  of('hardness', 'heel-centre', 'asker-c', 3),
  { measure: 'mass', site: 'shoe', unit: 'g', tolerance: { by: 'share', value: 0.05 } },
];
