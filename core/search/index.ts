export { searchEverything, type Everything, type FoundOf, type SearchQuery } from './everything.ts';
