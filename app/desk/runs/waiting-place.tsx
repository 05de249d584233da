/** What waits for the lead's decision, runs and readings, and what was decided. */
import { waitingHeadline } from '../../../core/headlines/index.ts';
import { formatDate } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { useWork, type PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { stepLine } from '../sheet/todo.tsx';
import { NextChecks } from '../verdict/next-checks.tsx';
import { Waiting } from '../waiting/waiting.tsx';

/** The whole test went quiet: said once. */
const Quiet = ({ review }: PlaceProps) =>
  review.quiet && (
    <li>
      <a href={linksOf(review.project.id).place('testers')}>
        {p().sheet.steps['ask-all'](formatDate(review.quiet.sinceMs), review.quiet.days)}
      </a>
    </li>
  );

/** What is to be done beside decisions: the same lines as on the sheet. */
const Beside = (props: PlaceProps) => {
  const { records, review } = props;
  const { id } = review.project;
  const overview = useWork((desk) => desk.overview(id), records, [id]);
  const steps = overview?.next.filter(({ step }) => step === 'measure-on-arrival') ?? [];
  if (steps.length === 0 && !review.quiet) return null;
  return (
    <section>
      <h2>{p().sheet.next}</h2>
      <ul class="plain-list">
        <Quiet {...props} />
        {steps.map((step) => {
          const { title, href } = stepLine(step, props, linksOf(id));
          return (
            <li key={title}>
              <a href={href}>{title}</a>
            </li>
          );
        })}
      </ul>
    </section>
  );
};

export const WaitingPlace = (props: PlaceProps) => (
  <>
    <PlaceHead
      headline={p().runs.waitingHeadline(waitingHeadline(props.review))}
      crumbs={[
        { words: p().frame.places.runs, href: linksOf(props.review.project.id).place('runs') },
      ]}
    />
    <Waiting {...props} />
    <Beside {...props} />
    <NextChecks {...props} title={p().verdict.nextChecks} />
  </>
);
