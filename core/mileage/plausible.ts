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

/** Whether nobody need ask about distance and pace; a run without a time has no pace. */
export const isPlausibleRun = (distanceM: Metres, duration: Seconds | undefined): boolean =>
  isPlausibleDistance(distanceM) &&
  (duration === undefined || duration <= 0 || isPlausiblePace((1000 * duration) / distanceM));
