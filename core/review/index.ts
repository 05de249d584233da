export * from './review-types.ts';
export * from './review.ts';
export * from './closer-look.ts';
