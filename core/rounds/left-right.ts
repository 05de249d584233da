/**
 * Are the two shoes of a pair alike? The deviations of left and right from their nominals are set against each
 * other, so that feet with nominals of their own are compared rightly. The difference of two readings is as
 * uncertain as both together: √2 of one where both have the same.
 */
import { decide, type Conformity } from './conformity.ts';

/** A shoe's deviation from nominal, in the dimension's unit. */
export interface OneShoe {
  readonly deviation: number;
  /** Standard; null: not known. */
  readonly uncertainty: number | null;
}

export interface LeftRight extends Conformity {
  /** Left less right. */
  readonly difference: number;
  /** Greatest difference allowed, either way. */
  readonly allowed: number;
  /** `practice`: the blueprint names none, so it is half of the tolerance's width (common practice, no source). */
  readonly allowedFrom: 'blueprint' | 'practice';
  readonly uncertainty: number | null;
}

/**
 * Left against right of one dimension.
 * @param tolerance lowest and highest allowed deviation; half its width stands in where no difference is named
 * @param allowed greatest difference that the blueprint allows; null where it names none
 */
export const leftAgainstRightShoe = (
  left: OneShoe,
  right: OneShoe,
  tolerance: { readonly lower: number; readonly upper: number },
  allowed: number | null,
): LeftRight => {
  const most = allowed ?? (tolerance.upper - tolerance.lower) / 2;
  const difference = left.deviation - right.deviation;
  const uncertainty =
    left.uncertainty === null || right.uncertainty === null
      ? null
      : Math.hypot(left.uncertainty, right.uncertainty);
  return {
    ...decide(difference, { low: -most, high: most }, uncertainty),
    difference,
    allowed: most,
    allowedFrom: allowed === null ? 'practice' : 'blueprint',
    uncertainty,
  };
};
