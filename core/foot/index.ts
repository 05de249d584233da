export * from './zones.ts';
export * from './complaint-kinds.ts';
export * from './parts.ts';
export * from './suspects.ts';
export * from './comfort-attributes.ts';
