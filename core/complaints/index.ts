export * from './counts.ts';
export * from './caution.ts';
export * from './evidence.ts';
export * from './observed-runs.ts';
export * from './trend.ts';
export * from './first-repeat.ts';
export * from './associations.ts';
export * from './comfort.ts';
