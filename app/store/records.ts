/** How are records read on this device? Saving them is in `write-records.ts`: the first page only reads. */
import {
  readBody,
  readRecord,
  type BodyOf,
  type History,
  type Kind,
  type RecordId,
  type RecordOf,
  type Revision,
} from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import { historyOf, lastWithBody } from './histories.ts';
import type { RecordWriter } from './record-writer.ts';

export interface DeletedRecord<K extends Kind> {
  readonly id: RecordId;
  readonly lastBody: BodyOf<K>;
  readonly revision: Revision;
}

export interface RecordReader {
  list<K extends Kind>(kind: K): Promise<readonly RecordOf<K>[]>;
  get<K extends Kind>(kind: K, id: RecordId): Promise<RecordOf<K> | null>;
  /** Current raw revisions of all records, readable or not. */
  heads(): Promise<readonly Revision[]>;
  history(id: RecordId): Promise<History | null>;
  deletedRecords<K extends Kind>(kind: K): Promise<readonly DeletedRecord<K>[]>;
}

/** As the screens have it: whatever writes comes in a file of its own, so even a name for a record is waited for. */
export type RecordStore = RecordReader &
  Omit<RecordWriter, 'newId'> & { newId(): Promise<RecordId> };

/** A long list is read in slices of so long, so that the screen answers a finger meanwhile. */
const SLICE_MS = 8;

/** Fetched with the first screen that writes; asked again where it could not be. */
const writing = (context: StoreContext): (() => Promise<RecordWriter>) => {
  let made: Promise<RecordWriter> | null = null;
  return () => {
    made ??= import('./write-records.ts').then(({ recordWriter }) => recordWriter(context));
    made.catch(() => (made = null));
    return made;
  };
};

export const recordReader = (context: StoreContext): RecordReader => {
  const { withDatabase } = context;
  const history = (id: RecordId): Promise<History | null> =>
    withDatabase(async (db) => {
      const tx = db.transaction(['heads', 'superseded']);
      return (await historyOf(tx, id)) ?? null;
    });

  const headsOf = (kind: string) => withDatabase((db) => db.getAllFromIndex('heads', 'kind', kind));

  return {
    async list<K extends Kind>(kind: K) {
      const records: RecordOf<K>[] = [];
      let since = performance.now();
      for (const head of await headsOf(kind)) {
        const read = readRecord(head);
        if (read.ok) records.push(read.record as unknown as RecordOf<K>);
        if (performance.now() - since < SLICE_MS) continue;
        await new Promise((done) => setTimeout(done));
        since = performance.now();
      }
      return records;
    },
    async get<K extends Kind>(kind: K, id: RecordId) {
      const head = await withDatabase((db) => db.get('heads', id));
      if (!head || head.kind !== kind) return null;
      const read = readRecord(head);
      return read.ok ? (read.record as unknown as RecordOf<K>) : null;
    },
    heads: () => withDatabase((db) => db.getAll('heads')),
    history,
    async deletedRecords<K extends Kind>(kind: K) {
      const heads = (await headsOf(kind)).filter((head) => head.deleted && !head.erased);
      const found: DeletedRecord<K>[] = [];
      for (const head of heads) {
        const all = await history(head.id);
        const last = all && lastWithBody(all);
        const read = last && readBody(kind, last.body);
        if (read?.ok) found.push({ id: head.id, lastBody: read.body, revision: head });
      }
      return found;
    },
  };
};

export const recordStore = (context: StoreContext): RecordStore => {
  const writer = writing(context);
  return {
    ...recordReader(context),
    newId: async () => (await writer()).newId(),
    save: async (...words) => (await writer()).save(...words),
    saveAll: async (...words) => (await writer()).saveAll(...words),
    erase: async (id) => (await writer()).erase(id),
    restore: async (id) => (await writer()).restore(id),
    eraseForGood: async (id) => (await writer()).eraseForGood(id),
  };
};
