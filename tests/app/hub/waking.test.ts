/** Whom does the hub wake, how often, and when no more? On both databases, against a push service on this machine. */
import { randomBytes } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { backUp } from '../../../app/hub/store/backup.ts';
import {
  openDatabase,
  type DatabasePlace,
  type HubDatabase,
} from '../../../app/hub/store/database.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { createSend } from '../../../app/hub/wake/send.ts';
import { createWaker } from '../../../app/hub/wake/waker.ts';
import {
  newRecordId,
  sealRevision,
  type Reach,
  type RecordId,
  type Revision,
  type Role,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { OWN_PAGE } from './as-browser.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';
import { startPushService, type Phone, type PushService } from './push-service.ts';

const random = (bytes: number): Uint8Array => randomBytes(bytes);
const HOUR_MS = 3_600_000;
const programs = postgresPrograms();
let postgres: TestPostgres | null = null;
let service: PushService;
let folder = '';
let files = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pairlog-waking-'));
  service = await startPushService();
  if (programs !== null) postgres = await startPostgres(programs);
}, 60_000);
afterAll(async () => {
  await service.stop();
  await postgres?.stop();
  rmSync(folder, { recursive: true, force: true });
});

interface Someone {
  readonly id: RecordId;
  readonly device: string;
  ask(path: string, init?: RequestInit): Promise<Response>;
  /** The verdicts on what was sent. */
  write(...revisions: Revision[]): Promise<string[]>;
  /** Turns notices on for a phone. */
  turnOn(phone: Phone): Promise<Response>;
}

