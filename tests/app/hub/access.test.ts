/** Who gets what from each endpoint: nobody, the revoked, a tester, a specialist, a lead; and bad requests. */
import 'fake-indexeddb/auto';
import { createECDH } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { pushRevisions } from '../../../app/hub/store/feed.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import {
  audienceOfRevision,
  mayWrite,
  sealRevision,
  sha256OfBytes,
  type RecordId,
  type Revision,
  type Role,
  type Sha256,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { OWN_PAGE } from './as-browser.ts';
import { testHub, type TestHub } from './hub-for-tests.ts';

const random = (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes));
let hub: TestHub;
let app: ReturnType<typeof createHub>;

/** Everyone who may ask: a row of the tables below has an answer for each, in this order. */
const callers = [
  'nobody',
  'revoked',
  'tester',
  'otherTester',
  'specialist',
  'lead',
  'leadOfOtherGroup',
] as const;
type Caller = (typeof callers)[number];
const tokens: Partial<Record<Caller, string>> = {};
const deviceOf = (caller: Caller) => `${callers.indexOf(caller)}a`.repeat(8);

const call = (path: string, token: string | undefined, init: RequestInit = {}) =>
  app.request(`http://hub.test/v1/${path}`, {
    ...init,
    headers: {
      ...OWN_PAGE,
      ...(token !== undefined && { authorization: `Bearer ${token}` }),
      ...init.headers,
    },
  });
const post = (body: unknown): RequestInit => ({ method: 'POST', body: JSON.stringify(body) });
const newToken = () => Buffer.from(random(32)).toString('base64url');

const join = async (
  role: Role,
  device: string,
  member: RecordId | null = null,
  group = hub.group,
) => {
  const code = newInviteCode(random);
  await addInvite(hub.db, group, code, role, member, Date.now());
  const token = newToken();
  const answer = await call('join', undefined, post({ code, token, device }));
  expect(answer.status).toBe(200);
  return token;
};

const tester = idOf(1);
const otherTester = idOf(2);
const specialist = idOf(5);
const otherSpecialist = idOf(6);
const records: Record<string, Revision> = {};
const photos: Record<string, { sha256: Sha256; bytes: Uint8Array; names: Revision }> = {};
let count = 100;

const seal = (kind: string, author: RecordId, body: Record<string, unknown>): Revision =>
  sealRevision({ id: idOf(++count), kind, author, sv: 9, body }, stampAt(count), null);

/** The field in which a kind names what it is about. */
const fieldOf = (kind: string): string =>
  kind === 'answer' ? 'question' : kind === 'proposal-reply' ? 'proposal' : 'finding';

const photoOf = (record: RecordId, author: RecordId) => {
  const bytes = random(300);
  const sha256 = sha256OfBytes(bytes);
  const body = { record, sha256, mediaType: 'image/jpeg', bytes: bytes.length };
  return { sha256, bytes, names: seal('attachment', author, body) };
};

const send = async (caller: Caller, revision: Revision): Promise<string> => {
  const answer = await call('push', tokens[caller], post({ revisions: [revision] }));
  if (answer.status !== 200) return String(answer.status);
  const { verdicts } = (await answer.json()) as { verdicts: { verdict: string; why?: string }[] };
  return verdicts[0]?.why ?? verdicts[0]?.verdict ?? '';
};

const upload = (caller: Caller, { sha256, bytes }: { sha256: Sha256; bytes: Uint8Array }) =>
  call(`attachment/${sha256}`, tokens[caller], {
    method: 'PATCH',
    body: new Uint8Array(bytes),
    headers: {
      'upload-offset': '0',
      'upload-length': String(bytes.length),
      'upload-type': 'image/jpeg',
    },
  });

