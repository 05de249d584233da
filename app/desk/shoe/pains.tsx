/** Pain after a run, before anything else: who, how much, when, and whether anybody has answered. */
import type { PainSign } from '../../../core/records/index.ts';
import { clauses, p, terms } from '../../words/index.ts';
import { formatDate } from '../../parts/format.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Mark } from '../frame/stamp.tsx';
import { Some } from '../parts/some.tsx';

/** The first so many; the others follow on a press. */
const FIRST = 3;

export const Pains = (props: TabProps) => {
  const { review, records } = props;
  const words = p().shoe;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  if (review.pains.length === 0) return null;
  return (
    <section class="shoe-pains" aria-label={words.pains}>
      <h2>{words.pains}</h2>
      <ul class="plain-list">
        <Some of={review.pains} step={FIRST}>
          {({ run, tester, pair, at, score, signs, over, answer, stands }) => (
            <li key={run}>
              <Mark tone={stands && !answer ? 'danger' : 'plain'}>
                {over !== null ? words.over : answer ? words.answered : words.notAnswered}
              </Mark>{' '}
              <a href={links.tester(tester)}>{names.tester(tester)}</a>{' '}
              <a href={links.run(run)}>{clauses(words.pain(score), formatDate(at))}</a>
              {signs.length > 0 &&
                words.painSign(
                  signs.map((sign) => terms().painSigns[sign as PainSign]).join(words.zone.comma),
                )}{' '}
              <a href={links.pair(pair)}>{p().sheet.pairNamed(names.pair(pair))}</a>
            </li>
          )}
        </Some>
      </ul>
    </section>
  );
};
