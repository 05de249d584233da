export * from './quantity.ts';
export * from './duration.ts';
export * from './typed.ts';
export * from './shoe-size.ts';