beforeAll(async () => {
  hub = await testHub();
  app = createHub({
    ...{ db: hub.db, now: Date.now, random },
    addressOf: (c) => c.req.header('test-address') ?? 'unknown',
  });
  const other = idOf(90);
  await makeGroup(hub.db, other, 'Other group', Date.now());
  tokens.revoked = await join('tester', deviceOf('revoked'), idOf(3));
  tokens.tester = await join('tester', deviceOf('tester'), tester);
  tokens.otherTester = await join('tester', deviceOf('otherTester'), otherTester);
  tokens.specialist = await join('specialist', deviceOf('specialist'), specialist);
  tokens.lead = await join('lead', deviceOf('lead'));
  tokens.leadOfOtherGroup = await join('lead', deviceOf('leadOfOtherGroup'), null, other);
  await call('revoke', tokens.lead, post({ device: deviceOf('revoked') }));
  const lead = idOf(4);
  for (const [name, kind, body] of [
    ['project', 'project', {}],
    ['archived project', 'project', { archived: '2026-11-18T10:00:00+01:00' }],
    ['round', 'round', {}],
    ['pair', 'pair', {}],
    [
      'bench check',
      'bench-check',
      { correctedBy: { by: idOf(4), at: '2026-05-01T07:30:00Z', why: 'Misread.' } },
    ],
    ['gauge study', 'gauge-study', {}],
    ['hand-out plan', 'hand-out-plan', {}],
    ['finding', 'finding', {}],
    ['report', 'report', {}],
    ['stop-use notice', 'stop-use', {}],
    ['hand-out', 'hand-out', { tester }],
    ['reply', 'reply', { tester }],
    ['decision', 'decision', {}],
    ['quote', 'quote', { source: idOf(70), tester }],
    ['sent quote', 'quote', { source: idOf(70), tester, sent: '2026-11-18T10:00:00+01:00' }],
    ['question', 'question', { tester }],
    ['question of the other tester', 'question', { tester: otherTester }],
    ['proposal reply', 'proposal-reply', {}],
    ['thanks', 'thanks', { tester }],
    ['fit session', 'fit-session', {}],
    ['proposal of a lead', 'proposal', {}],
    ['unknown kind', 'weather-mast', {}],
  ] as const)
    records[name] = seal(kind, lead, body);
  records['tester'] = sealRevision(
    { id: tester, kind: 'tester', author: lead, sv: 9, body: { code: 'T01' } },
    stampAt(1),
    null,
  );
  for (const revision of Object.values(records))
    expect(await send('lead', revision)).toBe('stored');
  for (const kind of ['run', 'ranking', 'damage-report', 'acknowledgement']) {
    records[kind] = seal(kind, tester, { tester });
    expect(await send('tester', records[kind])).toBe('stored');
  }
  records['fit trial'] = seal('fit-trial', tester, { tester });
  records['fit trial of a code'] = seal('fit-trial', tester, { fitter: 'F2' });
  records['fit trial by a lead'] = seal('fit-trial', lead, { tester });
  for (const [name, by] of [
    ['fit trial', 'tester'],
    ['fit trial of a code', 'tester'],
    ['fit trial by a lead', 'lead'],
  ] as const)
    expect(await send(by, records[name] as Revision)).toBe('stored');
  records['answer'] = seal('answer', tester, { tester, question: records['question']?.id });
  expect(await send('tester', records['answer'])).toBe('stored');
  records['message'] = seal('answer', tester, { tester, pair: records['pair']?.id });
  expect(await send('tester', records['message'])).toBe('stored');
  records['own proposal'] = seal('proposal', specialist, { finding: records['finding']?.id });
  expect(await send('specialist', records['own proposal'])).toBe('stored');
  records['proposal'] = seal('proposal', specialist, { finding: records['finding']?.id });
  expect(await send('specialist', records['proposal'])).toBe('stored');
  for (const [name, record, author, by] of [
    ['of the run', 'run', tester, 'tester'],
    ['of the finding', 'finding', lead, 'lead'],
    ['of the bench check', 'bench check', lead, 'lead'],
    ['of the proposal', 'proposal', specialist, 'specialist'],
  ] as const) {
    const photo = photoOf(records[record]?.id as RecordId, author);
    photos[name] = photo;
    expect(await send(by, photo.names)).toBe('stored');
    expect((await upload(by, photo)).status).toBe(200);
  }
});

const sha = 'f'.repeat(64);
const phone = createECDH('prime256v1');
/** Where a push service would reach a phone. */
const address = {
  endpoint: 'https://push.example.net/send/1',
  keys: {
    p256dh: phone.generateKeys('base64url'),
    auth: Buffer.alloc(16, 7).toString('base64url'),
  },
};
/** For the lead's own device to outlive the table, `revoke` asks about somebody else's. */
const endpoints: Readonly<
  Record<string, readonly (readonly [string, string, RequestInit, readonly number[]])[]>
