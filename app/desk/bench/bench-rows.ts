/** The readings of a bench check as typed, one row each, and the rows that a blueprint asks for. */
import type { Foot, Measure, MeasureUnit, Reading, Round } from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';

export interface ReadingForm {
  readonly measure: Measure;
  readonly site: string;
  readonly foot: Foot;
  readonly value: string;
  readonly unit: MeasureUnit;
  readonly uncertainty: string;
  readonly load: string;
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
const isTyped = ({ value }: ReadingForm): boolean => value.trim() !== '';

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

/** The rows with a value as readings, or the field of the first that is no number. */
export const readingsOf = (
  rows: readonly ReadingForm[],
  { gauge, method }: { readonly gauge: string; readonly method: string },
): { readonly readings: Reading[] } | { readonly wrong: 'value' | 'uncertainty' | 'load' } => {
  const readings: Reading[] = [];
  for (const { measure, site, foot, unit, ...row } of rows.filter(isTyped)) {
    const value = parseDecimal(row.value);
    const [uncertainty, loadN] = [numberOf(row.uncertainty), numberOf(row.load)];
    if (value === null) return { wrong: 'value' };
    if (uncertainty === null) return { wrong: 'uncertainty' };
    if (loadN === null) return { wrong: 'load' };
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
