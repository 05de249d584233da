/** Where on a sample is something measured, in the reader's words? */
import type { Measure } from '../../core/records/index.ts';
import type { Speaker } from './say-complaint.ts';

/** A usual place by its name; any other by the word that the shop gave it. */
export const siteName = (site: string, { desk }: Pick<Speaker, 'desk'>): string =>
  desk.blueprint.sites[site] ?? site;

/** Measure and place, such as "Stack height, centre of the heel". */
export const placeName = (
  { measure, site }: { readonly measure: Measure; readonly site: string },
  speaker: Pick<Speaker, 'desk' | 'glossary'>,
): string =>
  speaker.desk.joined.clauses([speaker.glossary.measures[measure], siteName(site, speaker)]);
