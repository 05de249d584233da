/**
 * Can a bench check be trusted to show wear, and not rest, temperature or another way of measuring?
 *
 * Sources: 90 % of a midsole's shape comes back within 7.28 to 12.52 h after running (MSE thesis, Grand
 * Valley State University, ScholarWorks theses/1015); 23 ± 2 °C, ISO 23529 (from memory); one Asker C point
 * for 1.5 °C (a foam supplier's rule); each shoe needs its own start, for new shoes of one model differ by
 * 2.2 % (Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792).
 */
import type { BenchCheck, Measure, Reading } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import { isUsable, kindOf } from './series.ts';

/** Hours after which 90 % of the shape had come back: after 10.55 km, and after 42.2 km without a stop. */
const RECOVERED_90_H = { short: 7.28, long: 12.52 } as const;
const REST_H = 24;
const STANDARD_C = { middle: 23, tolerance: 2 } as const;
/** Asker C points that a foam gets harder for each degree colder. */
const ASKER_C_PER_C = 0.67;

/** Time constant of an exponential recovery that is 90 % done after so many hours. */
export const recoveryHours = (recovered90H: number): number => recovered90H / Math.LN10;

/** Share of the change by the last run that is still there after a rest: after a short and a long run. */
export const leftAfterRest = (
  restedH: number,
): { readonly short: number; readonly long: number } => ({
  short: Math.exp(-restedH / recoveryHours(RECOVERED_90_H.short)),
  long: Math.exp(-restedH / recoveryHours(RECOVERED_90_H.long)),
});

/** What differs from how the same measure was taken on the pair before. */
export type Otherwise = 'site' | 'foot' | 'unit' | 'method' | 'gauge' | 'load';

/** One thing that speaks against reading a check as wear. */
export type CheckWarning =
  | {
      readonly code: 'short-rest';
      readonly restedH: number;
      readonly left: ReturnType<typeof leftAfterRest>;
    }
  | {
      readonly code: 'temperature';
      readonly celsius: number;
      /** Points by which Asker C reads too high; null where none was read. */
      readonly askerC: number | null;
    }
  /** Hardness means little without the temperature. */
  | { readonly code: 'temperature-missing' }
  | { readonly code: 'no-start'; readonly measure: Measure; readonly site: string }
  | {
      readonly code: 'measured-otherwise';
      readonly measure: Measure;
      readonly site: string;
      readonly differs: readonly Otherwise[];
    }
  /** A value that cannot be: mass, force or energy of zero or less. Left out of the series. */
  | { readonly code: 'impossible-value'; readonly measure: Measure; readonly site: string };

/** A bench check with the distance on the pair as it is known. */
export interface CheckAt extends Pick<BenchCheck, 'restedH' | 'temperatureC'> {
  readonly distance: Metres;
  readonly readings: readonly Reading[];
}

const ways = {
  site: (reading: Reading) => reading.site,
  foot: (reading: Reading) => reading.foot,
  unit: (reading: Reading) => reading.unit,
  method: (reading: Reading) => reading.method,
  gauge: (reading: Reading) => reading.gauge,
  load: (reading: Reading) => reading.loadN,
} as const satisfies Record<Otherwise, (reading: Reading) => unknown>;

/**
 * In what a reading differs from the closest of the earlier ones; nothing where there are none. A way of
 * measuring that one of the two does not tell is not held against it.
 */
const differences = (reading: Reading, earlier: readonly Reading[]): readonly Otherwise[] => {
  let closest: readonly Otherwise[] | null = null;
  for (const before of earlier) {
    const differs = (Object.keys(ways) as Otherwise[]).filter((way) => {
      const [now, then] = [ways[way](reading), ways[way](before)];
      return now !== undefined && then !== undefined && now !== then;
    });
    if (closest === null || differs.length < closest.length) closest = differs;
  }
  return closest ?? [];
};

/**
 * The warnings of a check.
 * @param earlier the checks of the same pair before it, in any order
 */
export const checkWarnings = (
  check: CheckAt,
  earlier: readonly CheckAt[],
): readonly CheckWarning[] => {
  const { restedH, temperatureC, distance, readings } = check;
  const warnings: CheckWarning[] = [];
  if (restedH !== undefined && restedH < REST_H && distance > 0)
    warnings.push({ code: 'short-rest', restedH, left: leftAfterRest(restedH) });

  const askerC = readings.some((reading) => kindOf(reading) === 'hardness asker-c');
  const away = temperatureC === undefined ? 0 : temperatureC - STANDARD_C.middle;
  if (temperatureC !== undefined && Math.abs(away) > STANDARD_C.tolerance)
    warnings.push({
      code: 'temperature',
      celsius: temperatureC,
      askerC: askerC ? -away * ASKER_C_PER_C : null,
    });
  if (temperatureC === undefined && readings.some(({ measure }) => measure === 'hardness'))
    warnings.push({ code: 'temperature-missing' });

  const before = earlier.flatMap((one) => one.readings);
  const atStart = earlier.filter((one) => one.distance <= 0).flatMap((one) => one.readings);
  const seen = new Set<string>();
  for (const reading of readings) {
    const kind = kindOf(reading);
    if (kind === null) continue;
    const { measure, site } = reading;
    const add = (key: string, warning: CheckWarning) => {
      if (seen.has(key)) return;
      seen.add(key);
      warnings.push(warning);
    };
    if (!isUsable(kind, reading.value))
      add(`value ${kind} ${site}`, { code: 'impossible-value', measure, site });
    if (distance > 0 && !atStart.some((one) => kindOf(one) === kind && one.site === site))
      add(`start ${kind} ${site}`, { code: 'no-start', measure, site });
    const differs = differences(
      reading,
      before.filter((one) => one.measure === measure),
    );
    if (differs.length > 0)
      add(`otherwise ${kind} ${site} ${differs.join(' ')}`, {
        code: 'measured-otherwise',
        measure,
        site,
        differs,
      });
  }
  return warnings;
};