> = {
  'GET /v1/hello': [['', 'hello', {}, [200, 200, 200, 200, 200, 200, 200]]],
  'POST /v1/join': [
    [
      'with a code that is not there',
      'join',
      post({ code: '0000000000', token: 'y'.repeat(43), device: 'e'.repeat(16) }),
      [403, 403, 403, 403, 403, 403, 403],
    ],
  ],
  'POST /v1/invited': [
    [
      'with a code that is not there',
      'invited',
      // From an address of its own: its guesses are not those of the rows beside it.
      { ...post({ code: '0000000000' }), headers: { 'test-address': '192.0.2.7' } },
      [403, 403, 403, 403, 403, 403, 403],
    ],
  ],
  'POST /v1/return': [
    [
      'without the cookie',
      'return',
      post({ token: 'y'.repeat(43), device: 'e'.repeat(16) }),
      [403, 403, 403, 403, 403, 403, 403],
    ],
  ],
  'POST /v1/renew': [
    ['', 'renew', post({ token: 'w'.repeat(43) }), [401, 401, 200, 200, 200, 200, 200]],
  ],
  'GET /v1/pull': [
    ['own', 'pull', {}, [401, 401, 200, 200, 200, 200, 200]],
    ['everything', 'pull?scope=all', {}, [401, 401, 403, 403, 403, 200, 200]],
  ],
  'POST /v1/push': [['', 'push', post({ revisions: [] }), [401, 401, 200, 200, 200, 200, 200]]],
  'POST /v1/invite': [
    ['a lead', 'invite', post({ role: 'lead' }), [401, 401, 403, 403, 403, 200, 200]],
    ['a tester', 'invite', post({ role: 'tester', tester }), [401, 401, 403, 403, 403, 200, 200]],
  ],
  'GET /v1/devices': [['', 'devices', {}, [401, 401, 200, 200, 200, 200, 200]]],
  'GET /v1/audit': [['', 'audit', {}, [401, 401, 403, 403, 403, 200, 200]]],
  'POST /v1/revoke': [
    [
      'a device that is not there',
      'revoke',
      post({ device: '9'.repeat(16) }),
      [401, 401, 404, 404, 404, 404, 404],
    ],
    [
      'the device of the revoked',
      'revoke',
      post({ device: deviceOf('revoked') }),
      [401, 401, 403, 403, 403, 200, 404],
    ],
  ],
  'GET /v1/wake': [['', 'wake', {}, [401, 401, 200, 200, 403, 403, 403]]],
  'PUT /v1/wake': [
    [
      '',
      'wake',
      { method: 'PUT', body: JSON.stringify(address) },
      [401, 401, 200, 200, 403, 403, 403],
    ],
    ['no address', 'wake', { method: 'PUT', body: '{}' }, [401, 401, 400, 400, 403, 403, 403]],
  ],
  'DELETE /v1/wake': [['', 'wake', { method: 'DELETE' }, [401, 401, 200, 200, 403, 403, 403]]],
  'GET /v1/reach': [
    ['', `reach?record=${idOf(70)}`, {}, [401, 401, 403, 403, 403, 200, 200]],
    ['of nothing', 'reach?record=x', {}, [401, 401, 403, 403, 403, 400, 400]],
  ],
  'GET /v1/attachment/:sha256': [
    ['nobody has', `attachment/${sha}`, {}, [401, 401, 404, 404, 404, 404, 404]],
    [
      'state of one nobody has',
      `attachment/${sha}`,
      { method: 'HEAD' },
      [401, 401, 404, 404, 404, 404, 404],
    ],
  ],
  'PATCH /v1/attachment/:sha256': [
    [
      'one byte of what no record names',
      `attachment/${sha}`,
      {
        method: 'PATCH',
        body: 'x',
        headers: { 'upload-offset': '0', 'upload-length': '1', 'upload-type': 'image/jpeg' },
      },
      [401, 401, 404, 404, 404, 404, 404],
    ],
  ],
};

/** Outside of the table: it asks for no token and says nothing of anybody. */
const OPEN = ['GET /health'];

describe('each endpoint', () => {
  it('has its row', () => {
    const made = app.routes
      .filter(({ method, path }) => method !== 'ALL' && !path.endsWith('*'))
      .map(({ method, path }) => `${method} ${path}`);
    expect([...new Set(made)].sort()).toEqual([...Object.keys(endpoints), ...OPEN].sort());
  });

  const rows = Object.entries(endpoints).flatMap(([name, cases]) =>
    cases.map(([what, ...row]) => [`${name} ${what}`, ...row] as const),
  );
  it.each(rows)('%s', async (_, path, init, statuses) => {
    for (const [at, caller] of callers.entries())
      expect((await call(path, tokens[caller], init)).status, caller).toBe(statuses[at]);
  });

  it('says to a lead nothing of who could be woken in another group', async () => {
    const put = { method: 'PUT', body: JSON.stringify(address) };
    expect((await call('wake', tokens.tester, put)).status).toBe(200);
    const on = async (caller: Caller) =>
      ((await (await call(`reach?record=${idOf(70)}`, tokens[caller])).json()) as { on: string[] })
        .on;
    expect(await on('lead')).toEqual([tester]);
    expect(await on('leadOfOtherGroup')).toEqual([]);
    await call('wake', tokens.tester, { method: 'DELETE' });
  });

  it('lists to a tester their own devices only', async () => {
    const answer = await call('devices', tokens.tester);
    const { devices } = (await answer.json()) as { devices: { member: string }[] };
    expect(devices.map(({ member }) => member)).toEqual([tester]);
  });

  it('lists to a lead nothing of another group', async () => {
    const answer = await call('devices', tokens.leadOfOtherGroup);
    const { devices } = (await answer.json()) as { devices: { device: string }[] };
    expect(devices.map(({ device }) => device)).toEqual([deviceOf('leadOfOtherGroup')]);
  });

  it('lets a member sign out their own device, and says so in the audit without more words', async () => {
    const token = await join('tester', '8'.repeat(16), tester);
    expect((await call('revoke', token, post({ device: '8'.repeat(16) }))).status).toBe(200);
    expect((await call('pull', token)).status).toBe(401);
    const { entries } = (await (await call('audit', tokens.lead)).json()) as {
      entries: Record<string, unknown>[];
    };
    const entry = entries.find(({ subject }) => subject === '8'.repeat(16));
    expect(entry).toMatchObject({ what: 'revoke', member: tester });
    expect(Object.keys(entry ?? {}).sort()).toEqual(
      ['atMs', 'device', 'entry', 'member', 'subject', 'what'].sort(),
    );
  });
});

