export * from './plausible.ts';
export * from './logged-run.ts';
export * from './runs.ts';
export * from './same-run.ts';
export * from './pair-mileage.ts';
export * from './hand-out-span.ts';
export * from './load.ts';
export { whereWas, type OwnOddity } from './judge-run.ts';
