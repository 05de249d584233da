/**
 * A fresh device takes in a whole group: our store (on fake-indexeddb) over our hub's endpoints (on SQLite in
 * memory), against PouchDB replicating documents of the same content from one in-process database to another
 * (memory adapter). Our side also makes and reads the text of every answer, checks the hash of every revision and
 * writes to an IndexedDB made of JavaScript; PouchDB's side hands over objects and writes to a tree in memory.
 */
import 'fake-indexeddb/auto';
import memoryAdapter from 'pouchdb-adapter-memory';
import PouchDB from 'pouchdb-core';
import replication from 'pouchdb-replication';
import { createHub } from '../../app/hub/app.ts';
import { openDatabase } from '../../app/hub/store/database.ts';
import { addInvite, makeGroup, newInviteCode } from '../../app/hub/store/members.ts';
import { openStore } from '../../app/store/index.ts';
import { newRecordId } from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';
import { largeGroup } from './large-group.ts';
import type { BenchRow } from './row.ts';

const REVISIONS = 50_000;
const NOW = Date.UTC(2026, 5, 1);
const GROUP = newRecordId(NOW, new Uint8Array(16).fill(7));
const HUB = 'http://hub.test';
/** As large as our pages of a pull. */
const BATCH = 1000;

PouchDB.plugin(memoryAdapter).plugin(replication);

export const syncRow: BenchRow = {
  name: `${REVISIONS.toLocaleString('en')} revisions to a fresh device: store on fake-indexeddb, hub on SQLite`,
  peerName: 'PouchDB, as many documents from one memory database to another',
  rounds: 3,
  async setUp() {
    const revisions = largeGroup(500, REVISIONS).revisions.slice(0, REVISIONS);
    const seed = seeded(3);
    const random = (bytes: number) => Uint8Array.from({ length: bytes }, () => seed() * 256);
    const { db } = await openDatabase({ file: ':memory:' });
    await makeGroup(db, GROUP, 'Bench', NOW);
    const app = createHub({ db, now: () => NOW, random });
    const code = async () => {
      const fresh = newInviteCode(random);
      await addInvite(db, GROUP, fresh, 'lead', null, NOW);
      return fresh;
    };
    const ask = (path: string, body: unknown) =>
      app.request(`/v1/${path}`, {
        method: 'POST',
        headers: { authorization: `Bearer ${'t'.repeat(43)}` },
        body: JSON.stringify(body),
      });
    await ask('join', { code: await code(), token: 't'.repeat(43), device: 'a'.repeat(16) });
    for (let at = 0; at < revisions.length; at += 500)
      await ask('push', { revisions: revisions.slice(at, at + 500) });

    let count = 0;
    const source = new PouchDB('source', { adapter: 'memory' });
    const documents = revisions.map(({ id, kind, author, stamp, prev, sv, body }) => ({
      _id: id,
      kind,
      author,
      stamp,
      prev,
      sv,
      body,
    }));
    for (let at = 0; at < documents.length; at += BATCH)
      await source.bulkDocs(documents.slice(at, at + BATCH));
    return {
      async ours() {
        const store = openStore({
          name: `bench-${++count}`,
          now: () => NOW,
          fetch: ((input: string, init?: RequestInit) => app.request(input, init)) as typeof fetch,
        });
        await store.join(HUB, await code(), 'device');
        const outcome = await store.sync();
        // Once, in the round that is not counted, it is looked at whether they are really there.
        if (count === 1 && (await store.heads()).length !== REVISIONS)
          throw new Error('the device does not hold what it pulled');
        await store.close();
        indexedDB.deleteDatabase(`bench-${count}`);
        return outcome.what === 'done' ? outcome.pulled : outcome.what;
      },
      async peer() {
        const target = new PouchDB(`target-${++count}`, { adapter: 'memory' });
        await PouchDB.replicate(source, target, { batch_size: BATCH });
        const { doc_count: held } = await target.info();
        await target.destroy();
        return held;
      },
      check(ours, peer) {
        if (ours !== REVISIONS || peer !== REVISIONS)
          throw new Error(`the two sides hold ${String(ours)} and ${String(peer)}`);
      },
    };
  },
};
