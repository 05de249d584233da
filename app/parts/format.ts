/** How is a quantity written for a person, in their language and units? */
import { isDayOnly } from '../../core/records/index.ts';
import {
  formatDuration,
  fromMetres,
  markedSizeOf,
  pace,
  type Metres,
  type Millimetres,
  type Seconds,
} from '../../core/units/index.ts';
import { settings } from './settings.ts';
import { percentOf, setPercentOf } from '../words/figures.ts';
import { locale } from '../words/index.ts';

// Making a formatter costs a phone some milliseconds, using it none: each is made once.
const formatters = new Map<string, Intl.NumberFormat>();

const numberFormat = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
  const { style, minimumFractionDigits, maximumFractionDigits } = options;
  const key = `${locale()} ${style} ${minimumFractionDigits} ${maximumFractionDigits}`;
  const made = formatters.get(key) ?? new Intl.NumberFormat(locale(), options);
  formatters.set(key, made);
  return made;
};

const number = (value: number, most: number, least = 0): string =>
  numberFormat({ maximumFractionDigits: most, minimumFractionDigits: least }).format(value);

export const formatNumber = number;

/** A distance without its unit: one decimal. */
export const distanceFigure = (distance: Metres): string =>
  number(fromMetres(distance, settings.value.distance), 1, 1);

export const formatDistance = (distance: Metres): string =>
  `${distanceFigure(distance)} ${settings.value.distance}`;

/** A distance that was set, not run: no decimals. */
export const wholeDistance = (distance: Metres): string =>
  `${number(fromMetres(distance, settings.value.distance), 0)} ${settings.value.distance}`;

/** Minutes and seconds per kilometre or mile; empty where no time is known. */
export const formatPace = (distance: Metres, time: Seconds | undefined): string => {
  const { distance: unit } = settings.value;
  const perUnit = time === undefined ? null : pace(distance, time, unit);
  return perUnit === null ? '' : `${formatDuration(perUnit)}/${unit}`;
};

/** M and W for men's and women's, as they stand on boxes everywhere. */
export const SIZE_NAMES = { eu: 'EU', uk: 'UK', us: 'US M', 'us-women': 'US W' } as const;

/** A shoe size in the chosen system, as it is marked. */
export const formatSize = (footLength: Millimetres): string => {
  const { sizes } = settings.value;
  const size = number(markedSizeOf(footLength, sizes), 1);
  return sizes === 'mondopoint' ? `${size} mm` : `${SIZE_NAMES[sizes]} ${size}`;
};

const dateFormatters = new Map<string, Intl.DateTimeFormat>();

/** @param name tells apart what is made with which options */
const dateFormat = (name: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat => {
  const key = `${locale()} ${name}`;
  const made = dateFormatters.get(key) ?? new Intl.DateTimeFormat(locale(), options);
  dateFormatters.set(key, made);
  return made;
};

export const formatDate = (at: number | string): string =>
  dateFormat('date', { dateStyle: 'medium' }).format(new Date(at));

/** A day of this week or the last: its weekday tells it sooner than its number. `2026-06-01` is a local day. */
export const formatDay = (day: string): string =>
  dateFormat('day', { weekday: 'long', day: 'numeric', month: 'short' }).format(
    new Date(`${day}T12:00`),
  );

export const formatDateTime = (at: number | string): string =>
  dateFormat('date and time', { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at));

/** When a run began: the day alone where no hour was said. */
export const formatStart = (
  run: Parameters<typeof isDayOnly>[0] & { readonly startedAt: string },
) => (isDayOnly(run) ? formatDate(run.startedAt) : formatDateTime(run.startedAt));

export const formatPercent = (share: number): string => percentOf(share, number);

export const formatSetPercent = (share: number): string => setPercentOf(share, number);
