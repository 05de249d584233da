export { remarkPlaces, remarksOf, type Remark, type RemarkPlace, type Tapped } from './remarks.ts';
export { mentionsIn, type Mention } from './dictionary.ts';
export type { Hit } from './search.ts';
export * from './word-list.ts';
