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
    <p>
      <a href={linksOf(review.project.id).place('testers')}>
        {p().sheet.steps['ask-all'](formatDate(review.quiet.sinceMs), review.quiet.days)}
      </a>
    </p>
  );

/** Pairs that wait for their first check, a line a round. */
const Unmeasured = (props: PlaceProps) => {
  const { records, review } = props;
  const { id } = review.project;
  const overview = useWork((desk) => desk.overview(id), records, [id]);
  const steps = overview?.next.filter(({ step }) => step === 'measure-on-arrival') ?? [];
  if (steps.length === 0) return null;
  return (
    <ul class="plain-list">
      {steps.map((step) => {
        const { title, href } = stepLine(step, props, linksOf(id));
        return (
          <li key={title}>
            <a href={href}>{title}</a>
          </li>
        );
      })}
    </ul>
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
    <Quiet {...props} />
    <Waiting {...props} />
    <Unmeasured {...props} />
    <NextChecks {...props} title={p().verdict.nextChecks} />
  </>
);
