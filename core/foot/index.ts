export * from './zones.ts';
export * from './complaint-kinds.ts';
export * from './parts.ts';
export * from './foams.ts';
export * from './suspects.ts';
export * from './comfort-attributes.ts';
export * from './outline.ts';
export { solePrint } from './sole-drawing.ts';
export { upperDecorations, type Decoration } from './upper-drawing.ts';
