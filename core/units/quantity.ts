/**
 * Which physical quantities does Pairlog know, and how are they kept apart?
 *
 * SI inside: every number carries its unit in its type. A plain number becomes a quantity only in a
 * parser (zod, at a boundary) or in a named conversion below; kilometres, miles and minutes per
 * kilometre exist only where a person reads or types them.
 */
import type { $brand } from 'zod/v4/core';

export type Metres = number & $brand<'Metres'>;
export type Seconds = number & $brand<'Seconds'>;
export type Millimetres = number & $brand<'Millimetres'>;
export type Kilograms = number & $brand<'Kilograms'>;
export type Celsius = number & $brand<'Celsius'>;

export const metres = (value: number): Metres => value as Metres;
export const seconds = (value: number): Seconds => value as Seconds;
export const millimetres = (value: number): Millimetres => value as Millimetres;
export const kilograms = (value: number): Kilograms => value as Kilograms;
export const celsius = (value: number): Celsius => value as Celsius;

/** International mile, exact by the international yard and pound agreement of 1959. */
const METRES_PER_MILE = 1609.344;

export type DistanceUnit = 'km' | 'mi';
export type TemperatureUnit = 'C' | 'F';

const METRES_PER: Readonly<Record<DistanceUnit, number>> = { km: 1000, mi: METRES_PER_MILE };

/** A distance given in kilometres or miles, as metres. Exact: 1 mi = 1609.344 m. */
export const toMetres = (value: number, unit: DistanceUnit): Metres =>
  metres(value * METRES_PER[unit]);

/** Metres as kilometres or miles. */
export const fromMetres = (distance: Metres, unit: DistanceUnit): number =>
  distance / METRES_PER[unit];

/** Seconds needed for one kilometre or one mile; null where no distance was covered. */
export const pace = (distance: Metres, time: Seconds, unit: DistanceUnit): Seconds | null =>
  distance > 0 ? seconds((time * METRES_PER[unit]) / distance) : null;

/** Degrees Celsius as °C or °F. Exact: °F = °C × 9/5 + 32. */
export const fromCelsius = (value: Celsius, unit: TemperatureUnit): number =>
  unit === 'C' ? value : (value * 9) / 5 + 32;

/** A temperature given in °C or °F, as degrees Celsius. */
export const toCelsius = (value: number, unit: TemperatureUnit): Celsius =>
  celsius(unit === 'C' ? value : ((value - 32) * 5) / 9);
