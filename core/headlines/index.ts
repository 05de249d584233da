export * from './stamp.ts';
export * from './sheet.ts';
export * from './shoes.ts';
export * from './run.ts';
export * from './changes.ts';
export * from './rounds.ts';
export * from './finding.ts';
