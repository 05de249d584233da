export * from './quantity.ts';
export * from './duration.ts';
export * from './shoe-size.ts';
