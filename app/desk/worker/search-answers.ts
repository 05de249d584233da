/** What the search over everything asks of the log. */
import { searchEverything, type Everything, type SearchQuery } from '../../../core/search/index.ts';
import type { Opened } from './opened.ts';

const everything = ({ log }: Opened, query: SearchQuery): Everything =>
  searchEverything(log, query);

export const searchQuestions = { everything };
