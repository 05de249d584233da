/** A new shoe: its brief from nothing, or as another shoe has it, with what that one's latest round is built like. */
import { useLocation } from 'preact-iso';
import type { Project, RecordId, Round } from '../../../core/records/index.ts';
import { nextStep } from '../../../core/review/index.ts';
import { projectLike } from '../../drafts/project.ts';
import { firstRoundLike } from '../../drafts/round.ts';
import { store } from '../../parts/state.ts';
import { d, p, terms } from '../../words/index.ts';
import { PlaceHead } from '../frame/place.tsx';
import { addressOf, newShoe, type Route } from '../frame/route.ts';
import { saveAllFromForm } from '../parts/form-parts.tsx';
import { addressOfStep } from '../start/guide.ts';
import { nothingDone, StartStrip } from '../start/start-strip.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';
import { ProjectForm } from './project-form.tsx';
import './rounds.css';

/** Of more shoes only the latest are offered to begin from. */
const MOST_SHOES = 6;

const latestRound = (records: DeskRecords, project: RecordId): Round | null =>
  records.round
    .map(({ body }) => body)
    .filter((body) => body.project === project)
    .sort((a, b) => a.order - b.order)
    .at(-1) ?? null;

/** What the new shoe gets of the other, and what stays there, before anything is saved. */
const Taken = ({ from, round }: { readonly from: Project; readonly round: Round | null }) => {
  const words = p().start.like;
  const parts = round && [
    ...(round.foam ? [words.foam(terms().foams[round.foam])] : []),
    ...(round.blueprint.length > 0 ? [words.dimensions(round.blueprint.length)] : []),
    ...(round.last ? [words.last(round.last.name)] : []),
    ...(round.layers?.length ? [words.layers(round.layers.length)] : []),
  ];
  return (
    <dl class="paper brief-words">
      <dt>{words.taken}</dt>
      <dd>
        <ul class="plain-list">
          <li>{words.brief(from.brief.limits.length)}</li>
          <li>{round && parts ? words.round(round.name, parts) : words.noRound}</li>
        </ul>
      </dd>
      <dt>{words.notTaken}</dt>
      <dd>{words.not}</dd>
    </dl>
  );
};

/** Other shoes to begin from. */
const AsAnother = ({ records }: { readonly records: DeskRecords }) => {
  const words = p().start.like;
  const shoes = records.project.toReversed().slice(0, MOST_SHOES);
  if (shoes.length === 0) return null;
  return (
    <p class="row">
      {shoes.map(({ revision: { id }, body }) => (
        <a key={id} href={newShoe({ like: id })}>
          {words.open(body.name)}
        </a>
      ))}
    </p>
  );
};

export const NewShoe = (props: {
  readonly records: DeskRecords;
  readonly route: Extract<Route, { at: 'new' }>;
}) => {
  const { records } = props;
  const { like, tables = false } = props.route;
  const words = p().start;
  const { route } = useLocation();
  const other = records.project.find(({ revision }) => revision.id === like)?.body ?? null;
  const round = other && like ? latestRound(records, like) : null;
  const known = {
    ...nothingDone,
    done: { ...nothingDone.done, testers: records.tester.length > 0 },
  };
  const save = async (body: Project, done: () => Promise<void>): Promise<string | null> => {
    const id = await store.newId();
    const trouble = await saveAllFromForm([
      { kind: 'project', id, body },
      ...(round
        ? [{ kind: 'round', body: firstRoundLike(round, id, d().rounds.nth(1)) } as const]
        : []),
    ]);
    if (trouble !== null) return trouble;
    await done();
    const start = { ...known, done: { ...known.done, brief: true, round: round !== null } };
    const next = nextStep(start);
    route(tables || next === null ? addressOf(id, 'tables') : addressOfStep(id, next, start), true);
    return null;
  };
  return (
    <>
      <StartStrip start={known} project={null} place="brief" rest={['new']} />
      <PlaceHead
        headline={other ? words.like.headline(other.name) : words.steps.brief.ask}
        sub={tables ? words.from.tableNext : words.enough}
      />
      {other ? <Taken from={other} round={round} /> : <AsAnother records={records} />}
      <ProjectForm
        key={like}
        from={other && projectLike(other)}
        blueprint={round?.blueprint ?? []}
        keptAs={{ key: like ? `new project as ${like}` : 'new project' }}
        save={save}
      />
    </>
  );
};
