/** What can a device ask of its hub, and what can come of it? Every answer is checked before it is used. */
import * as z from 'zod/mini';
import {
  auditAnswer,
  chunkAnswer,
  devicesAnswer,
  errorAnswer,
  helloAnswer,
  inviteAnswer,
  invitedAnswer,
  joinAnswer,
  pullAnswer,
  pushAnswer,
  reachAnswer,
  wakeAnswer,
  type DeviceId,
  type ErrorCode,
  type PullAnswer,
  type PushAnswer,
  type Reach,
  type RecordId,
  type Revision,
  type Role,
  type Scope,
  type Sha256,
  type WakeAddress,
} from '../../core/records/index.ts';
import { done, type Outcome } from './outcome.ts';

export type HubProblem =
  /** No network, or no hub at the other end of it. */
  | { readonly why: 'offline' }
  /** Something answered, but not a hub: a hotel's sign-in page, say. */
  | { readonly why: 'not-a-hub' }
  | { readonly why: 'hub-error'; readonly code: ErrorCode; readonly field: string | null };

export type HubOutcome<T> = Outcome<T, HubProblem>;

export interface HubClient {
  hello(): Promise<HubOutcome<z.infer<typeof helloAnswer>>>;
  /** What a code would make of this device; the code is not used up. */
  invited(code: string): Promise<HubOutcome<z.infer<typeof invitedAnswer>>>;
  join(
    code: string,
    device: DeviceId,
    deviceName: string,
  ): Promise<HubOutcome<z.infer<typeof joinAnswer>>>;
  /** After the browser cleared this device; goes by the cookie that the hub set at the join. */
  comeBack(device: DeviceId, deviceName: string): Promise<HubOutcome<z.infer<typeof joinAnswer>>>;
  /** `ownWhole`: this device's own revisions come whole instead of as receipts. */
  pull(cursor: string | null, scope: Scope, ownWhole: boolean): Promise<HubOutcome<PullAnswer>>;
  push(revisions: readonly Revision[]): Promise<HubOutcome<PushAnswer>>;
  invite(role: Role, tester?: RecordId): Promise<HubOutcome<z.infer<typeof inviteAnswer>>>;
  devices(): Promise<HubOutcome<z.infer<typeof devicesAnswer>>>;
  revoke(device: DeviceId): Promise<HubOutcome<unknown>>;
  /** From its first use on, `next` takes the place of this client's token. */
  renew(next: string): Promise<HubOutcome<unknown>>;
  audit(): Promise<HubOutcome<z.infer<typeof auditAnswer>>>;
  /** The hub's key to be woken by, and whether this device is. */
  wake(): Promise<HubOutcome<z.infer<typeof wakeAnswer>>>;
  /** Says where this device is reached while it is closed; null: nowhere any more. */
  wakeAt(address: WakeAddress | null): Promise<HubOutcome<z.infer<typeof wakeAnswer>>>;
  /** Leads: whom this record could wake, and whom it did. */
  reach(record: RecordId): Promise<HubOutcome<Reach>>;
  sendAttachment(
    sha256: Sha256,
    bytes: ArrayBuffer,
    mediaType: string,
  ): Promise<HubOutcome<unknown>>;
  attachment(sha256: Sha256): Promise<HubOutcome<{ bytes: ArrayBuffer; mediaType: string }>>;
}

/** A shorter body is not worth the packing. */
const PACKED_FROM_CHARACTERS = 2000;

