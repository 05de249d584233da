/** When does the hub back itself up, and for how long does it keep what it wrote? */
import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { LogLine } from './answers.ts';
import { backUp } from './store/backup.ts';
import type { OpenDatabase } from './store/database.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const NAME = /^pairlog-(\d{4}-\d{2}-\d{2}T\d{2}-\d{2}-\d{2}Z)\.backup(?:\.partial)?$/;

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

/** When the latest whole backup in `folder` was made; null where there is none. */
const latestIn = async (folder: string): Promise<number | null> => {
  const times = (await readdir(folder)).flatMap((name) =>
    name.endsWith('.partial') ? [] : (timeOf(name) ?? []),
  );
  return times.length === 0 ? null : Math.max(...times);
};

/**
 * A backup where the latest is a day old, and old ones dropped as they pass \`days\`; looked at now and every
 * hour, so that a hub that starts often does not write many. \`open\` gives a connection of its own: the hub goes
 * on while the backup reads. What fails is logged, and tried again an hour later.
 */
export const scheduleBackups = (
  open: () => Promise<OpenDatabase>,
  folder: string,
  days: number,
  log: (line: LogLine) => void,
): ScheduledBackups => {
  const back = async () => {
    const latest = await latestIn(folder);
    if (latest !== null && Date.now() - latest < DAY_MS) return;
    const { db } = await open();
    try {
      const { rows } = await backUp(db, join(folder, nameAt(Date.now())), Date.now());
      log({ event: 'backup', rows });
    } finally {
      await db.destroy();
    }
  };
  const tried = async (work: () => Promise<unknown>) => {
    try {
      await work();
    } catch (error) {
      log({ level: 'error', event: 'backup', error: (error as Error).name });
    }
  };
  const once = async () => {
    await tried(() => mkdir(folder, { recursive: true, mode: 0o700 }));
    await tried(back);
    await tried(() => dropOld(folder, days, Date.now()));
  };
  let running = once();
  const timer = setInterval(() => {
    running = running.then(once);
  }, HOUR_MS);
  return {
    async stop() {
      clearInterval(timer);
      await running;
    },
  };
};
