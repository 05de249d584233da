/** What can be done with a hub's data on its own machine, beside running it? */
import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { backUp, restore } from './store/backup.ts';
import { checkHub } from './store/check.ts';
import { openDatabase, type DatabasePlace, type OpenDatabase } from './store/database.ts';
import { addInvite, firstGroup, INVITE_HOURS, newInviteCode } from './store/members.ts';

export interface CommandOutcome {
  readonly ok: boolean;
  /** What is printed, on standard output or, where it failed, as an error. */
  readonly said: string;
}

type Command = (place: DatabasePlace, args: readonly string[]) => Promise<CommandOutcome>;

const failed = (said: string): CommandOutcome => ({ ok: false, said });
const done = (said: string): CommandOutcome => ({ ok: true, said });

/** Runs on a database that must be there; the hub may be running on it. */
const onHub = async (
  place: DatabasePlace,
  work: (database: OpenDatabase) => Promise<CommandOutcome>,
): Promise<CommandOutcome> => {
  if ('file' in place && !existsSync(place.file))
    return failed(`There is no hub here: ${place.file} is missing. Name its folder with --data.`);
  const database = await openDatabase(place);
  try {
    return await work(database);
  } finally {
    await database.db.destroy();
  }
};

const leadCode: Command = (place) =>
  onHub(place, async ({ db }) => {
    const group = await firstGroup(db);
    if (!group) return failed('This hub has no group yet. Start it once.');
    const code = newInviteCode(randomBytes);
    await addInvite(db, group.group, code, 'lead', null, Date.now());
    return done(
      `${code}\nSigns in one lead of "${group.name}", once, within ${INVITE_HOURS} hours.`,
    );
  });

const backup: Command = (place, [file]) => {
  if (file === undefined) return Promise.resolve(failed('Name the file: backup FILE'));
  if (existsSync(file)) return Promise.resolve(failed(`${file} is there already.`));
  return onHub(place, async ({ db }) => {
    const { rows } = await backUp(db, file, Date.now());
    return done(`${file}: ${rows} rows. It holds everything: keep it as safe as the hub.`);
  });
};

const WHY_NOT = {
  'not-a-backup': 'is no backup of a hub.',
  'cut-off': 'is cut off: it has no end. Nothing was restored.',
  damaged: 'is damaged: its digest does not fit. Nothing was restored.',
  'not-empty': 'was not restored: this database has a group already. Restore into an empty one.',
  'newer-hub': 'was made by a newer hub. Nothing was restored. Update this one first.',
} as const;

const restoreFile: Command = async (place, [file]) => {
  if (file === undefined) return failed('Name the file: restore FILE');
  if (!existsSync(file)) return failed(`${file} is not there.`);
  const outcome = await restore(place, file);
  if (!outcome.ok) return failed(`${file} ${WHY_NOT[outcome.why]}`);
  const checked = await check(place, []);
  return checked.ok
    ? done(
        `${file}: ${outcome.rows} rows restored. Look through the devices at the desk: those signed out ` +
          `since the backup are in again. Open codes were ended; "lead-code" makes one.\n${checked.said}`,
      )
    : checked;
};

const check: Command = (place) =>
  onHub(place, async (database) => {
    const report = await checkHub(database);
    const lines = [
      ...report.problems,
      ...report.notes,
      `${report.revisions} revisions, ${report.attachments} attachments ` +
        `(${report.waiting} not yet whole), ${report.indexes} indexes: ` +
        (report.problems.length === 0 ? 'all whole' : `${report.problems.length} problems`),
    ];
    return { ok: report.problems.length === 0, said: lines.join('\n') };
  });

export const commands = { 'lead-code': leadCode, backup, restore: restoreFile, check } as const;
export type CommandName = keyof typeof commands;
