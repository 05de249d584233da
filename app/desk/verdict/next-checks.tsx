/** The next checks, each with its pair, its distance and when the pair is expected there. */
import { p } from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';

export const NextChecks = (props: TabProps & { readonly title?: string }) => {
  const { review, records, title } = props;
  const { id } = review.project;
  const visits = useWork((desk) => desk.nextVisits(id), records, [id]);
  if (!visits || visits.length === 0) return null;
  const say = sayOf(props);
  return (
    <>
      {title && <h2>{title}</h2>}
      <ul class="plain-list">
        {visits.map((visit) => (
          <li key={`${visit.pair} ${visit.atM}`}>
            <a href={linksOf(id).pair(visit.pair)}>{p().verdict.settles.measure(visit, say)}</a>
          </li>
        ))}
      </ul>
    </>
  );
};
