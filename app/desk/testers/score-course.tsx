/** Overall comfort run by run: a dot a run, in the order of time, each leading to its run. */
import type { TesterLook } from '../../../core/review/index.ts';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { clauses, p, saidOf } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';

export const ScoreCourse = (props: TabProps & { readonly look: TesterLook }) => {
  const { look, review, records } = props;
  const words = p().testers.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { course } = look;
  if (course.length === 0) return null;
  const x = (at: number) => (100 * (at + 0.5)) / course.length;
  return (
    <section aria-label={words.course}>
      <h2>{words.course}</h2>
      <Picture
        says={words.courseSays(look.code, course.length)}
        table={() => ({
          head: [
            p().pairs.page.runTable.run,
            p().pairs.columns.pair,
            p().pairs.page.runTable.at,
            p().pairs.page.runTable.comfort,
          ],
          rows: course.toReversed().map(({ run, pair, atMs, pairM, score }) => [
            <a key={run} href={links.run(run)}>
              {formatDate(atMs)}
            </a>,
            <a key={run} href={links.pair(pair)}>
              {names.code(pair)}
            </a>,
            roundDistance(pairM),
            formatNumber(score, 0),
          ]),
        })}
      >
        <div class="lane-field score-course">
          <svg
            class="lane-behind"
            viewBox="0 0 100 100"
            preserveAspectRatio="none"
            aria-hidden="true"
          >
            <path
              class="life-usual"
              d={course
                .map(({ score }, at) => `${at === 0 ? 'M' : 'L'}${x(at)},${100 - score}`)
                .join('')}
            />
          </svg>
          {course.map(({ run, pair, atMs, score, isFirst }, at) => (
            <a
              key={run}
              class={isFirst ? 'life-dot life-first' : 'life-dot'}
              href={links.run(run)}
              tabIndex={-1}
              style={{ insetInlineStart: `${x(at)}%`, insetBlockStart: `${100 - score}%` }}
              title={saidOf(clauses(formatDate(atMs), names.code(pair)), formatNumber(score, 0))}
            >
              <span class="hidden-words">{formatDate(atMs)}</span>
            </a>
          ))}
        </div>
      </Picture>
    </section>
  );
};
