/** What the tester sees first: the pairs in hand, the distance on each, and one large button. */
import { useState } from 'preact/hooks';
import { Button, LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { distanceFigure, formatDistance, formatSize } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { session, store, unsent, useRecords, useStored } from '../parts/state.ts';
import { t } from '../words/index.ts';
import { heldPairs, type HeldPair } from './own-mileage.ts';
import { rankingDue } from './ranking-due.ts';
import { StopNotices } from './stop-notices.tsx';
import { draftKey } from './log/draft-key.ts';

const DAY_MS = 86_400_000;
/** After this many days without a run the app opens on a gentle note. Judgement, no source. */
const DUE_AFTER_DAYS = 4;

const daysSince = (held: HeldPair, nowMs: number): number =>
  Math.floor((nowMs - (held.lastRunMs ?? Date.parse(held.handOut.body.from))) / DAY_MS);

const PairCard = ({ held, only }: { held: HeldPair; only: boolean }) => {
  const words = t().today;
  const { pair, distanceM, runs } = held;
  const { code, sizeMm } = pair.body;
  const id = pair.revision.id;
  const draft = useStored(() => store.draft(draftKey(id)), [], [id]);
  return (
    <section class="sheet" aria-label={code}>
      <div class="row row-apart">
        <h2>{code}</h2>
        <span class="soft">{words.size(formatSize(sizeMm))}</span>
      </div>
      <hr class="stitch" />
      <p class="row">
        <span class="figure">{distanceFigure(distanceM)}</span>
        <span>{settings.value.distance}</span>
      </p>
      <p class="soft">{words.logged(formatDistance(distanceM), runs)}</p>
      {draft !== null && draft !== undefined && (
        <p class="row row-apart">
          {words.draft} <a href={`/log/${id}`}>{words.continue}</a>
        </p>
      )}
      {!only && (
        <LinkButton kind="main" href={`/log/${id}`}>
          {words.logRunIn(code)}
        </LinkButton>
      )}
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
  const [later, setLater] = useState(false);
  const member = session.value?.member;
  const nowMs = Date.now();
  const held =
    pairs && handOuts && runs && member ? heldPairs(member, pairs, handOuts, runs, nowMs) : null;
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
            <PairCard key={one.handOut.revision.id} held={one} only={held.length === 1} />
          ))}
        </>
      )}
      <nav class="row row-apart">
        <a class="button button-quiet" href="/runs">
          {words.today.runs}
        </a>
        <a class="button button-quiet" href="/unsent">
          {waiting > 0 ? words.unsent.some(waiting) : words.unsent.none}
        </a>
      </nav>
      {first && held.length === 1 && (
        <div class="foot-bar">
          <LinkButton kind="main" big href={`/log/${first.pair.revision.id}`}>
            {words.today.logRun}
          </LinkButton>
        </div>
      )}
    </Page>
  );
};
