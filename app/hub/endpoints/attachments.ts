/** Photos, tracks and reports: how much of one is here, its bytes, and its next chunk. */
import type { Hono, MiddlewareHandler } from 'hono';
import { SHA256_PATTERN, type Sha256 } from '../../../core/records/index.ts';
import { fail, tooMany, type Env, type HubDeps } from '../answers.ts';
import { attachmentState, readAttachment, takeChunk } from '../store/attachments.ts';
import { quotaOf, secondsToNextDay } from '../store/quota.ts';

const MAX_CHUNK = 512 * 1024;

export const attachments = (
  api: Hono<Env>,
  member: MiddlewareHandler<Env>,
  deps: HubDeps,
): void => {
  const { db, now, metrics } = deps;

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
    if (!Number.isSafeInteger(offset) || offset < 0) return fail(c, 'bad-request', 'upload-offset');
    if (!Number.isSafeInteger(length) || length < 1) return fail(c, 'bad-request', 'upload-length');
    if (!/^[a-z]+\/[a-z0-9.+-]{1,60}$/.test(mediaType))
      return fail(c, 'bad-request', 'upload-type');
    const { group, caller } = c.get('device');
    const bytes = new Uint8Array(await c.req.arrayBuffer());
    if (bytes.length === 0) return fail(c, 'bad-request', 'body');
    if (bytes.length > MAX_CHUNK) return fail(c, 'too-large');
    const outcome = await takeChunk(
      db,
      group,
      caller,
      sha256,
      { offset, length, mediaType, bytes },
      quotaOf(caller, now()),
    );
    switch (outcome.what) {
      case 'complete':
        metrics?.attachments.inc();
        return c.json({ complete: true });
      case 'more':
        return c.json({ received: outcome.received }, 202);
      case 'wrong-offset':
        return c.json({ error: 'bad-request', field: 'upload-offset' }, 409, {
          'upload-offset': String(outcome.received),
        });
      case 'over-quota':
        return tooMany(c, secondsToNextDay(now()));
      case 'not-named':
        return fail(c, 'not-found');
      case 'too-large':
        return fail(c, 'too-large');
      case 'hash-differs':
        return fail(c, 'bad-request', 'sha256');
    }
  });
};
