export * from './plausible.ts';
export * from './runs.ts';
export * from './same-run.ts';
export * from './pair-mileage.ts';
export * from './hand-out-span.ts';
export * from './load.ts';
