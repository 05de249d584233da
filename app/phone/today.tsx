/**
 * What the tester sees first. From top to bottom: what must be known before a shoe goes on; a question that comes
 * once a fortnight and can wait; the pairs, each with its way to log a run before anything else of it; what is only
 * on this phone; the runs so far. With one pair in hand its button is large and under the thumb.
 */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../core/records/index.ts';
import { Button, LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { distanceFigure, formatDistance, formatSize } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { session, store, unsent, useRecords, useStored } from '../parts/state.ts';
import { t } from '../words/index.ts';
import { inCardOrder } from './card-order.ts';
import { heldPairs, standingStop, type HeldPair } from './own-mileage.ts';
import { rankingDue } from './ranking-due.ts';
import { StopNotices } from './stop-notices.tsx';
import { draftKey } from './log/draft-key.ts';

const DAY_MS = 86_400_000;
/** After this many days without a run the app opens on a gentle note. Judgement, no source. */
const DUE_AFTER_DAYS = 4;

const daysSince = (held: HeldPair, nowMs: number): number =>
  Math.floor((nowMs - (held.lastRunMs ?? Date.parse(held.handOut.body.from))) / DAY_MS);

/** The pairs in which a run is half filled in. */
const readBegun = async (): Promise<ReadonlySet<RecordId>> => {
  const ids = (await store.list('pair')).map(({ revision }) => revision.id);
  const drafts = await Promise.all(ids.map((id) => store.draft(draftKey(id))));
  return new Set(ids.filter((_, at) => drafts[at] !== null && drafts[at] !== undefined));
};

const PairCard = (props: { held: HeldPair; only: boolean; begun: boolean }) => {
  const words = t().today;
  const { held, only, begun } = props;
  const { pair, distanceM, runs } = held;
  const { code, sizeMm } = pair.body;
  const id = pair.revision.id;
  return (
    <section class="sheet" aria-label={code}>
      <div class="row row-apart">
        <h2>{code}</h2>
        <span class="soft">{words.size(formatSize(sizeMm))}</span>
      </div>
      <hr class="stitch" />
      {begun && <p>{words.draft}</p>}
      {!only && (
        <LinkButton kind="main" href={`/log/${id}`}>
          {begun ? words.goOnIn(code) : words.logRunIn(code)}
        </LinkButton>
      )}
      <p class="row">
        <span class="figure">{distanceFigure(distanceM)}</span>
        <span>{settings.value.distance}</span>
      </p>
      <p class="soft">{words.logged(formatDistance(distanceM), runs)}</p>
      <a class="button button-quiet" href={`/damage/${id}`}>
        {words.damage}
      </a>
    </section>
  );
};

export const Today = () => {
  const words = t();
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const runs = useRecords('run');
  const rankings = useRecords('ranking');
  const stops = useRecords('stop-use');
  const begun = useStored(readBegun, ['pair']);
  const [later, setLater] = useState(false);
  const member = session.value?.member;
  const nowMs = Date.now();
  const held =
    pairs && handOuts && runs && stops && begun && member
      ? inCardOrder(heldPairs(member, pairs, handOuts, runs, nowMs), {
          begun,
          stopped: new Set(
            pairs
              .map(({ revision }) => revision.id)
              .filter((id) => standingStop(stops, id, nowMs) !== null),
          ),
        })
      : null;
  const first = held?.[0];
  const question = held && rankings && !later ? rankingDue(held, rankings, nowMs) : null;
  const due = held && held.length > 0 ? Math.min(...held.map((one) => daysSince(one, nowMs))) : 0;
  const { revisions = 0, refused = [], damaged = [] } = unsent.value ?? {};
  const waiting = revisions + refused.length + damaged.length;
  return (
    <Page
      title={words.today.title}
      aside={
        <a class="back" href="/settings" aria-label={words.today.settings}>
          <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
            <path d="M4 7h9M17 7h3M4 17h3M11 17h9M15 4.5v5M9 14.5v5" />
          </svg>
        </a>
      }
    >
      <StopNotices />
      {session.value?.revoked && (
        <Notice tone="warn">
          <p>{words.today.revoked}</p>
          <a href="/unsent">{words.unsent.asFile}</a>
        </Notice>
      )}
      {session.value?.role === 'lead' && <LinkButton href="/desk">{words.today.desk}</LinkButton>}
      {held && due > DUE_AFTER_DAYS && <Notice>{words.today.due(due)}</Notice>}
      {question && (
        <Notice>
          <p>{words.rank.ask}</p>
          <div class="row">
            <LinkButton href={`/rank/${question.project}`}>{words.rank.answer}</LinkButton>
            <Button kind="quiet" onClick={() => setLater(true)}>
              {words.rank.later}
            </Button>
          </div>
        </Notice>
      )}
      {held === null ? (
        <p class="soft">{words.loading}</p>
      ) : held.length === 0 ? (
        <p>{words.today.noPairs}</p>
      ) : (
        <>
          <h2 class="hidden-words">{words.today.myPairs}</h2>
          {held.map((one) => (
            <PairCard
              key={one.handOut.revision.id}
              held={one}
              only={held.length === 1}
              begun={begun?.has(one.pair.revision.id) ?? false}
            />
          ))}
        </>
      )}
      <nav class="row row-apart">
        <a class="button button-quiet" href="/unsent">
          {waiting > 0 ? words.unsent.some(waiting) : words.unsent.none}
        </a>
        <a class="button button-quiet" href="/runs">
          {words.today.runs}
        </a>
      </nav>
      {first && held.length === 1 && (
        <div class="foot-bar">
          <LinkButton kind="main" big href={`/log/${first.pair.revision.id}`}>
            {begun?.has(first.pair.revision.id)
              ? words.today.goOnIn(first.pair.body.code)
              : words.today.logRun}
          </LinkButton>
        </div>
      )}
    </Page>
  );
};
