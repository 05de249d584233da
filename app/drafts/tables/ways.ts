/** How does a table write its days, numbers, distances, times and sizes? Guessed from head and cells; pure. */
import { isPlausiblePace, secondsPerKm } from '../../../core/mileage/plausible.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { DistanceUnit, SizeSystem } from '../../../core/units/index.ts';
import {
  decimalIn,
  orderIn,
  readDistance,
  readNumber,
  readTime,
  timeForms,
  type DateOrder,
  type Decimal,
  type TableDistance,
  type TimeForm,
} from './cells.ts';
import { markColumns, readHead, type Column, type HeadUnit, type TableKind } from './columns.ts';
import type { Sheet } from './sheet.ts';

export interface Ways {
  /** Null: a person must say. */
  readonly dates: DateOrder | null;
  readonly decimal: Decimal;
  readonly distance: TableDistance;
  readonly time: TimeForm;
  /** Null: a person must say. */
  readonly size: SizeSystem | null;
  readonly temperature: 'C' | 'F';
  /** The greatest score of the table. */
  readonly comfort: 100 | 10;
  /** The round of pairs whose row names none. */
  readonly round: RecordId | null;
}
export type Way = keyof Ways;

const NUMBERS: readonly Column[] = [
  ...(['distance', 'carried', 'size', 'time', 'temperature', 'comfort', 'length'] as const),
  ...markColumns.map(({ column }) => column),
  ...(['length-left', 'length-right', 'width', 'girth', 'mass', 'height'] as const),
];
const DAYS: readonly Column[] = ['date', 'from', 'until'];

/** Which of them matter for a table with these columns. */
export const waysFor = (kind: TableKind, columns: readonly (Column | null)[]): readonly Way[] => {
  const has = (some: readonly Column[]) => some.some((column) => columns.includes(column));
  return [
    ...(has(DAYS) ? (['dates'] as const) : []),
    ...(has(NUMBERS) ? (['decimal'] as const) : []),
    ...(has(['distance', 'carried']) ? (['distance'] as const) : []),
    ...(has(['time']) ? (['time'] as const) : []),
    ...(has(['size']) ? (['size'] as const) : []),
    ...(has(['temperature']) ? (['temperature'] as const) : []),
    ...(has(['comfort']) ? (['comfort'] as const) : []),
    ...(kind === 'pairs' ? (['round'] as const) : []),
  ];
};

const DISTANCES: Readonly<Partial<Record<HeadUnit, TableDistance>>> = {
  km: 'km',
  mi: 'mi',
  m: 'm',
};
const TIMES: Readonly<Partial<Record<HeadUnit, TimeForm>>> = { min: 'min', h: 'h', s: 's' };
const SIZES: Readonly<Partial<Record<HeadUnit, SizeSystem>>> = {
  mm: 'mondopoint',
  eu: 'eu',
  uk: 'uk',
  us: 'us',
};

/** From this on a size is millimetres of foot length, and from the next on EU: no UK or US size is as large. */
const LEAST = { mm: 100, eu: 25 } as const;

const middle = (values: readonly number[]): number | null =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? null;

/** @param usual the unit that the reader has chosen for the app */
export const guessWays = (
  { head, rows }: Sheet,
  columns: readonly (Column | null)[],
  usual: { readonly distance: DistanceUnit; readonly round: RecordId | null },
): Ways => {
  const cells = (column: Column): readonly string[] => {
    const at = columns.indexOf(column);
    return at < 0 ? [] : rows.map((row) => row.cells[at] ?? '').filter((cell) => cell !== '');
  };
  const unit = (column: Column): HeadUnit | null => {
    const at = columns.indexOf(column);
    return at < 0 ? null : readHead(head[at] ?? '').unit;
  };
  const decimal = decimalIn(NUMBERS.flatMap(cells));
  const distance = DISTANCES[unit('distance') ?? unit('carried') ?? 'ten'] ?? usual.distance;
  const sizes = middle(cells('size').flatMap((cell) => readNumber(cell, decimal) ?? []));
  const scores = cells('comfort').flatMap((cell) => readNumber(cell, decimal) ?? []);
  return {
    dates: orderIn(DAYS.flatMap(cells)),
    decimal,
    distance,
    time: TIMES[unit('time') ?? 'ten'] ?? timeFormIn({ rows }, columns, distance, decimal),
    size:
      SIZES[unit('size') ?? 'ten'] ??
      (sizes === null || sizes < LEAST.eu ? null : sizes < LEAST.mm ? 'eu' : 'mondopoint'),
    temperature: unit('temperature') === 'F' ? 'F' : 'C',
    comfort: scores.length > 0 && scores.every((score) => score <= 10) ? 10 : 100,
    round: usual.round,
  };
};

/** The way of writing times with which most rows have a pace that people run. */
const timeFormIn = (
  { rows }: Pick<Sheet, 'rows'>,
  columns: readonly (Column | null)[],
  unit: TableDistance,
  decimal: Decimal,
): TimeForm => {
  const [atTime, atDistance] = [columns.indexOf('time'), columns.indexOf('distance')];
  if (atTime < 0 || atDistance < 0) return 'clock';
  const plausible = (form: TimeForm): number =>
    rows.filter(({ cells }) => {
      const time = readTime(cells[atTime] ?? '', form, decimal);
      const distance = readDistance(cells[atDistance] ?? '', unit, decimal);
      const pace = time !== null && distance !== null ? secondsPerKm(distance, time) : null;
      return pace !== null && isPlausiblePace(pace);
    }).length;
  return timeForms.reduce((best, form) => (plausible(form) > plausible(best) ? form : best));
};
