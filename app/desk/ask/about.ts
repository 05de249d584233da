/** What is a question or a message about, and where is that? */
import type { TalkItem } from '../../../core/review/index.ts';
import { formatDate } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';

/** What a question is about, with the way there. */
export const aboutOf = (
  { review, records }: TabProps,
  { about, run, tester }: Pick<TalkItem, 'about' | 'run' | 'tester'>,
): { readonly words: string; readonly href: string } => {
  const words = p().ask;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { record, pair, zone } = about;
  if (run)
    return {
      words: words.aboutRun(
        formatDate(run.startedAt),
        names.pair(run.pair),
        roundDistance(run.distanceM),
      ),
      href: links.run(run.id),
    };
  if (record?.kind === 'damage-report' && pair)
    return { words: words.aboutDamage(names.pair(pair)), href: links.damage(record.id) };
  if (zone)
    return {
      words: words.aboutZone(terms().zones[zone].name),
      href: links.zone(about.foot ?? 'left', zone),
    };
  return pair
    ? { words: words.aboutPair(names.pair(pair)), href: links.pair(pair) }
    : { words: words.inGeneral, href: links.tester(tester) };
};
