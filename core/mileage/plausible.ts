/** Is a run as typed one that a person can have run? */
import type { Metres, Seconds } from '../units/index.ts';

/** Faster than the fastest marathon on record, slower than a stroll. Judgement, no source. */
export const PLAUSIBLE_PACE_S_PER_KM = { fastest: 165, slowest: 1500 } as const;
/** A single run beyond this is asked about. Judgement, no source. */
const PLAUSIBLE_DISTANCE_M = { shortest: 100, longest: 110_000 } as const;

export const isPlausibleDistance = (distanceM: Metres): boolean =>
  distanceM >= PLAUSIBLE_DISTANCE_M.shortest && distanceM <= PLAUSIBLE_DISTANCE_M.longest;

export const isPlausiblePace = (secondsPerKm: number): boolean =>
  secondsPerKm >= PLAUSIBLE_PACE_S_PER_KM.fastest &&
  secondsPerKm <= PLAUSIBLE_PACE_S_PER_KM.slowest;

/** Below a metre or a second nothing was measured, and a pace of it can be any number. Judgement, no source. */
const LEAST_PACED = { m: 1, s: 1 } as const;

/** Seconds for a kilometre; null where distance or time are too short to have a pace. */
export const secondsPerKm = (distance: Metres, time: Seconds): number | null =>
  distance >= LEAST_PACED.m && time >= LEAST_PACED.s ? (1000 * time) / distance : null;

/** Whether nobody need ask about distance and pace; a run without a time has no pace. */
export const isPlausibleRun = (distanceM: Metres, duration: Seconds | undefined): boolean => {
  const pace = duration === undefined ? null : secondsPerKm(distanceM, duration);
  return isPlausibleDistance(distanceM) && (pace === null || isPlausiblePace(pace));
};
