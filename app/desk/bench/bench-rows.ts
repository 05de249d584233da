/** The readings of a bench check as typed, one row each, and the rows that a blueprint asks for. */
import {
  isIn,
  rangeOf,
  ranges,
  type Foot,
  type Measure,
  type MeasureUnit,
  type Reading,
  type Round,
} from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';

export interface ReadingForm {
  readonly measure: Measure;
  readonly site: string;
  readonly foot: Foot;
  readonly value: string;
  readonly unit: MeasureUnit;
  readonly uncertainty: string;
  readonly load: string;
  /** Place of the reading that the row was filled with, in the check as it was saved; absent: a new one. */
  readonly of?: number;
}

export const emptyReading: ReadingForm = {
  measure: 'stack-height',
  site: 'heel-centre',
  foot: 'left',
  value: '',
  unit: 'mm',
  uncertainty: '',
  load: '',
};

/** A row whose value was not typed is no reading. */
export const isTyped = ({ value }: ReadingForm): boolean => value.trim() !== '';

const placeOf = ({
  measure,
  site,
  foot,
  unit,
}: Pick<ReadingForm, 'measure' | 'site' | 'foot' | 'unit'>): string =>
  `${measure} ${site} ${foot} ${unit}`;

/**
 * The rows that hold a value, then an empty one for each dimension and foot of the blueprint that has none yet.
 * @param rows as they stand in the form
 */
export const withBlueprint = (
  rows: readonly ReadingForm[],
  blueprint: Round['blueprint'],
): readonly ReadingForm[] => {
  const kept = rows.filter(isTyped);
  const have = new Set(kept.map(placeOf));
  const added: ReadingForm[] = [];
  for (const { measure, site, unit, foot } of blueprint)
    for (const side of foot === undefined ? (['left', 'right'] as const) : [foot]) {
      const row = { ...emptyReading, measure, site, unit, foot: side };
      if (have.has(placeOf(row))) continue;
      have.add(placeOf(row));
      added.push(row);
    }
  return [...kept, ...added];
};

/** Undefined: not said; null: no number. */
export const numberOf = (text: string): number | null | undefined =>
  text.trim() === '' ? undefined : parseDecimal(text);

/** A field of a row that is no number, or one that cannot be. */
export interface WrongRow extends Pick<ReadingForm, 'measure' | 'site' | 'unit'> {
  readonly field: 'value' | 'uncertainty' | 'load';
  /** Null: no number. */
  readonly value: number | null;
}

/** The rows with a value as readings, or the first field that is no number or out of its range. */
export const readingsOf = (
  rows: readonly ReadingForm[],
  { gauge, method }: { readonly gauge: string; readonly method: string },
): { readonly readings: Reading[] } | { readonly wrong: WrongRow } => {
  const readings: Reading[] = [];
  for (const { measure, site, foot, unit, ...row } of rows.filter(isTyped)) {
    const value = parseDecimal(row.value);
    const [uncertainty, loadN] = [numberOf(row.uncertainty), numberOf(row.load)];
    const wrong = (field: WrongRow['field'], of: number | null) => ({
      wrong: { measure, site, unit, field, value: of },
    });
    if (value === null || !isIn(value, rangeOf(measure, unit))) return wrong('value', value);
    if (
      uncertainty === null ||
      (uncertainty !== undefined && !isIn(uncertainty, ranges.benchWidth))
    )
      return wrong('uncertainty', uncertainty);
    if (loadN === null || (loadN !== undefined && !isIn(loadN, ranges.loadN)))
      return wrong('load', loadN);
    readings.push({
      measure,
      site,
      foot,
      value,
      unit,
      ...(gauge.trim() !== '' && { gauge: gauge.trim() }),
      ...(method.trim() !== '' && { method: method.trim() }),
      ...(uncertainty !== undefined && { uncertainty }),
      ...(loadN !== undefined && { loadN }),
    });
  }
  return { readings };
};
