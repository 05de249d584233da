/** The hub's endpoints: who asks, whether they may, and what comes of it. */
import { Hono, type Context, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import { getCookie, setCookie } from 'hono/cookie';
import { secureHeaders } from 'hono/secure-headers';
import * as z from 'zod/mini';
import {
  formatCursor,
  inviteRequest,
  joinRequest,
  MAX_ATTACHMENT_BYTES,
  MAX_PUSH_BYTES,
  MAX_PUSH_REVISIONS,
  newRecordId,
  parseCursor,
  PROTOCOL,
  pushRequest,
  returnRequest,
  revokeRequest,
  scopes,
  SHA256_PATTERN,
  type DeviceId,
  type ErrorCode,
  type RecordId,
  type Scope,
  type Sha256,
  type Tiles,
} from '../../core/records/index.ts';
import { mayManage, mayPull, type Caller } from './policy.ts';
import { rateLimit } from './rate-limit.ts';
import { attachmentState, readAttachment, takeChunk } from './store/attachments.ts';
import { isAlive, pullRevisions, pushRevisions } from './store/feed.ts';
import {
  addInvite,
  deviceOfToken,
  devicesOf,
  joinByInvite,
  memberOfDevice,
  newInviteCode,
  noteAudit,
  noteSeen,
  revokeDevice,
  type Device,
} from './store/members.ts';
import { keepReturn, returnBySecret } from './store/returning.ts';
import type { HubDatabase } from './store/sqlite.ts';

export interface HubDeps {
  readonly db: HubDatabase;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly random: (bytes: number) => Uint8Array;
  /** Serves the built app; absent in tests of the endpoints alone. */
  readonly files?: MiddlewareHandler;
  /** Map tiles for the group; absent: none, and no other origin is ever asked. */
  readonly tiles?: Tiles;
  /** The caller's address, for the limit on guesses. */
  readonly addressOf?: (c: Context) => string;
  /** One line per request: method, path without query, status, milliseconds. Never a token or a body. */
  readonly log?: (line: Readonly<Record<string, string | number>>) => void;
}

const RETURN_COOKIE = 'pairlog-return';
/** Browsers keep no cookie for longer than 400 days. */
const RETURN_COOKIE_S = 400 * 86_400;

type Env = { Variables: { device: Device } };

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

/** Guesses of invite codes: per address, and for the whole hub. */
const JOINS_PER_ADDRESS = { most: 20, windowMs: 10 * 60_000 };
const JOINS_IN_ALL = { most: 300, windowMs: 60 * 60_000 };

const MAX_PULL = 2000;
const CHUNK_SLACK = 512 * 1024;

const fail = (c: Context, error: ErrorCode, field?: string) =>
  c.json(field === undefined ? { error } : { error, field }, STATUS[error]);

/** A JSON body of this shape, or null with the answer already known. */
const bodyOf = async <T>(
  c: Context,
  schema: z.ZodMiniType<T>,
): Promise<{ ok: true; value: T } | { ok: false; answer: Response }> => {
  const json: unknown = await c.req.json().catch(() => undefined);
  const parsed = z.safeParse(schema, json);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : {
        ok: false,
        answer: fail(c, 'bad-request', parsed.error.issues[0]?.path.map(String).join('.') ?? ''),
      };
};

const isFull = (error: unknown): boolean =>
  ['SQLITE_FULL', 'SQLITE_IOERR_WRITE', 'ENOSPC'].includes(
    String((error as { code?: unknown } | null)?.code),
  );

export const createHub = (deps: HubDeps): Hono<Env> => {
  const { db, now, random } = deps;
  const joinsOf = rateLimit(JOINS_PER_ADDRESS.most, JOINS_PER_ADDRESS.windowMs);
  const joins = rateLimit(JOINS_IN_ALL.most, JOINS_IN_ALL.windowMs);
  const tileOrigins = deps.tiles ? [new URL(deps.tiles.url).origin] : [];
  const app = new Hono<Env>();

  app.use(async (c, next) => {
    const began = performance.now();
    await next();
    deps.log?.({
      method: c.req.method,
      path: c.req.path,
      status: c.res.status,
      ms: Math.round(performance.now() - began),
    });
  });
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'blob:', 'data:', ...tileOrigins],
        // The service worker fetches the tiles that it keeps.
        connectSrc: ["'self'", ...tileOrigins],
        manifestSrc: ["'self'"],
        workerSrc: ["'self'"],
        fontSrc: ["'self'"],
        baseUri: ["'none'"],
        formAction: ["'none'"],
        frameAncestors: ["'none'"],
      },
      referrerPolicy: 'no-referrer',
      crossOriginOpenerPolicy: 'same-origin',
      crossOriginResourcePolicy: 'same-origin',
      xFrameOptions: 'DENY',
      // Set by whoever speaks https: the hub itself may be reached by plain http on one machine.
      strictTransportSecurity: false,
      permissionsPolicy: { camera: ['self'], geolocation: [], microphone: [] },
    }),
  );
  app.onError((error, c) => {
    deps.log?.({ level: 'error', path: c.req.path, error: error.name });
    return fail(c, isFull(error) ? 'storage-full' : 'internal');
  });

  const api = new Hono<Env>();
  api.use(async (c, next) => {
    c.header('cache-control', 'no-store');
    await next();
  });
  api.use(compress());
  api.use(bodyLimit({ maxSize: MAX_PUSH_BYTES + 4096, onError: (c) => fail(c, 'too-large') }));

  api.get('/hello', (c) =>
    c.json({
      protocols: [PROTOCOL],
      hubNow: now(),
      limits: {
        pushRevisions: MAX_PUSH_REVISIONS,
        pushBytes: MAX_PUSH_BYTES,
        attachmentBytes: MAX_ATTACHMENT_BYTES,
      },
      ...(deps.tiles && { tiles: deps.tiles }),
    }),
  );

  const newSecret = () => Buffer.from(random(32)).toString('base64url');

  const setReturnCookie = (c: Context, secret: string) => {
    const secure =
      new URL(c.req.url).protocol === 'https:' || c.req.header('x-forwarded-proto') === 'https';
    setCookie(c, RETURN_COOKIE, secret, {
      httpOnly: true,
      sameSite: 'Strict',
      path: '/v1/return',
      maxAge: RETURN_COOKIE_S,
      secure,
    });
  };

  const welcome = async (
    c: Context,
    { group, groupName, caller }: { group: RecordId; groupName: string; caller: Caller },
    device: DeviceId,
    what: string,
  ) => {
    await noteAudit(db, {
      group,
      atMs: now(),
      member: caller.member,
      device,
      what,
      subject: null,
    });
    return c.json({
      member: { id: caller.member, role: caller.role, group, groupName },
      hubNow: now(),
    });
  };

  api.post('/join', async (c) => {
    const address = deps.addressOf?.(c) ?? 'unknown';
    if (!joinsOf.allow(address, now()) || !joins.allow('all', now()))
      return fail(c, 'too-many-requests');
    const body = await bodyOf(c, joinRequest);
    if (!body.ok) return body.answer;
    const { code, token, device, deviceName } = body.value;
    const joined = await joinByInvite(
      db,
      { code, token, device, deviceName: deviceName ?? '' },
      now(),
      () => newRecordId(now(), random(16)),
    );
    if (!joined) return fail(c, 'unknown-code');
    const secret = newSecret();
    await keepReturn(db, joined.group, device, secret);
    setReturnCookie(c, secret);
    return welcome(c, joined, device, 'join');
  });

  // For a device whose browser cleared its storage, and with it the token.
  api.post('/return', async (c) => {
    const address = deps.addressOf?.(c) ?? 'unknown';
    if (!joinsOf.allow(address, now()) || !joins.allow('all', now()))
      return fail(c, 'too-many-requests');
    const body = await bodyOf(c, returnRequest);
    if (!body.ok) return body.answer;
    const { token, device, deviceName } = body.value;
    const nextSecret = newSecret();
    const back = await returnBySecret(
      db,
      {
        secret: getCookie(c, RETURN_COOKIE) ?? '',
        nextSecret,
        token,
        device,
        deviceName: deviceName ?? '',
      },
      now(),
    );
    if (!back) return fail(c, 'unknown-code');
    setReturnCookie(c, nextSecret);
    return welcome(c, back, device, 'return');
  });

  /** Everything below wants a token of a device that was not revoked. */
  const member: MiddlewareHandler<Env> = async (c, next) => {
    const token = /^Bearer ([A-Za-z0-9_-]{43})$/.exec(c.req.header('authorization') ?? '')?.[1];
    const device = token === undefined ? null : await deviceOfToken(db, token);
    if (!device) return fail(c, 'no-token');
    if (device.revoked) return fail(c, 'revoked');
    c.set('device', device);
    return next();
  };

  api.get('/pull', member, async (c) => {
    const device = c.get('device');
    const scope = (c.req.query('scope') ?? 'mine') as Scope;
    if (!scopes.includes(scope)) return fail(c, 'bad-request', 'scope');
    if (!mayPull(device.caller, scope)) return fail(c, 'not-allowed', 'scope');
    const since = c.req.query('since');
    const cursor = since === undefined ? null : parseCursor(since);
    if (since !== undefined && !cursor) return fail(c, 'bad-request', 'since');
    const limit = Number(c.req.query('limit') ?? MAX_PULL);
    if (!Number.isInteger(limit) || limit < 1) return fail(c, 'bad-request', 'limit');
    const page = await pullRevisions(
      db,
      device.group,
      device.caller,
      device.device,
      cursor,
      scope,
      Math.min(limit, MAX_PULL),
      c.req.query('own') === '1',
    );
    if (!page) return fail(c, 'reset');
    await noteSeen(db, device, now());
    const { revisions, receipts, next, more } = page;
    const rest = JSON.stringify({
      receipts,
      next: next && formatCursor(next),
      more,
      hubNow: now(),
    });
    // The revisions are JSON already: they go out as they came in.
    return c.body(`{"revisions":[${revisions.join(',')}],${rest.slice(1)}`, 200, {
      'content-type': 'application/json',
    });
  });

  api.post('/push', member, async (c) => {
    const body = await bodyOf(c, pushRequest);
    if (!body.ok) return body.answer;
    const { group, caller } = c.get('device');
    const verdicts = await pushRevisions(db, group, caller, body.value.revisions);
    return c.json({ verdicts, hubNow: now() });
  });

  api.post('/invite', member, async (c) => {
    const body = await bodyOf(c, inviteRequest);
    if (!body.ok) return body.answer;
    const { group, caller, device } = c.get('device');
    const { role, tester } = body.value;
    if (!mayManage(caller)) return fail(c, 'not-allowed');
    if ((role === 'tester') !== (tester !== undefined)) return fail(c, 'bad-request', 'tester');
    const code = newInviteCode(random);
    const expiresAt = await addInvite(db, group, code, role, tester ?? null, now());
    await noteAudit(db, {
      group,
      atMs: now(),
      member: caller.member,
      device,
      what: `invite ${role}`,
      subject: tester ?? null,
    });
    return c.json({ code, expiresAt });
  });

  api.get('/devices', member, async (c) => {
    const { group, caller } = c.get('device');
    const devices = await devicesOf(db, group);
    return c.json({
      devices: mayManage(caller) ? devices : devices.filter((d) => d.member === caller.member),
    });
  });

  api.post('/revoke', member, async (c) => {
    const body = await bodyOf(c, revokeRequest);
    if (!body.ok) return body.answer;
    const { group, caller, device } = c.get('device');
    const target = body.value.device;
    const owner = await memberOfDevice(db, group, target);
    if (owner === null) return fail(c, 'not-found', 'device');
    if (!mayManage(caller) && owner !== caller.member) return fail(c, 'not-allowed');
    await revokeDevice(db, group, target);
    await noteAudit(db, {
      group,
      atMs: now(),
      member: caller.member,
      device,
      what: 'revoke',
      subject: target,
    });
    return c.json({ revoked: target });
  });

  api.get('/attachment/:sha256', member, async (c) => {
    const sha256 = c.req.param('sha256') as Sha256;
    if (!SHA256_PATTERN.test(sha256)) return fail(c, 'bad-request', 'sha256');
    const { group, caller } = c.get('device');
    // A question for the state only: how much of it the hub has.
    if (c.req.method === 'HEAD') {
      const { complete, received } = await attachmentState(db, group, sha256);
      return c.body(null, complete ? 200 : 404, { 'upload-offset': String(received) });
    }
    const found = await readAttachment(db, group, sha256, caller);
    if (!found) return fail(c, 'not-found');
    return c.body(new Uint8Array(found.bytes), 200, {
      'content-type': found.mediaType,
      'content-security-policy': "default-src 'none'; sandbox",
      'content-disposition': 'attachment',
    });
  });

  api.patch('/attachment/:sha256', member, async (c) => {
    const sha256 = c.req.param('sha256') as Sha256;
    const number = (name: string) => Number(c.req.header(name) ?? Number.NaN);
    const [offset, length] = [number('upload-offset'), number('upload-length')];
    const mediaType = c.req.header('upload-type') ?? '';
    if (!SHA256_PATTERN.test(sha256)) return fail(c, 'bad-request', 'sha256');
    if (!Number.isInteger(offset) || offset < 0) return fail(c, 'bad-request', 'upload-offset');
    if (!Number.isInteger(length) || length < 1) return fail(c, 'bad-request', 'upload-length');
    if (!/^[a-z]+\/[a-z0-9.+-]{1,60}$/.test(mediaType))
      return fail(c, 'bad-request', 'upload-type');
    const { group, caller } = c.get('device');
    if (caller.role === 'specialist') return fail(c, 'not-allowed');
    const bytes = new Uint8Array(await c.req.arrayBuffer());
    if (bytes.length > CHUNK_SLACK) return fail(c, 'too-large');
    const outcome = await takeChunk(db, group, sha256, { offset, length, mediaType, bytes });
    switch (outcome.what) {
      case 'complete':
        return c.json({ complete: true });
      case 'more':
        return c.json({ received: outcome.received }, 202);
      case 'wrong-offset':
        return c.json({ error: 'bad-request', field: 'upload-offset' }, 409, {
          'upload-offset': String(outcome.received),
        });
      case 'too-large':
        return fail(c, 'too-large');
      case 'hash-differs':
        return fail(c, 'bad-request', 'sha256');
    }
  });

  api.all('*', (c) => fail(c, 'not-found'));
  app.route('/v1', api);
  app.get('/health', async (c) => c.json({ ok: await isAlive(db) }));
  if (deps.files) app.use(deps.files);
  app.notFound((c) => fail(c, 'not-found'));
  return app;
};
