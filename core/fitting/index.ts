export * from './fitters.ts';
export * from './agreement.ts';
export * from './wanted.ts';
export * from './sizes.ts';
export * from './steps.ts';
