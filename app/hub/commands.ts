/** What can be done with a hub's data on its own machine, beside running it? */
import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { INVITE_HOURS } from '../../core/records/index.ts';
import { backUp, restore } from './store/backup.ts';
import { checkHub } from './store/check.ts';
import {
  openDatabase,
  readDatabase,
  type DatabasePlace,
  type OpenDatabase,
} from './store/database.ts';
import { formatOf, type Format } from './store/format.ts';
import { firstGroup } from './store/groups.ts';
import { addInvite, newInviteCode } from './store/members.ts';
import { LAST_STEP } from './store/migrations.ts';

export interface CommandOutcome {
  readonly ok: boolean;
  /** What is printed, on standard output or, where it failed, as an error. */
  readonly said: string;
}

type Command = (place: DatabasePlace, args: readonly string[]) => Promise<CommandOutcome>;

const failed = (said: string): CommandOutcome => ({ ok: false, said });
const done = (said: string): CommandOutcome => ({ ok: true, said });

/** What is said of a place; an address of PostgreSQL has a password in it. */
const nameOf = (place: DatabasePlace): string =>
  'file' in place ? place.file : 'The PostgreSQL database';

/** Looks at a hub's database as it is, which must be there; the hub may be running on it. */
const onHub = async (
  place: DatabasePlace,
  work: (
    database: OpenDatabase,
    format: Extract<Format, { step: string }>,
  ) => Promise<CommandOutcome>,
): Promise<CommandOutcome> => {
  if ('file' in place && !existsSync(place.file))
    return failed(`There is no hub here: ${place.file} is missing. Name its folder with --data.`);
  const database = readDatabase(place);
  try {
    const format = await formatOf(database.db);
    if (format.what === 'none')
      return failed(`${nameOf(place)} has no hub in it yet. Start the hub once.`);
    if (format.what === 'newer')
      return failed(
        `${nameOf(place)} is of a newer Pairlog: its format is ${format.step}, and this one knows ` +
          `formats up to ${LAST_STEP}. Nothing was done. Use that newer Pairlog, or update this one.`,
      );
    return await work(database, format);
  } finally {
    await database.db.destroy();
  }
};

/** Why nothing was done on an older format, and what to do: `next` comes after the backup. */
const isOlder = (place: DatabasePlace, step: string, next: string): CommandOutcome =>
  failed(
    `${nameOf(place)} is of an older format: ${step}. This Pairlog works with ${LAST_STEP}. ` +
      `Nothing was done. Write a backup first ("backup FILE" takes it as it is), then ${next}`,
  );

const leadCode: Command = (place) =>
  onHub(place, async (_, { what, step }) => {
    if (what === 'older')
      return isOlder(
        place,
        step,
        'start the hub with --new-lead-code: it brings the database up to date and prints a code.',
      );
    const { db } = await openDatabase(place);
    try {
      const group = await firstGroup(db);
      if (!group) return failed('This hub has no group yet. Start it once.');
      const code = newInviteCode(randomBytes);
      await addInvite(db, group.group, code, 'lead', null, Date.now());
      return done(
        `${code}\nSigns in one lead of "${group.name}", once, within ${INVITE_HOURS} hours.`,
      );
    } finally {
      await db.destroy();
    }
  });

const backup: Command = (place, [file]) => {
  if (file === undefined) return Promise.resolve(failed('Name the file: backup FILE'));
  if (existsSync(file)) return Promise.resolve(failed(`${file} is there already.`));
  return onHub(place, async ({ db }, { what, step }) => {
    const { rows } = await backUp(db, file, Date.now());
    const older =
      what === 'older' ? ` in their older format, ${step}; "restore" brings them up to date` : '';
    return done(`${file}: ${rows} rows${older}. It holds everything: keep it as safe as the hub.`);
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
  onHub(place, async (database, { what, step }) => {
    if (what === 'older')
      return isOlder(
        place,
        step,
        'start the hub once: it brings the database up to date. Then check again.',
      );
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
