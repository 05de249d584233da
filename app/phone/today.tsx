/**
 * What the tester sees first. From top to bottom: whether everything is sent; what must be known before a shoe goes
 * on; what was saved just now, or that a run was due; the pairs, the one worn last first and as a picture, with its
 * kilometres; a question and offers, which can wait. The button of the first pair is large and under the thumb. A pair that must not be worn for now says
 * so on its card; a run in it is then no main action.
 */
import { Fragment } from 'preact';
import { standingStop } from '../../core/mileage/index.ts';
import { standingReplies, type RecordId } from '../../core/records/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { distanceFigure, formatDistance, formatSize, wholeDistance } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { useLoaded } from '../parts/loaded.ts';
import { session, store, unsent, useRecords, useStored } from '../parts/state.ts';
import { need, t } from '../words/index.ts';
import { inCardOrder } from './card-order.ts';
import { justSaved } from './just-saved.ts';
import { heldPairs, type HeldPair } from './own-mileage.ts';
import { isAnswered, isOff, type PairCautions } from './pair-off.ts';
import { StopNotices } from './stop-notices.tsx';
import { draftKey } from './log/draft-key.ts';

const loadCare = async () => {
  const [loaded] = await Promise.all([import('./pair-care.tsx'), need('glossary', 'care')]);
  return loaded;
};
/** What makes the screen a pleasure, and what few see: after the first paint. */
const loadOwn = async () => {
  const [loaded] = await Promise.all([import('./own/today-parts.ts'), need('own')]);
  return loaded;
};
/** What may be said of runs and offered, and the number on the icon: after the first paint as well. */
const loadNotes = async () => {
  const [loaded] = await Promise.all([import('./notices/today-notes.tsx'), need('notices')]);
  return loaded;
};
/** What came of the tester's reports: after the first paint, below all that logging needs. */
const loadHeard = async () => {
  const [loaded] = await Promise.all([
    import('./heard/today-heard.tsx'),
    need('glossary', 'own', 'talk'),
  ]);
  return loaded;
};
type OwnParts = Awaited<ReturnType<typeof loadOwn>>;

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

/** Few pairs need it, so it comes when one does. Until then, and where it cannot be fetched, the heading says it. */
const CautionsPart = ({ told, code, off }: Pick<CardPair, 'told' | 'off'> & { code: string }) => {
  const part = useLoaded(loadCare);
  if (part) return <part.PairCare told={told} />;
  if (!off) return null;
  return (
    <Notice tone="danger">
      <h3>{t().stop.title(code)}</h3>
    </Notice>
  );
};

interface CardPair extends HeldPair {
  readonly told: PairCautions;
  /** Pain or damage keeps it from being worn. */
  readonly off: boolean;
  /** A run in it is half filled in. */
  readonly begun: boolean;
  /** What the brief asks of a pair; null: the project is not here yet. */
  readonly targetM: Metres | null;
}

/** The way to log a run in a pair; large for the first one. In a pair that must not be worn it is no main action. */
const LogLink = ({ held, big }: { held: CardPair; big: boolean }) => {
  const words = t().today;
  const { pair, off, begun } = held;
  const { code } = pair.body;
  return (
    <LinkButton kind={off || !big ? 'plain' : 'main'} big={big} href={`/log/${pair.revision.id}`}>
      {begun ? words.goOnIn(code) : off ? words.logEarlierIn(code) : words.logRunIn(code)}
    </LinkButton>
  );
};

/** The pair's kilometres on their way to what the brief asks: as the shoe on the first card, as a line on the others. */
const Progress = ({
  held,
  first,
  own,
}: {
  held: CardPair;
  first: boolean;
  own: OwnParts | null;
}) => {
  const words = t().today;
  const { distanceM, targetM } = held;
  if (targetM === null) return null;
  const share = Math.min(1, distanceM / targetM);
  if (!first)
    return <span class="seam" aria-hidden="true" style={{ '--sewn': `${100 * share}%` }} />;
  const says = words.ofTarget(wholeDistance(targetM));
  return (
    <div class="pair-picture">
      {own && <own.PairShoe distanceM={distanceM} targetM={targetM} label={says} />}
    </div>
  );
};

const PairCard = (props: { held: CardPair; first: boolean; own: OwnParts | null }) => {
  const words = t().today;
  const { held, first } = props;
  const { told, off, begun } = held;
  const { pair, distanceM, targetM, runs } = held;
  const { code, sizeMm } = pair.body;
  const id = pair.revision.id;
  return (
    <section class={off ? 'sheet sheet-off' : 'sheet'} aria-label={code}>
      {(off || isAnswered(told)) && <CautionsPart told={told} off={off} code={code} />}
      <div class={first ? 'pair-card' : 'stack'}>
        {first && <Progress {...props} />}
        <div class="stack">
          <div class="row row-apart">
            <h2>{code}</h2>
            <span class="soft">{words.size(formatSize(sizeMm))}</span>
          </div>
          {begun && <p>{words.draft}</p>}
          <p class="row">
            <span class="figure">{distanceFigure(distanceM)}</span>
            <span>{settings.value.distance}</span>
          </p>
          {!first && <Progress {...props} />}
          {targetM !== null && <p class="soft">{words.ofTarget(wholeDistance(targetM))}</p>}
          <p class="soft small">{words.logged(formatDistance(distanceM), runs)}</p>
          {first && targetM !== null && <p class="soft small">{words.stitch}</p>}
        </div>
      </div>
      {!first && <LogLink held={held} big={false} />}
      <nav class="thirds" aria-label={code}>
        {first && (
          <a class="button button-quiet" href="/runs">
            {words.runs}
          </a>
        )}
        <a class="button button-quiet" href={`/pairs/${id}`}>
          {words.thisPair}
        </a>
        <a class="button button-quiet" href={`/damage/${id}`}>
          {words.damage}
        </a>
      </nav>
    </section>
  );
};

