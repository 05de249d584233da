export * from './stamp.ts';
export * from './sheet.ts';
export * from './shoes.ts';
export * from './run.ts';
export * from './runs.ts';
