/** Pages of other origins at the hub's door: what sets the cookie of a return, or acts on it, hears its own pages only. */
import { randomBytes } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { LogLine } from '../../../app/hub/answers.ts';
import { createHub } from '../../../app/hub/app.ts';
import { originOf } from '../../../app/hub/own-page.ts';
import { openDatabase, type HubDatabase } from '../../../app/hub/store/database.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { idOf } from '../../core/records/make.ts';

const group = idOf(900);
const json = { 'content-type': 'application/json' };
const newToken = () => randomBytes(32).toString('base64url');
const newDevice = () => randomBytes(8).toString('hex');

let db: HubDatabase;
let log: LogLine[];
let app: ReturnType<typeof createHub>;
const open = (behindProxy: boolean) => {
  app = createHub({
    db,
    now: Date.now,
    random: (bytes) => randomBytes(bytes),
    addressOf: () => '192.0.2.1',
    originOf: (c) => originOf(c, behindProxy),
    log: (line) => log.push(line),
  });
};
beforeEach(async () => {
  ({ db } = await openDatabase({ file: ':memory:' }));
  await makeGroup(db, group, 'Group', Date.now());
  log = [];
  open(false);
});
afterEach(() => db.destroy());

const HUB = 'http://hub.team.example:8080';
type Headers = Readonly<Record<string, string>>;
const post = (path: string, headers: Headers, body: unknown, hub = HUB) =>
  app.request(`${hub}/v1/${path}`, { method: 'POST', headers, body: JSON.stringify(body) });
const isIn = async (token: string) =>
  (await app.request(`${HUB}/v1/pull`, { headers: { authorization: `Bearer ${token}` } }))
    .status === 200;

/** A lead who has joined, with the cookie that the browser holds from then on. */
const lead = async (hub = HUB, headers: Headers = {}) => {
  const code = newInviteCode(randomBytes);
  await addInvite(db, group, code, 'lead', null, Date.now());
  const token = newToken();
  const own = { ...json, 'sec-fetch-site': 'same-origin', ...headers };
  const answer = await post('join', own, { code, token, device: newDevice() }, hub);
  expect(answer.status).toBe(200);
  const set = answer.headers.get('set-cookie') ?? '';
  return { token, set, cookie: set.split(';')[0] ?? '' };
};

/** What browsers say of a question from elsewhere that carries the cookie all the same. */
const elsewhere: readonly (readonly [string, Headers, number])[] = [
  [
    'a sibling subdomain',
    { ...json, 'sec-fetch-site': 'same-site', origin: 'http://wiki.team.example:8080' },
    403,
  ],
  [
    'another port of the same host',
    { ...json, 'sec-fetch-site': 'same-site', origin: 'http://hub.team.example:9090' },
    403,
  ],
  ['another site', { ...json, 'sec-fetch-site': 'cross-site', origin: 'http://x.example' }, 403],
  ['another port, by plain http', { ...json, origin: 'http://hub.team.example:9090' }, 403],
  ['a sibling, by plain http', { ...json, origin: 'http://wiki.team.example:8080' }, 403],
  ['https at a hub on http', { ...json, origin: 'https://hub.team.example:8080' }, 403],
  ['a sandboxed frame', { ...json, origin: 'null' }, 403],
  ['an address that a person opened', { ...json, 'sec-fetch-site': 'none' }, 403],
  ['nobody knows where', json, 403],
  [
    'a name that only begins as the hub does',
    { ...json, origin: 'http://hub.team.example:8080.x.example' },
    403,
  ],
  [
    'a proxy that nobody named',
    { ...json, origin: 'http://x.example', 'x-forwarded-host': 'x.example' },
    403,
  ],
  ['an own page, as plain text', { 'sec-fetch-site': 'same-origin' }, 400],
  [
    'an own page, as a form',
    { 'sec-fetch-site': 'same-origin', 'content-type': 'application/json-patch' },
    400,
  ],
];

describe('coming back', () => {
  it.each(elsewhere)('is not done for %s', async (_, headers, status) => {
    const { token, cookie } = await lead();
    const stolen = newToken();
    const answer = await post(
      'return',
      { 'content-type': 'text/plain;charset=UTF-8', ...headers, cookie },
      { token: stolen, device: newDevice() },
    );
    expect(answer.status).toBe(status);
    expect(answer.headers.get('set-cookie')).toBeNull();
    expect(await isIn(stolen)).toBe(false);
    expect(await isIn(token)).toBe(true);
    const refused = JSON.stringify(log.filter(({ event }) => event === 'refused'));
    expect(refused).toContain('/v1/return');
    expect(refused).not.toMatch(new RegExp(`${stolen}|${cookie.split('=')[1]}`));
  });

  it.each([
    ['by what the browser says of the site', { 'sec-fetch-site': 'same-origin' }],
    ['by its origin, where the browser says no more', { origin: HUB }],
  ])('is done for an own page, known %s', async (_, headers) => {
    const { token, cookie } = await lead();
    const fresh = newToken();
    const own = { 'content-type': 'application/json; charset=utf-8', ...headers, cookie };
    expect((await post('return', own, { token: fresh, device: newDevice() })).status).toBe(200);
    expect(await isIn(fresh)).toBe(true);
    expect(await isIn(token)).toBe(false);
  });

  it('is not closed to the person by what a page of elsewhere asked', async () => {
    const { cookie } = await lead();
    for (let at = 0; at < 40; at++)
      await post(
        'return',
        { ...json, 'sec-fetch-site': 'same-site' },
        { token: newToken(), device: newDevice() },
      );
    const own = { ...json, 'sec-fetch-site': 'same-origin', cookie };
    const back = await post('return', own, { token: newToken(), device: newDevice() });
    expect(back.status).toBe(200);
  });
});