describe('a code that is looked at before it is used', () => {
  const look = async (code: string, at = Date.now()) => {
    const later = createHub({ db: hub.db, now: () => at, random });
    const answer = await later.request('http://hub.test/v1/invited', {
      ...post({ code }),
      headers: OWN_PAGE,
    });
    return { status: answer.status, said: (await answer.json()) as Record<string, unknown> };
  };
  const invite = async (role: Role, member: RecordId | null) => {
    const code = newInviteCode(random);
    await addInvite(hub.db, hub.group, code, role, member, Date.now());
    return code;
  };

  it('says group, role and tester, no more, and can be used after', async () => {
    const code = await invite('tester', tester);
    for (const _ of [1, 2]) {
      const { status, said } = await look(code);
      expect(status).toBe(200);
      expect({ ...said, groupName: typeof said['groupName'] }).toEqual({
        ...{ groupName: 'string', role: 'tester', tester: 'T01' },
      });
    }
    const device = '5e'.repeat(8);
    const joined = await call('join', undefined, post({ code, token: newToken(), device }));
    expect(joined.status).toBe(200);
    // A code that was used says nothing any more.
    expect(await look(code)).toMatchObject({ status: 403, said: { error: 'unknown-code' } });
  });

  it('names no tester to leads and specialists, nor one that is not in the log', async () => {
    expect((await look(await invite('lead', null))).said).toMatchObject({
      role: 'lead',
      tester: null,
    });
    expect((await look(await invite('specialist', null))).said).toMatchObject({ tester: null });
    expect((await look(await invite('tester', idOf(77)))).said).toMatchObject({ tester: null });
  });

  it('says nothing once it has expired', async () => {
    const code = await invite('tester', tester);
    expect((await look(code, Date.now() + 73 * 3_600_000)).status).toBe(403);
  });

  it('is held to the limits of joining: a wrong one is a guess, a right one costs nothing', async () => {
    const guarded = createHub({ db: hub.db, now: Date.now, random, addressOf: () => '192.0.2.9' });
    const ask = (code: string) =>
      guarded.request('http://hub.test/v1/invited', { ...post({ code }), headers: OWN_PAGE });
    const right = await invite('lead', null);
    for (let at = 0; at < 30; at++) expect((await ask(right)).status).toBe(200);
    for (let at = 0; at < 20; at++) expect((await ask('0000000000')).status).toBe(403);
    expect((await ask('0000000000')).status).toBe(429);
    expect((await ask(right)).status).toBe(429);
    const join = post({ code: right, token: newToken(), device: '6e'.repeat(8) });
    const joined = await guarded.request('http://hub.test/v1/join', { ...join, headers: OWN_PAGE });
    expect(joined.status).toBe(429);
  });

  it('is for the pages of the hub alone', async () => {
    const answer = await app.request('http://hub.test/v1/invited', {
      ...post({ code: await invite('lead', null) }),
      headers: { ...OWN_PAGE, 'sec-fetch-site': 'same-site' },
    });
    expect(answer.status).toBe(403);
  });
});

