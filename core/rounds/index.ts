export * from './answers.ts';
export type { Basis, BothRounds, RoundCount } from './sides.ts';
export * from './compare.ts';
export * from './new-complaints.ts';
export * from './bench-change.ts';
