/**
 * A disk that is full: a real one of a few megabytes. The hub says so, acknowledges nothing that it cannot keep,
 * and goes on by itself once there is room.
 */
import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';
import { joinAs } from './member-for-tests.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const MB = 1024 * 1024;
const BALLAST = 3 * MB;
const programs = postgresPrograms();
const mounted: string[] = [];
const hubs: HubProcess[] = [];
let postgres: TestPostgres | null = null;

/** A disk of its own; null where this user may not mount one. */
const smallDisk = (megabytes: number): string | null => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-disk-'));
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder], {
      stdio: 'ignore',
    });
  } catch {
    rmSync(folder, { recursive: true });
    return null;
  }
  mounted.push(folder);
  writeFileSync(join(folder, 'ballast'), Buffer.alloc(BALLAST, 1));
  return folder;
};

const ofSqlite = smallDisk(8);
const ofPostgres = programs === null ? null : smallDisk(20);

beforeAll(async () => {
  if (programs !== null && ofPostgres !== null) postgres = await startPostgres(programs);
}, 60_000);
afterAll(async () => {
  for (const hub of hubs) await hub.remove();
  await postgres?.stop();
  for (const folder of mounted) {
    execFileSync('umount', [folder]);
    rmSync(folder, { recursive: true });
  }
});

describe.each([
  ['SQLite', ofSqlite, false],
  ['PostgreSQL', ofPostgres, true],
] as const)('a hub on %s whose disk is full', (_name, disk, onPostgres) => {
  // Skipped where no disk can be mounted: only root may.
  it.skipIf(disk === null)(
    'refuses clearly, keeps what it acknowledged, and goes on when there is room',
    async () => {
      const folder = join(disk as string, 'data');
      mkdirSync(folder);
      const hub = await startHubProcess(
        onPostgres
          ? { databaseUrl: await (postgres as TestPostgres).newDatabase(folder) }
          : { dataDir: folder },
      );
      hubs.push(hub);
      const lead = await joinAs(hub.url, hub.leadCode);
      // As if it had not been seen for long: its next pull would note that on the disk.
      const { db } = await openDatabase(hub.place);
      await db.updateTable('devices').set({ seen_ms: 0 }).execute();
      await db.destroy();
      const batch = () =>
        Array.from({ length: 20 }, () =>
          lead.revision(undefined, { body: { words: randomBytes(6000).toString('base64') } }),
        );
      let refused: unknown = null;
      for (let at = 0; at < 300 && refused === null; at++) {
        const outcome = await lead.push(batch());
        if (!Array.isArray(outcome)) refused = outcome;
      }
      expect(refused).toEqual({ status: 507, error: 'storage-full' });
      const some = lead.acknowledged.values().next().value?.id as RecordId;
      // Attachments, big and small, meet the same end, and reading goes on.
      const statuses = new Set<number | 'no-answer'>();
      for (let at = 0; at < 3; at++)
        statuses.add(await lead.attach(randomBytes(400_000), some, 400_000));
      expect(statuses).toContain(507);
      expect((await lead.ask('pull?scope=all'))?.status).toBe(200);
      expect((await lead.ask('devices'))?.status).toBe(200);
      expect(hub.runs).toBe(true);

      rmSync(join(disk as string, 'ballast'));
      const before = lead.acknowledged.size;
      expect(await lead.push(batch().slice(0, 5))).toHaveLength(5);
      expect(await lead.attach(randomBytes(300_000), some, 300_000)).toBe(200);
      expect(lead.acknowledged.size).toBe(before + 6);

      await hub.stop();
      const database = await openDatabase(hub.place);
      expect((await checkHub(database)).problems).toEqual([]);
      const kept = new Set(
        (await database.db.selectFrom('revisions').select('hash').execute()).map(
          ({ hash }) => hash,
        ),
      );
      expect([...lead.acknowledged.keys()].filter((hash) => !kept.has(hash))).toEqual([]);
      expect(before).toBeGreaterThan(100);
      await database.db.destroy();
    },
    90_000,
  );
});