describe('each record', () => {
  // Who reads it, in the order of `callers`.
  it.each([
    ['project', [0, 0, 1, 1, 1, 1, 0]],
    ['archived project', [0, 0, 1, 1, 1, 1, 0]],
    ['round', [0, 0, 0, 0, 0, 1, 0]],
    ['pair', [0, 0, 1, 1, 0, 1, 0]],
    ['bench check', [0, 0, 0, 0, 0, 1, 0]],
    ['gauge study', [0, 0, 0, 0, 0, 1, 0]],
    ['hand-out plan', [0, 0, 0, 0, 0, 1, 0]],
    ['finding', [0, 0, 0, 0, 1, 1, 0]],
    ['report', [0, 0, 0, 0, 1, 1, 0]],
    ['stop-use notice', [0, 0, 1, 1, 0, 1, 0]],
    ['tester', [0, 0, 1, 0, 0, 1, 0]],
    ['hand-out', [0, 0, 1, 0, 0, 1, 0]],
    ['run', [0, 0, 1, 0, 0, 1, 0]],
    ['ranking', [0, 0, 1, 0, 0, 1, 0]],
    ['damage-report', [0, 0, 1, 0, 0, 1, 0]],
    ['acknowledgement', [0, 0, 1, 0, 0, 1, 0]],
    ['reply', [0, 0, 1, 0, 0, 1, 0]],
    ['decision', [0, 0, 0, 0, 0, 1, 0]],
    ['quote', [0, 0, 0, 0, 0, 1, 0]],
    ['sent quote', [0, 0, 0, 0, 1, 1, 0]],
    ['question', [0, 0, 1, 0, 0, 1, 0]],
    ['answer', [0, 0, 1, 0, 0, 1, 0]],
    ['message', [0, 0, 1, 0, 0, 1, 0]],
    ['proposal', [0, 0, 0, 0, 1, 1, 0]],
    ['proposal of a lead', [0, 0, 0, 0, 1, 1, 0]],
    ['proposal reply', [0, 0, 0, 0, 1, 1, 0]],
    ['thanks', [0, 0, 1, 0, 0, 1, 0]],
    ['fit session', [0, 0, 1, 1, 0, 1, 0]],
    ['fit trial', [0, 0, 1, 0, 0, 1, 0]],
    ['fit trial of a code', [0, 0, 1, 0, 0, 1, 0]],
    ['fit trial by a lead', [0, 0, 1, 0, 0, 1, 0]],
    ['unknown kind', [0, 0, 0, 0, 0, 1, 0]],
  ] as const)('%s is read by those it is for', async (name, readers) => {
    for (const [at, caller] of callers.entries()) {
      const scope = caller.startsWith('lead') ? 'all' : 'mine';
      const answer = await call(`pull?scope=${scope}&own=1`, tokens[caller]);
      const page = (await answer.json()) as { revisions?: { id: string }[] };
      const reads = page.revisions?.some(({ id }) => id === records[name]?.id) ?? false;
      expect(reads, caller).toBe(readers[at] === 1);
    }
  });

  // What becomes of a new revision of it by each caller, in the order of `callers`.
  const no = 'not-allowed';
  it.each([
    ['project', ['401', '401', no, no, no, 'stored']],
    ['archived project', ['401', '401', no, no, no, 'stored']],
    ['round', ['401', '401', no, no, no, 'stored']],
    ['pair', ['401', '401', no, no, no, 'stored']],
    ['bench check', ['401', '401', no, no, no, 'stored']],
    ['hand-out', ['401', '401', no, no, no, 'stored']],
    ['finding', ['401', '401', no, no, no, 'stored']],
    ['report', ['401', '401', no, no, no, 'stored']],
    ['reply', ['401', '401', no, no, no, 'stored']],
    ['decision', ['401', '401', no, no, no, 'stored']],
    ['quote', ['401', '401', no, no, no, 'stored']],
    ['sent quote', ['401', '401', no, no, no, 'stored']],
    ['tester', ['401', '401', no, no, no, 'stored']],
    ['run', ['401', '401', 'stored', no, no, 'stored']],
    ['ranking', ['401', '401', 'stored', no, no, 'stored']],
    ['damage-report', ['401', '401', 'stored', no, no, 'stored']],
    ['question', ['401', '401', no, no, no, 'stored']],
    ['answer', ['401', '401', 'stored', no, no, 'stored']],
    ['message', ['401', '401', 'stored', no, no, 'stored']],
    ['proposal of a lead', ['401', '401', no, no, no, 'stored']],
    ['proposal reply', ['401', '401', no, no, no, 'stored']],
    ['thanks', ['401', '401', no, no, no, 'stored']],
    ['fit session', ['401', '401', no, no, no, 'stored']],
    ['fit trial', ['401', '401', 'stored', no, no, 'stored']],
    ['fit trial of a code', ['401', '401', 'stored', no, no, 'stored']],
    ['fit trial by a lead', ['401', '401', 'stored', no, no, 'stored']],
    ['proposal', ['401', '401', no, no, 'stored', 'stored']],
  ] as const)('%s is changed by those it belongs to', async (name, verdicts) => {
    for (const [at, caller] of callers.slice(0, 6).entries()) {
      const before = records[name] as Revision;
      const author =
        { tester, otherTester, specialist }[caller as string] ??
        (before.author === specialist ? idOf(4) : before.author);
      const next = sealRevision(
        { id: before.id, kind: before.kind, author, sv: 9, body: before.body },
        stampAt(++count),
        before.stamp,
      );
      expect(await send(caller, next), caller).toBe(verdicts[at]);
    }
  });

  it.each([
    { correctedBy: { by: idOf(4), at: '2026-11-20T10:00:00Z', why: 'typed wrong' } },
    { broughtIn: { by: idOf(4), at: '2026-11-20T10:00:00Z' } },
  ])('is said to be a lead’s work by leads alone: %j', async (mark) => {
    const run = records['run'] as Revision;
    for (const [caller, author, verdict] of [
      ['tester', tester, 'not-allowed'],
      ['lead', idOf(4), 'stored'],
    ] as const) {
      const next = sealRevision(
        { id: run.id, kind: 'run', author, sv: 9, body: { ...run.body, ...mark } },
        stampAt(++count),
        run.stamp,
      );
      expect(await send(caller, next), caller).toBe(verdict);
    }
    // The tester's own later word takes the mark away.
    const again = sealRevision(
      { id: run.id, kind: 'run', author: tester, sv: 9, body: run.body },
      stampAt(++count),
      run.stamp,
    );
    expect(await send('tester', again)).toBe('stored');
  });

  it('cannot be reached from another group, even by its id', async () => {
    const run = records['run'] as Revision;
    const foreign = sealRevision(
      { id: run.id, kind: 'run', author: idOf(91), sv: 9, body: { tester } },
      stampAt(++count),
      null,
    );
    expect(await send('leadOfOtherGroup', foreign)).toBe('stored');
    const page = (await (await call('pull?scope=all&own=1', tokens.lead)).json()) as {
      revisions: { hash: string }[];
    };
    expect(page.revisions.some(({ hash }) => hash === foreign.hash)).toBe(false);
  });

  // What a record of these kinds says, by whom, and what becomes of it. Each is new.
  it.each([
    ['an answer to their question', 'tester', 'answer', tester, { tester }, 'question', 'stored'],
    ['an answer of a lead for them', 'lead', 'answer', idOf(4), { tester }, 'question', 'stored'],
    ['in the name of another', 'tester', 'answer', tester, { tester: otherTester }, null, no],
    ['written as another', 'tester', 'answer', otherTester, { tester: otherTester }, null, no],
    [
      'an answer to a question of another',
      ...(['tester', 'answer', tester, { tester }, 'question of the other tester', no] as const),
    ],
    ['an answer to what is no question', 'tester', 'answer', tester, { tester }, 'run', no],
    ['an answer to a lead’s thanks', 'tester', 'answer', tester, { tester }, 'thanks', no],
    ['a question to themselves', 'tester', 'question', tester, { tester }, null, no],
    ['thanks to themselves', 'tester', 'thanks', tester, { tester }, null, no],
    ['a proposal by a tester', 'tester', 'proposal', tester, {}, 'finding', no],
    ['a proposal', 'specialist', 'proposal', specialist, {}, 'finding', 'stored'],
    ['a proposal as another', 'specialist', 'proposal', otherSpecialist, {}, 'finding', no],
    ['a proposal to a report', 'specialist', 'proposal', specialist, {}, 'report', no],
    ['a proposal to a round', 'specialist', 'proposal', specialist, {}, 'round', no],
    ['a proposal to a run', 'specialist', 'proposal', specialist, {}, 'run', no],
    ['a proposal to an unsent quote', 'specialist', 'proposal', specialist, {}, 'quote', no],
    ['a proposal to nothing', 'specialist', 'proposal', specialist, {}, null, no],
    ['a finding of their own', 'specialist', 'finding', specialist, {}, null, no],
    ['their own acceptance', 'specialist', 'proposal-reply', specialist, {}, 'own proposal', no],
    ['a question by a specialist', 'specialist', 'question', specialist, { tester }, null, no],
    ['an answer by a specialist', 'specialist', 'answer', specialist, { tester }, 'question', no],
    ['a run by a specialist', 'specialist', 'run', specialist, {}, null, no],
  ] as const)('%s', async (_, caller, kind, author, body, about, verdict) => {
    const named = about === null ? {} : { [fieldOf(kind)]: records[about]?.id };
    expect(await send(caller, seal(kind, author, { ...body, ...named }))).toBe(verdict);
  });

  it('an answer or a proposal may come before what it answers: a restored hub has not all yet', async () => {
    const [answer, proposal] = [
      seal('answer', tester, { tester, question: idOf(71) }),
      seal('proposal', specialist, { finding: idOf(72) }),
    ];
    expect(await send('tester', answer)).toBe('stored');
    expect(await send('specialist', proposal)).toBe('stored');
  });

  it('a specialist gets their own sketches back as receipts, and nobody else’s', async () => {
    const { names } = photoOf(records['own proposal']?.id as RecordId, specialist);
    expect(await send('specialist', names)).toBe('stored');
    const own = (await (await call('pull', tokens.specialist)).json()) as {
      revisions: { id: string }[];
      receipts: { id: string }[];
    };
    const all = [...own.revisions, ...own.receipts].map(({ id }) => id);
    expect(all).toContain(names.id);
    for (const name of ['of the run', 'of the bench check'])
      expect(all).not.toContain(photos[name]?.names.id);
  });

  it('a tester takes back the questions and thanks to them, and changes none', async () => {
    for (const [kind, whose, may] of [
      ['question', tester, true],
      ['thanks', tester, true],
      ['question', otherTester, false],
      ['reply', tester, false],
    ] as const) {
      const said = seal(kind, idOf(4), { tester: whose });
      expect(await send('lead', said)).toBe('stored');
      const { id } = said;
      const gone = (more: { readonly erased?: true }) =>
        sealRevision(
          { id, kind, author: tester, sv: 9, body: null, deleted: true, ...more },
          stampAt(++count),
          null,
        );
      expect(await send('tester', gone({}))).toBe(no);
      expect(await send('tester', gone({ erased: true }))).toBe(may ? 'stored' : no);
    }
  });

  it('a tester takes back what the group noted of them, and of nobody else', async () => {
    const erase = (id: RecordId, author: RecordId) =>
      sealRevision(
        { id, kind: 'tester', author, sv: 9, body: null, erased: true },
        stampAt(++count),
        null,
      );
    expect(await send('otherTester', erase(tester, otherTester))).toBe(no);
    expect(await send('tester', erase(tester, tester))).toBe('stored');
    const rows = await hub.db
      .selectFrom('revisions')
      .select('json')
      .where('id', '=', tester)
      .where('erased', '=', 0)
      .execute();
    expect(rows.every(({ json }) => json === null)).toBe(true);
  });
});

