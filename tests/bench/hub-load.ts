/**
 * `npm run bench:hub`: 500 devices come online at once with 20 runs each, the hub on one core; all of it has to
 * be in, and nothing twice. On SQLite and, where there is one, on PostgreSQL.
 * `npm run bench:hub -- --rows 10000000` fills a PostgreSQL with so many revisions and times pulls and pushes
 * against the same with 100,000. It takes some 12 GB of disk for ten million, and gives them back.
 */
import { execFileSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { sql } from 'kysely';
import { createHub } from '../../app/hub/app.ts';
import { checkHub } from '../../app/hub/store/check.ts';
import { openDatabase, type HubDatabase } from '../../app/hub/store/database.ts';
import { firstGroup, makeGroup } from '../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../app/hub/store/members.ts';
import { OWN_PAGE } from '../app/hub/as-browser.ts';
import {
  newRecordId,
  sealRevision,
  type RecordId,
  type Role,
  type Stamp,
} from '../../core/records/index.ts';
import { startHubProcess } from '../app/hub/hub-process.ts';
import { joinAs, type Member } from '../app/hub/member-for-tests.ts';
import { postgresPrograms, startPostgres } from '../app/hub/postgres.ts';
import { seeded } from '../seeded.ts';

const { values } = parseArgs({
  options: {
    devices: { type: 'string', default: '500' },
    runs: { type: 'string', default: '20' },
    rows: { type: 'string' },
  },
});

const random = seeded(1);
const someBytes = (count: number) => Uint8Array.from({ length: count }, () => random() * 256);
const quantile = (list: readonly number[], share: number): number =>
  [...list].sort((a, b) => a - b)[Math.round(share * (list.length - 1))] ?? Number.NaN;
const inMs = (list: readonly number[]) =>
  `${quantile(list, 0.5).toFixed(0)} / ${quantile(list, 0.99).toFixed(0)}`;

/** `taskset`, where the machine has it: the hub shall not use more than one core. */
const onOneCore = (): string[] => {
  try {
    execFileSync('taskset', ['-c', '0', 'true']);
    return ['taskset', '-c', '0'];
  } catch {
    return [];
  }
};

const devicesAtOnce = async (name: string, databaseUrl?: string) => {
  const [devices, runs] = [Number(values.devices), Number(values.runs)];
  const before = onOneCore();
  const hub = await startHubProcess({
    before,
    ...(databaseUrl !== undefined && { databaseUrl }),
  });
  const database = await openDatabase(hub.place);
  const group = (await firstGroup(database.db))?.group as RecordId;
  const members: Member[] = [];
  for (let at = 0; at < devices; at++) {
    const code = newInviteCode(someBytes);
    await addInvite(database.db, group, code, 'tester', newRecordId(at, someBytes(16)), Date.now());
    members.push(await joinAs(hub.url, code));
  }
  const took: Record<'pull' | 'push', number[]> = { pull: [], push: [] };
  const timed = async <T>(what: 'pull' | 'push', work: () => Promise<T>): Promise<T> => {
    const began = performance.now();
    const outcome = await work();
    took[what].push(performance.now() - began);
    return outcome;
  };
  let lost = 0;
  const began = performance.now();
  await Promise.all(
    members.map(async (member) => {
      const pull = async () => {
        const answer = await member.ask('pull?scope=mine&limit=1000');
        await answer?.arrayBuffer();
      };
      await timed('pull', pull);
      const batch = Array.from({ length: runs }, () => member.revision());
      const verdicts = await timed('push', () => member.push(batch));
      if (!Array.isArray(verdicts) || verdicts.some(({ verdict }) => verdict !== 'stored')) lost++;
      await timed('pull', pull);
    }),
  );
  const seconds = (performance.now() - began) / 1000;
  const report = await checkHub(database);
  await database.db.destroy();
  await hub.remove();
  if (report.problems.length > 0 || report.revisions !== devices * runs || lost > 0)
    throw new Error(`${name}: ${JSON.stringify(report)}, ${lost} devices without their verdicts`);
  console.log(
    `| ${name}${before.length > 0 ? ', one core' : ''} | ${devices} × ${runs} | ${seconds.toFixed(1)} s | ` +
      `${((devices * 3) / seconds).toFixed(0)} | ${inMs(took.pull)} ms | ${inMs(took.push)} ms |`,
  );
};

const GROUP = newRecordId(1, new Uint8Array(16).fill(9));
const TESTERS = 200;
const testerId = (n: number): RecordId =>
  newRecordId(1_750_000_000_000 + n, new Uint8Array(16).fill(n % 251));

/** So many revisions by SQL: each looks like one, and its chain is one that a cursor can name. */
const fill = async (db: HubDatabase, rows: number) => {
  const testers = sql`array[${sql.join(Array.from({ length: TESTERS }, (_, n) => sql.lit(testerId(n))))}]`;
  const { rows: indexes } = await sql<{ name: string; def: string }>`
    select indexname as name, indexdef as def from pg_indexes
     where tablename = 'revisions' and indexname <> 'revisions_key'`.execute(db);
  await db.transaction().execute(async (tx) => {
    for (const { name } of indexes) await sql`drop index ${sql.id(name)}`.execute(tx);
    await sql`alter table revisions drop constraint revisions_key`.execute(tx);
    await sql`truncate revisions`.execute(tx);
    // One in a hundred is for everyone, as rounds' pairs and notices are; the rest are runs of testers.
    await sql`
      insert into revisions
      select ${GROUP}, g, '01970000-' || lpad(to_hex(g / 65536), 4, '0') || '-7000-8000-' || lpad(to_hex(g), 12, '0'),
             case when g % 100 = 0 then 'stop-use' else 'run' end,
             (${testers})[1 + g % ${sql.lit(TESTERS)}],
             case when g % 100 = 0 then '*' else (${testers})[1 + g % ${sql.lit(TESTERS)}] end,
             lpad(to_hex(1780000000000 + g), 12, '0') || '-0000-' || lpad(to_hex(g % 500), 16, '0'),
             md5(g::text) || md5((g + 1)::text), 0, null, null,
             '{"author":"' || (${testers})[1 + g % ${sql.lit(TESTERS)}] || '","body":{"words":"' || repeat('x', 300) || '"}}',
             left(md5(g::text), 16)
        from generate_series(1, ${sql.lit(rows)}) g`.execute(tx);
    await sql`alter table revisions add constraint revisions_key primary key (group_id, seq)`.execute(
      tx,
    );
    for (const { def } of indexes) await sql.raw(def).execute(tx);
    await sql`update groups set last_seq = ${rows}, last_chain = left(md5(${String(rows)}), 16)`.execute(
      tx,
    );
  });
  await sql`vacuum analyze revisions`.execute(db);
};

interface Filled {
  /** What a device asks, by name. */
  readonly questions: Readonly<Record<string, () => Response | Promise<Response>>>;
  close(): Promise<void>;
}

/** A hub with so many revisions, and what its devices ask. */
const filledHub = async (url: string, rows: number): Promise<Filled> => {
  const { db } = await openDatabase({ url });
  await makeGroup(db, GROUP, 'Large', 1);
  const app = createHub({ db, now: () => 1_790_000_000_000, random: someBytes });
  const join = async (role: Role, member: RecordId | null, letter: string) => {
    const code = newInviteCode(someBytes);
    const token = letter.repeat(43);
    await addInvite(db, GROUP, code, role, member, 1_790_000_000_000);
    await app.request('/v1/join', {
      method: 'POST',
      headers: OWN_PAGE,
      body: JSON.stringify({ code, token, device: letter.repeat(16), deviceName: '' }),
    });
    return (path: string, body?: unknown) =>
      app.request(`/v1/${path}`, {
        headers: { authorization: `Bearer ${token}` },
        ...(body !== undefined && { method: 'POST', body: JSON.stringify(body) }),
      });
  };
  const tester = testerId(7);
  const [lead, phone] = [await join('lead', null, 'a'), await join('tester', tester, 'b')];
  const began = performance.now();
  await fill(db, rows);
  console.error(`${rows} rows in ${((performance.now() - began) / 1000).toFixed(0)} s`);
  const { rows: chains } = await sql<{ chain: string }>`
    select left(md5(${String(rows - 500)}), 16) as chain`.execute(db);
  const since = `${rows - 500}.${chains[0]?.chain}`;
  let count = 0;
  const runs = () =>
    Array.from({ length: 20 }, () => {
      count++;
      const stamp = `${(1_790_000_000_000 + count).toString(16).padStart(12, '0')}-0000-${'b'.repeat(16)}`;
      return sealRevision(
        {
          id: newRecordId(1_790_000_000_000 + count, someBytes(16)),
          kind: 'run',
          author: tester,
          sv: 9,
          body: { tester, words: 'x'.repeat(300) },
        },
        stamp as Stamp,
        null,
      );
    });
  const questions = {
    'pull of a lead, the last 500': () => lead(`pull?scope=all&since=${since}`),
    'pull of a tester, the last 500': () => phone(`pull?scope=mine&since=${since}`),
    'pull of a lead, the first 1,000': () => lead('pull?scope=all&limit=1000'),
    'pull of a tester, the first 1,000': () => phone('pull?scope=mine&limit=1000'),
    'push of 20 runs': () => phone('push', { revisions: runs() }),
  };
  return { questions, close: () => db.destroy() };
};

const ROUNDS = 60;
const WARM_UP = 10;

/** Medians in ms of one question to two hubs, asked in turn, so that a slow moment of the machine hits both. */
const medians = async (name: string, hubs: readonly Filled[]): Promise<number[]> => {
  const took = hubs.map((): number[] => []);
  for (let round = 0; round < ROUNDS; round++)
    for (const [at, { questions }] of hubs.entries()) {
      const from = performance.now();
      const answer = await questions[name]?.();
      const text = (await answer?.text()) ?? '';
      if (round >= WARM_UP) took[at]?.push(performance.now() - from);
      if (answer?.status !== 200 || text.includes('refused'))
        throw new Error(`${name}: ${text.slice(0, 200)}`);
    }
  return took.map((list) => quantile(list, 0.5));
};

const programs = postgresPrograms();
if (values.rows !== undefined) {
  if (programs === null) throw new Error('this needs PostgreSQL');
  const postgres = await startPostgres(programs, {
    settings: {
      wal_level: 'minimal',
      max_wal_senders: '0',
      max_wal_size: '8GB',
      maintenance_work_mem: '512MB',
      shared_buffers: '512MB',
    },
  });
  try {
    const rows = Number(values.rows);
    const hubs = [
      await filledHub(await postgres.newDatabase(), 100_000),
      await filledHub(await postgres.newDatabase(), rows),
    ];
    console.log(
      `| question | of 100,000 | of ${rows.toLocaleString('en')} | times |\n| --- | --- | --- | --- |`,
    );
    for (const name of Object.keys(hubs[0]?.questions ?? {})) {
      const [few = Number.NaN, many = Number.NaN] = await medians(name, hubs);
      console.log(
        `| ${name} | ${few.toFixed(1)} ms | ${many.toFixed(1)} ms | ${(many / few).toFixed(2)} |`,
      );
    }
    for (const hub of hubs) await hub.close();
  } finally {
    await postgres.stop();
  }
} else {
  console.log(
    '| hub | devices × runs | all in after | requests a second | pull p50 / p99 | push p50 / p99 |\n| --- | --- | --- | --- | --- | --- |',
  );
  await devicesAtOnce('SQLite');
  if (programs === null) console.log('PostgreSQL was left out: it is not on this machine.');
  else {
    const postgres = await startPostgres(programs);
    await devicesAtOnce('PostgreSQL', await postgres.newDatabase());
    await postgres.stop();
  }
}
