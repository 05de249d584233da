/**
 * What has to do with the hub, as the page has it: the first screen is drawn without, so its files are fetched when
 * they are first asked for. Where they cannot be, that is a network that is not there.
 */
import type { StoreContext } from './context.ts';
import { clockOffsetIn, cursorIn } from './cursor.ts';
import type { Membership } from './membership.ts';
import type { Session } from './session.ts';
import type { Syncing } from './sync.ts';

const RETRY_MS = 5000;
const offline = { ok: false, why: 'offline' } as const;

export const hubLater = (context: StoreContext): Membership & Syncing => {
  // Asked before this page reads its first record.
  const cursorAtStart = cursorIn(context).catch(() => undefined);
  let made: Promise<Membership & Syncing> | null = null;
  const parts = (): Promise<Membership & Syncing> => {
    made ??= import('./hub-parts.ts').then(({ membership, syncing }) => {
      const member = membership(context);
      return { ...member, ...syncing(context, member, cursorAtStart) };
    });
    made.catch(() => (made = null));
    return made;
  };
  const partsOrNull = () =>
    parts().catch(() => {
      context.changes.tell({ sync: { state: 'offline' } });
      return null;
    });
  return {
    session: () =>
      context.withDatabase(
        async (db) => ((await db.get('meta', 'session')) as Session | undefined) ?? null,
      ),
    startGroup: async (name) => (await parts()).startGroup(name),
    invited: async (...words) => (await partsOrNull())?.invited(...words) ?? null,
    join: async (...words) => (await partsOrNull())?.join(...words) ?? offline,
    comeBack: async (...words) => (await partsOrNull())?.comeBack(...words) ?? offline,
    markRevoked: async (revoked) => (await parts()).markRevoked(revoked),
    hub: async () => (await partsOrNull())?.hub() ?? null,
    renewToken: async () => (await parts()).renewToken(),
    device: async () => (await parts()).device(),
    sync: async (options) => (await partsOrNull())?.sync(options) ?? { what: 'offline' },
    // Read without the parts: a clock is asked about offline too.
    clockOffset: () => clockOffsetIn(context),
    startSyncing() {
      let timer: ReturnType<typeof setTimeout> | undefined;
      let stop: (() => void) | undefined;
      let stopped = false;
      const begin = async () => {
        const found = await partsOrNull();
        if (stopped) return;
        if (found) stop = found.startSyncing();
        else timer = setTimeout(() => void begin(), RETRY_MS);
      };
      void begin();
      return () => {
        stopped = true;
        clearTimeout(timer);
        stop?.();
      };
    },
  };
};
