/** The brief: for whom and for what the shoe is made, what is allowed, what a pair must keep; and its archive. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Brief, Limit, Project, RecordOf } from '../../../core/records/index.ts';
import { briefHeadline } from '../../../core/headlines/index.ts';
import { unitsOf } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { formatDate, formatNumber, formatSetPercent } from '../../parts/format.ts';
import { locale, p, terms } from '../../words/index.ts';
import { questionName } from '../../words/say-question.ts';
import { placeName } from '../../words/say-place.ts';
import type { PlaceProps, TabProps } from '../desk-state.ts';
import { OpenForm, saveFromForm } from '../parts/form-parts.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf, newShoe } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { bringBack, putAway } from './archive.ts';
import { ProjectForm } from './project-form.tsx';
import './rounds.css';

export const BriefPlace = (props: PlaceProps) => {
  const { records, review } = props;
  const words = p().brief;
  const [isOpen, setOpen] = useState(false);
  const project = records.project.find(({ revision }) => revision.id === review.project.id);
  if (!project) return null;
  const { brief, archived } = project.body;
  const close = () => setOpen(false);
  const save = async (body: Project, done: () => Promise<void>) => {
    const saved = await saveFromForm('project', body, project.revision.id);
    if (typeof saved === 'string') return saved;
    await done();
    close();
    return null;
  };
  const latest = review.rounds.at(-1)?.id;
  const drawn = records.round.find(({ revision }) => revision.id === latest)?.body.blueprint ?? [];
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.sheet, href: linksOf(review.project.id).place('sheet') },
          { words: words.title },
        ]}
        headline={words.headline(briefHeadline(brief), sayOf(props))}
        sub={review.project.name}
        stamp={
          archived !== undefined && (
            <Mark tone="plain">{words.archivedSince(formatDate(archived))}</Mark>
          )
        }
        actions={!isOpen && <Button onClick={() => setOpen(true)}>{words.edit}</Button>}
      />
      {isOpen ? (
        <OpenForm label={words.edit} close={close}>
          <ProjectForm
            from={project.body}
            blueprint={drawn}
            measured={records['bench-check'].flatMap(({ body }) =>
              body.project === review.project.id ? body.readings : [],
            )}
            keptAs={{ key: `project ${project.revision.id}`, of: project.revision.stamp }}
            save={save}
          />
        </OpenForm>
      ) : (
        <BriefWords {...props} brief={brief} />
      )}
      <p class="no-print">
        <LinkButton href={newShoe({ like: review.project.id })}>
          {p().start.like.open(review.project.name)}
        </LinkButton>
      </p>
      <Archive project={project} />
    </>
  );
};

const BriefWords = (props: TabProps & { readonly brief: Brief }) => {
  const { brief } = props;
  const words = p().brief;
  const list = (some: readonly string[]) => new Intl.ListFormat(locale()).format(some);
  const feet = [
    brief.feet?.lengthMm && words.lengths(...mm(brief.feet.lengthMm)),
    brief.feet?.widthMm && words.widths(...mm(brief.feet.widthMm)),
  ].filter((one) => one !== undefined);
  const rows: readonly (readonly [string, ComponentChildren])[] = [
    [words.runner, terms().runners[brief.runner]],
    [words.use, terms().uses[brief.use]],
    [words.surfaces, list(brief.surfaces.map((one) => terms().surfaces[one]))],
    [words.distance, roundDistance(brief.distanceM)],
    [words.allowed, words.ofRuns(formatSetPercent(brief.allowedRate.complaint))],
    [words.allowedPain, words.ofRuns(formatSetPercent(brief.allowedRate.pain))],
    [words.feet, feet.length > 0 ? list(feet) : words.anyFeet],
    [
      words.limits,
      brief.limits.length === 0 ? (
        words.noLimits
      ) : (
        <ul class="plain-list">
          {brief.limits.map((limit, at) => (
            <li key={at}>{limitInWords(limit, props)}</li>
          ))}
        </ul>
      ),
    ],
    [
      words.questions,
      list(
        [...brief.attributes, ...(brief.alsoAsked ?? [])].map((one) => questionName(terms(), one)),
      ),
    ],
    ...(brief.words === undefined ? [] : [[words.words, brief.words] as const]),
    [words.tellTesters, words.tells[brief.tellTesters === false ? 'no' : 'yes']],
    ...(brief.forTesters === undefined ? [] : [[words.forTesters, brief.forTesters] as const]),
  ];
  return (
    <dl class="paper brief-words">
      {rows.map(([title, said]) => [
        <dt key={`${title} title`}>{title}</dt>,
        <dd key={title}>{said}</dd>,
      ])}
    </dl>
  );
};

const mm = ([from, to]: readonly [number, number]): [string, string] => [
  formatNumber(from, 1),
  formatNumber(to, 1),
];

/** Such as "Energy returned, centre of the heel: at least 75 % of the same pair when new". */
const limitInWords = ({ measure, site, bound, basis, value }: Limit, props: TabProps): string => {
  const words = p().brief;
  const speaker = speakerOf(props);
  const place =
    site === undefined
      ? speaker.desk.joined.clauses([terms().measures[measure], words.everySite])
      : placeName({ measure, site }, speaker);
  const size =
    basis === 'share-of-new'
      ? words.ofNew(formatSetPercent(value))
      : `${formatNumber(value, 2)} ${terms().units[unitsOf[measure][0]]}`;
  return speaker.desk.joined.of(place, `${words.bounds[bound]} ${size}`);
};

/** Put away, or brought back: what happens to its pairs is said beside the button. */
const Archive = ({ project }: { readonly project: RecordOf<'project'> }) => {
  const words = p().brief;
  return (
    <section class="put-away no-print">
      {project.body.archived === undefined ? (
        <>
          <Button onClick={() => void putAway(project, Date.now())}>{words.putAway}</Button>
          <p class="soft small">{words.putAwayHint}</p>
        </>
      ) : (
        <Button onClick={() => void bringBack(project)}>{words.bringBack}</Button>
      )}
    </section>
  );
};
