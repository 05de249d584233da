/** What the shoe of the large group promises, and what its samples measure; invented. */

/** @param whole with limits of foam and tread; otherwise complaints alone are judged */
export const brief = (whole: boolean) => ({
  runner: 'neutral',
  use: 'daily-training',
  surfaces: ['road'],
  distanceM: 600_000,
  allowedRate: { complaint: 0.05, pain: 0.01 },
  limits: whole
    ? [
        limit('energy-absorbed', 'heel-centre', 0.7, 'share-of-new'),
        limit('tread-depth', 'heel-lateral', 1, 'reading'),
        limit('stack-height', 'heel-centre', 34, 'reading'),
      ]
    : [],
  attributes: whole ? ['overall', 'heel-cushioning', 'toe-room'] : ['overall'],
});

const limit = (measure: string, site: string, value: number, basis: string) => ({
  measure,
  site,
  bound: 'at-least',
  value,
  basis,
});

export const blueprint = [
  ['stack-height', 'heel-centre', 36, 1],
  ['dimension', 'heel-cup-width', 58, 1],
].map(([measure, site, nominal, tolerance]) => ({
  measure,
  site,
  unit: 'mm',
  nominal,
  lower: -(tolerance as number),
  upper: tolerance,
}));

export const layers = (round: number) => [
  { zone: 'U3', count: 2 },
  { zone: 'U4', count: round === 0 ? 3 : 2 },
];

/** @param round from 0; the first differs from nothing */
export const changesOf = (round: number) =>
  round === 0
    ? []
    : [
        {
          part: 'upper-pattern',
          what: 'Collar 3 mm higher on the lateral side',
          mends: { kind: 'heel-slip', zone: 'U10' },
        },
        { part: 'midsole-foam', what: 'Foam of a new batch' },
      ];

/** Readings of both shoes of a pair: foam wears as the logarithm of distance, tread in proportion to it. */
export const readingsOf = (round: number, km: number, isNew: boolean, random: () => number) => {
  const worn = Math.log(1 + km / 50) / Math.log(11);
  const both = (measure: string, site: string, unit: string, mean: number, spread: number) =>
    (['left', 'right'] as const).map((foot) => ({
      measure,
      site,
      foot,
      unit,
      value: Math.round((mean + spread * (random() + random() - 1)) * 100) / 100,
    }));
  return [
    ...both('energy-absorbed', 'heel-centre', 'J', 2.1 * Math.exp(-0.28 * worn), 0.08),
    ...both('tread-depth', 'heel-lateral', 'mm', Math.max(0.2, 3.2 - 0.003 * km), 0.15),
    ...both('stack-height', 'heel-centre', 'mm', 36.1 - 1.1 * worn, 0.4),
    ...(isNew ? both('dimension', 'heel-cup-width', 'mm', 58 + 0.1 * round, 0.9) : []),
  ];
};
