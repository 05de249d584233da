/** Where is a closed phone reached, and, for leads, whom did a notice reach? */
import { ECDH } from 'node:crypto';
import type { Hono, MiddlewareHandler } from 'hono';
import * as z from 'zod/mini';
import { recordIdSchema, wakeRequest, type RecordId } from '../../../core/records/index.ts';
import { bodyOf, fail, tooMany, type Env, type HubDeps } from '../answers.ts';
import { originOf, ownPage } from '../own-page.ts';
import { mayBeWoken, mayManage } from '../policy.ts';
import { rateLimit } from '../rate-limit.ts';
import {
  dropWakeAddress,
  hasWakeAddress,
  keepWakeAddress,
  reachOf,
  wakeKeyOf,
} from '../store/waking.ts';
import { isSafeEndpoint } from '../wake/safe-endpoint.ts';
import { newWakeKey } from '../wake/waker.ts';

/** A phone says its address when it is turned on and when the app is opened. */
const CHANGES = { most: 60, windowMs: 3_600_000 };

/** Whether this is a point of the curve, which the shape of it does not say. */
const isPoint = (p256dh: string): boolean => {
  try {
    ECDH.convertKey(p256dh, 'prime256v1', 'base64url', 'base64url', 'uncompressed');
    return true;
  } catch {
    return false;
  }
};

export const waking = (api: Hono<Env>, member: MiddlewareHandler<Env>, deps: HubDeps): void => {
  const { db, now } = deps;
  const changes = rateLimit(CHANGES.most, CHANGES.windowMs);
  const ownPagesOnly = ownPage(deps);

  const tester: MiddlewareHandler<Env> = async (c, next) => {
    const { group, device, caller } = c.get('device');
    if (!mayBeWoken(caller)) return fail(c, 'not-allowed');
    if (c.req.method !== 'GET' && !changes.take(`${group} ${device}`, now()))
      return tooMany(c, CHANGES.windowMs / 1000);
    await next();
    return undefined;
  };

  const state = async (device: Env['Variables']['device']) => ({
    key: (await wakeKeyOf(db, device.group, newWakeKey)).publicKey,
    on: await hasWakeAddress(db, device),
  });

  api.get('/wake', member, tester, async (c) => c.json(await state(c.get('device'))));

  api.put('/wake', ownPagesOnly, member, tester, async (c) => {
    const body = await bodyOf(c, wakeRequest);
    if (!body.ok) return body.answer;
    const { endpoint, keys } = body.value;
    if (!isSafeEndpoint(endpoint, deps.pushServiceForTests))
      return fail(c, 'bad-request', 'endpoint');
    if (!isPoint(keys.p256dh)) return fail(c, 'bad-request', 'keys.p256dh');
    const origin = (deps.originOf ? deps.originOf(c) : originOf(c, false)) ?? '';
    await keepWakeAddress(db, c.get('device'), body.value, origin);
    return c.json(await state(c.get('device')));
  });

  api.delete('/wake', ownPagesOnly, member, tester, async (c) => {
    const { group, device } = c.get('device');
    await dropWakeAddress(db, group, device);
    return c.json(await state(c.get('device')));
  });

  api.get('/reach', member, async (c) => {
    const { group, caller } = c.get('device');
    if (!mayManage(caller)) return fail(c, 'not-allowed');
    const record = c.req.query('record');
    if (!z.safeParse(recordIdSchema, record).success) return fail(c, 'bad-request', 'record');
    return c.json(await reachOf(db, group, record as RecordId));
  });
};
