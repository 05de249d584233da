/**
 * Which lines and edges of a shoe can a change move? What is cut, moulded or lasted along a line; a side is said beside
 * it. Common practice, no source.
 */
export const patternLines = [
  'collar',
  'heel-tab',
  'back-curve',
  'heel-counter',
  'tongue',
  'eyestay',
  'throat',
  'vamp',
  'toe-overlay',
  'saddle',
  'lasting-edge',
  'flex-groove',
  'sidewall',
  'heel-bevel',
  'insole-board',
] as const;
export type PatternLine = (typeof patternLines)[number];
