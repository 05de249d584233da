/** How does this device become a member of a group, and which hub does it speak to? */
import {
  newClock,
  RENEW_TOKEN_AFTER_MS,
  type Clock,
  type DeviceId,
  type ErrorCode,
  type Role,
} from '../../core/records/index.ts';
import { sessionChange } from './changes.ts';
import type { StoreContext } from './context.ts';
import { createHubClient, type HubClient } from './hub-client.ts';
import { done, type Outcome } from './outcome.ts';
import type { Session } from './session.ts';
import { newDevice, newId } from './new-ids.ts';

export type JoinProblem =
  { readonly why: 'offline' | 'not-a-hub' } | { readonly why: 'refused'; readonly code: ErrorCode };

export interface Invited {
  readonly groupName: string;
  readonly role: Role;
  /** What the group calls the tester; null for leads and specialists, or not known. */
  readonly tester: string | null;
}

export interface Membership {
  session(): Promise<Session | null>;
  /** A lead starts a group without a hub. */
  startGroup(groupName: string): Promise<Session>;
  /** What a code would make of this device, before it joins; null where nobody can say. */
  invited(hubUrl: string, code: string): Promise<Invited | null>;
  /** May be repeated with the same code: a join whose answer was lost is the same join. */
  join(hubUrl: string, code: string, deviceName: string): Promise<Outcome<Session, JoinProblem>>;
  /** A device that was cleared becomes a member again without a code, where the hub still knows it. */
  comeBack(hubUrl: string, deviceName: string): Promise<Outcome<Session, JoinProblem>>;
  /** Marks the session as no longer known to the hub, or as known again. Nothing is taken away. */
  markRevoked(revoked: boolean): Promise<void>;
  hub(): Promise<HubClient | null>;
  /** Renews a token that has been in use for long. Safe to stop at any await and to run again. */
  renewToken(): Promise<void>;
  device(): Promise<DeviceId>;
}

const base64url = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

