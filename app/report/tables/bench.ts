/** Readings that count, over the distance of their pairs, and readings on arrival against the blueprint. */
import type { Review } from '../../../core/review/index.ts';
import { km, type Table } from './table.ts';

export const benchTable = (
  { bench: series }: Review,
  round: (id: string) => string,
  pair: (id: string) => string,
): Table => ({
  name: 'bench-readings',
  columns: [
    'round',
    'pair',
    'measured_at',
    'km',
    'km_from',
    'measure',
    'site',
    'foot',
    'value',
    'unit',
  ],
  rows: series.flatMap((one) =>
    one.points.map((point) => [
      round(one.round),
      pair(one.pair),
      new Date(point.atMs).toISOString(),
      km(point.distanceM),
      point.distanceFrom,
      one.measure,
      one.site,
      one.foot,
      point.value,
      one.unit,
    ]),
  ),
});

export const deviationsTable = (
  { deviations: list }: Review,
  round: (id: string) => string,
  pair: (id: string) => string,
): Table => ({
  name: 'deviations',
  columns: [
    'round',
    'pair',
    'measure',
    'site',
    'foot',
    'unit',
    'nominal',
    'lower_deviation_allowed',
    'upper_deviation_allowed',
    'value',
    'deviation',
    'inside',
    'standard_uncertainty',
    'decision',
    'chance_to_conform',
    'risk',
  ],
  rows: list.map((one) => [
    round(one.round),
    pair(one.pair),
    one.measure,
    one.site,
    one.foot,
    one.unit,
    one.nominal,
    one.lower,
    one.upper,
    one.value,
    Number(one.deviation.toPrecision(12)),
    one.inside,
    one.uncertainty,
    one.word,
    one.chance,
    one.risk,
  ]),
});
