/** The same hub on either database: what it keeps, whom it lets in, and what two of them do on one. */
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commands } from '../../../app/hub/commands.ts';
import { backUp, readThrough, restore } from '../../../app/hub/store/backup.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase, readDatabase, type DatabasePlace } from '../../../app/hub/store/database.ts';
import { migrationsFor } from '../../../app/hub/store/migrations.ts';
import { formatOf } from '../../../app/hub/store/format.ts';
import { takeChunk, readAttachment, attachmentState } from '../../../app/hub/store/attachments.ts';
import { pullRevisions, pushRevisions } from '../../../app/hub/store/feed.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import {
  addInvite,
  deviceOfToken,
  joinByInvite,
  newInviteCode,
  renewToken,
} from '../../../app/hub/store/members.ts';
import { auditOf, noteAudit } from '../../../app/hub/store/audit.ts';
import { quotaOf } from '../../../app/hub/store/quota.ts';
import {
  sealRevision,
  sha256OfBytes,
  type DeviceId,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const random = (bytes: number): Uint8Array => randomBytes(bytes);
const group = idOf(900);
const lead = { member: idOf(1), role: 'lead' as const };
const tester = { member: idOf(2), role: 'tester' as const };
const specialist = { member: idOf(3), role: 'specialist' as const };
const device = 'a'.repeat(16);
const programs = postgresPrograms();
let postgres: TestPostgres | null = null;
let folder = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pairlog-databases-'));
  if (programs !== null) postgres = await startPostgres(programs);
}, 60_000);
afterAll(async () => {
  await postgres?.stop();
  rmSync(folder, { recursive: true, force: true });
});

let files = 0;
const sqlite = (): Promise<DatabasePlace> =>
  Promise.resolve({ file: join(folder, `hub-${++files}.sqlite`) });
const onPostgres = async (): Promise<DatabasePlace> => ({
  url: await (postgres as TestPostgres).newDatabase(),
});

/** The record that names an attachment: without one the hub keeps no bytes. */
const naming = (n: number, sha256: string): Revision =>
  note(n, 'attachment', { record: idOf(n), sha256, mediaType: 'image/jpeg', bytes: 1 });

const note = (n: number, kind = 'weather-mast', body: object = { wind: n }): Revision =>
  sealRevision(
    { id: idOf(n), kind, author: lead.member, sv: 9, body: { ...body } },
    stampAt(n),
    null,
  );

