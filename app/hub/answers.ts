/** How does the hub answer, and what does it need for it? */
import { promisify } from 'node:util';
import { gunzip } from 'node:zlib';
import type { Context, MiddlewareHandler } from 'hono';
import * as z from 'zod/mini';
import { MAX_PUSH_BYTES, type ErrorCode, type Tiles } from '../../core/records/index.ts';
import type { Metrics } from './metrics.ts';
import { noteAudit } from './store/audit.ts';
import type { HubDatabase } from './store/database.ts';
import type { Device } from './store/members.ts';
import type { PushServiceForTests } from './wake/safe-endpoint.ts';

/** One line of the hub's own log. Never a token, a code or a body. */
export type LogLine = Readonly<Record<string, string | number>>;

export interface HubDeps {
  readonly db: HubDatabase;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly random: (bytes: number) => Uint8Array;
  /** Serves the built app; absent in tests of the endpoints alone. */
  readonly files?: MiddlewareHandler;
  /** Of the app's page: the scripts and styles that stand in it, by their hashes. */
  readonly inline?: { readonly scripts: readonly string[]; readonly styles: readonly string[] };
  /** Map tiles for the group; absent: none, and no other origin is ever asked. */
  readonly tiles?: Tiles;
  /** For how many days backups still hold what was taken back; absent: not said. */
  readonly backupDays?: number;
  /** Where phones learn to trust the hub's own certificate; null and absent: they need not. */
  readonly trustUrl?: () => string | null;
  /** The caller's address, for the limit on guesses. */
  readonly addressOf?: (c: Context) => string;
  /** The origin at which browsers know the hub; absent: by the address that was asked for. */
  readonly originOf?: (c: Context) => string | null;
  /** Something may have come in that wakes closed phones; absent: none is ever woken. */
  readonly wakeSoon?: () => void;
  /** Trusts a push service on this machine. Only for tests. */
  readonly pushServiceForTests?: PushServiceForTests;
  readonly metrics?: Metrics;
  readonly log?: (line: LogLine) => void;
}

export type Env = { Variables: { device: Device } };

const STATUS: Readonly<Record<ErrorCode, 400 | 401 | 403 | 404 | 410 | 413 | 429 | 500 | 507>> = {
  'bad-request': 400,
  'no-token': 401,
  revoked: 401,
  'not-allowed': 403,
  'unknown-code': 403,
  'not-found': 404,
  reset: 410,
  'too-large': 413,
  'too-many-requests': 429,
  internal: 500,
  'storage-full': 507,
};

export const fail = (c: Context, error: ErrorCode, field?: string) =>
  c.json(field === undefined ? { error } : { error, field }, STATUS[error]);

/** An answer that says when to come again. */
export const tooMany = (c: Context, retryAfterS: number) => {
  c.header('retry-after', String(retryAfterS));
  return fail(c, 'too-many-requests');
};

const unzip = promisify(gunzip);

/** The text of a request's body; null where it unpacks to more than a push may be, or not at all. */
const textOf = async (c: Context): Promise<string | null> => {
  if (c.req.header('content-encoding') !== 'gzip') return c.req.text();
  const packed = Buffer.from(await c.req.arrayBuffer());
  return unzip(packed, { maxOutputLength: MAX_PUSH_BYTES + 4096 }).then(String, () => null);
};

const parse = (text: string | null): unknown => {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** A JSON body of this shape, or the answer that says what is wrong with it. */
export const bodyOf = async <T>(
  c: Context,
  schema: z.ZodMiniType<T>,
): Promise<{ ok: true; value: T } | { ok: false; answer: Response }> => {
  const parsed = z.safeParse(schema, parse(await textOf(c)));
  return parsed.success
    ? { ok: true, value: parsed.data }
    : {
        ok: false,
        answer: fail(c, 'bad-request', parsed.error.issues[0]?.path.map(String).join('.') ?? ''),
      };
};

/** Notes in the audit what the device of this request did. */
export const noteDone = (
  { db, now, random }: HubDeps,
  { group, device, caller }: Pick<Device, 'group' | 'device' | 'caller'>,
  what: string,
  subject: string | null = null,
): Promise<void> =>
  noteAudit(db, { group, atMs: now(), member: caller.member, device, what, subject }, random);
