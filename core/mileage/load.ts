/**
 * How often and how hard did a pair meet the ground? Steps from the cadence of a track where there is one,
 * else from the published regression on pace and height; force per step from speed and body mass.
 */
import type { Kilograms, Metres, Seconds } from '../units/index.ts';
import { secondsPerKm } from './plausible.ts';

const MILE_M = 1609.344;
const INCH_M = 0.0254;
/** Standard gravity, m/s² (CGPM 1901). */
export const GRAVITY = 9.80665;

/**
 * What is not published, and therefore changes nothing: a factor for the ground, and the exponent with
 * which force would count. The one place to change them.
 */
export const UNPUBLISHED = { surfaceFactor: 1, forceExponent: 1 } as const;

/** Range of the regression: 6 to 12 minutes per mile. */
const HOEGER_MIN_PER_MILE = { least: 6, most: 12 } as const;
/** Speeds at which the forces were measured, m/s. */
const MUNRO_MPS = { least: 2.5, most: 5.5 } as const;

export type StepsBy = 'cadence' | 'height-and-pace';

export interface RunLoad {
  /** Steps in each shoe. */
  readonly stepsPerShoe: number;
  readonly stepsBy: StepsBy;
  /** False where pace lies outside of the regression's range. */
  readonly stepsInRange: boolean;
  /** Peak vertical force of a step, newtons; null where body mass is not known. */
  readonly peakN: number | null;
  /** False where speed lies outside of the measured range. */
  readonly peakInRange: boolean;
  /** Sum of the peaks over the steps of one shoe, kilonewtons; null where body mass is not known. */
  readonly loadKN: number | null;
}

/**
 * Steps of both feet per kilometre from pace and height: steps/mile = 1084 + 143.6 min/mile − 13.5 inches
 * (Hoeger et al., ACSM's Health Fit J 2008;12(1):14-19; equation from memory, cross-checked with van
 * Oeveren et al., PLoS ONE 2017;12(10):e0184273 within 3 %).
 */
export const stepsPerKm = (secondsPerKm: number, heightM: number): number =>
  (1084 + 143.6 * ((secondsPerKm * MILE_M) / 60_000) - 13.5 * (heightM / INCH_M)) / (MILE_M / 1000);

/**
 * Peak vertical force in body weights at a running speed: 2.51 + 0.16 (v − 3) (line through Munro et al., J
 * Biomech 1987;20:147-155, values from memory; measured in Matijevich et al., PLoS ONE 2019: 2.500 at 3.0
 * and 2.605 at 4.0 m/s).
 */
export const peakInBodyWeights = (speedMps: number): number => 2.51 + 0.16 * (speedMps - 3);

/**
 * Load of one run on each shoe.
 * @param stepsFromTrack steps in each shoe as the track counted them; null where it did not
 * @returns null where neither the track nor height and time can tell the steps
 */
export const runLoad = (run: {
  readonly distance: Metres;
  readonly time: Seconds | null;
  readonly stepsFromTrack: number | null;
  readonly heightM: number | null;
  readonly mass: Kilograms | null;
}): RunLoad | null => {
  const { distance, time, stepsFromTrack, heightM, mass } = run;
  if (distance <= 0) return null;
  const perKm = time === null ? null : secondsPerKm(distance, time);
  const stepsBy: StepsBy = stepsFromTrack !== null ? 'cadence' : 'height-and-pace';
  const stepsPerShoe =
    stepsFromTrack ??
    (perKm === null || heightM === null
      ? null
      : (stepsPerKm(perKm, heightM) * distance) / 1000 / 2);
  if (stepsPerShoe === null || stepsPerShoe <= 0) return null;
  const minutesPerMile = perKm === null ? null : (perKm * MILE_M) / 60_000;
  const speed = perKm === null ? null : 1000 / perKm;
  const peakN = speed === null || mass === null ? null : peakInBodyWeights(speed) * mass * GRAVITY;
  return {
    stepsPerShoe,
    stepsBy,
    stepsInRange:
      stepsBy === 'cadence' ||
      (minutesPerMile !== null &&
        minutesPerMile >= HOEGER_MIN_PER_MILE.least &&
        minutesPerMile <= HOEGER_MIN_PER_MILE.most),
    peakN,
    peakInRange: speed !== null && speed >= MUNRO_MPS.least && speed <= MUNRO_MPS.most,
    loadKN:
      peakN === null
        ? null
        : stepsPerShoe * UNPUBLISHED.surfaceFactor * (peakN / 1000) ** UNPUBLISHED.forceExponent,
  };
};

/** Cumulated load of a pair, with how much of its distance each figure stands on. */
export interface PairLoad {
  readonly stepsPerShoe: number;
  readonly loadKN: number;
  /** Metres whose steps came from cadence, from the regression, or are not known. */
  readonly stepsFrom: Readonly<Record<StepsBy | 'unknown', number>>;
  /** Metres with a known force. */
  readonly loadKnownM: number;
}

/** Sums the loads of runs; a run without one adds only to the unknown distance. */
export const sumLoads = (
  runs: readonly { readonly distance: Metres; readonly load: RunLoad | null }[],
): PairLoad => {
  const stepsFrom = { cadence: 0, 'height-and-pace': 0, unknown: 0 };
  let [stepsPerShoe, loadKN, loadKnownM] = [0, 0, 0];
  for (const { distance, load } of runs) {
    stepsFrom[load ? load.stepsBy : 'unknown'] += distance;
    stepsPerShoe += load?.stepsPerShoe ?? 0;
    if (load === null || load.loadKN === null) continue;
    loadKN += load.loadKN;
    loadKnownM += distance;
  }
  return { stepsPerShoe, loadKN, stepsFrom, loadKnownM };
};
