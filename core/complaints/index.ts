export * from './counts.ts';
export * from './caution.ts';
