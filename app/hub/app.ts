/** The hub over HTTP: headers, limits and errors around its endpoints. */
import { Hono, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { compress } from 'hono/compress';
import { secureHeaders } from 'hono/secure-headers';
import { matchedRoutes } from 'hono/route';
import {
  MAX_ATTACHMENT_BYTES,
  MAX_PUSH_BYTES,
  MAX_PUSH_REVISIONS,
  PROTOCOL,
} from '../../core/records/index.ts';
import { fail, tooMany, type Env, type HubDeps } from './answers.ts';
import { attachments } from './endpoints/attachments.ts';
import { feed } from './endpoints/feed.ts';
import { joining } from './endpoints/joining.ts';
import { members } from './endpoints/members.ts';
import { waking } from './endpoints/waking.ts';
import { rateLimit } from './rate-limit.ts';
import { isAlive, isFull } from './store/database.ts';
import { deviceOfToken } from './store/members.ts';

/** A device that asks more often has lost its way; a hundred photos are some two thousand requests. */
const REQUESTS_PER_DEVICE = { most: 6000, windowMs: 10 * 60_000 };

/** Requests of one device at once: an app has one or two. */
const MOST_UNDER_WAY = 16;
/** Requests that carry a code, a token or an id, and nothing else. */
const SMALL_BODY = 8192;

export const createHub = (deps: HubDeps): Hono<Env> => {
  const { db, now, metrics } = deps;
  const ofDevice = rateLimit(REQUESTS_PER_DEVICE.most, REQUESTS_PER_DEVICE.windowMs);
  const underWay = new Map<string, number>();
  const tileOrigins = deps.tiles ? [new URL(deps.tiles.url).origin] : [];
  const app = new Hono<Env>();

  app.use(async (c, next) => {
    const began = performance.now();
    await next();
    const ms = performance.now() - began;
    const { method } = c.req;
    const { status } = c.res;
    // The pattern of the path, not the path: what is asked for is nobody's business.
    const pattern = matchedRoutes(c).findLast(({ path }) => !path.endsWith('*'))?.path ?? 'file';
    metrics?.requests.observe({ method, path: pattern, status }, ms / 1000);
    deps.log?.({ event: 'request', method, path: c.req.path, status, ms: Math.round(ms) });
  });
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'", ...(deps.inline?.scripts ?? [])],
        styleSrc: ["'self'", ...(deps.inline?.styles ?? [])],
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
    const { code } = error as { code?: unknown };
    // The device hung up while it sent: nobody reads the answer, and it is no fault of the hub.
    if (code === 'ECONNRESET') return fail(c, 'bad-request');
    deps.log?.({
      level: 'error',
      event: 'error',
      path: c.req.path,
      error: error.name,
      ...(typeof code === 'string' && { code }),
    });
    return fail(c, isFull(error) ? 'storage-full' : 'internal');
  });

  const api = new Hono<Env>();
  api.use(async (c, next) => {
    c.header('cache-control', 'no-store');
    await next();
  });
  api.use(compress());
  for (const path of ['/join', '/return', '/renew', '/invite', '/revoke', '/wake'])
    api.use(path, bodyLimit({ maxSize: SMALL_BODY, onError: (c) => fail(c, 'too-large') }));
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
      encodings: ['gzip'],
      ...(deps.backupDays !== undefined && { backupDays: deps.backupDays }),
      ...(deps.trustUrl?.() && { trust: deps.trustUrl() }),
      ...(deps.tiles && { tiles: deps.tiles }),
    }),
  );

  /** Wants a token of a device that was not revoked. */
  const member: MiddlewareHandler<Env> = async (c, next) => {
    const token = /^Bearer ([A-Za-z0-9_-]{43})$/.exec(c.req.header('authorization') ?? '')?.[1];
    const device = token === undefined ? null : await deviceOfToken(db, token);
    if (!device) return fail(c, 'no-token');
    if (device.revoked) return fail(c, 'revoked');
    const key = `${device.group} ${device.device}`;
    if (!ofDevice.take(key, now())) return tooMany(c, REQUESTS_PER_DEVICE.windowMs / 1000);
    const busy = underWay.get(key) ?? 0;
    if (busy >= MOST_UNDER_WAY) return tooMany(c, 1);
    underWay.set(key, busy + 1);
    c.set('device', device);
    try {
      await next();
    } finally {
      const left = (underWay.get(key) ?? 1) - 1;
      if (left > 0) underWay.set(key, left);
      else underWay.delete(key);
    }
    return undefined;
  };

  joining(api, member, deps);
  feed(api, member, deps);
  members(api, member, deps);
  waking(api, member, deps);
  attachments(api, member, deps);
  api.all('*', (c) => fail(c, 'not-found'));
  app.route('/v1', api);
  app.get('/health', async (c) => c.json({ ok: await isAlive(db) }));
  if (deps.files) app.use(deps.files);
  app.notFound((c) => fail(c, 'not-found'));
  return app;
};
