/**
 * Requests as nobody should send them: every endpoint, with methods, paths, headers, tokens, queries and bodies
 * that are wrong in all ways we could think of, and bytes that are no request at all. The hub answers each with
 * what was wrong, never with a fault of its own, and holds on to nothing.
 * `PAIRLOG_FUZZ=200000` sends as many to a hub on SQLite, a tenth to one on PostgreSQL.
 */
import { randomBytes } from 'node:crypto';
import { Agent, request, type OutgoingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { listen } from '../../../app/hub/listen.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { refusals, type RecordId, type Role } from '../../../core/records/index.ts';
import { hashOfRevision } from '../../hash-of-revision.ts';
import { idOf } from '../../core/records/make.ts';
import { seeded } from '../../seeded.ts';
import { OWN_PAGE } from './as-browser.ts';
import { joinAs, type Member } from './member-for-tests.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const REQUESTS = Number(process.env['PAIRLOG_FUZZ'] ?? 1200);
const AT_ONCE = 8;
const group = idOf(900);
const programs = postgresPrograms();
let postgres: TestPostgres | null = null;
beforeAll(async () => {
  if (programs !== null) postgres = await startPostgres(programs);
}, 60_000);
afterAll(() => postgres?.stop());

type Random = () => number;
const pick = <T>(random: Random, list: readonly T[]): T =>
  list[Math.floor(random() * list.length)] as T;
const word = (random: Random, length: number): string =>
  Array.from({ length }, () =>
    pick(random, ['a', 'Z', '0', '-', '.', '%', '"', '\\', 'é', '鞋', '\u{1F45F}', ' ']),
  ).join('');

/** Values that are hard on whoever expects another. */
const oddValue = (random: Random): unknown =>
  pick<() => unknown>(random, [
    () => null,
    () => pick(random, [0, -1, 1.5, 1e308, 2 ** 53, -(2 ** 63), 9e15]),
    () => pick(random, ['', '\0', 'a\0b', '\ud800', 'x\udc00y', 'constructor', '../..', "'; --"]),
    () => word(random, 20),
    () => 'x'.repeat(pick(random, [100, 3000, 40_000])),
    () => pick(random, [true, [], {}, [[]], { length: 1e9 }]),
    () =>
      JSON.parse(
        '{"__proto__":{"role":"lead"},"toString":1,"toJSON":"x","valueOf":null}',
      ) as unknown,
    () => Array.from({ length: 600 }, () => 0),
    () => {
      let deep: unknown = 1;
      const levels = pick(random, [10, 500, 5000]);
      for (let level = 0; level < levels; level++) deep = random() < 0.5 ? [deep] : { a: deep };
      return deep;
    },
  ])();

/** The value with something in it replaced, added or dropped. */
const mutated = (random: Random, value: unknown): unknown => {
  if (typeof value !== 'object' || value === null || random() < 0.15) return oddValue(random);
  if (Array.isArray(value)) {
    const list: readonly unknown[] = value;
    const at = Math.floor(random() * (list.length + 1));
    return [...list.slice(0, at), mutated(random, list[at]), ...list.slice(at + 1)];
  }
  const keys = Object.keys(value);
  const key = random() < 0.15 ? word(random, 4) : pick(random, keys);
  const next: Record<string, unknown> = { ...value };
  if (random() < 0.1) delete next[key];
  else
    Object.defineProperty(next, random() < 0.05 ? '__proto__' : key, {
      value: mutated(random, next[key]),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return next;
};

/** JSON text that may hold what JSON.stringify does not write: halves of pairs, numbers out of range. */
const textOf = (random: Random, value: unknown): string => {
  let text: string;
  try {
    text = JSON.stringify(value) ?? 'undefined';
  } catch {
    return '{';
  }
  if (random() < 0.05) text = text.slice(0, Math.floor(random() * text.length));
  if (random() < 0.03) text = text.replace(/\d+/, '1e999');
  if (random() < 0.03) text = text.replace(/:/, ': \ufeff');
  if (random() < 0.02) text = '['.repeat(100_000) + text;
  return text;
};

/** A body of a newer version or of today's, hashed rightly, so that it comes as far as the tables. */
const oddRevision = (random: Random, member: Member): unknown => {
  const kind = pick(random, [
    'run',
    'attachment',
    'hand-out',
    'tester',
    'finding',
    'weather-mast',
    'project',
  ]);
  const body: Record<string, unknown> = {
    tester: random() < 0.6 ? member.id : oddValue(random),
    sha256: oddValue(random),
    record: oddValue(random),
    words: oddValue(random),
  };
  const revision = {
    ...member.revision(random() < 0.2 ? idOf(Math.floor(random() * 5)) : undefined),
    kind,
    sv: pick(random, [1, 9, 2 ** 31, 2 ** 53 - 1]),
    body: random() < 0.2 ? null : random() < 0.5 ? body : (mutated(random, body) as never),
    ...(random() < 0.1 && { erased: true }),
    ...(random() < 0.1 && { [word(random, 3)]: oddValue(random) }),
  };
  const last = random() < 0.3 ? (mutated(random, revision) as Record<string, unknown>) : revision;
  try {
    return { ...last, hash: hashOfRevision(last) };
  } catch {
    return last;
  }
};

interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers: OutgoingHttpHeaders;
  readonly body: string | Uint8Array | null;
}

interface People {
  readonly members: readonly Member[];
  /** A device that may be signed out. */
  readonly victim: string;
}

const makeAsked = (random: Random, { members, victim }: People): Asked => {
  const member = pick(random, members);
  const attachment = `/v1/attachment/${pick(random, ['ab'.repeat(32), randomBytes(32).toString('hex'), word(random, 8), '..'])}`;
  const upload = {
    'upload-offset': pick(random, ['0', '0', '-1', '1e3', '99999999999999999999', 'x', '']),
    'upload-length': pick(random, ['3', '9', '4194305', '9007199254740993', '0', ' ', 'NaN']),
    'upload-type': pick(random, ['image/jpeg', 'text/html', 'image/', word(random, 3)]),
  };
  const token = randomBytes(32).toString('base64url');
  const device = pick(random, [victim, randomBytes(8).toString('hex')]);
  const join = {
    code: pick(random, ['0123456789', '0000000000', newInviteCode(randomBytes)]),
    token,
    device,
    deviceName: pick(random, ['phone', 'a\0b', '\ud800']),
  };
  /** Mostly the hub's own page, as a browser says it. */
  const site = (): OutgoingHttpHeaders =>
    random() < 0.7
      ? OWN_PAGE
      : {
          'sec-fetch-site': pick(random, ['same-site', 'none', '', 'x']),
          origin: pick(random, ['null', '', 'http://[', `http://${'x'.repeat(5000)}`, 'localhost']),
        };
  const [method, path, value, more] = pick<() => [string, string, unknown, OutgoingHttpHeaders?]>(
    random,
    [
      () => ['GET', '/v1/hello', null],
      () => ['GET', '/health', null],
      () => [
        'GET',
        `/v1/pull?scope=${pick(random, ['mine', 'all', 'x'])}&limit=${pick(random, ['1', '0', '-1', '1e9', 'NaN', ''])}&since=${pick(random, ['1.0000000000000000', '999999999999999.0123456789abcdef', '99999999999999999999999.0123456789abcdef', 'x', ''])}&own=1`,
        null,
      ],
      () => ['GET', '/v1/pull', null],
      () => [
        'POST',
        '/v1/push',
        {
          revisions: Array.from({ length: Math.floor(random() * 4) }, () =>
            oddRevision(random, member),
          ),
        },
      ],
      () => [
        'POST',
        '/v1/push',
        {
          revisions: Array.from({ length: Math.floor(random() * 4) }, () =>
            oddRevision(random, member),
          ),
        },
      ],
      () => ['POST', '/v1/join', join, site()],
      () => [
        'POST',
        '/v1/return',
        join,
        { ...site(), cookie: `pairlog-return=${pick(random, ['', 'x', '%00', word(random, 9)])}` },
      ],
      () => ['POST', '/v1/renew', { token: member.token }],
      () => [
        'POST',
        '/v1/invite',
        { role: pick(random, ['tester', 'lead', 'specialist']), tester: idOf(3) },
      ],
      () => ['GET', '/v1/devices', null],
      () => ['POST', '/v1/revoke', { device }],
      () => ['GET', `/v1/audit?before=${pick(random, [idOf(3), 'x', '%00', ''])}`, null],
      () => ['HEAD', attachment, null],
      () => ['GET', attachment, null],
      () => ['PATCH', attachment, 'abc', upload],
      () => ['GET', `/${word(random, 5)}`, null],
    ],
  )();
  const authorization = pick(random, [
    ...Array<string>(8).fill(`Bearer ${member.token}`),
    `Bearer ${token}`,
    `bearer ${member.token}`,
    'Bearer ' + 'x'.repeat(5000),
    'Basic eDp5',
  ]);
  const body =
    value === null
      ? random() < 0.1
        ? '{}'
        : null
      : textOf(random, random() < 0.5 ? value : mutated(random, value));
  const odd = random() < 0.15;
  return {
    method: odd
      ? pick(random, ['GET', 'POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', 'TRACE', 'PROPFIND'])
      : method,
    path:
      random() < 0.1
        ? `${path}${pick(random, ['/', '//', '/..%2f', '?', '%', '%ff', '%00', '#x', '&scope=all&scope=mine', '\\x', '?since=%'])}`
        : path,
    headers: {
      ...(random() < 0.95 && { authorization }),
      'content-type': pick(random, ['application/json', 'text/plain', 'multipart/form-data', '']),
      ...(random() < 0.05 && { 'content-encoding': 'gzip' }),
      ...(random() < 0.05 && {
        'accept-encoding': pick(random, ['gzip', '*;q=0', 'x'.repeat(500)]),
      }),
      ...(random() < 0.05 && { 'x-forwarded-for': word(random, 5).replace(/[^ -~]/g, '') }),
      ...(random() < 0.03 && { host: pick(random, ['', 'a b', '[::1', 'x:99999', 'é']) }),
      ...more,
    },
    body: body !== null && random() < 0.03 ? randomBytes(200) : body,
  };
};

const agent = new Agent({ keepAlive: true, maxSockets: AT_ONCE });
const send = (port: number, { method, path, headers, body }: Asked) =>
  new Promise<{ status: number; text: string } | 'cut' | 'cannot-send'>((done) => {
    try {
      const asked = request({ port, agent, method, path, headers, timeout: 20_000 }, (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.on('end', () => {
          const bytes = Buffer.concat(parts);
          const isZip = answer.headers['content-encoding'] === 'gzip' && bytes.length > 0;
          const text = (isZip ? gunzipSync(bytes) : bytes).toString();
          done({ status: answer.statusCode ?? 0, text });
        });
        answer.on('error', () => done('cut'));
      });
      asked.on('error', () => done('cut'));
      asked.end(body ?? undefined);
    } catch {
      done('cannot-send');
    }
  });

/** Bytes that are no request, or two in one. Answers what came back within a moment. */
const sendBytes = (port: number, bytes: string | Uint8Array): Promise<string> =>
  new Promise((done) => {
    const socket = connect(port, '127.0.0.1');
    let text = '';
    const end = () => {
      clearTimeout(enough);
      socket.destroy();
      done(text);
    };
    const enough = setTimeout(end, 150);
    socket.on('data', (part) => (text += part.toString('latin1')));
    socket.on('error', end);
    socket.on('close', end);
    socket.write(bytes);
  });

const noRequests = (token: string): (string | Uint8Array)[] => {
  const head = (line: string, ...headers: string[]) =>
    [line, 'Host: hub', `Authorization: Bearer ${token}`, ...headers, '', ''].join('\r\n');
  return [
    randomBytes(500),
    '\x16\x03\x01\x02\0\x01\0\x01\xfc\x03\x03',
    'GET\r\n\r\n',
    'GET /v1/hello HTTP/0.9\r\n\r\n',
    'GET /v1/hello HTTP/1.1\r\n\r\n',
    'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n',
    head('GET http://other.example/v1/hello HTTP/1.1'),
    head('GET ftp://other.example/v1/hello HTTP/1.1'),
    head('GET //other.example/v1/hello HTTP/1.1'),
    head('CONNECT other.example:443 HTTP/1.1'),
    head('OPTIONS * HTTP/1.1'),
    head('GET /v1/\0hello HTTP/1.1'),
    head('GET /v1/h\xe9llo HTTP/1.1'),
    head('GET /v1/hello HTTP/1.1', 'Upgrade: websocket', 'Connection: Upgrade'),
    head('GET /v1/hello HTTP/1.1', `X-Long: ${'x'.repeat(100_000)}`),
    head('GET /v1/hello HTTP/1.1', ...Array.from({ length: 3000 }, (_, at) => `X-${at}: 1`)),
    head('POST /v1/push HTTP/1.1', 'Content-Length: -1') + '{}',
    head('POST /v1/push HTTP/1.1', 'Content-Length: 2', 'Content-Length: 3') + '{}',
    head('POST /v1/push HTTP/1.1', 'Content-Length: 99999999999') + '{}',
    head('POST /v1/push HTTP/1.1', 'Content-Length: 2', 'Transfer-Encoding: chunked') +
      '0\r\n\r\nGET / HTTP/1.1\r\n\r\n',
    head('POST /v1/push HTTP/1.1', 'Transfer-Encoding: chunked') + 'zz\r\n{}\r\n0\r\n\r\n',
    head('POST /v1/push HTTP/1.1', 'Transfer-Encoding: chunked') + 'ffffffffffffffff\r\n{}',
    head('POST /v1/push HTTP/1.1', 'Transfer-Encoding: gzip, chunked') + '0\r\n\r\n',
    head('POST /v1/push HTTP/1.1', 'Expect: 100-continue', 'Content-Length: 2') + '{}',
    head('POST /v1/push HTTP/1.1', 'Content-Length: 20') + '{"revisions":[',
    head('GET /v1/hello HTTP/1.1') + head('GET /v1/devices HTTP/1.1') + head('BREW /tea HTTP/1.1'),
    head('GET /v1/hello HTTP/1.1\r\nX-Injected : 1'),
    head('GET /v1/hello HTTP/1.1', ' folded: 1'),
  ];
};

const heapAfterCollection = (): number => {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
  return process.memoryUsage().heapUsed;
};

describe.each([
  ['SQLite', false, REQUESTS],
  ['PostgreSQL', true, Math.ceil(REQUESTS / (REQUESTS > 10_000 ? 10 : 4))],
] as const)('a hub on %s', (name, onPostgres, requests) => {
  it.skipIf(onPostgres && programs === null)(
    'answers what is wrong with each request, never with a fault of its own',
    async () => {
      const database = await openDatabase(
        onPostgres ? { url: await (postgres as TestPostgres).newDatabase() } : { file: ':memory:' },
      );
      const { db } = database;
      // A second or two a request, so that the limits meant for people do not answer for the hub.
      let clock = Date.UTC(2026, 5, 1);
      const faults: string[] = [];
      await makeGroup(db, group, 'Group', clock);
      const app = createHub({
        db,
        now: () => (clock += 500),
        random: (bytes) => randomBytes(bytes),
        log: (line) => {
          if (line['event'] === 'error') faults.push(JSON.stringify(line));
        },
      });
      const server = await listen(app.fetch, 0, '127.0.0.1');
      const url = `http://127.0.0.1:${server.port}`;
      const join = async (role: Role, member: RecordId | null) => {
        const code = newInviteCode(randomBytes);
        await addInvite(db, group, code, role, member, clock);
        return joinAs(url, code);
      };
      const members = [
        await join('lead', null),
        await join('tester', idOf(3)),
        await join('specialist', null),
      ];
      await join('tester', idOf(4));
      const { device: victim } = await db
        .selectFrom('devices')
        .select('device')
        .where('member_id', '=', idOf(4))
        .executeTakeFirstOrThrow();
      const random = seeded(onPostgres ? 3 : 1);
      const statuses = new Map<string, number>();
      const verdicts = new Map<string, number>();
      const tally = (of: Map<string, number>, key: string) => of.set(key, (of.get(key) ?? 0) + 1);

      const one = async () => {
        const asked = makeAsked(random, { members, victim });
        const answer = await send(server.port, asked);
        if (typeof answer === 'string') {
          tally(statuses, answer);
          return;
        }
        tally(statuses, String(answer.status));
        if (answer.status >= 500)
          faults.push(
            `${answer.status} ${asked.method} ${asked.path} ${String(asked.body).slice(0, 300)}`,
          );
        if (
          answer.status >= 400 &&
          asked.method !== 'HEAD' &&
          asked.path.startsWith('/v1/') &&
          answer.text !== ''
        )
          expect(JSON.parse(answer.text)).toHaveProperty('error');
        if (answer.status === 200 && asked.path === '/v1/push') {
          const said = JSON.parse(answer.text) as { verdicts: { verdict: string; why?: string }[] };
          for (const { verdict, why } of said.verdicts) {
            tally(verdicts, why ?? verdict);
            expect(['stored', 'known', ...refusals]).toContain(why ?? verdict);
          }
        }
      };
      const many = async (count: number) => {
        let left = count;
        await Promise.all(
          Array.from({ length: AT_ONCE }, async () => {
            while (left-- > 0) await one();
          }),
        );
      };
      await many(Math.ceil(requests / 2));
      const before = heapAfterCollection();
      await many(Math.floor(requests / 2));
      const grown = heapAfterCollection() - before;

      const bytes = noRequests((members[0] as Member).token);
      for (const text of await Promise.all(bytes.map((some) => sendBytes(server.port, some))))
        for (const [line] of text.matchAll(/^HTTP\/1\.1 5\d\d.*$/gm)) faults.push(line);

      expect(faults).toEqual([]);
      expect((await fetch(`${url}/v1/hello`)).status).toBe(200);
      expect((await checkHub(database)).problems).toEqual([]);
      // It came as far as the tables, and was refused in many ways.
      for (const verdict of ['stored', 'not-a-revision', 'not-allowed', 'unreadable'])
        expect(verdicts.get(verdict) ?? 0, verdict).toBeGreaterThan(0);
      for (const status of ['200', '400', '401', '403', '404'])
        expect(statuses.get(status) ?? 0, status).toBeGreaterThan(0);
      if (requests > 10_000)
        console.log(
          name,
          requests,
          'requests',
          [...statuses],
          [...verdicts],
          'heap grew by',
          grown,
        );
      // A tenth of what the requests of a half would take if the hub held on to each.
      expect(grown).toBeLessThan(8_000_000 + requests * 50);
      await server.close();
      await db.destroy();
    },
    60_000 + requests * 20,
  );

  it.skipIf(onPostgres && programs === null)(
    'keeps U+0000 in a text and refuses half of a surrogate pair, on either database',
    async () => {
      const { db } = await openDatabase(
        onPostgres ? { url: await (postgres as TestPostgres).newDatabase() } : { file: ':memory:' },
      );
      await makeGroup(db, group, 'Group', 0);
      const app = createHub({ db, now: () => 1000, random: (bytes) => randomBytes(bytes) });
      const server = await listen(app.fetch, 0, '127.0.0.1');
      const url = `http://127.0.0.1:${server.port}`;
      const code = newInviteCode(randomBytes);
      await addInvite(db, group, code, 'lead', null, 1000);
      const lead = await joinAs(url, code);
      const nul = lead.revision(undefined, { body: { words: 'a\0b', 'key\0': 1 } });
      const half = { ...nul, body: { words: '\ud800' } };
      expect(await lead.push([nul, half])).toMatchObject([
        { verdict: 'stored' },
        { verdict: 'refused', why: 'not-a-revision', field: 'body' },
      ]);
      const pulled = await lead.ask('pull?scope=all&own=1');
      expect(await pulled?.json()).toMatchObject({ revisions: [nul] });
      const named = await fetch(`${url}/v1/join`, {
        method: 'POST',
        headers: OWN_PAGE,
        body: JSON.stringify({
          code,
          token: lead.token,
          device: 'a'.repeat(16),
          deviceName: 'a\0b',
        }),
      });
      expect(named.status).toBe(400);
      expect(await named.json()).toEqual({ error: 'bad-request', field: 'deviceName' });
      await server.close();
      await db.destroy();
    },
  );
});