const pack = (text: string): Promise<ArrayBuffer> =>
  new Response(new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'))).arrayBuffer();

const PULL_LIMIT = 1000;
const CHUNK_BYTES = 256 * 1024;

/**
 * A client of the hub at `url`. The token goes into a header; a join also sends it in its body, and the one from before.
 * @param readsGzip whether the hub has said that it reads packed bodies
 * @param before the token of whom this device was until now, for a join
 */
export const createHubClient = (
  url: string,
  token: string,
  fetchFrom: typeof fetch = fetch.bind(globalThis),
  { readsGzip = false, before }: { readsGzip?: boolean; before?: string | undefined } = {},
): HubClient => {
  const request = async (path: string, init: RequestInit = {}): Promise<HubOutcome<Response>> => {
    let response: Response;
    try {
      response = await fetchFrom(`${url}/v1/${path}`, {
        ...init,
        cache: 'no-store',
        // Only joining and coming back have to do with a cookie; everything else goes by the token.
        credentials: path === 'join' || path === 'return' ? 'same-origin' : 'omit',
        headers: { authorization: `Bearer ${token}`, ...init.headers },
      });
    } catch {
      return { ok: false, why: 'offline' };
    }
    if (response.ok || (response.status === 404 && init.method === 'HEAD')) return done(response);
    const said = z.safeParse(errorAnswer, await response.json().catch(() => null));
    return said.success
      ? { ok: false, why: 'hub-error', code: said.data.error, field: said.data.field ?? null }
      : { ok: false, why: response.status >= 500 ? 'offline' : 'not-a-hub' };
  };

  const posted = async (body: unknown): Promise<RequestInit> => {
    const text = JSON.stringify(body);
    const headers = { 'content-type': 'application/json' };
    const packs =
      readsGzip &&
      text.length >= PACKED_FROM_CHARACTERS &&
      typeof CompressionStream !== 'undefined';
    return packs
      ? {
          method: 'POST',
          body: await pack(text),
          headers: { ...headers, 'content-encoding': 'gzip' },
        }
      : { method: 'POST', body: text, headers };
  };

  const ask = async <T>(
    schema: z.ZodMiniType<T>,
    path: string,
    body?: unknown,
    method = 'POST',
  ): Promise<HubOutcome<T>> => {
    const init = body === undefined ? {} : { ...(await posted(body)), method };
    const answer = await request(path, init);
    if (!answer.ok) return answer;
    const parsed = z.safeParse(schema, await answer.value.json().catch(() => null));
    return parsed.success ? done(parsed.data) : { ok: false, why: 'not-a-hub' };
  };

  return {
    hello: () => ask(helloAnswer, 'hello'),
    invited: (code) => ask(invitedAnswer, 'invited', { code }),
    join: (code, device, deviceName) =>
      ask(joinAnswer, 'join', { code, token, device, deviceName, ...(before && { before }) }),
    comeBack: (device, deviceName) => ask(joinAnswer, 'return', { token, device, deviceName }),
    pull: (cursor, scope, ownWhole) =>
      ask(
        pullAnswer,
        `pull?scope=${scope}&limit=${PULL_LIMIT}${cursor === null ? '' : `&since=${cursor}`}${ownWhole ? '&own=1' : ''}`,
      ),
    push: (revisions) => ask(pushAnswer, 'push', { revisions }),
    invite: (role, tester) =>
      ask(inviteAnswer, 'invite', tester === undefined ? { role } : { role, tester }),
    devices: () => ask(devicesAnswer, 'devices'),
    revoke: (device) => ask(z.unknown(), 'revoke', { device }),
    renew: (next) => ask(z.unknown(), 'renew', { token: next }),
    audit: () => ask(auditAnswer, 'audit'),
    wake: () => ask(wakeAnswer, 'wake'),
    wakeAt: (address) => ask(wakeAnswer, 'wake', address ?? {}, address ? 'PUT' : 'DELETE'),
    reach: (record) => ask(reachAnswer, `reach?record=${record}`),
    async sendAttachment(sha256, bytes, mediaType) {
      const path = `attachment/${sha256}`;
      const held = await request(path, { method: 'HEAD' });
      if (!held.ok) return held;
      // The page of a hotel's network answers 200 to anything: only the hub says how much it has.
      const has = held.value.headers.get('upload-offset');
      if (has === null) return { ok: false, why: 'not-a-hub' };
      if (held.value.status === 200) return done(null);
      let offset = Number(has);
      for (;;) {
        const sent = await request(path, {
          method: 'PATCH',
          body: bytes.slice(offset, offset + CHUNK_BYTES),
          headers: {
            'content-type': 'application/octet-stream',
            'upload-offset': String(offset),
            'upload-length': String(bytes.byteLength),
            'upload-type': mediaType,
          },
        });
        if (!sent.ok) return sent;
        const said = z.safeParse(chunkAnswer, await sent.value.json().catch(() => null));
        if (!said.success) return { ok: false, why: 'not-a-hub' };
        if ('complete' in said.data) return done(null);
        offset = said.data.received;
      }
    },
    async attachment(sha256) {
      const answer = await request(`attachment/${sha256}`);
      if (!answer.ok) return answer;
      try {
        const bytes = await answer.value.arrayBuffer();
        const mediaType = answer.value.headers.get('content-type') ?? 'application/octet-stream';
        return done({ bytes, mediaType });
      } catch {
        return { ok: false, why: 'offline' };
      }
    },
  };
};
