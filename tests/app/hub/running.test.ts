/** The hub as it runs: upgraded from its first format, by https, watched, backed up, and stopped. */
import { helloAnswer } from '../../../core/records/index.ts';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { commands } from '../../../app/hub/commands.ts';
import { dropOld } from '../../../app/hub/scheduled-backups.ts';
import { startHub, type HubOptions, type RunningHub } from '../../../app/hub/start.ts';
import { readAttachment } from '../../../app/hub/store/attachments.ts';
import { auditOf } from '../../../app/hub/store/audit.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { pullRevisions } from '../../../app/hub/store/feed.ts';
import { deviceOfToken } from '../../../app/hub/store/members.ts';
import { sha256OfBytes } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';
import { OWN_PAGE } from './as-browser.ts';
import { testHub } from './hub-for-tests.ts';

let folder = '';
let hub: RunningHub | null = null;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pairlog-running-'));
});
afterEach(async () => {
  await hub?.close();
  hub = null;
  rmSync(folder, { recursive: true, force: true });
});

const start = async (options: Partial<HubOptions> = {}): Promise<RunningHub> => {
  hub = await startHub({
    dataDir: folder,
    host: '127.0.0.1',
    port: 0,
    dist: null,
    groupName: 'Group',
    ...options,
  });
  return hub;
};

describe('the link of the lead', () => {
  it('is printed at each start until a lead has joined, also when the first start was stopped', async () => {
    expect((await start()).invites).toMatchObject([{ role: 'lead' }]);
    await hub?.close();
    const [invite] = (await start()).invites;
    expect(invite).toMatchObject({ role: 'lead' });
    const joined = await fetch(`${(hub as RunningHub).url}/v1/join`, {
      method: 'POST',
      headers: OWN_PAGE,
      body: JSON.stringify({
        ...{ code: invite?.code, token: 'y'.repeat(43), device: 'e'.repeat(16) },
        deviceName: 'the lead’s computer',
      }),
    });
    expect(joined.status).toBe(200);
    await hub?.close();
    expect((await start()).invites).toEqual([]);
  });
});

describe('the first format that a hub ever wrote', () => {
  it('is brought up to date with everything in it', async () => {
    const file = join(folder, 'hub.sqlite');
    const packed = readFileSync(new URL('./first-format.sqlite.gz', import.meta.url));
    writeFileSync(file, gunzipSync(packed));
    const database = await openDatabase({ file });
    const { db } = database;
    expect(await checkHub(database)).toMatchObject({
      revisions: 3,
      attachments: 1,
      waiting: 1,
      problems: [],
    });
    const lead = { member: idOf(1), role: 'lead' as const };
    const photo = new TextEncoder().encode('a photo of a blister');
    const kept = await readAttachment(db, idOf(900), sha256OfBytes(photo), lead);
    expect(kept?.bytes).toEqual(Buffer.from(photo));
    expect(await deviceOfToken(db, 'o'.repeat(43))).toMatchObject({ caller: lead });
    expect(await auditOf(db, idOf(900), null, 10)).toMatchObject([{ what: 'join', atMs: 20 }]);
    const specialist = { member: idOf(2), role: 'specialist' as const };
    const page = await pullRevisions(db, idOf(900), specialist, 'b', null, 'mine', 10, false);
    expect(page?.revisions.map((text) => (JSON.parse(text) as { kind: string }).kind)).toEqual([
      'finding',
    ]);
    await db.destroy();
  });

  it('is backed up as it is, and comes back up to date', async () => {
    const file = join(folder, 'hub.sqlite');
    const before = gunzipSync(readFileSync(new URL('./first-format.sqlite.gz', import.meta.url)));
    writeFileSync(file, before);
    const backup = join(folder, 'x.backup');
    expect((await commands.backup({ file }, [backup])).said).toContain('older format, 0001-first');
    expect(readFileSync(file).equals(before)).toBe(true);
    const restored = { file: join(folder, 'restored.sqlite') };
    const { ok, said } = await commands.restore(restored, [backup]);
    expect(said).toContain('3 revisions, 1 attachments (1 not yet whole)');
    expect(ok).toBe(true);
  });
});

