/** The table for the shop: which readings are asked of which pairs, as a sheet of paper to write on and as CSV. Pure. */
import type { Foot, Limit, Measure, MeasureUnit, Round } from '../../core/records/index.ts';
import { placesOfLimits, withAsked, type AskedPlace } from './check-readings.ts';

type Dimension = Round['blueprint'][number];

/** What blueprint and brief ask to be measured on the pairs of a round. */
export const askedOf = (
  blueprint: readonly Dimension[],
  limits: readonly Pick<Limit, 'measure' | 'site'>[],
): readonly AskedPlace[] => [...blueprint, ...placesOfLimits(limits, blueprint)];

/** Ends of what the drawing allows, in the unit of the row. */
export interface Allowed {
  readonly least: number;
  readonly most: number;
}

/** A line of the sheet: a place, and the feet on which it is measured. */
export interface SheetLine {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  readonly feet: readonly Foot[];
  /** Null: the drawing does not name it. */
  readonly allowed: Allowed | null;
}

const allowedOf = (
  blueprint: readonly Dimension[],
  { measure, site, unit, foot }: Required<AskedPlace>,
): Allowed | null => {
  const own = blueprint.filter(
    (one) => one.measure === measure && one.site === site && one.unit === unit,
  );
  const one = own.find((of) => of.foot === foot) ?? own.find((of) => of.foot === undefined);
  return one ? { least: one.nominal + one.lower, most: one.nominal + one.upper } : null;
};

/** The lines of the sheet, each place once; left and right stand apart where the drawing tells them apart. */
export const sheetLines = (
  blueprint: readonly Dimension[],
  limits: readonly Pick<Limit, 'measure' | 'site'>[],
): readonly SheetLine[] => {
  const lines = new Map<string, SheetLine>();
  for (const { measure, site, unit, foot } of withAsked([], askedOf(blueprint, limits))) {
    const allowed = allowedOf(blueprint, { measure, site, unit, foot });
    const key = [measure, site, unit, allowed?.least, allowed?.most].join(' ');
    const line = lines.get(key) ?? { measure, site, unit, feet: [], allowed };
    lines.set(key, { ...line, feet: [...line.feet, foot] });
  }
  return [...lines.values()];
};

/** As many pairs as stand beside each other on a landscape sheet of A4, left and right of each wide enough to write in. */
export const PAIRS_A_SHEET = 8;

/** The pairs sheet by sheet. */
export const inSheets = <T>(pairs: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(pairs.length / PAIRS_A_SHEET) }, (_, at) =>
    pairs.slice(at * PAIRS_A_SHEET, (at + 1) * PAIRS_A_SHEET),
  );
