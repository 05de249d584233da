/** Changes: did they work? Two rounds as one story with the findings behind it; a page for each finding. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import type { Hands, ReviewSummary } from '../../../core/review/index.ts';
import { changesHeadline } from '../../../core/headlines/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { p, t, terms } from '../../words/index.ts';
import { movedOf } from '../../words/say-moved.ts';
import type { ChangesSay } from '../../words/places/en/changes.ts';
import { namesIn, useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { FindingList } from '../findings/finding-list.tsx';
import { FindingPage } from '../findings/finding-page.tsx';
import { NewFinding } from '../findings/new-finding.tsx';
import { OpenDamage } from '../findings/open-damage.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import type { ChangesStory } from '../worker/changes-answers.ts';
import { verdictTones } from '../findings/verdict-stamp.tsx';
import { NEW } from '../start/guide.ts';
import { HowChanges } from './how-changes.tsx';
import { ComfortSlopes, FeltSlopes } from './moves.tsx';
import { Questions } from './questions.tsx';
import { roundsOf } from './round-pair.ts';
import './changes.css';
import './findings.css';

export const ChangesPlace = (props: PlaceProps) => {
  const [part, id] = props.rest;
  if (part === 'findings' && id === 'new') return <NewFinding {...props} />;
  if (part === 'findings' && id !== undefined)
    return <FindingPage {...props} id={id as RecordId} />;
  return (
    <>
      <Story {...props} />
      <FindingList {...props} />
    </>
  );
};

const sayChanges = (props: TabProps, story: ChangesStory | null): ChangesSay => {
  const say = sayOf(props);
  return { ...say, moved: movedOf(story?.look.felt ?? [], terms(), say) };
};

const Story = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().changes;
  const [chosen, setChosen] = useState<{ earlier?: RecordId; later?: RecordId }>({});
  const [hands, setHands] = useState<Hands>('all');
  const { earlier, later, before } = roundsOf(review.rounds, chosen);
  const answer = useWork(
    async (desk) => ({
      story:
        earlier && later
          ? await desk.changes(review.project.id, earlier.id, later.id, hands)
          : null,
    }),
    records,
    [review.project.id, earlier?.id, later?.id, hands],
  );
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { story } = answer;
  const headline = words.headline(
    story?.headline ?? changesHeadline(null),
    sayChanges(props, story),
  );
  if (!story || !earlier || !later)
    return (
      <>
        <PlaceHead
          headline={headline}
          actions={
            <LinkButton href={linksOf(review.project.id).place('rounds', NEW)}>
              {p().rounds.add}
            </LinkButton>
          }
        />
        <OpenDamage {...props} />
      </>
    );
  const hasRuns = story.headline.case !== 'nobody-ran';
  return (
    <>
      <PlaceHead
        headline={headline}
        sub={<Who {...props} story={story} hands={hands} onHands={setHands} />}
        stamp={
          hasRuns && (
            <Mark tone={verdictTones[story.stamp]} title={words.stampMeaning[story.stamp]}>
              {words.stamps[story.stamp]}
            </Mark>
          )
        }
        actions={
          <span class="round-pair no-print">
            <RoundSelect
              label={words.later}
              value={later.id}
              rounds={review.rounds.slice(1)}
              onChange={(id) => setChosen({ later: id })}
            />
            <span>{words.against}</span>
            <RoundSelect
              label={words.earlier}
              value={earlier.id}
              rounds={before}
              onChange={(id) => setChosen((now) => ({ later: now.later ?? later.id, earlier: id }))}
            />
            <Button kind="quiet" onClick={() => window.print()}>
              {words.print}
            </Button>
          </span>
        }
      />
      <OpenDamage {...props} />
      <div class="changes-top">
        {hasRuns && (
          <div class="changes-pictures">
            <FeltSlopes {...props} look={story.look} />
            <ComfortSlopes {...props} look={story.look} />
          </div>
        )}
        <Questions {...props} look={story.look} />
      </div>
      {hasRuns && <HowChanges {...props} look={story.look} />}
    </>
  );
};

/** Who wore both rounds, and who knew what was changed: then blind hand-outs alone can be read. */
const Who = (
  props: TabProps & {
    readonly story: ChangesStory;
    readonly hands: Hands;
    readonly onHands: (hands: Hands) => void;
  },
) => {
  const { look } = props.story;
  const { testers, knew, earlier, later } = look.comparison;
  const words = p().changes;
  const names = namesIn(props.review, props.records);
  const who = [...new Set([...knew.earlier, ...knew.later])];
  return (
    <>
      {words.wore(
        testers.both,
        names.round(earlier),
        testers.onlyEarlier,
        names.round(later),
        testers.onlyLater,
      )}
      {who.length > 0 && (
        <>
          {' '}
          <b>{words.knew(sayOf(props).testers(who))}</b>{' '}
          <select
            class="which-pairs no-print"
            aria-label={words.hands}
            value={props.hands}
            onChange={(event) => props.onHands(event.currentTarget.value as Hands)}
          >
            <option value="all">{words.allHands}</option>
            <option value="blind-only">{words.blindHands}</option>
          </select>
        </>
      )}
    </>
  );
};

const RoundSelect = (props: {
  readonly label: string;
  readonly value: RecordId;
  readonly rounds: ReviewSummary['rounds'];
  readonly onChange: (id: RecordId) => void;
}) => (
  <select
    class="which-pairs"
    aria-label={props.label}
    value={props.value}
    onChange={(event) => props.onChange(event.currentTarget.value as RecordId)}
  >
    {props.rounds.map(({ id, name }) => (
      <option key={id} value={id}>
        {name}
      </option>
    ))}
  </select>
);
