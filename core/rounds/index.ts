export * from './conformity.ts';
export * from './same-dimension.ts';
export * from './left-right.ts';
export * from './practice.ts';
export * from './last.ts';
export * from './layers.ts';
