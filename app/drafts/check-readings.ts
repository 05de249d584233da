/**
 * The readings of a bench check and its circumstances as they are typed, into the form or into a line of a table, and
 * the rows that a blueprint asks for.
 */
import {
  isIn,
  rangeOf,
  ranges,
  unitsOf,
  type Foot,
  type Limit,
  type Measure,
  type MeasureUnit,
  type Range,
  type BenchCheck,
  type Reading,
  type Round,
} from '../../core/records/index.ts';
import { celsius, toMetres } from '../../core/units/index.ts';
import { kindKey, type Gauges } from './check-gauges.ts';
import { typedIn, typedLine, typedNumber } from './typed.ts';

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
export const isTyped = ({ value }: Pick<ReadingForm, 'value'>): boolean => value.trim() !== '';

const placeOf = ({
  measure,
  site,
  foot,
  unit,
}: Pick<ReadingForm, 'measure' | 'site' | 'foot' | 'unit'>): string =>
  `${measure} ${site} ${foot} ${unit}`;

/** What a row is asked for; without a foot: both feet. */
export type AskedPlace = Pick<Round['blueprint'][number], 'measure' | 'site' | 'unit' | 'foot'>;

/**
 * Where the brief's limits ask for a reading. A limit for every site is asked for wherever that measure is known
 * from; where it is from nowhere, at the site that a new row has.
 * @param known what the blueprint and earlier checks name
 */
export const placesOfLimits = (
  limits: readonly Pick<Limit, 'measure' | 'site'>[],
  known: readonly Pick<AskedPlace, 'measure' | 'site' | 'unit'>[],
): readonly AskedPlace[] =>
  limits.flatMap(({ measure, site }): readonly AskedPlace[] => {
    const [unit] = unitsOf[measure];
    const ofMeasure = known.filter((one) => one.measure === measure && one.unit === unit);
    const sites = site === undefined ? ofMeasure.map((one) => one.site) : [site];
    const named = sites.length > 0 ? [...new Set(sites)] : [emptyReading.site];
    return named.map((at) => ({ measure, site: at, unit }));
  });

/**
 * The rows that hold a value, then an empty one for each place and foot that has none yet.
 * @param rows as they stand in the form
 * @param asked the dimensions of the blueprint, the places of the brief's limits
 */
export const withAsked = (
  rows: readonly ReadingForm[],
  asked: readonly AskedPlace[],
): readonly ReadingForm[] => {
  const kept = rows.filter(isTyped);
  const have = new Set(kept.map(placeOf));
  const added: ReadingForm[] = [];
  for (const { measure, site, unit, foot } of asked)
    for (const side of foot === undefined ? (['left', 'right'] as const) : [foot]) {
      const row = { ...emptyReading, measure, site, unit, foot: side };
      if (have.has(placeOf(row))) continue;
      have.add(placeOf(row));
      added.push(row);
    }
  return [...kept, ...added];
};

/** A field that is no number, or one that cannot be. */
export interface WrongNumber<Field extends string> {
  readonly field: Field;
  /** Null: no number. */
  readonly value: number | null;
  readonly range: Range;
}

/** Reads numbers one after the other, and keeps those that cannot be. */
const numbersOf = <Field extends string>() => {
  const wrong: WrongNumber<Field>[] = [];
  const number = (field: Field, text: string, range: Range): number | undefined => {
    const value = typedNumber(text);
    if (value === undefined || (value !== null && isIn(value, range))) return value;
    wrong.push({ field, value, range });
    return undefined;
  };
  return { wrong, number };
};

/** What is typed of one reading. */
export type TypedReading = Omit<ReadingForm, 'of'> & {
  readonly gauge: string;
  readonly method: string;
};
export type ReadingField = 'value' | 'uncertainty' | 'load';

/**
 * The numbers of one reading, and those that cannot be. A value must be said.
 * @param range what the value can be
 */
export const readingNumbers = (typed: Pick<TypedReading, ReadingField>, range: Range) => {
  const { wrong, number } = numbersOf<ReadingField>();
  if (!isTyped(typed)) wrong.push({ field: 'value', value: null, range });
  return {
    value: number('value', typed.value, range),
    uncertainty: number('uncertainty', typed.uncertainty, ranges.benchWidth),
    loadN: number('load', typed.load, ranges.loadN),
    wrong,
  };
};

/** One reading, or all of its fields that cannot be. */
export const readReading = (
  typed: TypedReading,
): { readonly reading: Reading } | { readonly wrong: readonly WrongNumber<ReadingField>[] } => {
  const { measure, site, foot, unit } = typed;
  const { value, uncertainty, loadN, wrong } = readingNumbers(typed, rangeOf(measure, unit));
  if (value === undefined || wrong.length > 0) return { wrong };
  const [gauge, method] = [typedLine(typed.gauge), typedLine(typed.method)];
  return {
    reading: {
      measure,
      site,
      foot,
      value,
      unit,
      ...(gauge !== undefined && { gauge }),
      ...(method !== undefined && { method }),
      ...(uncertainty !== undefined && { uncertainty }),
      ...(loadN !== undefined && { loadN }),
    },
  };
};

/** What all readings of a check have in common, as typed. */
export interface TypedCircumstances {
  /** Distance on the pair, km. */
  readonly km: string;
  readonly room: string;
  readonly rested: string;
  readonly operator: string;
}
export type CircumstanceField = 'km' | 'room' | 'rested';

const inKm = typedIn(ranges.distanceM, 'km', 1 / 1000);

/** The circumstances, without what was not said, and all of their fields that cannot be. */
export const readCircumstances = (typed: TypedCircumstances) => {
  const { wrong, number } = numbersOf<CircumstanceField>();
  const km = number('km', typed.km, inKm);
  const room = number('room', typed.room, ranges.temperatureC);
  const restedH = number('rested', typed.rested, ranges.restedH);
  const operator = typedLine(typed.operator);
  const said: Pick<BenchCheck, 'distanceM' | 'temperatureC' | 'restedH' | 'operator'> = {
    ...(km !== undefined && { distanceM: toMetres(km, 'km') }),
    ...(restedH !== undefined && { restedH }),
    ...(room !== undefined && { temperatureC: celsius(room) }),
    ...(operator !== undefined && { operator }),
  };
  return { said, wrong };
};

/** A field of a row that cannot be. */
export type WrongRow = WrongNumber<ReadingField> & {
  /** Place of the row in the form, from 0. */
  readonly at: number;
};

/** The rows with a value as readings, and every field that is no number or out of its range. */
export const readingsOf = (
  rows: readonly ReadingForm[],
  { gauges, method }: { readonly gauges: Gauges; readonly method: string },
): { readonly readings: readonly Reading[]; readonly wrong: readonly WrongRow[] } => {
  const readings: Reading[] = [];
  const wrong: WrongRow[] = [];
  for (const [at, row] of rows.entries()) {
    if (!isTyped(row)) continue;
    const read = readReading({ ...row, gauge: gauges[kindKey(row)] ?? '', method });
    if ('reading' in read) readings.push(read.reading);
    else wrong.push(...read.wrong.map((one) => ({ ...one, at })));
  }
  return { readings, wrong };
};
