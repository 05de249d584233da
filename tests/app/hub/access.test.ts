/** Who gets what from each endpoint: nobody, the revoked, a tester, a specialist, a lead; and bad requests. */
import 'fake-indexeddb/auto';
import { beforeAll, describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { audienceOfRevision, mayWrite } from '../../../app/hub/policy.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { sealRevision, type RecordId, type Role } from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { testHub, type TestHub } from './hub-for-tests.ts';

const random = (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes));
let hub: TestHub;
let app: ReturnType<typeof createHub>;
const tokens: Record<string, string> = {};

const call = (path: string, token: string | undefined, init: RequestInit = {}) =>
  app.request(`http://hub.test/v1/${path}`, {
    ...init,
    headers: {
      'content-type': 'application/json',
      ...(token !== undefined && { authorization: `Bearer ${token}` }),
      ...init.headers,
    },
  });

const join = async (role: Role, device: string, member: RecordId | null = null) => {
  const code = newInviteCode(random);
  await addInvite(hub.db, hub.group, code, role, member, Date.now());
  const token = Buffer.from(random(32)).toString('base64url');
  const answer = await call('join', undefined, {
    method: 'POST',
    body: JSON.stringify({ code, token, device: device.repeat(16) }),
  });
  expect(answer.status).toBe(200);
  return token;
};

beforeAll(async () => {
  hub = await testHub();
  app = createHub({ db: hub.db, now: Date.now, random });
  tokens['lead'] = await join('lead', 'a');
  tokens['tester'] = await join('tester', 'b', idOf(1));
  tokens['specialist'] = await join('specialist', 'c');
  tokens['revoked'] = await join('tester', 'd', idOf(2));
  tokens['unknown'] = 'x'.repeat(43);
  await call('revoke', tokens['lead'], {
    method: 'POST',
    body: JSON.stringify({ device: 'd'.repeat(16) }),
  });
});

const post = (body: unknown): RequestInit => ({ method: 'POST', body: JSON.stringify(body) });
const sha = 'f'.repeat(64);

describe('each endpoint', () => {
  const everyone = ['none', 'unknown', 'revoked', 'tester', 'specialist', 'lead'] as const;
  it.each([
    ['hello', {}, [200, 200, 200, 200, 200, 200]],
    [
      'return',
      post({ token: 'y'.repeat(43), device: 'e'.repeat(16) }),
      [403, 403, 403, 403, 403, 403],
    ],
    ['pull', {}, [401, 401, 401, 200, 200, 200]],
    ['pull?scope=all', {}, [401, 401, 401, 403, 403, 200]],
    ['push', post({ revisions: [] }), [401, 401, 401, 200, 200, 200]],
    ['invite', post({ role: 'lead' }), [401, 401, 401, 403, 403, 200]],
    ['devices', {}, [401, 401, 401, 200, 200, 200]],
    ['revoke', post({ device: 'a'.repeat(16) }), [401, 401, 401, 403, 403, 404]],
    [`attachment/${sha}`, {}, [401, 401, 401, 404, 404, 404]],
    ['nothing', {}, [404, 404, 404, 404, 404, 404]],
  ] as const)('%s', async (path, init, statuses) => {
    for (const [at, who] of everyone.entries()) {
      // The lead's own device must outlive the table: it asks about one that is not there.
      const own = path === 'revoke' && who === 'lead' ? post({ device: '9'.repeat(16) }) : init;
      const { status } = await call(path, tokens[who], own);
      expect(status, who).toBe(statuses[at]);
    }
  });

  it('lists to a tester their own devices only', async () => {
    const answer = await call('devices', tokens['tester']);
    const { devices } = (await answer.json()) as { devices: { member: string }[] };
    expect(devices.map(({ member }) => member)).toEqual([idOf(1)]);
  });
});

describe('coming back after the browser cleared the device', () => {
  const joinWithCookie = async (device: string, member: RecordId) => {
    const code = newInviteCode(random);
    await addInvite(hub.db, hub.group, code, 'tester', member, Date.now());
    const token = Buffer.from(random(32)).toString('base64url');
    const answer = await call('join', undefined, post({ code, token, device: device.repeat(16) }));
    return { token, cookie: answer.headers.get('set-cookie') ?? '' };
  };
  const comeBack = (cookie: string, device: string, token: string) =>
    call('return', undefined, {
      ...post({ token, device: device.repeat(16) }),
      headers: { cookie: cookie.split(';')[0] ?? '' },
    });

  it('gives the same member a new device, once, and ends the old token', async () => {
    const { token, cookie } = await joinWithCookie('1', idOf(3));
    expect(cookie).toMatch(/HttpOnly/i);
    expect(cookie).toMatch(/SameSite=Strict/i);
    expect(cookie).toMatch(/Path=\/v1\/return/i);
    const fresh = 'z'.repeat(43);
    const back = await comeBack(cookie, '2', fresh);
    expect(back.status).toBe(200);
    expect(await back.json()).toMatchObject({ member: { id: idOf(3), role: 'tester' } });
    expect((await call('pull', token)).status).toBe(401);
    expect((await call('pull', fresh)).status).toBe(200);
    expect((await comeBack(cookie, '3', 'w'.repeat(43))).status).toBe(403);
    const next = back.headers.get('set-cookie') ?? '';
    expect((await comeBack(next, '3', 'w'.repeat(43))).status).toBe(200);
  });

  it('is refused once a lead has signed the device out', async () => {
    const { cookie } = await joinWithCookie('4', idOf(4));
    await call('revoke', tokens['lead'], post({ device: '4'.repeat(16) }));
    expect((await comeBack(cookie, '5', 'v'.repeat(43))).status).toBe(403);
  });

  it('keeps no secret in clear', async () => {
    const { cookie } = await joinWithCookie('6', idOf(4));
    const secret = /pairlog-return=([^;]+)/.exec(cookie)?.[1] as string;
    const rows = await hub.db.selectFrom('devices').selectAll().execute();
    expect(JSON.stringify(rows)).not.toContain(secret);
  });
});

