/** How the screens name a limit and a measure: in a title, as a bound, and as a value with its unit. */
import { unitsOf, type Limit } from '../../../core/records/index.ts';
import type { WearCard } from '../../../core/review/index.ts';
import { formatNumber, formatSetPercent } from '../../parts/format.ts';
import { d, p, terms } from '../../words/index.ts';
import type { Speaker } from '../../words/say-complaint.ts';
import { siteName } from '../../words/say-place.ts';
import { placeTitle } from '../../words/say-wear.ts';

type Place = Pick<WearCard, 'limit' | 'kind' | 'site'>;

/** Such as "Tread depth, lateral heel". */
export const titleOf = ({ limit, kind, site }: Place, speaker: Speaker): string => {
  if (kind !== null && site !== null) return placeTitle({ kind, site }, speaker);
  const measure = limit === null ? '' : terms().measures[limit.measure];
  return site === null ? measure : speaker.desk.joined.clauses([measure, siteName(site, speaker)]);
};

/** Such as "at least 1 mm" or "at least 70 % of new". */
export const boundOf = ({ measure, bound, value, basis }: Limit): string =>
  p().wear.atBound[bound](
    basis === 'share-of-new'
      ? d().wear.ofNew(formatSetPercent(value))
      : `${formatNumber(value, 2)} ${terms().units[unitsOf[measure][0]]}`,
  );

/** The name of what a limit is about. */
export const measureOf = ({ measure }: Limit): string => terms().measures[measure];
