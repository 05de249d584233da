export * from './balance.ts';
export * from './constructed.ts';
export * from './codes.ts';
export * from './least-imbalance.ts';
export * from './plan.ts';
export * from './power.ts';
export * from './agreement.ts';
export * from './questions.ts';
