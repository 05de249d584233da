/** Where a tester feels something, in how many of their runs, and in how many of the others'. */
import { surenessForTester } from '../../../core/headlines/index.ts';
import type { TesterLook } from '../../../core/review/index.ts';
import { p, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';
import { FeltDrawing } from '../people/felt-drawing.tsx';

/** More of them are in the table. */
const MOST_LISTED = 5;

export const WhereFelt = (props: TabProps & { readonly look: TesterLook }) => {
  const { look, review } = props;
  const words = p().testers.page;
  const links = linksOf(review.project.id);
  const title = (one: TesterLook['felt'][number]) => (
    <a href={links.zone(one.byFoot.left >= one.byFoot.right ? 'left' : 'right', one.zone)}>
      {p().frame.feltTitle(terms().kinds[one.kind].name, terms().zones[one.zone].name)}
    </a>
  );
  return (
    <section class="where-felt" aria-label={words.where}>
      <h2>{words.where}</h2>
      {look.felt.length === 0 ? (
        <p class="soft">{words.nothingFelt}</p>
      ) : (
        <Picture
          says={words.whereSays(look.code)}
          table={() => ({
            head: [words.where, words.own, words.otherTesters, words.otherRuns, words.sure],
            rows: look.felt.map((one) => [
              title(one),
              p().pairs.ofAsked(one.marks.length, look.asked),
              p().pairs.ofAsked(one.others.testers, one.others.askedTesters),
              p().pairs.ofAsked(one.others.runs, one.others.askedRuns),
              terms().sureness[surenessForTester(one)].name,
            ]),
          })}
        >
          <FeltDrawing project={review.project.id} felt={look.felt} asked={look.asked} />
          <ul class="felt-list">
            {look.felt.slice(0, MOST_LISTED).map((one) => (
              <li key={`${one.zone}${one.kind}`}>
                <b>{title(one)}</b>{' '}
                <a class="small" href={links.run(one.marks.at(-1)?.run ?? look.id)}>
                  {words.ownRuns(one.marks.length, look.asked)}
                </a>
                <div class="soft small">
                  {words.others(
                    one.others.testers,
                    one.others.askedTesters,
                    one.others.runs,
                    one.others.askedRuns,
                  )}
                </div>
              </li>
            ))}
          </ul>
        </Picture>
      )}
    </section>
  );
};
