/** How does this device become a member of a group, and which hub does it speak to? */
import { newClock, type Clock, type DeviceId, type ErrorCode } from '../../core/records/index.ts';
import { newDevice, newId, type StoreContext } from './context.ts';
import { createHubClient, type HubClient } from './hub-client.ts';
import { done, type Outcome } from './outcome.ts';
import type { Session } from './session.ts';

export type JoinProblem =
  { readonly why: 'offline' | 'not-a-hub' } | { readonly why: 'refused'; readonly code: ErrorCode };

export interface Membership {
  session(): Promise<Session | null>;
  /** A lead starts a group without a hub. */
  startGroup(groupName: string): Promise<Session>;
  /** May be repeated with the same code: a join whose answer was lost is the same join. */
  join(hubUrl: string, code: string, deviceName: string): Promise<Outcome<Session, JoinProblem>>;
  /** A device that was cleared becomes a member again without a code, where the hub still knows it. */
  comeBack(hubUrl: string, deviceName: string): Promise<Outcome<Session, JoinProblem>>;
  /** Marks the session as no longer known to the hub. Nothing is taken away. */
  markRevoked(): Promise<void>;
  hub(): Promise<HubClient | null>;
  device(): Promise<DeviceId>;
}

const base64url = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

export const membership = (context: StoreContext): Membership => {
  const { withDatabase, random, fetchFrom, changes } = context;

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

  const keep = async (next: Session, token: string | null) => {
    await withDatabase(async (db) => {
      const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
      await tx.store.put(next, 'session');
      if (token !== null) await tx.store.put(token, 'token');
      await tx.store.delete('joining');
      await tx.done;
    });
    changes.tell({ kinds: new Set(['session']) });
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
      const client = createHubClient(hubUrl, token, fetchFrom);
      return joined(await client.join(code, await device(), deviceName), hubUrl, token);
    },
    async comeBack(hubUrl, deviceName) {
      const token = base64url(random(32));
      const client = createHubClient(hubUrl, token, fetchFrom);
      return joined(await client.comeBack(await device(), deviceName), hubUrl, token);
    },
    async markRevoked() {
      const current = await session();
      if (current && !current.revoked) await keep({ ...current, revoked: true }, null);
    },
    async hub() {
      const current = await session();
      if (!current?.hub) return null;
      const token = (await withDatabase((db) => db.get('meta', 'token'))) as string | undefined;
      return token === undefined ? null : createHubClient(current.hub.url, token, fetchFrom);
    },
  };
};