export const membership = (context: StoreContext): Membership => {
  const { withDatabase, now, random, fetchFrom, changes } = context;

  const session = () =>
    withDatabase(async (db) => ((await db.get('meta', 'session')) as Session | undefined) ?? null);

  const device = () =>
    withDatabase(async (db) => {
      const tx = db.transaction('meta', 'readwrite');
      const clock =
        ((await tx.store.get('clock')) as Clock | undefined) ?? newClock(newDevice(context));
      await tx.store.put(clock, 'clock');
      await tx.done;
      return clock.device;
    });

  /** The hub has a device of somebody else under this one's id: a copy of its storage, say. */
  const isOthersDevice = (answer: Awaited<ReturnType<HubClient['join']>>) =>
    !answer.ok && answer.why === 'hub-error' && answer.field === 'device';

  const takeNewDevice = () =>
    withDatabase((db) => db.put('meta', newClock(newDevice(context)), 'clock'));

  /** Asks as this device, and once more under a new id where another member's goes by this one. */
  const asDevice = async (
    ask: (device: DeviceId) => ReturnType<HubClient['join']>,
  ): ReturnType<HubClient['join']> => {
    const answer = await ask(await device());
    if (!isOthersDevice(answer)) return answer;
    await takeNewDevice();
    return ask(await device());
  };

  const keep = async (next: Session, token: string | null) => {
    await withDatabase(async (db) => {
      const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
      await tx.store.put(next, 'session');
      if (token !== null) {
        await tx.store.put(token, 'token');
        await tx.store.put(now(), 'tokenMs');
        await tx.store.delete('nextToken');
      }
      await tx.store.delete('joining');
      await tx.store.delete('returning');
      await tx.done;
    });
    changes.tell(sessionChange(next));
    return next;
  };

  /** What the hub's answer to a device that wants in makes of this device. */
  const joined = async (
    answer: Awaited<ReturnType<HubClient['join']>>,
    hubUrl: string,
    token: string,
  ): Promise<Outcome<Session, JoinProblem>> => {
    if (!answer.ok)
      return answer.why === 'hub-error'
        ? { ok: false, why: 'refused', code: answer.code }
        : { ok: false, why: answer.why };
    const { id: member, role, group, groupName } = answer.value.member;
    return done(await keep({ member, role, group, groupName, hub: { url: hubUrl } }, token));
  };

  return {
    session,
    device,
    startGroup: (groupName) =>
      keep(
        {
          member: newId(context),
          role: 'lead',
          group: newId(context),
          groupName,
          hub: null,
        },
        null,
      ),
    async invited(hubUrl, code) {
      // Nobody's token: the device belongs to nobody yet, or asks as whoever it would become.
      const answer = await createHubClient(hubUrl, '', fetchFrom).invited(code);
      return answer.ok ? answer.value : null;
    },
    async join(hubUrl, code, deviceName) {
      const token = await withDatabase(async (db) => {
        const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
        const before = (await tx.store.get('joining')) as
          { code: string; token: string } | undefined;
        const joining = before?.code === code ? before : { code, token: base64url(random(32)) };
        await tx.store.put(joining, 'joining');
        await tx.done;
        return joining.token;
      });
      const before = (await withDatabase((db) => db.get('meta', 'token'))) as string | undefined;
      const client = createHubClient(hubUrl, token, fetchFrom, { before });
      const answer = await asDevice((device) => client.join(code, device, deviceName));
      return joined(answer, hubUrl, token);
    },
    async comeBack(hubUrl, deviceName) {
      const token = await withDatabase(async (db) => {
        const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
        const waiting = (await tx.store.get('returning')) as string | undefined;
        const made = waiting ?? base64url(random(32));
        await tx.store.put(made, 'returning');
        await tx.done;
        return made;
      });
      const client = createHubClient(hubUrl, token, fetchFrom);
      const answer = await asDevice((device) => client.comeBack(device, deviceName));
      const before = await session();
      // The browser's cookie may be of another member who joined in it: this store stays whose it is.
      if (before && answer.ok && answer.value.member.id !== before.member)
        return { ok: false, why: 'refused', code: 'not-allowed' };
      return joined(answer, hubUrl, token);
    },
    async markRevoked(revoked) {
      const current = await session();
      if (!current || (current.revoked ?? false) === revoked) return;
      const { revoked: _before, ...rest } = current;
      await keep(revoked ? { ...rest, revoked: true } : rest, null);
    },
    async hub() {
      const current = await session();
      if (!current?.hub) return null;
      const [token, said] = await withDatabase((db) =>
        Promise.all([
          db.get('meta', 'token') as Promise<string | undefined>,
          db.get('meta', 'hubSaid') as Promise<{ readsGzip: boolean } | undefined>,
        ]),
      );
      return token === undefined
        ? null
        : createHubClient(current.hub.url, token, fetchFrom, said ?? {});
    },
    async renewToken() {
      const current = await session();
      if (!current?.hub) return;
      const state = await withDatabase(async (db) => {
        const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
        const [token, tokenMs, waiting] = (await Promise.all([
          tx.store.get('token'),
          tx.store.get('tokenMs'),
          tx.store.get('nextToken'),
        ])) as [string | undefined, number | undefined, string | undefined];
        if (token === undefined || now() - (tokenMs ?? 0) < RENEW_TOKEN_AFTER_MS) return null;
        // On the disk before the hub hears of it: an answer that is lost is asked for again.
        const next = waiting ?? base64url(random(32));
        await tx.store.put(next, 'nextToken');
        await tx.done;
        return { token, next };
      });
      if (!state) return;
      const { token, next } = state;
      const answer = await createHubClient(current.hub.url, token, fetchFrom).renew(next);
      const isOlderHub = !answer.ok && answer.why === 'hub-error' && answer.code === 'not-found';
      if (!answer.ok && !isOlderHub) return;
      await withDatabase(async (db) => {
        const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
        if (answer.ok) await tx.store.put(next, 'token');
        await tx.store.put(now(), 'tokenMs');
        await tx.store.delete('nextToken');
        await tx.done;
      });
    },
  };
};
