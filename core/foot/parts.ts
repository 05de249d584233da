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