describe('a bad request', () => {
  it.each([
    ['push', { method: 'POST', body: '{' }, 400],
    ['push', post({ revisions: 'no' }), 400],
    ['push', post({ revisions: Array.from({ length: 501 }, () => ({})) }), 400],
    ['push', { method: 'POST', body: 'x'.repeat(1_100_000) }, 413],
    ['pull?since=here', {}, 400],
    ['pull?scope=theirs', {}, 400],
    ['pull?limit=-1', {}, 400],
    ['pull?since=5.0123456789abcdef', {}, 410],
    ['invite', post({ role: 'tester' }), 400],
    ['attachment/nothex', {}, 400],
  ] as const)('%s %#', async (path, init, status) => {
    const answer = await call(path, tokens['lead'], init);
    expect(answer.status).toBe(status);
    expect(await answer.json()).toHaveProperty('error');
  });

  it('never fails the good revisions that come with it', async () => {
    const body = { project: idOf(5), round: idOf(6), code: '101', sizeMm: 270 };
    const good = sealRevision(
      { id: idOf(7), kind: 'pair', author: idOf(8), sv: 1, body },
      stampAt(1),
      null,
    );
    const newer = sealRevision(
      { id: idOf(9), kind: 'weather-mast', author: idOf(8), sv: 9, body: { wind: 3 } },
      stampAt(2),
      null,
    );
    const unreadable = sealRevision(
      { id: idOf(10), kind: 'pair', author: idOf(8), sv: 1, body: { ...body, code: 'no spaces' } },
      stampAt(3),
      null,
    );
    const answer = await call(
      'push',
      tokens['lead'],
      post({ revisions: [{ bad: true }, good, { ...good, body: {} }, newer, unreadable, good] }),
    );
    const { verdicts } = (await answer.json()) as { verdicts: { verdict: string; why?: string }[] };
    expect(verdicts.map(({ verdict, why }) => why ?? verdict)).toEqual([
      'not-a-revision',
      'stored',
      'hash-differs',
      'stored',
      'unreadable',
      'known',
    ]);
  });
});

describe('guessing codes', () => {
  it('is stopped after twenty tries from one address', async () => {
    const guess = () =>
      call(
        'join',
        undefined,
        post({
          code: newInviteCode(random),
          token: Buffer.from(random(32)).toString('base64url'),
          device: 'e'.repeat(16),
        }),
      );
    const statuses: number[] = [];
    for (let at = 0; at < 25; at++) statuses.push((await guess()).status);
    expect(statuses.filter((status) => status === 403).length).toBeLessThanOrEqual(20);
    expect(statuses.at(-1)).toBe(429);
  });
});

describe('the policy', () => {
  const [me, other] = [idOf(1), idOf(2)];
  const revision = (kind: string, author: RecordId, tester: RecordId | null) =>
    sealRevision(
      { id: idOf(3), kind, author, sv: 1, body: tester ? { tester } : {} },
      stampAt(1),
      null,
    );
  it.each([
    ['run', me, me, null, true],
    ['run', me, other, null, false],
    ['run', other, me, null, false],
    ['round', me, null, null, false],
    ['hand-out', me, me, null, false],
    ['run', me, me, { author: other, kind: 'run', audience: other }, false],
    ['run', me, me, { author: other, kind: 'run', audience: me }, true],
    ['run', me, me, { author: me, kind: 'attachment', audience: me }, false],
  ] as const)('a tester writes %s %#', (kind, author, tester, held, may) => {
    const caller = { member: me, role: 'tester' as const };
    expect(mayWrite(caller, revision(kind, author, tester), held)).toBe(may);
  });
  it('lets a specialist write nothing', () => {
    const caller = { member: me, role: 'specialist' as const };
    expect(mayWrite(caller, revision('run', me, me), null)).toBe(false);
  });
  it.each([
    ['project', '*'],
    ['round', ''],
    ['bench-check', ''],
    ['hand-out', me],
    ['weather-mast', ''],
  ])('sends %s to "%s"', (kind, audience) => {
    expect(audienceOfRevision(revision(kind, other, me), null)).toBe(audience);
  });
});
