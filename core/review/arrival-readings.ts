/** What was read of a pair on arrival, the readings of one place and foot put together? */
import type { MileageCurve } from '../mileage/index.ts';
import type { RecordId, Reading, RecordOf } from '../records/index.ts';
import { combine } from '../rounds/index.ts';
import { groupBy } from '../statistics/index.ts';
import { placeKey } from '../wear/index.ts';
import { distanceOf } from './check-distance.ts';
import { uncertaintyOf, type GaugeReview } from './gauges.ts';

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

export interface ArrivalReading {
  /** The first of those that were put together, and its check. */
  readonly reading: Reading;
  readonly check: RecordId;
  readonly together: NonNullable<ReturnType<typeof combine>>;
}

/** By measure, site, unit and foot. */
export const arrivalReadings = (
  { checks, curve }: { readonly checks: readonly Check[]; readonly curve: MileageCurve },
  gauges: readonly GaugeReview[],
): readonly ArrivalReading[] => {
  const read = arrivalChecks(checks, curve).flatMap(({ body, revision }) =>
    body.readings.map((reading) => ({
      reading,
      check: revision.id,
      operator: body.operator ?? '',
    })),
  );
  const byPlace = groupBy(read, ({ reading }) => `${placeKey(reading)} ${reading.foot}`);
  return [...byPlace.values()].flatMap((own): ArrivalReading[] => {
    const [one] = own;
    const together = combine(
      own.map(({ reading, operator }) => ({
        value: reading.value,
        gauge: reading.gauge ?? '',
        operator,
        uncertainty: uncertaintyOf(reading, gauges),
      })),
    );
    return one && together ? [{ reading: one.reading, check: one.check, together }] : [];
  });
};
