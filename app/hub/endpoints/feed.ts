/** What a device receives of the log, and what it adds to it. */
import type { Hono, MiddlewareHandler } from 'hono';
import {
  formatCursor,
  parseCursor,
  pushRequest,
  scopes,
  type Scope,
} from '../../../core/records/index.ts';
import { bodyOf, fail, tooMany, type Env, type HubDeps } from '../answers.ts';
import { mayPull } from '../policy.ts';
import { pullRevisions, pushRevisions } from '../store/feed.ts';
import { noteSeen } from '../store/members.ts';
import { quotaOf, secondsToNextDay } from '../store/quota.ts';

const MAX_PULL = 2000;

export const feed = (api: Hono<Env>, member: MiddlewareHandler<Env>, deps: HubDeps): void => {
  const { db, now, metrics } = deps;

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
    const outcome = await pushRevisions(
      db,
      group,
      caller,
      body.value.revisions,
      quotaOf(caller, now()),
      now(),
    );
    if (outcome.what === 'over-quota') return tooMany(c, secondsToNextDay(now()));
    deps.wakeSoon?.();
    for (const { verdict } of outcome.verdicts) metrics?.verdicts.inc({ verdict });
    return c.json({ verdicts: outcome.verdicts, hubNow: now() });
  });
};