describe('the hub on a local network', () => {
  it('speaks https by a certificate that its own authority signed, and tells phones how to trust it', async () => {
    const { url, trustUrl } = await start({ lan: true });
    expect(url).toMatch(/^https:/);
    const trust = new URL(trustUrl as string);
    trust.hostname = '127.0.0.1';
    const authority = await (await fetch(new URL('/pairlog.crt', trust))).text();
    const page = await fetch(trust, { headers: { 'accept-language': 'zh-CN' } });
    expect(await page.text()).toContain('lang="zh"');
    expect(page.headers.get('content-security-policy')).toBe("default-src 'none'");
    const asked = request({
      host: '127.0.0.1',
      port: new URL(url).port,
      path: '/health',
      ca: authority,
    }).end();
    const [answer] = (await once(asked, 'response')) as [{ statusCode: number; resume(): void }];
    answer.resume();
    expect(answer.statusCode).toBe(200);
    // A lead's sheet of invites says it too.
    const asking = request({
      host: '127.0.0.1',
      port: new URL(url).port,
      path: '/v1/hello',
      ca: authority,
    }).end();
    const [hello] = (await once(asking, 'response')) as [AsyncIterable<Buffer>];
    const parts: Buffer[] = [];
    for await (const chunk of hello) parts.push(chunk);
    expect(helloAnswer.parse(JSON.parse(Buffer.concat(parts).toString())).trust).toBe(trustUrl);
    // The hub's own origin is the https address that the phone asked for.
    const joinFrom = async (origin: string) => {
      const joining = request({
        host: '127.0.0.1',
        port: new URL(url).port,
        path: '/v1/join',
        method: 'POST',
        ca: authority,
        headers: { 'content-type': 'application/json', origin },
      }).end('{}');
      const [said] = (await once(joining, 'response')) as [{ statusCode: number; resume(): void }];
      said.resume();
      return said.statusCode;
    };
    expect(await joinFrom(`https://127.0.0.1:${new URL(url).port}`)).toBe(400);
    expect(await joinFrom(`http://127.0.0.1:${new URL(url).port}`)).toBe(403);
    await hub?.close();
    // The authority stays the same, or every phone would have to be told again.
    const again = await start({ lan: true });
    const trustAgain = new URL(again.trustUrl as string);
    trustAgain.hostname = '127.0.0.1';
    expect(await (await fetch(new URL('/pairlog.crt', trustAgain))).text()).toBe(authority);
  });
});

describe('who watches the hub', () => {
  it('reads counters by pattern of path, and nobody else can', async () => {
    const { url, metricsPort } = await start({ metricsPort: 0 });
    await fetch(`${url}/v1/hello`);
    await fetch(`${url}/v1/attachment/${'f'.repeat(64)}`);
    const text = await (await fetch(`http://127.0.0.1:${metricsPort}/metrics`)).text();
    expect(text).toContain(
      'pairlog_request_seconds_count{method="GET",path="/v1/hello",status="200"} 1',
    );
    expect(text).toContain('path="/v1/attachment/:sha256",status="401"');
    expect(text).not.toContain('ffff');
    expect(text).toContain('process_resident_memory_bytes');
    expect((await fetch(`${url}/metrics`)).status).toBe(404);
  });

  it('finds no token, code or body in the log', async () => {
    const lines: string[] = [];
    const { url, invites } = await start({ log: (line) => lines.push(JSON.stringify(line)) });
    const token = 't'.repeat(43);
    const code = invites[0]?.code as string;
    const joined = await fetch(`${url}/v1/join`, {
      method: 'POST',
      headers: OWN_PAGE,
      body: JSON.stringify({ code, token, device: 'a'.repeat(16) }),
    });
    const pulled = await fetch(`${url}/v1/pull?since=0.${'a'.repeat(16)}`, {
      headers: { authorization: `Bearer ${token}` },
    });
    await Promise.all([joined.text(), pulled.text()]);
    expect(lines.length).toBeGreaterThanOrEqual(2);
    expect(lines.join('\n')).not.toMatch(new RegExp(`${token}|${code}|since`));
  });
});

