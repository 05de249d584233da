export * from './review-types.ts';
export * from './project-log.ts';
export * from './review.ts';
export * from './closer-look.ts';
export * from './summary.ts';
export { byCode } from './by-code.ts';
export type { Preference } from './preferences.ts';
