export * from './review-types.ts';
export * from './review.ts';
