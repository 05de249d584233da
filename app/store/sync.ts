/** When does this device sync, and what came of it? */
import type { SyncStatus } from './changes.ts';
import type { StoreContext } from './context.ts';
import { clockOffsetIn, cursorIn } from './cursor.ts';
import { deviceSide } from './device-side.ts';
import type { HubClient } from './hub-client.ts';
import { kinds, type Role } from '../../core/records/index.ts';
import type { Membership } from './membership.ts';
import { sendAttachments } from './send-attachments.ts';
import { syncRound } from './sync-round.ts';
import { BACKUP_DAYS_SETTING, TILES_SETTING } from './hub-settings.ts';

export type SyncOutcome =
  | {
      readonly what: 'done';
      readonly pulled: number;
      readonly pushed: number;
      readonly refused: number;
    }
  /** Another round was running, here or in another tab, and did not end in time. */
  | { readonly what: 'busy' }
  | { readonly what: 'no-hub' | 'offline' | 'not-a-hub' | 'revoked' | 'hub-trouble' }
  /** The device could not keep what came, or not read what is to be sent: it has no room, say. */
  | { readonly what: 'device-trouble' };

export interface SyncOptions {
  /** Also those that wait for a better network. */
  readonly attachmentsNow?: boolean;
  /** Not where another round is running: absent, it waits for that one and runs its own. */
  readonly onlyIfFree?: boolean;
}

export interface Syncing {
  sync(options?: SyncOptions): Promise<SyncOutcome>;
  /** What the hub's clock showed more than this device's at the last sync, ms; 0: they agree, or it is not known. */
  clockOffset(): Promise<number>;
  /** Syncs by itself from now on; answers how to stop it. */
  startSyncing(): () => void;
}

const FIRST_SYNC_MS = 2000;
const AFTER_SAVE_MS = 2000;
/** The round that is running may have begun before what is to be sent was saved. */
const AFTER_BUSY_MS = 2000;
/** How long a sync by hand waits for a round that is running. */
const WAIT_MS = 30_000;
/** A tester's phone that lies open has little to hear of; a lead at the desk waits for runs. */
const EVERY_MS: Readonly<Record<Role, number>> = {
  tester: 5 * 60_000,
  specialist: 5 * 60_000,
  lead: 20_000,
};
/** For so long after somebody came to it, a screen hears of a hand-out or a question as soon as a desk hears of a run. */
const LOOKED_AT_MS = 5 * 60_000;

/**
 * How long until the next sync of a screen that is seen.
 * @param lookedMs since it was opened, joined with, or come back to
 */
export const nextSyncMs = (role: Role, lookedMs: number): number =>
  lookedMs < LOOKED_AT_MS ? Math.min(EVERY_MS.lead, EVERY_MS[role]) : EVERY_MS[role];

const FIRST_RETRY_MS = 5000;
const LAST_RETRY_MS = 10 * 60_000;

const LOCK = 'pairlog-sync';

/** Runs `work` while the same runs in no tab; null where it did so all the time, or now with `onlyIfFree`. */
const alone = async <T>(work: () => Promise<T>, onlyIfFree: boolean): Promise<T | null> => {
  const locks = (globalThis.navigator as Navigator | undefined)?.locks;
  if (!locks) return work();
  if (onlyIfFree)
    return locks.request(LOCK, { ifAvailable: true }, (lock) => (lock ? work() : null));
  // AbortSignal.timeout would do, but some browsers that have locks lack it (Safari before 16).
  const waiting = new AbortController();
  const timer = setTimeout(() => waiting.abort(), WAIT_MS);
  let began = false;
  return locks
    .request(LOCK, { signal: waiting.signal }, () => {
      began = true;
      clearTimeout(timer);
      return work();
    })
    .catch((error: unknown) => {
      if (began) throw error;
      return null;
    });
};

