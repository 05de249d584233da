/** How are records read on this device? Saving them is in `write-records.ts`: the first page only reads. */
import {
  readBody,
  readRecord,
  type Body,
  type BodyOf,
  type History,
  type Kind,
  type RecordId,
  type RecordOf,
  type Revision,
} from '../../core/records/index.ts';
import { newId, type StoreContext } from './context.ts';
import { historyOf } from './histories.ts';
import type { Outcome, SaveProblem } from './outcome.ts';

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

export interface RecordWriter {
  /**
   * Saves a new record, or an edit of `id`, with the photos that it shows, all or nothing. "Saved" may be
   * shown once it resolves with ok.
   */
  save<K extends Kind>(
    kind: K,
    body: BodyOf<K>,
    id?: RecordId,
  ): Promise<Outcome<RecordOf<K>, SaveProblem>>;
  /**
   * Saves many records that show no photos, and takes others out of the current state, all or nothing; the answers stand
   * in the order of the drafts.
   */
  saveAll(drafts: readonly ManyDraft[]): Promise<Outcome<readonly Revision[], SaveProblem>>;
  /** Takes the record out of the current state; `restore` brings it back. */
  erase(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  restore(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  /** Takes the record, its photos and the quotes of it back for good, wherever they went. */
  eraseForGood(id: RecordId): Promise<Outcome<void, SaveProblem>>;
}

export type RecordStore = RecordReader & RecordWriter;

/** One record of many: a new one, an edit of `id`, or, without a body, the end of its current state. */
export type ManyDraft =
  | { readonly kind: Kind; readonly body: Body; readonly id?: RecordId }
  | { readonly id: RecordId; readonly body: null };

/** The greatest revision of a history that has a body. */
export const lastWithBody = ({ head, older }: History): Revision | undefined =>
  [...older, head].reverse().find(({ body }) => body !== null);

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