describe('each photo', () => {
  it.each([
    ['of the run', [401, 401, 200, 404, 404, 200, 404]],
    ['of the finding', [401, 401, 404, 404, 200, 200, 404]],
    ['of the bench check', [401, 401, 404, 404, 404, 200, 404]],
    ['of the proposal', [401, 401, 404, 404, 200, 200, 404]],
  ] as const)('%s is seen by those who see what it belongs to', async (name, statuses) => {
    for (const [at, caller] of callers.entries()) {
      const answer = await call(`attachment/${photos[name]?.sha256}`, tokens[caller]);
      expect(answer.status, caller).toBe(statuses[at]);
    }
  });
});

describe('a photo', () => {
  const idOfCaller = (caller: Caller) =>
    ({ tester, otherTester, specialist })[caller as string] ?? idOf(4);

  // What becomes of a photo of it, named by each caller, in the order of `callers`.
  const no = 'not-allowed';
  it.each([
    ['run', ['401', '401', 'stored', no, no, 'stored']],
    ['damage-report', ['401', '401', 'stored', no, no, 'stored']],
    ['finding', ['401', '401', no, no, no, 'stored']],
    ['report', ['401', '401', no, no, no, 'stored']],
    ['bench check', ['401', '401', no, no, no, 'stored']],
    ['project', ['401', '401', no, no, no, 'stored']],
    ['archived project', ['401', '401', no, no, no, 'stored']],
    ['hand-out', ['401', '401', no, no, no, 'stored']],
    ['unknown kind', ['401', '401', no, no, no, 'stored']],
    ['question', ['401', '401', no, no, no, 'stored']],
    ['answer', ['401', '401', 'stored', no, no, 'stored']],
    ['thanks', ['401', '401', no, no, no, 'stored']],
    ['proposal of a lead', ['401', '401', no, no, no, 'stored']],
    ['own proposal', ['401', '401', no, no, 'stored', 'stored']],
    ['nothing that is here yet', ['401', '401', 'stored', 'stored', 'stored', 'stored']],
  ] as const)('is named in %s by those who may write it', async (name, verdicts) => {
    for (const [at, caller] of callers.slice(0, 6).entries()) {
      const record = records[name]?.id ?? idOf(70 + at);
      const { names } = photoOf(record, idOfCaller(caller));
      expect(await send(caller, names), caller).toBe(verdicts[at]);
    }
  });

  it('may come before its record, in one batch with it or in one before', async () => {
    const run = seal('run', tester, { tester });
    const [early, beside, late] = [1, 2, 3].map(() => photoOf(run.id, tester).names);
    expect(await send('tester', early as Revision)).toBe('stored');
    const batch = post({ revisions: [beside, run, late] });
    const { verdicts } = (await (await call('push', tokens.tester, batch)).json()) as {
      verdicts: { verdict: string }[];
    };
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['stored', 'stored', 'stored']);
  });

  it('is not moved to a record of others, and what was kept before stays known', async () => {
    const { names } = photoOf(records['run']?.id as RecordId, tester);
    expect(await send('tester', names)).toBe('stored');
    const body = { ...names.body, record: records['finding']?.id };
    const { id, kind, author } = names;
    const moved = sealRevision({ id, kind, author, sv: 9, body }, stampAt(++count), names.stamp);
    expect(await send('tester', moved)).toBe(no);
    // As a hub from before this rule kept it.
    const kept = photoOf(records['finding']?.id as RecordId, tester).names;
    await pushRevisions(hub.db, hub.group, { member: idOf(4), role: 'lead' }, [kept]);
    expect(await send('tester', kept)).toBe('known');
  });
});

