export * from './group-by.ts';