/** Whether everything is sent: plain words where it is, a way to what waits where it is not. */
const Status = () => {
  const words = t().unsent;
  const { revisions = 0, refused = [], damaged = [] } = unsent.value ?? {};
  const waiting = revisions + refused.length + damaged.length;
  const icon =
    waiting > 0 ? 'M12 7v5l3 2M12 3a9 9 0 100 18 9 9 0 000-18' : 'M5 12.5l4.5 4.5L19 7.5';
  return (
    <p class={waiting > 0 ? 'status' : 'status status-done'}>
      <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
        <path d={icon} />
      </svg>
      {waiting > 0 || !session.value?.hub ? (
        <a href="/unsent">{waiting > 0 ? words.some(waiting) : words.asFile}</a>
      ) : (
        words.none
      )}
    </p>
  );
};

export const Today = () => {
  const words = t();
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const runs = useRecords('run');
  const stops = useRecords('stop-use');
  const replies = useRecords('reply');
  const reports = useRecords('damage-report');
  const projects = useRecords('project');
  const begun = useStored(readBegun, ['pair']);
  const member = session.value?.member;
  const nowMs = Date.now();
  const standing = replies && standingReplies(replies);
  const own =
    pairs && handOuts && runs && reports && projects && standing && begun && member
      ? heldPairs(member, pairs, handOuts, runs, nowMs).map((one): CardPair => {
          const id = one.pair.revision.id;
          const told: PairCautions = {
            runs: one.ownRuns,
            reports: reports.filter(({ body }) => body.pair === id),
            replies: standing,
          };
          const targetM =
            projects.find(({ revision }) => revision.id === one.pair.body.project)?.body.brief
              .distanceM ?? null;
          return { ...one, told, off: isOff(told), begun: begun.has(id), targetM };
        })
      : null;
  const held =
    own && stops && begun
      ? inCardOrder(own, {
          begun,
          stopped: new Set(
            own
              .filter(
                ({ off, pair }) => off || standingStop(stops, pair.revision.id, nowMs) !== null,
              )
              .map(({ pair }) => pair.revision.id),
          ),
        })
      : null;
  const first = held?.[0];
  const wearable = held?.filter(({ off }) => !off) ?? [];
  const due = wearable.length > 0 ? Math.min(...wearable.map((one) => daysSince(one, nowMs))) : 0;
  const parts = useLoaded(loadOwn, held !== null);
  const notes = useLoaded(loadNotes, held !== null);
  const heard = useLoaded(loadHeard, held !== null);
  const saved = justSaved.value;
  const question = notes && held && (
    <notes.LeadsQuestion>
      <notes.RankingQuestion held={held} />
    </notes.LeadsQuestion>
  );
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
      <Status />
      <StopNotices />
      {session.value?.revoked && (
        <Notice tone="warn">
          <p>{words.today.revoked}</p>
          <a href="/unsent">{words.unsent.asFile}</a>
        </Notice>
      )}
      {session.value?.role === 'lead' && <LinkButton href="/desk">{words.today.desk}</LinkButton>}
      {parts && held && saved && <parts.SavedCard run={saved} held={held} />}
      {due > DUE_AFTER_DAYS && <Notice>{words.today.due(due)}</Notice>}
      {notes && held && <notes.RunDue saidAlready={due > DUE_AFTER_DAYS} />}
      {held === null ? (
        <p class="soft">{words.loading}</p>
      ) : held.length === 0 ? (
        <p>{words.today.noPairs}</p>
      ) : (
        <>
          <h2 class="hidden-words">{words.today.myPairs}</h2>
          {held.map((one) => (
            <Fragment key={one.handOut.revision.id}>
              <PairCard held={one} first={one === first} own={parts} />
              {one === first && question}
            </Fragment>
          ))}
        </>
      )}
      {!first && question}
      {heard && held && <heard.Heard />}
      {parts && held?.some(({ runs: own }) => own > 0) && <parts.InstallCard />}
      {notes && runs && <notes.Offers runs={runs} />}
      {held?.length === 0 && (
        <a class="button button-quiet" href="/runs">
          {words.today.runs}
        </a>
      )}
      {first && (
        <div class="foot-bar">
          <LogLink held={first} big />
        </div>
      )}
    </Page>
  );
};