const joinWithCookie = async (device: string, member: RecordId) => {
  const code = newInviteCode(random);
  await addInvite(hub.db, hub.group, code, 'tester', member, Date.now());
  const token = Buffer.from(random(32)).toString('base64url');
  const answer = await call('join', undefined, post({ code, token, device: device.repeat(16) }));
  return { token, cookie: answer.headers.get('set-cookie') ?? '' };
};
const comeBackAs = (cookie: string, device: string, token: string) =>
  call('return', undefined, {
    ...post({ token, device }),
    headers: { cookie: cookie.split(';')[0] ?? '' },
  });

const comeBack = (cookie: string, device: string, token: string) =>
  comeBackAs(cookie, device.repeat(16), token);

describe('a device of another member', () => {
  it('is not signed out by who only knows its id', async () => {
    const code = newInviteCode(random);
    await addInvite(hub.db, hub.group, code, 'tester', otherTester, Date.now());
    const request = { code, token: newToken(), device: deviceOf('lead') };
    const answer = await call('join', undefined, post(request));
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: 'device' });
    expect((await call('pull', tokens.lead)).status).toBe(200);
  });

  it('is not replaced by one that comes back under its id', async () => {
    const { cookie } = await joinWithCookie('7', idOf(3));
    const back = await comeBackAs(cookie, deviceOf('lead'), newToken());
    expect(back.status).toBe(400);
    expect(await back.json()).toMatchObject({ field: 'device' });
    expect((await call('pull', tokens.lead)).status).toBe(200);
    expect((await comeBackAs(cookie, '7a'.repeat(8), newToken())).status).toBe(200);
  });
});

