export * from './answers.ts';
export * from './compare.ts';
export * from './new-complaints.ts';
export * from './bench-change.ts';
