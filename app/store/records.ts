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
import { newId, type StoreContext } from './context.ts';
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
  newId(): RecordId;
}

export type RecordStore = RecordReader & RecordWriter;

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
      return (await headsOf(kind)).flatMap((head) => {
        const read = readRecord(head);
        return read.ok ? [read.record as unknown as RecordOf<K>] : [];
      });
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
    newId: () => newId(context),
  };
};

export const recordStore = (context: StoreContext): RecordStore => {
  const writer = writing(context);
  return {
    ...recordReader(context),
    save: async (...words) => (await writer()).save(...words),
    saveAll: async (...words) => (await writer()).saveAll(...words),
    erase: async (id) => (await writer()).erase(id),
    restore: async (id) => (await writer()).restore(id),
    eraseForGood: async (id) => (await writer()).eraseForGood(id),
  };
};