describe('a repeated join', () => {
  it('answers again while the device is what it was, and never for who has its id since', async () => {
    const code = newInviteCode(random);
    await addInvite(hub.db, hub.group, code, 'tester', idOf(40), Date.now());
    const device = '4b'.repeat(8);
    const [old, fresh] = [newToken(), newToken()];
    const ask = () => call('join', undefined, post({ code, token: old, device }));
    expect((await ask()).status).toBe(200);
    expect((await ask()).status).toBe(200);
    await call('renew', old, post({ token: fresh }));
    expect((await call('pull', fresh)).status).toBe(200);
    expect((await ask()).status).toBe(403);
    const other = newInviteCode(random);
    await addInvite(hub.db, hub.group, other, 'lead', null, Date.now());
    const lead = newToken();
    const joined = { code: other, token: lead, device, before: fresh };
    expect((await call('join', undefined, post(joined))).status).toBe(200);
    const repeated = await ask();
    expect(repeated.status).toBe(403);
    expect(repeated.headers.get('set-cookie')).toBeNull();
    expect((await call('pull', lead)).status).toBe(200);
  });
});

describe('signing out a lead', () => {
  it('ends the codes that are still open', async () => {
    const token = await join('lead', '5b'.repeat(8));
    const { code } = (await (await call('invite', token, post({ role: 'lead' }))).json()) as {
      code: string;
    };
    await call('revoke', tokens.lead, post({ device: '5b'.repeat(8) }));
    const answer = await call(
      'join',
      undefined,
      post({ code, token: newToken(), device: '6b'.repeat(8) }),
    );
    expect(answer.status).toBe(403);
  });
});

describe('coming back after the browser cleared the device', () => {
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

  it('is asked again where the answer was lost, by the same device with the same token only', async () => {
    const { cookie } = await joinWithCookie('9', idOf(4));
    const token = newToken();
    expect((await comeBack(cookie, '0', token)).status).toBe(200);
    expect((await comeBack(cookie, '0', newToken())).status).toBe(403);
    const again = await comeBack(cookie, '0', token);
    expect(again.status).toBe(200);
    expect((await call('pull', token)).status).toBe(200);
  });

  it('is refused once a lead has signed the device out', async () => {
    const { cookie } = await joinWithCookie('4', idOf(4));
    await call('revoke', tokens.lead, post({ device: '4'.repeat(16) }));
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
    const answer = await call(path, tokens.lead, init);
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
      tokens.lead,
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
    expect(mayWrite(caller, revision(kind, author, tester), held, null)).toBe(may);
  });
  it.each([
    ['run', {}, null, null, false],
    ['proposal', { finding: idOf(7) }, null, null, true],
    [
      'proposal',
      { finding: idOf(7) },
      null,
      { author: other, kind: 'finding', audience: '+' },
      true,
    ],
    [
      'proposal',
      { finding: idOf(7) },
      null,
      { author: other, kind: 'finding', audience: '' },
      false,
    ],
    [
      'proposal',
      { finding: idOf(7) },
      null,
      { author: other, kind: 'report', audience: '+' },
      false,
    ],
    ['proposal', {}, null, null, false],
    ['proposal', null, { author: me, kind: 'proposal', audience: '+' }, null, true],
    ['proposal', null, { author: other, kind: 'proposal', audience: '+' }, null, false],
    ['proposal', null, { author: other, kind: 'finding', audience: '+' }, null, false],
    ['attachment', { record: idOf(7) }, null, null, true],
    [
      'attachment',
      { record: idOf(7) },
      null,
      { author: me, kind: 'proposal', audience: '+' },
      true,
    ],
    [
      'attachment',
      { record: idOf(7) },
      null,
      { author: other, kind: 'proposal', audience: '+' },
      false,
    ],
    [
      'attachment',
      { record: idOf(7) },
      null,
      { author: other, kind: 'finding', audience: '+' },
      false,
    ],
    ['attachment', { record: idOf(7) }, null, { author: me, kind: 'run', audience: '' }, false],
    ['attachment', {}, null, null, false],
  ] as const)('a specialist writes %s %j %#', (kind, body, held, about, may) => {
    const caller = { member: me, role: 'specialist' as const };
    const one = sealRevision({ id: idOf(3), kind, author: me, sv: 1, body }, stampAt(1), null);
    expect(mayWrite(caller, one, held, about)).toBe(may);
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
