export { remarkPlaces, type Remark, type RemarkPlace, type Tapped } from './remarks.ts';
export type { Mention } from './dictionary-types.ts';
export { mentionsIn } from './dictionary.ts';
export { fold } from './fold.ts';
export { textFinder, type Hit } from './search.ts';
export * from './word-list.ts';
export * from './reveals.ts';
