/** Which parts of a shoe can cause a complaint or carry a change, and whose trade each is. */
export const partIds = [
  'last',
  'upper-pattern',
  'upper-material',
  'midsole-geometry',
  'midsole-foam',
  'outsole',
  'sockliner',
  'lacing',
  'tooling',
] as const;
export type PartId = (typeof partIds)[number];

/** Who can act on a finding: the trades of the factory. */
export const trades = ['last', 'upper', 'materials', 'foam', 'tooling'] as const;
export type Trade = (typeof trades)[number];

/** The trade that acts on each part (common practice, no source). */
export const tradeOf: Readonly<Record<PartId, Trade>> = {
  last: 'last',
  'upper-pattern': 'upper',
  'upper-material': 'materials',
  'midsole-geometry': 'tooling',
  'midsole-foam': 'foam',
  outsole: 'tooling',
  sockliner: 'foam',
  lacing: 'upper',
  tooling: 'tooling',
};