describe.each([
  ['SQLite', sqlite, false],
  ['PostgreSQL', onPostgres, programs === null],
] as const)('a hub on %s', (name, newPlace, missing) => {
  const newHub = async () => {
    const place = await newPlace();
    const database = await openDatabase(place);
    await makeGroup(database.db, group, 'Group', 0);
    return { place, ...database };
  };
  const test = it.skipIf(missing);

  test('keeps what was pushed, in its order, and knows it when it comes again', async () => {
    const { db } = await newHub();
    const batch = Array.from({ length: 700 }, (_, n) => note(n + 10));
    const first = await pushRevisions(db, group, lead, batch);
    expect(first.what === 'done' && new Set(first.verdicts.map((v) => v.verdict))).toEqual(
      new Set(['stored']),
    );
    const again = await pushRevisions(db, group, lead, [batch[5], note(5000), batch[5]]);
    expect(again).toEqual({
      what: 'done',
      verdicts: [{ verdict: 'known', seq: 6 }, { verdict: 'stored' }, { verdict: 'known', seq: 6 }],
    });
    const page = await pullRevisions(db, group, lead, device, null, 'all', 500, false);
    expect(page?.more).toBe(true);
    expect(page?.revisions.map((text) => (JSON.parse(text) as Revision).hash)).toEqual(
      batch.slice(0, 500).map(({ hash }) => hash),
    );
    await db.destroy();
  });

  test('takes a record back with its attachments, and takes nothing older of it any more', async () => {
    const { db } = await newHub();
    const bytes = random(1000);
    const sha256 = sha256OfBytes(bytes);
    const shown = note(20);
    const names = note(21, 'attachment', {
      record: shown.id,
      sha256,
      mediaType: 'image/jpeg',
      bytes: 1000,
    });
    await pushRevisions(db, group, lead, [shown, names]);
    await takeChunk(db, group, lead, sha256, {
      offset: 0,
      length: 1000,
      mediaType: 'image/jpeg',
      bytes,
    });
    expect((await readAttachment(db, group, sha256, lead))?.bytes).toEqual(Buffer.from(bytes));
    const gone = sealRevision(
      { id: shown.id, kind: shown.kind, author: lead.member, sv: 9, body: null, erased: true },
      stampAt(30),
      shown.stamp,
    );
    await pushRevisions(db, group, lead, [gone]);
    expect(await readAttachment(db, group, sha256, lead)).toBeNull();
    expect((await db.selectFrom('chunks').selectAll().execute()).length).toBe(0);
    const late = sealRevision(
      { id: shown.id, kind: shown.kind, author: lead.member, sv: 9, body: { wind: 1 } },
      stampAt(40),
      shown.stamp,
    );
    expect(await pushRevisions(db, group, lead, [late])).toMatchObject({
      verdicts: [{ verdict: 'refused', why: 'erased' }],
    });
    await db.destroy();
  });

  test('goes on with an attachment where it stopped, and keeps none that is not what its name says', async () => {
    const { db } = await newHub();
    const bytes = random(3000);
    const sha256 = sha256OfBytes(bytes);
    expect(
      await takeChunk(db, group, lead, sha256, {
        offset: 0,
        length: 3000,
        mediaType: 'image/jpeg',
        bytes,
      }),
    ).toEqual({ what: 'not-named' });
    await pushRevisions(db, group, lead, [naming(80, sha256)]);
    const send = (offset: number, part: Uint8Array, length = 3000) =>
      takeChunk(db, group, lead, sha256, { offset, length, mediaType: 'image/jpeg', bytes: part });
    expect(await send(0, bytes.subarray(0, 1000))).toEqual({ what: 'more', received: 1000 });
    expect(await send(0, bytes.subarray(0, 1000))).toEqual({
      what: 'wrong-offset',
      received: 1000,
    });
    expect(await send(1000, bytes.subarray(1000))).toEqual({ what: 'complete' });
    expect(await attachmentState(db, group, sha256)).toEqual({ complete: true, received: 3000 });
    const other = sha256OfBytes(random(10));
    await pushRevisions(db, group, lead, [naming(81, other)]);
    const lie = { offset: 0, length: 4, mediaType: 'image/jpeg', bytes: random(4) };
    expect(await takeChunk(db, group, lead, other, lie)).toEqual({ what: 'hash-differs' });
    expect(await attachmentState(db, group, other)).toEqual({ complete: false, received: 0 });
    await db.destroy();
  });

  test('stops a member who sends more in a day than one may, and takes nothing of that batch', async () => {
    const { db } = await newHub();
    const quota = { ...quotaOf(tester, 0), revisionsPerDay: 3 };
    const run = (n: number) =>
      sealRevision(
        { id: idOf(n), kind: 'run', author: tester.member, sv: 9, body: { tester: tester.member } },
        stampAt(n),
        null,
      );
    expect(await pushRevisions(db, group, tester, [run(50), run(51)], quota)).toMatchObject({
      what: 'done',
    });
    expect(await pushRevisions(db, group, tester, [run(52), run(53)], quota)).toEqual({
      what: 'over-quota',
    });
    expect(await pushRevisions(db, group, tester, [run(52)], quota)).toMatchObject({
      what: 'done',
    });
    expect(await pushRevisions(db, group, tester, [run(53)], { ...quota, day: 1 })).toMatchObject({
      what: 'done',
    });
    const { last_seq } = await db.selectFrom('groups').selectAll().executeTakeFirstOrThrow();
    expect(last_seq).toBe(4);
    await db.destroy();
  });

  test('shows a specialist findings, reports and the project, and nothing else', async () => {
    const { db } = await newHub();
    await pushRevisions(
      db,
      group,
      lead,
      ['project', 'round', 'pair', 'finding', 'report', 'stop-use', 'run', 'weather-mast'].map(
        (kind, at) => note(60 + at, kind),
      ),
    );
    const page = await pullRevisions(db, group, specialist, device, null, 'mine', 100, false);
    expect(page?.revisions.map((text) => (JSON.parse(text) as Revision).kind)).toEqual([
      'project',
      'finding',
      'report',
    ]);
    await db.destroy();
  });

  test('gives one invite to one of twenty devices that come with it at once', async () => {
    const { db } = await newHub();
    const code = newInviteCode(random);
    await addInvite(db, group, code, 'tester', tester.member, Date.now());
    const answers = await Promise.all(
      Array.from({ length: 20 }, (_, n) =>
        joinByInvite(
          db,
          {
            code,
            token: String(n).padStart(43, 'x'),
            device: String(n).padStart(16, '0') as DeviceId,
            deviceName: '',
          },
          Date.now(),
          () => idOf(5),
        ),
      ),
    );
    expect(answers.filter((answer) => answer !== null)).toHaveLength(1);
    await db.destroy();
  });

  test('renews a token: both are good until the new one is used', async () => {
    const { db } = await newHub();
    const code = newInviteCode(random);
    await addInvite(db, group, code, 'lead', null, Date.now());
    const [old, fresh] = ['o'.repeat(43), 'n'.repeat(43)];
    await joinByInvite(
      db,
      { code, token: old, device: device as DeviceId, deviceName: '' },
      Date.now(),
      () => idOf(7),
    );
    const known = await deviceOfToken(db, old);
    if (!known) throw new Error('the device is not known');
    await renewToken(db, known, fresh, Date.now());
    expect(await deviceOfToken(db, old)).not.toBeNull();
    expect(await deviceOfToken(db, fresh)).not.toBeNull();
    expect(await deviceOfToken(db, old)).toBeNull();
    expect(await deviceOfToken(db, fresh)).not.toBeNull();
    await db.destroy();
  });

  // Several hubs share a PostgreSQL; a SQLite file has one.
  if (name === 'PostgreSQL')
    test('numbers the revisions of two hubs on one database one after the other', async () => {
      const place = await newPlace();
      const [one, two] = await Promise.all([openDatabase(place), openDatabase(place)]);
      await makeGroup(one.db, group, 'Group', 0);
      await Promise.all(
        Array.from({ length: 40 }, (_, n) =>
          pushRevisions((n % 2 ? one : two).db, group, lead, [
            note(100 + 2 * n),
            note(101 + 2 * n),
          ]),
        ),
      );
      const report = await checkHub(one);
      expect(report).toMatchObject({ revisions: 80, problems: [] });
      await Promise.all([one.db.destroy(), two.db.destroy()]);
    });

  test('goes into a backup while it is written to, and comes back whole in either database', async () => {
    const { db, dialect, place } = await newHub();
    const bytes = random(700_000);
    const sha256 = sha256OfBytes(bytes);
    await pushRevisions(db, group, lead, [
      note(200),
      note(201, 'attachment', { record: idOf(200), sha256, mediaType: 'image/jpeg', bytes: 7 }),
    ]);
    for (let offset = 0; offset < bytes.length; offset += 250_000)
      await takeChunk(db, group, lead, sha256, {
        offset,
        length: bytes.length,
        mediaType: 'image/jpeg',
        bytes: bytes.subarray(offset, offset + 250_000),
      });
    await noteAudit(
      db,
      { group, atMs: 5, member: lead.member, device: null, what: 'join', subject: null },
      random,
    );
    const file = join(folder, `${dialect}.backup`);
    let writing = true;
    const load = (async () => {
      for (let n = 0; writing; n++) {
        await pushRevisions(db, group, lead, [note(300 + n)]);
        // SQLite answers at once: without this pause nothing else would ever run.
        await new Promise((soon) => setImmediate(soon));
      }
    })();
    const own = await openDatabase(place);
    const { rows } = await backUp(own.db, file, Date.now());
    await own.db.destroy();
    writing = false;
    await load;
    expect(await readThrough(file)).toMatchObject({ ok: true, rows });
    const others = programs === null ? [sqlite] : [sqlite, onPostgres];
    for (const other of others) {
      const empty = await other();
      expect(await restore(empty, file)).toEqual({ ok: true, rows });
      const back = await openDatabase(empty);
      expect((await checkHub(back)).problems).toEqual([]);
      expect((await readAttachment(back.db, group, sha256, lead))?.bytes).toEqual(
        Buffer.from(bytes),
      );
      expect(await auditOf(back.db, group, null, 10)).toMatchObject([{ what: 'join', atMs: 5 }]);
      expect(await restore(empty, file)).toEqual({ ok: false, why: 'not-empty' });
      await back.db.destroy();
    }
    const cut = readFileSync(file);
    writeFileSync(`${file}.cut`, cut.subarray(0, cut.length - 60));
    expect(await restore(await newPlace(), `${file}.cut`)).toMatchObject({ ok: false });
    await db.destroy();
  });

  test('takes an audit of any length over without reading it', async () => {
    const place = await newPlace();
    const old = await openDatabase(place, '0003-chunked');
    await sql`insert into audit (group_id, at_ms, what, member_id)
      with recursive n(n) as (select 1 union all select n + 1 from n where n < 20000)
      select ${group}, n, 'join', ${lead.member} from n`.execute(old.db);
    let statements = 0;
    const counting = old.db.withPlugin({
      transformQuery: ({ node }) => {
        statements++;
        return node;
      },
      transformResult: ({ result }) => Promise.resolve(result),
    });
    await migrationsFor(old.dialect)['0004-trusted']?.up(counting);
    expect(statements).toBeLessThan(30);
    const entries = await auditOf(old.db, group, null, 2);
    expect(entries).toMatchObject([{ atMs: 20_000, member: lead.member }, { atMs: 19_999 }]);
    expect(entries[0]?.entry).toBe('00000000-0000-7000-8000-000000020000');
    expect(await auditOf(old.db, group, '00000000-0000-7000-8000-000000000002', 9)).toMatchObject([
      { entry: '00000000-0000-7000-8000-000000000001', atMs: 1, what: 'join', device: null },
    ]);
    await old.db.destroy();
  });

  test('of an older format is looked at, backed up, and never changed by it', async () => {
    const place = await newPlace();
    const old = await openDatabase(place, '0004-trusted');
    await makeGroup(old.db, group, 'Group', 0);
    await old.db.destroy();
    const checked = await commands.check(place, []);
    expect(checked.ok).toBe(false);
    expect(checked.said).toMatch(/older format: 0004-trusted.* start the hub once/);
    const asked = await commands['lead-code'](place, []);
    expect(asked.ok).toBe(false);
    expect(asked.said).toMatch(/older format: 0004-trusted.*--new-lead-code/);
    const file = join(folder, `old-${name}.backup`);
    expect((await commands.backup(place, [file])).ok).toBe(true);
    expect(await readThrough(file)).toMatchObject({ ok: true, step: '0004-trusted' });
    const { db } = readDatabase(place);
    expect(await formatOf(db)).toEqual({ what: 'older', step: '0004-trusted' });
    await expect(makeGroup(db, idOf(901), 'Another', 0)).rejects.toThrow(/read-?only/);
    await db.destroy();
    const today = await openDatabase(place);
    expect((await commands.check(place, [])).said).toContain('all whole');
    expect((await commands['lead-code'](place, [])).ok).toBe(true);
    await sql`insert into kysely_migration (name, timestamp) values ('9999-later', '')`.execute(
      today.db,
    );
    for (const name of ['check', 'lead-code'] as const)
      expect((await commands[name](place, [])).said).toContain('of a newer Pairlog');
    await today.db.destroy();
  });

  test('finds a byte that changed under it', async () => {
    const hub = await newHub();
    const { db } = hub;
    const bytes = random(500);
    const sha256 = sha256OfBytes(bytes);
    await pushRevisions(db, group, lead, [note(400), note(401), naming(402, sha256)]);
    const chunk = { offset: 0, length: 500, mediaType: 'image/jpeg', bytes };
    await takeChunk(db, group, lead, sha256, chunk);
    expect(await checkHub(hub)).toMatchObject({ revisions: 3, attachments: 1, problems: [] });
    await db
      .updateTable('chunks')
      .set({ bytes: Buffer.from(random(500)) })
      .execute();
    await db.deleteFrom('revisions').where('seq', '=', 2).execute();
    const { problems } = await checkHub(hub);
    expect(problems).toHaveLength(3);
    expect(problems[0]).toContain('the one before it is missing');
    expect(problems[2]).toContain('its bytes are not what its name says');
    await db.destroy();
  });
});
