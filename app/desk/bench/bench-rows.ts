/** The readings of a bench check as typed, one row each, and the rows that a blueprint asks for. */
import type { Foot, Measure, MeasureUnit, Round } from '../../../core/records/index.ts';

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
