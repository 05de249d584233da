/**
 * Where on a sample is a structured change measured, and which way does the reading go?
 *
 * A dimension is measured where it is. A line of the pattern is measured by the usual dimension that ends at it; of the
 * lines that no usual dimension ends at, and of a part as a whole by mm, nothing on the bench tells. A part as a whole that
 * becomes harder or heavier is measured by hardness in that unit, or by the shoe's mass. Common practice, no source.
 */
import type { PatternLine } from '../foot/index.ts';
import {
  unitsOf,
  type ChangeDirection,
  type Measure,
  type MeasureUnit,
  type StructuredChange,
} from '../records/index.ts';

/** A place on the sample, and the sign of the reading's change where the change goes as it is asked. */
export interface MeasuredAt {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  readonly sign: 1 | -1;
}

type Way = readonly [
  site: string,
  more: ChangeDirection,
  less: ChangeDirection,
  side?: 'medial' | 'lateral',
];

/** The usual dimension that ends at a line, with the direction in which it grows, and in which it shrinks. */
const dimensionsAt: Readonly<Partial<Record<PatternLine, readonly Way[]>>> = {
  collar: [
    ['collar-height-lateral', 'higher', 'lower', 'lateral'],
    ['collar-height-medial', 'higher', 'lower', 'medial'],
  ],
  'heel-tab': [['back-height', 'higher', 'lower']],
  'heel-counter': [['heel-cup-width', 'outward', 'inward']],
  tongue: [['tongue-length', 'higher', 'lower']],
  throat: [['vamp-length', 'back', 'forward']],
  'toe-overlay': [['toe-cap-length', 'back', 'forward']],
};

const signOf = (direction: ChangeDirection): 1 | -1 =>
  direction === 'less' || direction === 'lower' ? -1 : 1;

const unitIn = (measure: Measure, unit: string | undefined): MeasureUnit =>
  unitsOf[measure].find((one) => one === unit) ?? unitsOf[measure][0];

/**
 * The places that tell of a change; empty: nothing that is read on the bench does.
 * @param read the places that were read in either round: a part as a whole has no place of its own
 */
export const measuredAt = (
  { part, line, dimension, side, direction, by }: StructuredChange,
  read: readonly Pick<MeasuredAt, 'measure' | 'site' | 'unit'>[],
): readonly MeasuredAt[] => {
  if (dimension)
    return [
      {
        measure: dimension.measure,
        site: dimension.site,
        unit: unitIn(dimension.measure, by?.unit),
        sign: signOf(direction),
      },
    ];
  if (line) {
    if (by && by.unit !== 'mm' && by.unit !== '%') return [];
    return (dimensionsAt[line] ?? []).flatMap(([site, more, less, of]) =>
      (direction !== more && direction !== less) || (side && of && side !== of)
        ? []
        : [{ measure: 'dimension', site, unit: 'mm', sign: direction === more ? 1 : -1 } as const],
    );
  }
  if (direction !== 'more' && direction !== 'less') return [];
  const sign = signOf(direction);
  if (by?.unit === 'g') return [{ measure: 'mass', site: 'shoe', unit: 'g', sign }];
  const isHardness = by?.unit === 'asker-c' || by?.unit === 'shore-a';
  const isSole = part === 'midsole-foam' || part === 'outsole' || part === 'sockliner';
  if (!isHardness || !isSole) return [];
  const sites = new Set(
    read.flatMap(({ measure, site, unit }) =>
      measure === 'hardness' && unit === by.unit ? [site] : [],
    ),
  );
  return [...(sites.size > 0 ? sites : ['heel-centre'])].map((site) => ({
    measure: 'hardness',
    site,
    unit: by.unit as MeasureUnit,
    sign,
  }));
};
