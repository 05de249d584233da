/**
 * What is acknowledged is kept, whenever the power fails: a hub in a process of its own, under load from
 * several members, is killed by SIGKILL at random moments, and PostgreSQL now and then with it.
 * `PAIRLOG_KILLS=500` kills as often per database, `PAIRLOG_MINUTES` stops each after so long.
 */
import { randomBytes } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAttachment } from '../../../app/hub/store/attachments.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase, type HubDatabase } from '../../../app/hub/store/database.ts';
import type { RecordId, Revision } from '../../../core/records/index.ts';
import { seeded } from '../../seeded.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { joinAs, type Member } from './member-for-tests.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const KILLS = Number(process.env['PAIRLOG_KILLS'] ?? 5);
const MINUTES = Number(process.env['PAIRLOG_MINUTES'] ?? 60);
const SEED = Number(process.env['PAIRLOG_SEED'] ?? 1);
const pause = (ms: number) => new Promise((soon) => setTimeout(soon, ms));
const programs = postgresPrograms();
let postgres: TestPostgres | null = null;

beforeAll(async () => {
  if (programs !== null) postgres = await startPostgres(programs);
}, 60_000);
const hubs: HubProcess[] = [];
afterAll(async () => {
  for (const hub of hubs) await hub.remove();
  await postgres?.stop();
});

/** What one member does at random until the end: adds, changes, attaches, takes back, repeats. */
const load = async (
  member: Member,
  random: () => number,
  goesOn: () => boolean,
  answered: () => void,
) => {
  const records: RecordId[] = [];
  let unanswered: Revision[] = [];
  let half: { bytes: Uint8Array; about: RecordId } | null = null;
  const any = () => records[Math.floor(random() * records.length)];
  const tally = { answered: 0, unanswered: 0, errors: 0 };
  while (goesOn()) {
    const dice = random();
    let outcome: Awaited<ReturnType<Member['push']>> | number;
    if (dice < 0.6 || records.length === 0) {
      const fresh = Array.from({ length: 1 + Math.floor(random() * 20) }, () =>
        member.revision(random() < 0.3 ? any() : undefined),
      );
      // What got no answer is sent again, as a phone does: the hub may have it already.
      const batch = [...unanswered, ...fresh].slice(-60);
      outcome = await member.push(batch);
      unanswered = outcome === 'no-answer' ? batch : [];
      for (const { id } of fresh) records.push(id);
    } else if (dice < 0.85) {
      half ??= { bytes: randomBytes(40_000), about: any() as RecordId };
      outcome = await member.attach(half.bytes, half.about, 15_000);
      if (outcome === 200) half = null;
    } else {
      outcome = await member.push([member.revision(any(), { erased: true })]);
    }
    if (outcome === 'no-answer') tally.unanswered++;
    else if (Array.isArray(outcome) || outcome === 200) {
      tally.answered++;
      answered();
    } else tally.errors++;
    await pause(outcome === 'no-answer' ? 40 : 2);
  }
  // In peace at last, what was begun is ended.
  if (unanswered.length > 0) await member.push(unanswered);
  if (half) await member.attach(half.bytes, half.about, 15_000);
  return tally;
};

