export * from './asks.ts';
export * from './questions.ts';
export * from './threads.ts';
export * from './proposals.ts';
export * from './turn.ts';
export * from './story.ts';
export * from './summary.ts';
