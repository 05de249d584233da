/**
 * How does the whole of a hub become a file, while it goes on working, and a hub again? One JSON object a
 * line, gzip: a header, the rows table by table, and a closing line with their number and digest. The same
 * file goes into either database, so it is also the way from one to the other.
 */
import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGunzip, createGzip } from 'node:zlib';
import * as z from 'zod/mini';
import { ranges, wholeIn } from '../../../core/records/index.ts';
import { openDatabase, type DatabasePlace, type HubDatabase } from './database.ts';
import { stepOf, tablesIn } from './format.ts';
import { isStep } from './migrations.ts';
import { rowsAtOnce, rowsOf } from './rows.ts';
import { notInBackups, tableNames, type TableName } from './tables.ts';

const FORMAT = 'pairlog-backup';

const headerSchema = z.looseObject({
  format: z.literal(FORMAT),
  v: z.literal(1),
  madeAtMs: wholeIn(ranges.epochMs),
  /** The last step of the tables' upgrade that the rows fit. */
  step: z.string(),
});
const rowSchema = z.object({
  t: z.enum(tableNames as [TableName, ...TableName[]]),
  r: z.record(z.string(), z.unknown()),
});
const endSchema = z.object({
  end: z.literal(true),
  rows: wholeIn(ranges.count),
  digest: z.string(),
});

const isBytes = (value: unknown): value is Uint8Array => value instanceof Uint8Array;
/** Bytes as base64; the only column that has them is `bytes`. */
const toJson = (row: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(
    Object.entries(row).map(([name, value]) => [
      name,
      isBytes(value) ? Buffer.from(value).toString('base64') : value,
    ]),
  );
const fromJson = (row: Readonly<Record<string, unknown>>) =>
  'bytes' in row ? { ...row, bytes: Buffer.from(String(row['bytes']), 'base64') } : row;

/**
 * Writes a backup of everything as it was at one moment, in whatever format it is, on a connection of its own
 * so that the hub goes on. The file has its name only once it is whole and on the disk; nobody but its owner may
 * read it.
 */
export const backUp = async (
  db: HubDatabase,
  file: string,
  nowMs: number,
): Promise<{ rows: number }> => {
  const partial = `${file}.partial`;
  let count = 0;
  try {
    await db
      .transaction()
      .setIsolationLevel('repeatable read')
      .execute(async (tx) => {
        const hash = createHash('sha256');
        const line = (value: unknown) => {
          const text = `${JSON.stringify(value)}\n`;
          hash.update(text);
          return text;
        };
        async function* lines() {
          yield line({ format: FORMAT, v: 1, madeAtMs: nowMs, step: await stepOf(tx) });
          // An older format lacks some.
          const there = await tablesIn(tx);
          for (const table of tableNames.filter(
            (name) => there.has(name) && !notInBackups.has(name),
          ))
            for await (const row of rowsOf(tx, table)) {
              count++;
              yield line({ t: table, r: toJson(row) });
            }
          yield `${JSON.stringify({ end: true, rows: count, digest: hash.digest('hex') })}\n`;
        }
        await pipeline(
          Readable.from(lines()),
          createGzip(),
          createWriteStream(partial, { mode: 0o600 }),
        );
      });
    const handle = await open(partial, 'r+');
    await handle.sync();
    await handle.close();
    await rename(partial, file);
  } catch (error) {
    await rm(partial, { force: true });
    throw error;
  }
  return { rows: count };
};

async function* linesOf(file: string): AsyncGenerator<string> {
  const unzipped = createGunzip();
  createReadStream(file)
    .on('error', (error) => unzipped.destroy(error))
    .pipe(unzipped);
  const trouble = new Promise<never>((_, reject) => unzipped.on('error', reject));
  trouble.catch(() => undefined);
  for await (const line of createInterface({ input: unzipped, crlfDelay: Infinity })) yield line;
  if (unzipped.errored) throw unzipped.errored;
}

export type BackupState =
  | { readonly ok: true; readonly rows: number; readonly madeAtMs: number; readonly step: string }
  | { readonly ok: false; readonly why: 'not-a-backup' | 'cut-off' | 'damaged' };

/** Reads a backup through and says whether it is whole. */
export const readThrough = async (file: string): Promise<BackupState> => {
  const hash = createHash('sha256');
  let header: z.infer<typeof headerSchema> | null = null;
  let rows = 0;
  try {
    for await (const line of linesOf(file)) {
      const value: unknown = JSON.parse(line);
      if (!header) {
        const read = z.safeParse(headerSchema, value);
        if (!read.success) return { ok: false, why: 'not-a-backup' };
        header = read.data;
      } else {
        const end = z.safeParse(endSchema, value);
        if (end.success) {
          const whole = end.data.rows === rows && end.data.digest === hash.digest('hex');
          return whole
            ? { ok: true, rows, madeAtMs: header.madeAtMs, step: header.step }
            : { ok: false, why: 'damaged' };
        }
        rows++;
      }
      hash.update(`${line}\n`);
    }
  } catch {
    return { ok: false, why: header ? 'damaged' : 'not-a-backup' };
  }
  return { ok: false, why: header ? 'cut-off' : 'not-a-backup' };
};

export type RestoreOutcome =
  | { readonly ok: true; readonly rows: number }
  | {
      readonly ok: false;
      readonly why: 'not-a-backup' | 'cut-off' | 'damaged' | 'not-empty' | 'newer-hub';
    };

/**
 * Brings a backup into an empty database, all of it or nothing, and its tables up to date: the rows go into
 * tables as they were when the backup was made.
 */
export const restore = async (place: DatabasePlace, file: string): Promise<RestoreOutcome> => {
  const state = await readThrough(file);
  if (!state.ok) return state;
  if (!isStep(state.step)) return { ok: false, why: 'newer-hub' };
  const { db } = await openDatabase(place, state.step);
  try {
    const outcome = await db.transaction().execute(async (tx): Promise<RestoreOutcome> => {
      const group = await tx.selectFrom('groups').select('group_id').executeTakeFirst();
      if (group) return { ok: false, why: 'not-empty' };
      let waiting: Record<string, unknown>[] = [];
      let table: TableName | null = null;
      const write = async () => {
        if (table !== null && waiting.length > 0)
          await tx
            .insertInto(table)
            .values(waiting as never)
            .execute();
        waiting = [];
      };
      for await (const line of linesOf(file)) {
        const read = z.safeParse(rowSchema, JSON.parse(line));
        if (!read.success) continue;
        const { t, r } = read.data;
        if (t !== table || waiting.length >= rowsAtOnce(t)) await write();
        table = t;
        waiting.push(fromJson(r));
      }
      await write();
      // Codes that were used or ended since the backup must not open the door again.
      await tx.deleteFrom('invites').where('used_by', 'is', null).execute();
      return { ok: true, rows: state.rows };
    });
    if (!outcome.ok) return outcome;
  } finally {
    await db.destroy();
  }
  const today = await openDatabase(place);
  await today.db.destroy();
  return { ok: true, rows: state.rows };
};
