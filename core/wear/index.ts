export * from './series.ts';
export * from './foams.ts';
export * from './forms.ts';
export * from './fit.ts';
export * from './next-checks.ts';
export * from './warnings.ts';