describe('joining', () => {
  // The cookie of a stranger's join would bring the browser back as the stranger.
  it.each(elsewhere)('is not done for %s', async (_, headers, status) => {
    const code = newInviteCode(randomBytes);
    await addInvite(db, group, code, 'tester', idOf(5), Date.now());
    const token = newToken();
    const plain = { 'content-type': 'text/plain;charset=UTF-8' };
    const asked = { code, token, device: newDevice() };
    const answer = await post('join', { ...plain, ...headers }, asked);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('set-cookie')).toBeNull();
    expect(await isIn(token)).toBe(false);
    const own = { ...json, 'sec-fetch-site': 'same-origin' };
    expect((await post('join', own, asked)).status).toBe(200);
  });
});

describe('behind a proxy', () => {
  const BEHIND = 'http://127.0.0.1:8080';
  it.each([
    ['that keeps the host', 'http://hub.example', { 'x-forwarded-proto': 'https' }],
    [
      'that keeps the host and its port',
      'http://hub.example:443',
      { 'x-forwarded-proto': 'https' },
    ],
    [
      'that names the host',
      BEHIND,
      { 'x-forwarded-proto': 'https', 'x-forwarded-host': 'hub.example' },
    ],
  ])('%s the origin is the one that browsers see', async (_, hub, proxied) => {
    open(true);
    const { cookie } = await lead(hub, proxied);
    const ask = (origin: string) =>
      post(
        'return',
        { ...json, ...proxied, origin, cookie },
        { token: newToken(), device: newDevice() },
        hub,
      );
    for (const origin of ['https://wiki.example', 'http://hub.example', 'https://hub.example:8443'])
      expect((await ask(origin)).status).toBe(403);
    expect((await ask('https://hub.example')).status).toBe(200);
  });

  it('of which nobody told the hub, what it says of the host is not believed', async () => {
    const { cookie } = await lead();
    const named = { 'x-forwarded-host': 'x.example', origin: 'http://x.example' };
    const asked = { token: newToken(), device: newDevice() };
    expect((await post('return', { ...json, ...named, cookie }, asked)).status).toBe(403);
  });

  it('with no readable address nothing counts as own', async () => {
    open(true);
    const odd = { 'x-forwarded-host': 'a b', origin: 'http://a b' };
    const asked = { token: newToken(), device: newDevice() };
    expect((await post('return', { ...json, ...odd }, asked)).status).toBe(403);
  });
});

describe('the cookie', () => {
  const SECURE = 'https://hub.team.example';
  it('is the host’s own over https, so that no sibling can set it', async () => {
    const { set, cookie } = await lead(SECURE);
    expect(set).toMatch(/^__Host-pairlog-return=[^;]+;/);
    for (const part of [/; Path=\/(;|$)/, /; Secure/, /; HttpOnly/, /; SameSite=Strict/])
      expect(set).toMatch(part);
    expect(set).not.toMatch(/Domain/i);
    const asked = { token: newToken(), device: newDevice() };
    const own = { ...json, 'sec-fetch-site': 'same-origin' };
    // As a sibling subdomain could set it for all of its site.
    const tossed = { ...own, cookie: cookie.replace('__Host-', '') };
    expect((await post('return', tossed, asked, SECURE)).status).toBe(403);
    expect((await post('return', { ...own, cookie }, asked, SECURE)).status).toBe(200);
  });

  it('goes to the return only by plain http, where browsers keep no such promise', async () => {
    const { set } = await lead();
    expect(set).toMatch(/^pairlog-return=[^;]+;.*; Path=\/v1\/return(;|$)/);
    expect(set).not.toMatch(/Secure/);
  });
});

it.each(['join', 'return', 'renew', 'push', 'invite', 'revoke', 'pull'])(
  'a browser that asks whether another origin may %s hears nothing of a yes',
  async (path) => {
    const answer = await app.request(`${HUB}/v1/${path}`, {
      method: 'OPTIONS',
      headers: {
        origin: 'http://wiki.team.example:8080',
        'access-control-request-method': 'POST',
        'access-control-request-headers': 'authorization, content-type',
      },
    });
    expect(answer.status).toBe(404);
    const allowed = [...answer.headers.keys()].filter((name) => name.startsWith('access-control-'));
    expect(allowed).toEqual([]);
  },
);
