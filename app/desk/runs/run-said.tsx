/** All that was said of a run, as terms and answers. */
import type { ComponentChildren } from 'preact';
import type { RunField, RunLook } from '../../../core/review/index.ts';
import { formatPace } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { fieldInWords } from '../../parts/said-in-run.ts';

/** In this order; what was not answered is left out, but for those that every run is asked. */
const asked: readonly RunField[] = ['feet', 'pain', 'words'];
const order: readonly RunField[] = [
  'startedAt',
  'distanceM',
  'durationS',
  'surfaces',
  'ground',
  'temperatureC',
  'sock',
  'comfort2',
  'feet',
  'pain',
  'words',
  'wornDespiteStop',
];

export const RunSaid = (props: TabProps & { readonly look: RunLook }) => {
  const { look, review } = props;
  const words = p().runs;
  const names = namesIn(review, props.records);
  const links = linksOf(review.project.id);
  const { run, round } = look;
  const rows: (readonly [string, ComponentChildren])[] = order.flatMap((field) => {
    // Each complaint stands beside its place on the foot.
    const said =
      field === 'feet' && run.feet?.answer === 'complaints'
        ? words.complaintCount(run.feet.complaints.length)
        : fieldInWords(field, run, names.pair);
    if (said === '' && !asked.includes(field)) return [];
    const pace = field === 'durationS' ? formatPace(run.distanceM, run.durationS) : '';
    const value = said === '' ? <span class="soft">{words.notSaid}</span> : said;
    return [
      [words.labels[field], field === 'words' && said ? <q>{said}</q> : value] as const,
      ...(pace ? [[words.pace, pace] as const] : []),
    ];
  });
  return (
    <section>
      <h2>{words.said}</h2>
      <dl class="run-terms">
        <dt>{words.labels.pair}</dt>
        <dd>
          <a href={links.pair(run.pair)}>{names.pair(run.pair)}</a>
          {d().joined.clauses([
            '',
            ...(round ? [words.inRound(names.round(round), roundDistance(look.pairM))] : []),
            ...(run.firstImpression ? [words.firstImpression] : []),
          ])}
        </dd>
        {rows.map(([term, said]) => (
          <>
            <dt>{term}</dt>
            <dd>{said}</dd>
          </>
        ))}
        {run.photos && (
          <>
            <dt>{words.labels.photos}</dt>
            <dd>
              <PhotoRow photos={run.photos} label={words.labels.photos} />
            </dd>
          </>
        )}
      </dl>
    </section>
  );
};
