export * from './quantity.ts';
export * from './typed.ts';
export * from './shoe-size.ts';
