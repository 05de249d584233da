export * from './review-types.ts';
export * from './project-log.ts';
export * from './review.ts';
export * from './closer-look.ts';
export * from './summary.ts';
export type { Preference } from './preferences.ts';
