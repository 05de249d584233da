/** What did the bench say of each pair, over its distance? */
import { distanceOf } from './check-distance.ts';
import type { LoggedPair } from './project-log.ts';
import type { BenchSeries } from './review-types.ts';

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
