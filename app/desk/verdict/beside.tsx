/**
 * Beside the limits: what the testers of the latest round clearly or likely find too much or too little, what it costs
 * them and where it went. The brief sets no limit on comfort, so the word of the verdict is none of it.
 */
import type { RecordId } from '../../../core/records/index.ts';
import { p, terms } from '../../words/index.ts';
import { lostFigures } from '../../words/say-two-sided.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { SureStamp } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';

export const BesideLimits = (props: TabProps & { readonly latest: RecordId | null }) => {
  const { review, latest } = props;
  const words = p().verdict;
  const round = review.rounds.find(({ id }) => id === latest);
  const off = (round?.twoSided ?? []).flatMap(({ word, sure, ...one }) =>
    (word === 'low' || word === 'high') && sure !== 'too-early'
      ? [{ ...one, side: word, claims: sure }]
      : [],
  );
  if (!round || off.length === 0) return null;
  const [say, speaker] = [sayOf(props), speakerOf(props)];
  return (
    <section aria-label={words.beside}>
      <h2>{words.beside}</h2>
      <p class="soft small">{words.besideNote}</p>
      <ul class="plain-list">
        {off.map(({ attribute, side, claims, counts, mean, cost }) => {
          const lost = cost[side];
          const moved = round.twoSidedChanges.find((one) => one.attribute === attribute);
          return (
            <li key={attribute}>
              <SureStamp word={claims} />{' '}
              <a href={linksOf(review.project.id).place('shoe', 'comfort')}>
                {p().tooMuch.headline(
                  { case: 'too', claims, attribute, side, testers: counts[side], asked: mean.n },
                  say,
                  (question, end) => terms().twoSided[question][end],
                )}
              </a>{' '}
              <span class="soft">
                {[
                  ...(lost ? [words.besideCost(...lostFigures(lost, speaker))] : []),
                  ...(moved ? [words.besideMove(p().tooMuch.moves[moved.word])] : []),
                ].join(p().shoe.between)}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
};
