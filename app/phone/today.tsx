/**
 * What the tester sees first. From top to bottom: what must be known before a shoe goes on; a question that comes
 * once a fortnight and can wait, or a reminder; the pairs, each with its way to log a run before anything else of it; an
 * offer that is made once; what is only on this phone; the runs so far. With one pair in hand its button is large and under the thumb. A pair that must not
 * be worn for now says so on its card; a run in it is then no main action.
 */
import { useEffect, useState } from 'preact/hooks';
import { standingStop } from '../../core/mileage/index.ts';
import { standingReplies, type RecordId } from '../../core/records/index.ts';
import { LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { distanceFigure, formatDistance, formatSize } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { session, store, unsent, useRecords, useStored } from '../parts/state.ts';
import { need, t } from '../words/index.ts';
import { inCardOrder } from './card-order.ts';
import { heldPairs, type HeldPair } from './own-mileage.ts';
import { isAnswered, isOff, type PairCautions } from './pair-off.ts';
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

/** What this screen stands without: null until it is fetched, and where it cannot be. */
const useLater = <T,>(load: () => Promise<T>): T | null => {
  const [part, setPart] = useState<T | null>(null);
  useEffect(() => {
    load().then(
      (loaded) => setPart(() => loaded),
      () => undefined,
    );
  }, []);
  return part;
};

const loadCare = async () => {
  const [part] = await Promise.all([import('./pair-care.tsx'), need('glossary', 'care')]);
  return part;
};
const loadNotes = async () => {
  const [part] = await Promise.all([import('./notices/today-notes.tsx'), need('notices')]);
  return part;
};

/** Few pairs need it, so it comes when one does. Until then, and where it cannot be fetched, the heading says it. */
const CautionsPart = ({ told, code, off }: Pick<CardPair, 'told' | 'off'> & { code: string }) => {
  const part = useLater(loadCare);
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
}

/** The way to log a run in a pair; large where it is the only one. In a pair that must not be worn it is no main action. */
const LogLink = ({ held, only }: { held: CardPair; only: boolean }) => {
  const words = t().today;
  const { pair, off, begun } = held;
  const { code } = pair.body;
  return (
    <LinkButton kind={off ? 'plain' : 'main'} big={only} href={`/log/${pair.revision.id}`}>
      {begun
        ? words.goOnIn(code)
        : off
          ? words.logEarlierIn(code)
          : only
            ? words.logRun
            : words.logRunIn(code)}
    </LinkButton>
  );
};

const PairCard = ({ held, only }: { held: CardPair; only: boolean }) => {
  const words = t().today;
  const { told, off, begun } = held;
  const { pair, distanceM, runs } = held;
  const { code, sizeMm } = pair.body;
  const id = pair.revision.id;
  return (
    <section class={off ? 'sheet sheet-off' : 'sheet'} aria-label={code}>
      <div class="row row-apart">
        <h2>{code}</h2>
        <span class="soft">{words.size(formatSize(sizeMm))}</span>
      </div>
      <hr class="stitch" />
      {(off || isAnswered(told)) && <CautionsPart told={told} off={off} code={code} />}
      {begun && <p>{words.draft}</p>}
      {!only && <LogLink held={held} only={false} />}
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
  const stops = useRecords('stop-use');
  const replies = useRecords('reply');
  const reports = useRecords('damage-report');
  const begun = useStored(readBegun, ['pair']);
  const notes = useLater(loadNotes);
  const member = session.value?.member;
  const nowMs = Date.now();
  const standing = replies && standingReplies(replies);
  const own =
    pairs && handOuts && runs && reports && standing && begun && member
      ? heldPairs(member, pairs, handOuts, runs, nowMs).map((one): CardPair => {
          const id = one.pair.revision.id;
          const told: PairCautions = {
            runs: one.ownRuns,
            reports: reports.filter(({ body }) => body.pair === id),
            replies: standing,
          };
          return { ...one, told, off: isOff(told), begun: begun.has(id) };
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
      {due > DUE_AFTER_DAYS && <Notice>{words.today.due(due)}</Notice>}
      {notes && held && <notes.NotesBefore held={held} saidAlready={due > DUE_AFTER_DAYS} />}
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
        <a class="button button-quiet" href="/unsent">
          {waiting > 0 ? words.unsent.some(waiting) : words.unsent.none}
        </a>
        <a class="button button-quiet" href="/runs">
          {words.today.runs}
        </a>
      </nav>
      {notes && runs && <notes.NotesAfter runs={runs} />}
      {first && held.length === 1 && (
        <div class="foot-bar">
          <LogLink held={first} only />
        </div>
      )}
    </Page>
  );
};
