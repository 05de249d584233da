/** Merge two logs of 100,000 revisions in all, half of them in both, and name each record's current state. */
import SQLite from 'better-sqlite3';
import {
  addRevisions,
  emptyLog,
  newRecordId,
  revisionsOf,
  sealRevision,
  type Log,
  type Revision,
  type Stamp,
} from '../../core/records/index.ts';
import type { BenchRow } from './row.ts';
import { seeded } from '../seeded.ts';

const REVISIONS = 100_000;
const RECORDS = 40_000;

const makeRevisions = (): Revision[] => {
  const random = seeded(1);
  const ids = Array.from({ length: RECORDS }, (_, at) =>
    newRecordId(
      1_780_000_000_000 + at,
      Uint8Array.from({ length: 16 }, () => random() * 256),
    ),
  );
  return Array.from({ length: REVISIONS }, (_, at) => {
    const ms = 1_780_000_000_000 + Math.floor(random() * 1e9);
    const stamp = `${ms.toString(16).padStart(12, '0')}-0000-${(at % 50).toString(16).padStart(16, '0')}`;
    const id = ids[Math.floor(random() * RECORDS)] as (typeof ids)[number];
    const body = { distanceM: Math.floor(random() * 20_000), words: `run ${at}` };
    return sealRevision({ id, kind: 'run', author: id, sv: 1, body }, stamp as Stamp, null);
  });
};

/** Records and the sum over their current states: enough to tell two merges apart. */
const summary = (heads: Iterable<{ hash: string }>) => {
  const hashes = [...heads].map(({ hash }) => hash).sort();
  return `${hashes.length} ${hashes[0]} ${hashes.at(-1)} ${hashes[Math.floor(hashes.length / 2)]}`;
};

export const mergeRow: BenchRow = {
  name: `merge of ${REVISIONS.toLocaleString('en')} revisions`,
  peerName: 'SQLite in memory, insert or ignore and greatest per record',
  setUp() {
    const revisions = makeRevisions();
    const left = revisions.slice(0, REVISIONS * 0.75);
    const right = revisions.slice(REVISIONS * 0.25);
    const [leftLog, rightLog]: [Log, Log] = [
      addRevisions(emptyLog, left),
      addRevisions(emptyLog, right),
    ];

    const db = new SQLite(':memory:');
    const create = `(id text, stamp text, hash text, json text, primary key (id, stamp, hash)) without rowid`;
    db.exec(`create table "left" ${create}; create table "right" ${create}`);
    for (const [table, list] of [
      ['left', left],
      ['right', right],
    ] as const) {
      const insert = db.prepare(`insert or ignore into "${table}" values (?, ?, ?, ?)`);
      db.transaction(() => {
        for (const r of list) insert.run(r.id, r.stamp, r.hash, JSON.stringify(r));
      })();
    }
    return Promise.resolve({
      ours: () =>
        [...addRevisions(leftLog, revisionsOf(rightLog)).values()].map(({ head }) => head),
      peer: () => {
        db.exec(`create table merged ${create}; insert into merged select * from "left";
                 insert or ignore into merged select * from "right"`);
        const heads = db
          .prepare('select hash, max(stamp || hash) from merged group by id')
          .all() as { hash: string }[];
        db.exec('drop table merged');
        return heads;
      },
      check(ours, peer) {
        if (summary(ours as { hash: string }[]) !== summary(peer as { hash: string }[]))
          throw new Error('the two merges differ');
      },
    });
  },
};
