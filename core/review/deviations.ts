/** Is a new pair as its round's blueprint draws it, dimension by dimension and left against right? */
import type { MileageCurve } from '../mileage/index.ts';
import { dimensionOf, type RecordId, type RecordOf, type Round } from '../records/index.ts';
import { combine, decide, leftAgainstRightShoe } from '../rounds/index.ts';
import { groupBy } from '../statistics/index.ts';
import { distanceOf } from './check-distance.ts';
import { uncertaintyOf, type GaugeReview } from './gauges.ts';
import type { Deviation, SideDifference } from './review-types.ts';

type Check = RecordOf<'bench-check'>;

const DAY_MS = 86_400_000;

/**
 * The checks of a pair on arrival: the first, and what was read again within a day of it, before the pair was worn
 * on (judgement, no source).
 */
export const arrivalChecks = (checks: readonly Check[], curve: MileageCurve): readonly Check[] => {
  const [first] = checks;
  if (!first) return [];
  const at = (check: Check) => Date.parse(check.body.at);
  const { distanceM } = distanceOf(first.body, curve);
  return checks.filter(
    (check) =>
      at(check) - at(first) <= DAY_MS && distanceOf(check.body, curve).distanceM === distanceM,
  );
};

/**
 * The readings of a pair on arrival against its round's blueprint, those of one dimension and foot put together;
 * sites that are not on it are left out.
 */
export const deviationsOf = (
  pair: RecordId,
  round: RecordId,
  { checks, curve }: { readonly checks: readonly Check[]; readonly curve: MileageCurve },
  blueprint: Round['blueprint'],
  gauges: readonly GaugeReview[],
): Deviation[] => {
  const read = arrivalChecks(checks, curve).flatMap(({ body, revision }) =>
    body.readings.map((reading) => ({
      reading,
      check: revision.id,
      operator: body.operator ?? '',
    })),
  );
  const byPlace = groupBy(
    read,
    ({ reading: { measure, site, foot, unit } }) => `${measure} ${site} ${foot} ${unit}`,
  );
  return [...byPlace.values()].flatMap((own): Deviation[] => {
    const [one] = own;
    const dimension = one && dimensionOf(blueprint, one.reading);
    const together = combine(
      own.map(({ reading, operator }) => ({
        value: reading.value,
        gauge: reading.gauge ?? '',
        operator,
        uncertainty: uncertaintyOf(reading, gauges),
      })),
    );
    if (!one || !dimension || !together) return [];
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
        check: one.check,
        measure: one.reading.measure,
        site: one.reading.site,
        unit: one.reading.unit,
        foot: one.reading.foot,
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
};

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
