/** A member who speaks to a hub by plain requests and remembers what the hub acknowledged. */
import { randomBytes } from 'node:crypto';
import {
  newRecordId,
  sealRevision,
  sha256OfBytes,
  type PushAnswer,
  type RecordId,
  type Revision,
  type Role,
  type Sha256,
  type Stamp,
} from '../../../core/records/index.ts';
import { OWN_PAGE } from './as-browser.ts';

export interface Member {
  readonly id: RecordId;
  readonly token: string;
  /** Revisions of which an answer said that they are kept, by hash. */
  readonly acknowledged: Map<string, Revision>;
  /** Attachments of which an answer said that they are whole. */
  readonly whole: Map<Sha256, Uint8Array>;
  /** Records of which a revision that takes them back was sent; true once it was acknowledged. */
  readonly takenBack: Map<RecordId, boolean>;
  ask(path: string, init?: RequestInit): Promise<Response | null>;
  /** A revision of a record of this member, of a kind that the hub need not know. */
  revision(of?: RecordId, more?: { erased?: true; body?: Record<string, unknown> }): Revision;
  /** The verdicts, or what came instead of them. */
  push(
    revisions: readonly Revision[],
  ): Promise<PushAnswer['verdicts'] | 'no-answer' | { status: number; error: string }>;
  /** Names bytes in a record of their own and sends them in chunks, from where they stopped last time. */
  attach(bytes: Uint8Array, about: RecordId, chunkBytes: number): Promise<number | 'no-answer'>;
  invite(role: Role): Promise<Member>;
}

let count = 0;

/** One request; null where no answer came. */
const asked = (url: string, path: string, init: RequestInit): Promise<Response | null> =>
  fetch(`${url}/v1/${path}`, { ...init, signal: AbortSignal.timeout(60_000) }).catch(() => null);

/** Joins as a new device. */
export const joinAs = async (url: string, code: string): Promise<Member> => {
  const token = randomBytes(32).toString('base64url');
  const device = randomBytes(8).toString('hex');
  const json = { 'content-type': 'application/json' };
  const joined = await asked(url, 'join', {
    method: 'POST',
    headers: OWN_PAGE,
    body: JSON.stringify({ code, token, device, deviceName: 'test' }),
  });
  if (!joined?.ok) throw new Error(`could not join: ${joined?.status} ${await joined?.text()}`);
  const { member } = (await joined.json()) as { member: { id: RecordId; role: Role } };
  const { id, role } = member;
  const acknowledged = new Map<string, Revision>();
  const whole = new Map<Sha256, Uint8Array>();
  const takenBack = new Map<RecordId, boolean>();
  const ask = (path: string, init: RequestInit = {}) =>
    asked(url, path, {
      ...init,
      headers: { authorization: `Bearer ${token}`, ...json, ...init.headers },
    });
  let stamps = 0;
  const nextStamp = (): Stamp => {
    stamps++;
    const ms = (1_780_000_000_000 + Math.floor(stamps / 1000)).toString(16).padStart(12, '0');
    return `${ms}-${(stamps % 1000).toString(16).padStart(4, '0')}-${device}` as Stamp;
  };
  const bodyOfTester = role === 'tester' ? { tester: id } : {};

  const revision: Member['revision'] = (of, { erased, body } = {}) =>
    sealRevision(
      {
        id: of ?? newRecordId(1_780_000_000_000 + ++count, randomBytes(16)),
        kind: body && 'sha256' in body ? 'attachment' : 'run',
        author: id,
        sv: 9,
        body: erased ? null : { ...bodyOfTester, words: `invented ${count} ÄÖ 鞋`, ...body },
        ...(erased && { erased }),
      },
      nextStamp(),
      null,
    );

  const push: Member['push'] = async (revisions) => {
    for (const one of revisions)
      if (one.erased && !takenBack.get(one.id)) takenBack.set(one.id, false);
    const answer = await ask('push', { method: 'POST', body: JSON.stringify({ revisions }) });
    const said = (await answer?.json().catch(() => null)) as
      { verdicts?: PushAnswer['verdicts']; error?: string } | null | undefined;
    if (!answer || !said) return 'no-answer';
    if (!said.verdicts) return { status: answer.status, error: String(said.error) };
    for (const [at, { verdict }] of said.verdicts.entries()) {
      const one = revisions[at] as Revision;
      if (verdict === 'refused') continue;
      acknowledged.set(one.hash, one);
      if (one.erased) takenBack.set(one.id, true);
    }
    return said.verdicts;
  };

  return {
    id,
    token,
    acknowledged,
    whole,
    takenBack,
    ask,
    revision,
    push,
    async attach(bytes, about, chunkBytes) {
      const sha256 = sha256OfBytes(bytes);
      const held = await ask(`attachment/${sha256}`, { method: 'HEAD' });
      if (!held || held.status >= 500) return 'no-answer';
      const from = Number(held.headers.get('upload-offset') ?? 0);
      if (from === 0) {
        const named = await push([
          revision(undefined, {
            body: { record: about, sha256, mediaType: 'image/jpeg', bytes: bytes.length },
          }),
        ]);
        if (named === 'no-answer') return named;
        if ('status' in named) return named.status;
        // The record was taken back meanwhile: its photo goes nowhere.
        if (named[0]?.why === 'erased') return 200;
      }
      if (held.status === 200) {
        whole.set(sha256, bytes);
        return 200;
      }
      for (let offset = from; offset < bytes.length; offset += chunkBytes) {
        const answer = await ask(`attachment/${sha256}`, {
          method: 'PATCH',
          body: bytes.slice(offset, offset + chunkBytes),
          headers: {
            'content-type': 'application/octet-stream',
            'upload-offset': String(offset),
            'upload-length': String(bytes.length),
            'upload-type': 'image/jpeg',
          },
        });
        const said = (await answer?.json().catch(() => null)) as { complete?: true } | null;
        if (!answer || !said) return 'no-answer';
        if (said.complete) {
          whole.set(sha256, bytes);
          return 200;
        }
        if (answer.status !== 202) return answer.status;
      }
      return 200;
    },
    async invite(invited) {
      const tester = invited === 'tester' ? { tester: newRecordId(++count, randomBytes(16)) } : {};
      const answer = await ask('invite', {
        method: 'POST',
        body: JSON.stringify({ role: invited, ...tester }),
      });
      const { code: fresh } = (await answer?.json()) as { code: string };
      return joinAs(url, fresh);
    },
  };
};