/** @param cursorAtStart asked before this page read its first record; undefined where it could not be read */
export const syncing = (
  context: StoreContext,
  member: Membership,
  cursorAtStart: Promise<string | null | undefined> = cursorIn(context).catch(() => undefined),
): Syncing => {
  const { changes } = context;

  let isFirst = true;
  /**
   * A page that was being left may have taken revisions in after this one had read its records, and have
   * ended before it could tell: nothing brings them again, so the first round tells.
   */
  const tellWhatCameUnseen = async () => {
    if (isFirst && (await cursorIn(context)) !== (await cursorAtStart))
      changes.tell({ kinds: new Set(kinds) });
    isFirst = false;
  };

  let asked = false;
  /** Once a start: what the hub can do and which map tiles the group has, kept for when there is no network. */
  const askHub = async (hub: HubClient) => {
    const hello = await hub.hello();
    if (!hello.ok) return;
    asked = true;
    const { tiles, backupDays, encodings } = hello.value;
    const readsGzip = encodings?.includes('gzip') ?? false;
    await context.withDatabase(async (db) => {
      await db.put('settings', tiles ?? null, TILES_SETTING);
      await db.put('settings', backupDays ?? null, BACKUP_DAYS_SETTING);
      await db.put('meta', { readsGzip }, 'hubSaid');
    });
  };

  const round = async (options: SyncOptions, mayComeBack = true): Promise<SyncOutcome> => {
    const session = await member.session();
    const hub = await member.hub();
    if (!session || !hub) return { what: 'no-hub' };
    changes.tell({ sync: { state: 'running' } });
    await tellWhatCameUnseen();
    const scope = session.role === 'lead' ? 'all' : 'mine';
    const outcome = await syncRound(deviceSide(context, session), {
      pull: (cursor, ownWhole) => hub.pull(cursor, scope, ownWhole),
      push: (revisions) => hub.push(revisions),
    });
    if (outcome.ok) {
      if (!asked) await askHub(hub);
      await member.markRevoked(false);
      await member.renewToken();
      if (options.attachmentsNow || context.maySendAttachments())
        if (!(await sendAttachments(context, hub))) return { what: 'offline' };
      const { pulled, pushed, refused } = outcome;
      return { what: 'done', pulled, pushed, refused };
    }
    if (outcome.why !== 'hub-error') return { what: outcome.why };
    if (outcome.code !== 'revoked' && outcome.code !== 'no-token') return { what: 'hub-trouble' };
    // A hub restored from before the token was renewed knows the device by its cookie still.
    if (outcome.code === 'no-token' && mayComeBack) {
      const back = await member.comeBack(session.hub?.url ?? '', '');
      if (back.ok) return round(options, false);
    }
    await member.markRevoked(true);
    return { what: 'revoked' };
  };

  const sync = async (options: SyncOptions = {}): Promise<SyncOutcome> => {
    const own = () =>
      round(options).catch((error: unknown): SyncOutcome => {
        console.error(error);
        return { what: 'device-trouble' };
      });
    const outcome = (await alone(own, options.onlyIfFree ?? false)) ?? { what: 'busy' as const };
    if (outcome.what !== 'busy') {
      const status: SyncStatus =
        outcome.what === 'done'
          ? { state: 'done', atMs: context.now() }
          : { state: outcome.what === 'no-hub' ? 'idle' : outcome.what };
      changes.tell({ sync: status });
    }
    return outcome;
  };

  return {
    sync,
    clockOffset: () => clockOffsetIn(context),
    startSyncing() {
      let timer: ReturnType<typeof setTimeout> | undefined;
      let retryMs = FIRST_RETRY_MS;
      let running = false;
      /** Something was saved or came in during a round, maybe after the last that it sent. */
      let changedMeanwhile = false;
      let stopped = false;
      let lookedAtMs = context.now();
      const later = (ms: number) => {
        clearTimeout(timer);
        // A round that ran when it was stopped plans no other.
        if (stopped) return;
        timer = setTimeout(() => void now(), ms);
      };
      const now = async () => {
        if (running) return later(AFTER_SAVE_MS);
        running = true;
        changedMeanwhile = false;
        try {
          const { what } = await sync({ onlyIfFree: true });
          if (what === 'busy') later(AFTER_BUSY_MS);
          else if (what === 'offline' || what === 'hub-trouble' || what === 'device-trouble') {
            // Jitter, so that a group does not come back all at once.
            later(retryMs * (0.5 + Math.random()));
            retryMs = Math.min(retryMs * 2, LAST_RETRY_MS);
          } else {
            retryMs = FIRST_RETRY_MS;
            const role = (await member.session())?.role ?? 'tester';
            if (changedMeanwhile && (await context.withDatabase((db) => db.count('outbox'))) > 0)
              later(AFTER_SAVE_MS);
            else if (document.visibilityState === 'visible')
              later(nextSyncMs(role, context.now() - lookedAtMs));
          }
        } finally {
          running = false;
        }
      };
      const soon = () => {
        retryMs = FIRST_RETRY_MS;
        later(0);
      };
      const onVisible = () => {
        if (document.visibilityState !== 'visible') return;
        lookedAtMs = context.now();
        soon();
      };
      const stopListening = changes.subscribe((change) => {
        if (!('kinds' in change) || change.kinds.size === 0) return;
        if (running) changedMeanwhile = true;
        else later(AFTER_SAVE_MS);
      });
      window.addEventListener('online', soon);
      window.addEventListener('pageshow', soon);
      // From another window, which covers nothing of this one.
      window.addEventListener('focus', onVisible);
      document.addEventListener('visibilitychange', onVisible);
      // The first screen is drawn first: a tester in a hurry does not wait for the network's business.
      later(FIRST_SYNC_MS);
      return () => {
        stopped = true;
        clearTimeout(timer);
        stopListening();
        window.removeEventListener('online', soon);
        window.removeEventListener('pageshow', soon);
        window.removeEventListener('focus', onVisible);
        document.removeEventListener('visibilitychange', onVisible);
      };
    },
  };
};