describe('slow clients and large bodies', () => {
  it('cuts off who dribbles a request', async () => {
    const { url } = await start({ slow: { headersMs: 300, requestMs: 600 } });
    const socket = connect(Number(new URL(url).port), '127.0.0.1');
    socket.on('error', () => undefined);
    socket.write('GET /v1/hello HTTP/1.1\r\nhost: x\r\n');
    const dribble = setInterval(() => socket.writable && socket.write('x-a: b\r\n'), 50);
    const began = performance.now();
    await new Promise((gone) => socket.once('close', gone));
    clearInterval(dribble);
    expect(performance.now() - began).toBeLessThan(5000);
  });

  it('unpacks a body to no more than a push may be', async () => {
    const testing = await testHub();
    const app = createHub({ db: testing.db, now: Date.now, random: (n) => new Uint8Array(n) });
    const token = 'l'.repeat(43);
    const code = await testing.invite('lead');
    await app.request('http://hub.test/v1/join', {
      method: 'POST',
      headers: OWN_PAGE,
      body: JSON.stringify({ code, token, device: 'c'.repeat(16) }),
    });
    const send = (bytes: Uint8Array) =>
      app.request('http://hub.test/v1/push', {
        method: 'POST',
        body: new Uint8Array(bytes),
        headers: { 'content-encoding': 'gzip', authorization: `Bearer ${token}` },
      });
    const bomb = gzipSync(Buffer.alloc(50_000_000, 0x20));
    expect(bomb.length).toBeLessThan(100_000);
    expect((await send(bomb)).status).toBe(400);
    expect((await send(Buffer.from('no gzip'))).status).toBe(400);
    expect((await send(gzipSync(JSON.stringify({ revisions: [] })))).status).toBe(200);
  });
});

describe('backups', () => {
  it('are written at the start, kept for their days and then dropped', async () => {
    const backups = join(folder, 'backups');
    await start({ backups: { folder: backups, days: 7 } });
    await hub?.close();
    hub = null;
    const [made] = readdirSync(backups);
    expect(made).toMatch(/^pairlog-.*\.backup$/);
    writeFileSync(join(backups, 'pairlog-2020-01-01T00-00-00Z.backup'), '');
    writeFileSync(join(backups, 'notes.txt'), '');
    utimesSync(join(backups, 'notes.txt'), 0, 0);
    expect(await dropOld(backups, 7, Date.now())).toBe(1);
    expect(readdirSync(backups).sort()).toEqual(['notes.txt', made]);
    const place = { file: join(folder, 'restored.sqlite') };
    const { ok, said } = await commands.restore(place, [join(backups, made as string)]);
    expect(said).toContain('all whole');
    expect(ok).toBe(true);
  });

  it.each([
    ['restore', ['missing.backup'], 'is not there'],
    ['restore', [], 'Name the file'],
    ['backup', [], 'Name the file'],
    ['check', [], 'There is no hub here'],
    ['lead-code', [], 'There is no hub here'],
  ] as const)('%s says in words what is wrong %#', async (name, args, words) => {
    const outcome = await commands[name]({ file: join(folder, 'none.sqlite') }, args);
    expect(outcome.ok).toBe(false);
    expect(outcome.said).toContain(words);
  });

  it('refuses a file that is no backup, and leaves the database as it was', async () => {
    const file = join(folder, 'x.backup');
    writeFileSync(file, gzipSync('{"format":"something-else"}\n'));
    const outcome = await commands.restore({ file: join(folder, 'none.sqlite') }, [file]);
    expect(outcome).toMatchObject({ ok: false });
    expect(outcome.said).toContain('is no backup of a hub');
  });
});

describe('a lead who lost access', () => {
  it('gets a code on the machine of the hub, while it runs', async () => {
    const { url } = await start();
    const { ok, said } = await commands['lead-code']({ file: join(folder, 'hub.sqlite') }, []);
    expect(ok).toBe(true);
    const answer = await fetch(`${url}/v1/join`, {
      method: 'POST',
      headers: OWN_PAGE,
      body: JSON.stringify({
        code: said.split('\n')[0],
        token: 'l'.repeat(43),
        device: 'c'.repeat(16),
      }),
    });
    expect(await answer.json()).toMatchObject({ member: { role: 'lead' } });
  });
});
