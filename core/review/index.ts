export * from './review-types.ts';
export * from './review.ts';
export type { ComfortScores, Preference, RoundComfort } from './comfort.ts';
