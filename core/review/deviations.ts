/** Is a new pair as its round's blueprint draws it, dimension by dimension and left against right? */
import { dimensionOf, type RecordId, type Round } from '../records/index.ts';
import { decide, leftAgainstRightShoe } from '../rounds/index.ts';
import { arrivalReadings } from './arrival-readings.ts';
import type { GaugeReview } from './gauges.ts';
import type { Deviation, SideDifference } from './review-types.ts';

/**
 * The readings of a pair on arrival against its round's blueprint, those of one dimension and foot put together;
 * sites that are not on it are left out.
 */
export const deviationsOf = (
  pair: RecordId,
  round: RecordId,
  measured: Parameters<typeof arrivalReadings>[0],
  blueprint: Round['blueprint'],
  gauges: readonly GaugeReview[],
): Deviation[] =>
  arrivalReadings(measured, gauges).flatMap(({ reading, check, together }): Deviation[] => {
    const dimension = dimensionOf(blueprint, reading);
    if (!dimension) return [];
    const { nominal, lower, upper } = dimension;
    const decided = decide(
      together.value,
      { low: nominal + lower, high: nominal + upper },
      together.uncertainty,
    );
    return [
      {
        pair,
        round,
        check,
        measure: reading.measure,
        site: reading.site,
        unit: reading.unit,
        foot: reading.foot,
        nominal,
        lower,
        upper,
        leftRight: dimension.leftRight ?? null,
        deviation: together.value - nominal,
        ...together,
        ...decided,
        // Readings that contradict each other decide nothing.
        ...(together.disagree && { word: 'undecided' as const, risk: null }),
      },
    ];
  });

/** Left against right, wherever both shoes were read on the same dimension. */
export const sidesOf = (deviations: readonly Deviation[]): SideDifference[] =>
  deviations.flatMap((left): SideDifference[] => {
    if (left.foot !== 'left') return [];
    const { pair, round, measure, site, unit } = left;
    const right = deviations.find(
      (one) =>
        one.foot === 'right' &&
        one.pair === pair &&
        one.measure === measure &&
        one.site === site &&
        one.unit === unit,
    );
    if (!right) return [];
    const contradicted = left.disagree || right.disagree;
    return [
      {
        pair,
        round,
        measure,
        site,
        unit,
        ...leftAgainstRightShoe(left, right, left, left.leftRight ?? right.leftRight),
        ...(contradicted && { word: 'undecided' as const, risk: null }),
      },
    ];
  });
