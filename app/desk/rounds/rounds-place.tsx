/** The rounds: what each changed, its blueprint, its samples, and how it stands; a page for each. */
import type { RecordId } from '../../../core/records/index.ts';
import { roundsHeadline, stampOf } from '../../../core/headlines/index.ts';
import type { HoldWord } from '../../../core/wear/index.ts';
import { formatSize } from '../../parts/format.ts';
import { p, t, terms } from '../../words/index.ts';
import { changeTitle } from '../../words/say-change.ts';
import { useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { PairForm, PairsForm } from '../pairs/pair-forms.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { NEW } from '../start/guide.ts';
import { RoundBlueprint } from './round-blueprint.tsx';
import { RoundForm } from './round-form.tsx';
import './rounds.css';

/** Of more pairs only the first are named. */
const MOST_PAIRS = 12;

const ownSessions = ({ 'fit-session': all }: TabProps['records'], project: RecordId): number =>
  all.filter(({ body }) => body.project === project).length;

type Reviewed = TabProps['review']['rounds'][number];

export const RoundsPlace = (props: PlaceProps) => {
  const { review, records, rest } = props;
  const isNew = rest[0] === NEW;
  const id = isNew ? undefined : rest[0];
  const words = p().rounds;
  const links = linksOf(review.project.id);
  const verdicts = useWork((desk) => desk.verdicts(review.project.id), records, [
    review.project.id,
  ]);
  const wordOf = (round: RecordId) => verdicts?.find((one) => one.round === round)?.word ?? null;
  const only = review.rounds.find((round) => round.id === id);
  if (id !== undefined && !only) return <PlaceHead headline={t().notFound} />;
  const upTo = only ? review.rounds.filter(({ order }) => order <= only.order) : review.rounds;
  const last = review.rounds.at(-1);
  const like = records.round.find(({ revision }) => revision.id === (only ?? last)?.id)?.body;
  const duplicate = like && <RoundForm {...props} like={like} />;
  const title = words.headline(
    roundsHeadline({ rounds: upTo, pairs: review.pairs }),
    sayOf(props),
    (part) => terms().parts[part].name,
  );
  if (only)
    return (
      <>
        <PlaceHead
          crumbs={[{ words: words.title, href: links.place('rounds') }, { words: only.name }]}
          headline={title}
        />
        <RoundCard {...props} round={only} word={wordOf(only.id)} />
        <RoundBlueprint {...props} round={only.id} />
        <div class="forms-row no-print">{duplicate}</div>
      </>
    );
  return (
    <>
      <PlaceHead
        headline={title}
        sub={
          <>
            {review.rounds.length === 0
              ? words.enough
              : words.sub(review.rounds.length, review.pairs.length)}{' '}
            <a href={links.place('brief')}>{words.brief}</a>{' '}
            <a href={links.place('tables')}>{p().tables.title}</a>{' '}
            <a href={links.place('fitting')}>
              {p().fitting.link(ownSessions(records, review.project.id))}
            </a>
          </>
        }
      />
      <ol class="round-list">
        {review.rounds.map((round) => (
          <li key={round.id}>
            <RoundCard {...props} round={round} word={wordOf(round.id)} />
          </li>
        ))}
      </ol>
      <div class="forms-row">
        {duplicate}
        {/* Of a shoe without rounds there is nothing else to do here. */}
        <RoundForm {...props} isOpen={isNew || review.rounds.length === 0} />
      </div>
    </>
  );
};

const RoundCard = (
  props: TabProps & { readonly round: Reviewed; readonly word: HoldWord | null },
) => {
  const { round, word, review, records } = props;
  const links = linksOf(review.project.id);
  const record = records.round.find(({ revision }) => revision.id === round.id);
  const isFirst = review.rounds[0]?.id === round.id;
  return (
    <section class="paper round-row" aria-label={round.name}>
      <header>
        <h2>
          <a href={links.round(round.id)}>{round.name}</a>
        </h2>
        <span class="soft">{terms().stages[round.stage]}</span>
        {word !== null && round.size.runs > 0 && <Stamp word={stampOf(word)} />}
        {!isFirst && round.size.runs > 0 && (
          <a href={links.place('changes')}>{p().rounds.compare}</a>
        )}
      </header>
      <div>
        <ChangeList {...props} />
        <p class="soft small">{record && drawnInWords(record.body)}</p>
      </div>
      <Samples {...props} />
      <div class="forms-row">
        <PairForm {...props} round={round.id} />
        <PairsForm {...props} round={round.id} />
        {record && <RoundForm {...props} of={record} />}
      </div>
    </section>
  );
};

const ChangeList = (props: TabProps & { readonly round: Reviewed }) => {
  const { round } = props;
  const words = p().rounds;
  const speaker = speakerOf(props);
  if (round.changes.length === 0) return <p class="soft">{words.nothingChanged}</p>;
  return (
    <ul class="plain-list">
      {round.changes.map(({ part, what, mends }, at) => (
        <li key={`${at} ${part}`}>
          {changeTitle({ part, what }, speaker)}
          {mends && (
            <span class="soft">{` (${words.mends(
              mends.zone === undefined
                ? terms().kinds[mends.kind].name
                : p().frame.felt(terms().kinds[mends.kind].name, terms().zones[mends.zone].name),
            )})`}</span>
          )}
        </li>
      ))}
    </ul>
  );
};

/** How much of a blueprint there is, the foam, the last, the layers. */
const drawnInWords = ({
  blueprint,
  foam,
  last,
  layers,
}: TabProps['records']['round'][number]['body']): string => {
  const words = p().rounds;
  return [
    words.dimensions(blueprint.length),
    foam && words.foam(terms().foams[foam]),
    last && words.last(last.name),
    layers && layers.length > 0 && words.layers(layers.length),
  ]
    .filter(Boolean)
    .join(' · ');
};

const Samples = ({ review, round }: TabProps & { readonly round: Reviewed }) => {
  const words = p().rounds;
  const links = linksOf(review.project.id);
  const pairs = review.pairs.filter((pair) => pair.round === round.id);
  return (
    <p>
      {words.samples(pairs.length)}{' '}
      {pairs.slice(0, MOST_PAIRS).map(({ id, code, sizeMm }) => (
        <span key={id} class="sample">
          <a href={links.pair(id)}>{code}</a>
          <span class="soft small">{` ${formatSize(sizeMm)} `}</span>
        </span>
      ))}
      {pairs.length > MOST_PAIRS && ` ${words.more(pairs.length - MOST_PAIRS)}`}
    </p>
  );
};