/** Compares what the members were told with what the database holds. */
const compare = async (db: HubDatabase, members: readonly Member[]) => {
  const { group_id: group } = await db.selectFrom('groups').selectAll().executeTakeFirstOrThrow();
  const rows = await db
    .selectFrom('revisions')
    .select(['id', 'stamp', 'hash', 'json', 'about', 'erased'])
    .execute();
  const kept = new Map(rows.map((row) => [row.hash, row]));
  const takenBack = new Set(rows.filter(({ erased }) => erased === 1).map(({ id }) => id));
  const shown = new Set(
    rows.flatMap(({ json, about }) =>
      json === null || about === null || takenBack.has(about)
        ? []
        : [(JSON.parse(json) as Revision).body?.['sha256']],
    ),
  );
  const lost: string[] = [];
  for (const { acknowledged, whole, takenBack: asked, id } of members) {
    for (const [record, answered] of asked)
      if (answered && !takenBack.has(record)) lost.push(`taking back of ${record}`);
    for (const [hash, revision] of acknowledged) {
      const row = kept.get(hash);
      const gone =
        takenBack.has(revision.id) ||
        (revision.kind === 'attachment' && takenBack.has(revision.body?.['record'] as string));
      if (!row) lost.push(`revision ${hash}`);
      else if (row.json === null ? !gone : gone && !revision.erased)
        lost.push(`revision ${hash}: taken back is ${gone}, its text is ${row.json}`);
      else if (row.json !== null)
        expect(JSON.parse(row.json), 'a kept revision is the one that was sent').toEqual(revision);
    }
    for (const [sha256, bytes] of whole) {
      const named = shown.has(sha256);
      const held = await readAttachment(db, group as RecordId, sha256, {
        member: id,
        role: 'lead',
      });
      if (named && Buffer.compare(held?.bytes ?? Buffer.alloc(0), bytes) !== 0)
        lost.push(`attachment ${sha256}`);
      if (!named && held) lost.push(`attachment ${sha256} is there although taken back`);
    }
  }
  return lost;
};

describe.each([
  ['SQLite', false],
  ['PostgreSQL', true],
] as const)('a hub on %s that is killed', (_name, onPostgres) => {
  it.skipIf(onPostgres && programs === null)(
    'keeps every revision and attachment that it acknowledged',
    async () => {
      const random = seeded(SEED + (onPostgres ? 1000 : 0));
      const hub = await startHubProcess(
        onPostgres ? { databaseUrl: await (postgres as TestPostgres).newDatabase() } : {},
      );
      hubs.push(hub);
      const lead = await joinAs(hub.url, hub.leadCode);
      const members = [
        lead,
        await lead.invite('lead'),
        await lead.invite('tester'),
        await lead.invite('tester'),
      ];
      let goesOn = true;
      let answers = 0;
      const loads = members.map((member, at) =>
        load(
          member,
          seeded(SEED * 10 + at),
          () => goesOn,
          () => answers++,
        ),
      );
      let kills = 0;
      const until = performance.now() + MINUTES * 60_000;
      for (; kills < KILLS && performance.now() < until; kills++) {
        // After some answers, in the middle of whatever comes next.
        const enough = answers + 2 + Math.floor(random() * 8);
        for (let waited = 0; answers < enough && waited < 5000; waited += 10) await pause(10);
        await pause(random() * 40);
        // The hub dies, or its PostgreSQL under it, or both.
        const who = onPostgres ? kills % 3 : 0;
        if (who !== 1) await hub.kill();
        if (who !== 0) await postgres?.crash();
        if (who !== 1) await hub.start();
        expect(hub.runs, 'the hub outlives its database').toBe(true);
      }
      await pause(200);
      goesOn = false;
      const tallies = await Promise.all(loads);
      await hub.stop();
      const database = await openDatabase(hub.place);
      const report = await checkHub(database);
      expect(report.problems).toEqual([]);
      const acknowledged = members.reduce((sum, { acknowledged: all }) => sum + all.size, 0);
      const whole = members.reduce((sum, { whole: all }) => sum + all.size, 0);
      if (KILLS > 5)
        console.log(
          `${kills} kills: ${acknowledged} revisions and ${whole} attachments acknowledged, ` +
            `${report.revisions} revisions kept; requests ${JSON.stringify(tallies)}`,
        );
      expect(await compare(database.db, members)).toEqual([]);
      // The comparison compared something, and the kills hit something.
      expect(report.revisions).toBeGreaterThanOrEqual(acknowledged);
      expect(acknowledged).toBeGreaterThan(50);
      expect(whole).toBeGreaterThan(0);
      expect(
        tallies.reduce((sum, { unanswered, errors }) => sum + unanswered + errors, 0),
      ).toBeGreaterThan(0);
      await database.db.destroy();
    },
    60_000 + KILLS * 15_000,
  );
});
