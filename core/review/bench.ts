/** What did the bench say of each pair, over its distance and against the blueprint? */
import { mileageAt, type MileageCurve } from '../mileage/index.ts';
import type { BenchCheck, RecordId, RecordOf, Round } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import type { LoggedPair } from './project-log.ts';
import type { BenchSeries, Deviation } from './review-types.ts';

type Check = RecordOf<'bench-check'>;

const distanceOf = (
  check: BenchCheck,
  curve: MileageCurve,
): { distanceM: Metres; distanceFrom: 'shop' | 'runs' } =>
  check.distanceM === undefined
    ? { distanceM: mileageAt(curve, Date.parse(check.at)), distanceFrom: 'runs' }
    : { distanceM: check.distanceM, distanceFrom: 'shop' };

/** One series per measure, site, foot and unit; points by distance, then time. */
export const benchSeries = ({
  id: pair,
  round,
  checks,
  curve,
}: Pick<LoggedPair, 'id' | 'round' | 'checks' | 'curve'>): BenchSeries[] => {
  const series = new Map<
    string,
    Omit<BenchSeries, 'points'> & { points: BenchSeries['points'][number][] }
  >();
  for (const { body, revision } of checks) {
    const at = distanceOf(body, curve);
    for (const { measure, site, foot, unit, value } of body.readings) {
      const key = `${measure} ${site} ${foot} ${unit}`;
      const one = series.get(key) ?? { pair, round, measure, site, foot, unit, points: [] };
      one.points.push({ check: revision.id, atMs: Date.parse(body.at), ...at, value });
      series.set(key, one);
    }
  }
  return [...series]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, one]) => ({
      ...one,
      points: one.points.sort((a, b) => a.distanceM - b.distanceM || a.atMs - b.atMs),
    }));
};

/** The readings of a pair's first check against its round's blueprint; sites not on it are left out. */
export const deviationsOf = (
  pair: RecordId,
  round: RecordId,
  checks: readonly Check[],
  blueprint: Round['blueprint'],
): Deviation[] => {
  const [first] = checks;
  if (!first) return [];
  return first.body.readings.flatMap(({ measure, site, foot, unit, value }) => {
    const dimension = blueprint.find(
      (d) =>
        d.measure === measure &&
        d.site === site &&
        d.unit === unit &&
        (d.foot === undefined || d.foot === foot),
    );
    if (!dimension) return [];
    const { nominal, lower, upper } = dimension;
    const deviation = value - nominal;
    // A reading that sits on a limit is inside; the slack is for the decimals of the subtraction.
    const inside = deviation >= lower - 1e-9 && deviation <= upper + 1e-9;
    return [
      {
        pair,
        round,
        check: first.revision.id,
        measure,
        site,
        unit,
        nominal,
        lower,
        upper,
        foot,
        value,
        deviation,
        inside,
      },
    ];
  });
};
