export * from './stamp.ts';
