/**
 * Revisions into the hub by its own path — the text of a request read, checked, hashed, authorised and on the
 * disk before the answer — against nothing but their rows put into the same table of SQLite.
 */
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SQLite from 'better-sqlite3';
import { createHub } from '../../app/hub/app.ts';
import { makeGroup } from '../../app/hub/store/groups.ts';
import { addInvite } from '../../app/hub/store/members.ts';
import { openDatabase } from '../../app/hub/store/database.ts';
import { newRecordId } from '../../core/records/index.ts';
import { OWN_PAGE } from '../app/hub/as-browser.ts';
import { largeGroup } from './large-group.ts';
import type { BenchRow } from './row.ts';

const REVISIONS = 20_000;
const AT_ONCE = 500;
const NOW = Date.UTC(2026, 5, 1);
const GROUP = newRecordId(NOW, new Uint8Array(16).fill(7));
const TOKEN = 't'.repeat(43);

let count = 0;
const folder = mkdtempSync(join(tmpdir(), 'pairlog-ingest-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

interface Hub {
  readonly file: string;
  push(text: string): Promise<unknown>;
  close(): Promise<void>;
}

const open = async (file: string) => {
  const { db } = await openDatabase({ file });
  const app = createHub({ db, now: () => NOW, random: (n) => new Uint8Array(n).fill(count) });
  const ask = async (path: string, body: string) => {
    const answer = await app.request(path, {
      method: 'POST',
      body,
      headers: {
        authorization: `Bearer ${TOKEN}`,
        ...OWN_PAGE,
        // As every request over a socket says.
        'content-length': String(Buffer.byteLength(body)),
      },
    });
    return answer.text();
  };
  return { db, ask };
};

/** The file of a hub with one lead and nothing else: copied for each run of either side. */
const emptyFile = async (): Promise<string> => {
  const file = join(folder, 'empty.sqlite');
  const { db, ask } = await open(file);
  await makeGroup(db, GROUP, 'Bench', NOW);
  await addInvite(db, GROUP, '0'.repeat(10), 'lead', null, NOW);
  const device = 'a'.repeat(16);
  await ask('/v1/join', JSON.stringify({ code: '0'.repeat(10), token: TOKEN, device }));
  await db.destroy();
  return file;
};

const copyOf = (empty: string): string => {
  const file = join(folder, `${++count}.sqlite`);
  copyFileSync(empty, file);
  return file;
};

const hubOn = async (file: string): Promise<Hub> => {
  const { db, ask } = await open(file);
  return { file, push: (text) => ask('/v1/push', text), close: () => db.destroy() };
};

interface Row {
  readonly [column: string]: unknown;
}

/** What a table holds, in a few characters: rows, bytes of JSON, and the last link of the chain. */
const summaryOf = (file: string): string => {
  const db = new SQLite(file, { readonly: true });
  const held = db
    .prepare(
      `select count(*) as n, sum(length(json)) as bytes,
              (select chain from revisions order by seq desc limit 1) as chain from revisions`,
    )
    .get();
  db.close();
  return JSON.stringify(held);
};

export const ingestRow: BenchRow = {
  name: `${REVISIONS.toLocaleString('en')} revisions into the hub, from the text of the requests to the disk`,
  peerName: `SQLite, the finished rows by one prepared insert, ${AT_ONCE} a transaction`,
  async setUp() {
    const revisions = largeGroup(200, REVISIONS).revisions.slice(0, REVISIONS);
    const texts: string[] = [];
    for (let at = 0; at < revisions.length; at += AT_ONCE)
      texts.push(JSON.stringify({ revisions: revisions.slice(at, at + AT_ONCE) }));
    // The rows that the peer inserts are those that the hub itself made of the same revisions.
    const empty = await emptyFile();
    const model = await hubOn(copyOf(empty));
    for (const text of texts) await model.push(text);
    const read = new SQLite(model.file);
    const rows = read.prepare('select * from revisions order by seq').all() as Row[];
    await model.close();
    read.close();
    const columns = Object.keys(rows[0] as Row);
    const values = rows.map((row) => columns.map((column) => row[column]));
    return {
      async ours() {
        const hub = await hubOn(copyOf(empty));
        for (const text of texts) await hub.push(text);
        await hub.close();
        return hub.file;
      },
      peer() {
        // The hub's own tables, indexes and settings; the file copied, opened and closed as there.
        const file = copyOf(empty);
        const db = new SQLite(file);
        db.pragma('journal_mode = WAL');
        db.pragma('synchronous = FULL');
        const insert = db.prepare(
          `insert into revisions (${columns.join(', ')}) values (${columns.map(() => '?').join(', ')})`,
        );
        for (let at = 0; at < values.length; at += AT_ONCE)
          db.transaction(() => {
            for (const row of values.slice(at, at + AT_ONCE)) insert.run(...row);
          })();
        db.close();
        return file;
      },
      check(ours, peer) {
        if (summaryOf(ours as string) !== summaryOf(peer as string))
          throw new Error('the two tables differ');
        for (const file of [ours, peer]) rmSync(file as string);
      },
    };
  },
};
