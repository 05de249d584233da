/** The page of the sync bench: our store and PouchDB, each writing to this browser's IndexedDB. */
import idbAdapter from 'pouchdb-adapter-idb';
import PouchDB from 'pouchdb-core';
import replication from 'pouchdb-replication';
import { openStore } from '../../app/store/index.ts';

PouchDB.plugin(idbAdapter).plugin(replication);

const BATCH = 1000;
const source = new PouchDB('source', { adapter: 'idb' });
let count = 0;

const heldBy = (name: string): Promise<number> =>
  new Promise((done, fail) => {
    const opening = indexedDB.open(name);
    opening.onerror = () => fail(new Error('not opened'));
    opening.onsuccess = () => {
      const asked = opening.result.transaction('heads').objectStore('heads').count();
      asked.onsuccess = () => {
        opening.result.close();
        done(asked.result);
      };
    };
  });

const bench = {
  async fill(documents: readonly object[]) {
    for (let at = 0; at < documents.length; at += BATCH)
      await source.bulkDocs(documents.slice(at, at + BATCH));
  },
  /** Answers how many records the fresh device holds. */
  async ours(code: string) {
    const name = `bench-${++count}`;
    const store = openStore({ name });
    await store.join(location.origin, code, 'device');
    await store.sync();
    await store.close();
    const held = await heldBy(name);
    indexedDB.deleteDatabase(name);
    return held;
  },
  async peer() {
    const target = new PouchDB(`target-${++count}`, { adapter: 'idb' });
    await PouchDB.replicate(source, target, { batch_size: BATCH });
    const { doc_count: held } = await target.info();
    await target.destroy();
    return held;
  },
};
export type SyncBench = typeof bench;
Object.assign(window, { bench });
