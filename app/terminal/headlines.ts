/** The first line of each part of the printed review: by the desk's rules, in the desk's words. */
import {
  changesHeadline,
  pairsHeadline,
  sheetHeadline,
  shoeHeadline,
  verdictHeadline,
  wearHeadline,
} from '../../core/headlines/index.ts';
import {
  calloutsOf,
  lookAtChanges,
  lookAtShoe,
  overviewOf,
  pairRows,
  verdictGrid,
  wearCards,
  type ProjectLog,
  type Review,
  type Verdict,
} from '../../core/review/index.ts';
import { movedOf } from '../words/say-moved.ts';
import type { LanguageFile } from '../words/types.ts';
import { sayOf } from './say.ts';

export interface Headlines {
  readonly sheet: string;
  readonly pairs: string;
  readonly shoe: string;
  readonly verdict: string;
  readonly wear: string;
  /** One for each round but the first, in their order. */
  readonly changes: readonly string[];
}

/** @param verdicts one for each round, in their order */
export const headlinesOf = (
  log: ProjectLog,
  review: Review,
  verdicts: readonly Verdict[],
  spoken: LanguageFile,
): Headlines => {
  const { places, glossary } = spoken;
  const say = sayOf(review, spoken);
  const { distanceM } = log.project.brief;
  const cards = wearCards(log);
  const rounds = review.rounds.map(({ id }) => id);
  const sheet = sheetHeadline({
    review,
    verdicts,
    overview: overviewOf(log, review, verdicts),
    callouts: calloutsOf(log, review, verdicts),
  });
  return {
    sheet: places.sheet.headline(sheet, say),
    pairs: places.pairs.headline(
      pairsHeadline(pairRows(log, review), distanceM, log.rounds.length),
      say,
    ),
    shoe: places.shoe.headline(shoeHeadline(lookAtShoe(log, review), review), say),
    verdict: places.verdict.headline(
      verdictHeadline(verdictGrid(log, review, verdicts, cards)),
      say,
    ),
    wear: places.wear.headline(
      wearHeadline({ rounds, cards, briefM: distanceM }),
      say,
      ({ measure }) => glossary.measures[measure],
    ),
    changes: review.rounds.slice(1).map((later, at) => {
      const earlier = review.rounds[at] as (typeof review.rounds)[number];
      const story = lookAtChanges(log, earlier, later);
      const moved = movedOf(story.felt, glossary, say);
      return places.changes.headline(changesHeadline(story), { ...say, moved });
    }),
  };
};
