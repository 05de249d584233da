/** How far had a pair come at a bench check? */
import { mileageAt, type MileageCurve } from '../mileage/index.ts';
import type { BenchCheck } from '../records/index.ts';
import type { Metres } from '../units/index.ts';

/** Pairs with more on them at their first bench check are not new. Judgement, no source. */
export const NEW_UP_TO_M = 20_000;

/** The distance on the pair at a check: the shop's figure if it gave one, else from the runs. */
export const distanceOf = (
  check: BenchCheck,
  curve: MileageCurve,
): { distanceM: Metres; distanceFrom: 'shop' | 'runs' } =>
  check.distanceM === undefined
    ? { distanceM: mileageAt(curve, Date.parse(check.at)), distanceFrom: 'runs' }
    : { distanceM: check.distanceM, distanceFrom: 'shop' };
