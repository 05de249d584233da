/** When does the hub back itself up, and for how long does it keep what it wrote? */
import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { LogLine } from './answers.ts';
import { backUp } from './store/backup.ts';
import type { OpenDatabase } from './store/database.ts';

const DAY_MS = 86_400_000;
const NAME = /^pairlog-(\d{4}-\d{2}-\d{2}T\d{2}-\d{2}-\d{2}Z)\.backup$/;

const nameAt = (ms: number) =>
  `pairlog-${new Date(ms).toISOString().slice(0, 19).replaceAll(':', '-')}Z.backup`;

/** When a backup of this name was made; null for other files. */
const timeOf = (name: string): number | null => {
  const said = NAME.exec(name)?.[1];
  if (said === undefined) return null;
  return Date.parse(said.replace(/T(\d\d)-(\d\d)-(\d\d)Z/, 'T$1:$2:$3Z'));
};

/** Drops the backups in `folder` that are older than `days`. Other files are left alone. */
export const dropOld = async (folder: string, days: number, nowMs: number): Promise<number> => {
  let dropped = 0;
  for (const name of await readdir(folder)) {
    const at = timeOf(name);
    if (at === null || at >= nowMs - days * DAY_MS) continue;
    await rm(join(folder, name));
    dropped++;
  }
  return dropped;
};

export interface ScheduledBackups {
  /** Waits for the backup under way, then stops. */
  stop(): Promise<void>;
}

/**
 * A backup now and every 24 hours, each kept for `days`. \`open\` gives a connection of its own, so that
 * the hub goes on while the backup reads. A backup that fails is logged, and tried again a day later.
 */
export const scheduleBackups = (
  open: () => Promise<OpenDatabase>,
  folder: string,
  days: number,
  log: (line: LogLine) => void,
): ScheduledBackups => {
  const once = async () => {
    try {
      await mkdir(folder, { recursive: true });
      const { db } = await open();
      try {
        const { rows } = await backUp(db, join(folder, nameAt(Date.now())), Date.now());
        log({ event: 'backup', rows });
      } finally {
        await db.destroy();
      }
      await dropOld(folder, days, Date.now());
    } catch (error) {
      log({ level: 'error', event: 'backup', error: (error as Error).name });
    }
  };
  let running = once();
  const timer = setInterval(() => {
    running = once();
  }, DAY_MS);
  return {
    async stop() {
      clearInterval(timer);
      await running;
    },
  };
};
