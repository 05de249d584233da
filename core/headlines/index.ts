export * from './stamp.ts';
export * from './sheet.ts';
export * from './shoes.ts';
export * from './run.ts';
export * from './shoe.ts';
export * from './wear.ts';
export * from './verdict.ts';
export * from './bench.ts';