describe.each([
  ['SQLite', () => Promise.resolve({ file: join(folder, `hub-${++files}.sqlite`) }), false],
  [
    'PostgreSQL',
    async () => ({ url: await (postgres as TestPostgres).newDatabase() }),
    programs === null,
  ],
] as const)('a hub on %s', (_, newPlace, missing) => {
  const test = it.skipIf(missing);
  const open: HubDatabase[] = [];
  afterEach(async () => {
    for (const db of open.splice(0)) await db.destroy();
  });

  const newHub = async () => {
    const place: DatabasePlace = await newPlace();
    const { db } = await openDatabase(place);
    open.push(db);
    const clock = { ms: Date.now() };
    const group = newRecordId(clock.ms, random(16));
    await makeGroup(db, group, 'Group', clock.ms);
    const now = () => clock.ms;
    const forTests = { authority: service.authority };
    const app = createHub({ db, now, random, pushServiceForTests: forTests });
    const log: object[] = [];
    const newWaker = (on = db) =>
      createWaker(
        { db: on, now, log: (line) => log.push(line) },
        createSend({ forTests }),
        () => 0,
      );

    const join = async (role: Role, member?: RecordId): Promise<Someone> => {
      const code = newInviteCode(random);
      await addInvite(db, group, code, role, member ?? null, clock.ms);
      const token = Buffer.from(random(32)).toString('base64url');
      const device = Buffer.from(random(8)).toString('hex');
      const ask: Someone['ask'] = async (path, init = {}) =>
        app.request(`http://hub.test/v1/${path}`, {
          ...init,
          headers: { ...OWN_PAGE, authorization: `Bearer ${token}`, ...init.headers },
        });
      const joined = await ask('join', {
        method: 'POST',
        body: JSON.stringify({ code, token, device }),
      });
      expect(joined.status).toBe(200);
      const { member: me } = (await joined.json()) as { member: { id: RecordId } };
      return {
        id: me.id,
        device,
        ask,
        async write(...revisions) {
          const answer = await ask('push', { method: 'POST', body: JSON.stringify({ revisions }) });
          const { verdicts } = (await answer.json()) as { verdicts: { verdict: string }[] };
          return verdicts.map(({ verdict }) => verdict);
        },
        turnOn: (phone) => ask('wake', { method: 'PUT', body: JSON.stringify(phone.address) }),
      };
    };

    const lead = await join('lead');
    let stamps = 0;
    const project = idOf(500);
    const say = (
      kind: string,
      body: Record<string, unknown> | null,
      id = newRecordId(clock.ms, random(16)),
      more: { erased?: true; sv?: number } = {},
    ) =>
      sealRevision(
        { id, kind, author: lead.id, sv: more.sv ?? 1, body, ...(more.erased && { erased: true }) },
        stampAt(++stamps),
        null,
      );
    const at = (ms: number) => new Date(ms).toISOString().replace(/\.\d+Z/, 'Z');
    const handOut = (pair: RecordId, tester: RecordId, more: object = {}, id?: RecordId) =>
      say(
        'hand-out',
        { project, pair, tester, from: at(clock.ms - HOUR_MS), blind: true, ...more },
        id,
      );
    const stopUse = (pairs: readonly RecordId[], more: object = {}, id?: RecordId) =>
      say(
        'stop-use',
        { project, pairs, reason: 'Plate cracked.', from: at(clock.ms), ...more },
        id,
      );
    const rows = async () => ({
      addresses: await db.selectFrom('wake_addresses').selectAll().execute(),
      wakeUps: await db.selectFrom('wake_ups').selectAll().execute(),
    });
    /** A tester who holds a pair, on a phone that can be woken. */
    const withPhone = async (pair: RecordId, member = newRecordId(clock.ms, random(16))) => {
      const who = await join('tester', member);
      const phone = service.phone();
      expect((await who.turnOn(phone)).status).toBe(200);
      expect(await lead.write(handOut(pair, who.id))).toEqual(['stored']);
      return { who, phone };
    };
    const reach = async (record: RecordId) =>
      (await (await lead.ask(`reach?record=${record}`)).json()) as Reach;
    return {
      ...{ db, place, clock, group, join, lead, say, handOut, stopUse, at, rows, withPhone, reach },
      ...{ waker: newWaker(), newWaker, log },
    };
  };

  test('wakes who holds the pair, once, and nobody else', async () => {
    const { lead, withPhone, stopUse, waker, reach, clock, log } = await newHub();
    const [held, other] = [idOf(1), idOf(2)];
    const mine = await withPhone(held);
    const theirs = await withPhone(other);
    const notice = stopUse([held]);
    await lead.write(notice);
    await waker.run();
    await waker.run();
    expect(service.told(mine.phone)).toEqual(['open Pairlog']);
    expect(service.told(theirs.phone)).toEqual([]);
    const { on, woken } = await reach(notice.id);
    expect([...on].sort()).toEqual([mine.who.id, theirs.who.id].sort());
    expect(woken).toEqual([{ member: mine.who.id, sentAt: clock.ms }]);
    // Nothing of whom it went to is in the hub's log.
    expect(log).toEqual([{ event: 'wake', outcome: 'sent' }]);
  });

  test('sends one message for one notice, however often it is written, and for all that wait together', async () => {
    const { lead, withPhone, stopUse, waker, rows } = await newHub();
    const pair = idOf(1);
    const { phone } = await withPhone(pair);
    const first = stopUse([pair]);
    await lead.write(first);
    await waker.run();
    for (let round = 0; round < 3; round++) {
      const again = Array.from({ length: 40 }, (_, n) =>
        stopUse([pair], { reason: `Cracked, ${round}.${n}` }, first.id),
      );
      await lead.write(...again);
      await waker.run();
    }
    expect(service.told(phone)).toHaveLength(1);
    await lead.write(...Array.from({ length: 40 }, () => stopUse([pair])));
    await waker.run();
    expect(service.told(phone)).toHaveLength(2);
    const { wakeUps } = await rows();
    expect(wakeUps).toHaveLength(41);
    expect(wakeUps.every(({ sent_ms, next_ms }) => sent_ms !== null && next_ms === null)).toBe(
      true,
    );
  });

  test('goes by the hand-outs as they stand now', async () => {
    const { lead, withPhone, handOut, stopUse, waker, at, clock } = await newHub();
    const [pair, moved] = [idOf(1), idOf(2)];
    const back = await withPhone(idOf(5));
    const now = await withPhone(idOf(3));
    const before = await withPhone(idOf(4));
    // Given back an hour ago; one that was noted for the wrong tester and put right.
    const [one, wrong] = [idOf(10), idOf(11)];
    await lead.write(
      handOut(pair, back.who.id, { from: at(clock.ms - 9 * HOUR_MS) }, one),
      handOut(
        pair,
        back.who.id,
        { from: at(clock.ms - 9 * HOUR_MS), until: at(clock.ms - 1) },
        one,
      ),
      handOut(moved, before.who.id, {}, wrong),
      handOut(moved, now.who.id, {}, wrong),
    );
    await lead.write(stopUse([pair, moved]));
    await waker.run();
    expect(service.told(back.phone)).toEqual([]);
    expect(service.told(now.phone)).toHaveLength(1);
    expect(service.told(before.phone)).toEqual([]);
  });

  test('wakes nobody for what was ended or taken back before it went out', async () => {
    const { lead, withPhone, stopUse, say, waker, at, clock, rows } = await newHub();
    const pair = idOf(1);
    const { phone } = await withPhone(pair);
    const [ended, gone] = [stopUse([pair]), stopUse([pair])];
    await lead.write(ended, gone);
    expect((await rows()).wakeUps).toHaveLength(2);
    await lead.write(
      stopUse([pair], { until: at(clock.ms - 1) }, ended.id),
      say('stop-use', null, gone.id, { erased: true }),
    );
    await waker.run();
    expect(service.told(phone)).toEqual([]);
    expect((await rows()).wakeUps).toEqual([]);
  });

  test('wakes for nothing else that is written', async () => {
    const { lead, withPhone, say, waker, rows } = await newHub();
    const pair = idOf(1);
    const { who } = await withPhone(pair);
    for (const kind of ['reply', 'run', 'pair', 'tester', 'weather-mast'])
      await lead.write(say(kind, { tester: who.id }, undefined, { sv: 9 }));
    await waker.run();
    expect((await rows()).wakeUps).toEqual([]);
  });

  test('wakes whom a question is for, unless it was withdrawn before', async () => {
    const { lead, withPhone, say, waker } = await newHub();
    const asked = await withPhone(idOf(1));
    const other = await withPhone(idOf(2));
    const question = say('question', { tester: asked.who.id }, undefined, { sv: 9 });
    const at = new Date(0).toISOString();
    const project = idOf(7);
    const withdrawn = { project, tester: other.who.id, at, ask: 'pain-now', withdrawn: at };
    await lead.write(question, say('question', withdrawn));
    await waker.run();
    expect(service.told(asked.phone)).toHaveLength(1);
    expect(service.told(other.phone)).toEqual([]);
  });

  test('wakes no device that was signed out, by a lead or by its owner, though it was waiting', async () => {
    const { lead, withPhone, stopUse, waker, rows, reach, join } = await newHub();
    const pair = idOf(1);
    const revoked = await withPhone(pair);
    const left = await withPhone(pair);
    const notice = stopUse([pair]);
    await lead.write(notice);
    const revoke = (device: string) => ({ method: 'POST', body: JSON.stringify({ device }) });
    expect((await lead.ask('revoke', revoke(revoked.who.device))).status).toBe(200);
    expect((await left.who.ask('revoke', revoke(left.who.device))).status).toBe(200);
    await lead.write(stopUse([pair]));
    await waker.run();
    expect(service.told(revoked.phone)).toEqual([]);
    expect(service.told(left.phone)).toEqual([]);
    expect(await rows()).toEqual({ addresses: [], wakeUps: [] });
    expect(await reach(notice.id)).toEqual({ on: [], woken: [] });
    // Nor can it say a new address.
    expect((await revoked.who.turnOn(revoked.phone)).status).toBe(401);
    // The same member on a new device begins without one.
    const back = await join('tester', revoked.who.id);
    expect(await (await back.ask('wake')).json()).toMatchObject({ on: false });
  });

  test('keeps no address of a member who took everything back', async () => {
    const { lead, withPhone, stopUse, waker, rows } = await newHub();
    const pair = idOf(1);
    const { who, phone } = await withPhone(pair);
    const stays = await withPhone(idOf(2));
    const notice = stopUse([pair]);
    await lead.write(notice);
    const gone = sealRevision(
      { id: who.id, kind: 'tester', author: who.id, sv: 1, body: null, erased: true },
      stampAt(9999),
      null,
    );
    expect(await who.write(gone)).toEqual(['stored']);
    await waker.run();
    expect(service.told(phone)).toEqual([]);
    const { addresses, wakeUps } = await rows();
    expect(addresses.map(({ member_id }) => member_id)).toEqual([stays.who.id]);
    expect(wakeUps).toEqual([]);
  });

  test('forgets an address that the push service no longer knows', async () => {
    const { lead, withPhone, stopUse, waker, rows, reach } = await newHub();
    const pair = idOf(1);
    for (const status of [404, 410]) {
      const { phone, who } = await withPhone(pair);
      service.answers.set(phone.path, [{ status }]);
      const notice = stopUse([pair]);
      await lead.write(notice);
      await waker.run();
      expect((await reach(notice.id)).on).not.toContain(who.id);
      await lead.write(stopUse([pair]));
      await waker.run();
      expect(service.told(phone)).toHaveLength(1);
    }
    expect(await rows()).toEqual({ addresses: [], wakeUps: [] });
  });

  test('comes again later where it was asked to, and gives up after a day', async () => {
    const { lead, withPhone, stopUse, waker, rows, clock } = await newHub();
    const pair = idOf(1);
    const { phone } = await withPhone(pair);
    service.answers.set(phone.path, [
      { status: 429, headers: { 'retry-after': '600' } },
      { status: 503 },
    ]);
    await lead.write(stopUse([pair]));
    await waker.run();
    clock.ms += 599_000;
    await waker.run();
    expect(service.told(phone)).toHaveLength(1);
    clock.ms += 2_000;
    await waker.run();
    expect(service.told(phone)).toHaveLength(2);
    clock.ms += 10_000;
    await waker.run();
    expect(service.told(phone)).toHaveLength(2);
    clock.ms += 60_000;
    await waker.run();
    expect(service.told(phone)).toHaveLength(3);
    expect((await rows()).wakeUps).toMatchObject([{ sent_ms: clock.ms, next_ms: null }]);

    const down = await withPhone(pair);
    service.answers.set(
      down.phone.path,
      Array.from({ length: 500 }, () => ({ status: 503 })),
    );
    await lead.write(stopUse([pair]));
    for (let hours = 0; hours < 48; hours++) {
      await waker.run();
      clock.ms += HOUR_MS;
    }
    const tries = service.told(down.phone).length;
    expect(tries).toBeGreaterThan(10);
    expect(tries).toBeLessThan(40);
    const given = (await rows()).wakeUps.find(({ device }) => device === down.who.device);
    expect(given).toMatchObject({ sent_ms: null, next_ms: null });
  });

  test('does not try again what is refused', async () => {
    const { lead, withPhone, stopUse, waker, clock, reach } = await newHub();
    const pair = idOf(1);
    const { phone, who } = await withPhone(pair);
    service.answers.set(phone.path, [{ status: 403 }]);
    const notice = stopUse([pair]);
    await lead.write(notice);
    await waker.run();
    clock.ms += 30 * HOUR_MS;
    await waker.run();
    expect(service.told(phone)).toHaveLength(1);
    expect(await reach(notice.id)).toEqual({
      on: [who.id],
      woken: [{ member: who.id, sentAt: null }],
    });
  });

  test('sends what a hub that died had not sent, and two hubs send it once', async () => {
    const { lead, withPhone, stopUse, newWaker, place } = await newHub();
    const pair = idOf(1);
    const phones = [];
    for (let n = 0; n < 5; n++) phones.push((await withPhone(pair)).phone);
    await lead.write(stopUse([pair]));
    const { db: other } = await openDatabase(place);
    open.push(other);
    await Promise.all([newWaker().run(), newWaker(other).run()]);
    for (const phone of phones) expect(service.told(phone)).toHaveLength(1);
  });

  test('has a few messages under way at once, and takes its time with a slow push service', async () => {
    const { lead, withPhone, stopUse, waker } = await newHub();
    const pair = idOf(1);
    const phones: Phone[] = [];
    for (let n = 0; n < 30; n++) {
      const { phone } = await withPhone(pair);
      service.answers.set(phone.path, [{ status: 201, afterMs: 30 }]);
      phones.push(phone);
    }
    await lead.write(stopUse([pair]));
    await waker.run();
    for (const phone of phones) expect(service.told(phone)).toHaveLength(1);
    expect(service.mostAtOnce()).toBeGreaterThan(1);
    expect(service.mostAtOnce()).toBeLessThanOrEqual(8);
  }, 30_000);

  test('says the same key to everybody of a group, also where two hubs make it at once', async () => {
    const { join, db, lead } = await newHub();
    const [a, b] = [await join('tester'), await join('tester')];
    const told = await Promise.all([a, b, a, b].map((who) => who.ask('wake')));
    const keys = (await Promise.all(told.map((one) => one.json()))) as { key: string }[];
    expect(new Set(keys.map(({ key }) => key)).size).toBe(1);
    expect(await db.selectFrom('wake_keys').selectAll().execute()).toHaveLength(1);
    expect((await lead.ask('wake')).status).toBe(403);
  });

  test('takes the address of its own pages only, on the open internet only, and not too often', async () => {
    const { join, rows } = await newHub();
    const who = await join('tester');
    const { address } = service.phone();
    const put = (body: unknown, headers = {}) =>
      who.ask('wake', { method: 'PUT', body: JSON.stringify(body), headers });
    const { keys } = address;
    const bad = [
      { ...address, endpoint: 'https://10.0.0.1/x' },
      { ...address, endpoint: 'http://push.example.net/x' },
      { ...address, endpoint: 'https://push.example.net:444/x' },
      { ...address, endpoint: `https://push.example.net/${'x'.repeat(1000)}` },
      { ...address, keys: { ...keys, auth: 'short' } },
      // Of the right length, and no point of the curve.
      { ...address, keys: { ...keys, p256dh: `B${'A'.repeat(86)}` } },
      { endpoint: address.endpoint },
    ];
    for (const one of bad) expect((await put(one)).status, JSON.stringify(one)).toBe(400);
    expect((await put({ ...address, more: 'x'.repeat(9000) })).status).toBe(413);
    expect((await put(address, { 'sec-fetch-site': 'same-site' })).status).toBe(403);
    expect((await put(address, { 'content-type': 'text/plain' })).status).toBe(400);
    expect((await rows()).addresses).toEqual([]);
    expect(await (await put(address)).json()).toMatchObject({ on: true });
    const off = await who.ask('wake', { method: 'DELETE' });
    expect(await off.json()).toMatchObject({ on: false });
    expect((await rows()).addresses).toEqual([]);
    const statuses: number[] = [];
    for (let n = 0; n < 70; n++) statuses.push((await put(address)).status);
    expect(statuses.at(-1)).toBe(429);
  });

  test('leaves a browser that became another device with one address', async () => {
    const { withPhone, join, rows } = await newHub();
    const { phone } = await withPhone(idOf(1));
    const next = await join('tester');
    await next.turnOn(phone);
    expect((await rows()).addresses.map(({ device }) => device)).toEqual([next.device]);
  });

  test('keeps the key in a backup, and no address', async () => {
    const { db, withPhone, lead, stopUse } = await newHub();
    const { phone } = await withPhone(idOf(1));
    await lead.write(stopUse([idOf(1)]));
    const file = join(folder, `backup-${++files}`);
    await lead.ask('wake');
    await backUp(db, file, 0);
    const text = gunzipSync(readFileSync(file)).toString();
    expect(text).not.toContain(phone.path);
    expect(text).not.toContain('wake_ups');
    expect(text).toContain('"t":"wake_keys"');
  });
});
