/** How are records read, saved, erased and brought back on this device? */
import {
  readBody,
  readRecord,
  saveDraft,
  SCHEMA_VERSION,
  type Body,
  type BodyOf,
  type History,
  type Kind,
  type LeftOut,
  type RecordId,
  type RecordOf,
  type Revision,
} from '../../core/records/index.ts';
import { newDevice, newId, type StoreContext } from './context.ts';
import { done, saveProblemOf, type Outcome, type SaveProblem } from './outcome.ts';
import { clockIn, historyOf, putHistory, RECORD_TABLES, type Writing } from './revisions.ts';
import type { Session } from './session.ts';

export interface DeletedRecord<K extends Kind> {
  readonly id: RecordId;
  readonly lastBody: BodyOf<K>;
  readonly revision: Revision;
}

export interface RecordStore {
  list<K extends Kind>(kind: K): Promise<readonly RecordOf<K>[]>;
  get<K extends Kind>(kind: K, id: RecordId): Promise<RecordOf<K> | null>;
  /** Current raw revisions of all records, readable or not. */
  heads(): Promise<readonly Revision[]>;
  history(id: RecordId): Promise<History | null>;
  /** Records that this version keeps and passes on but cannot read. */
  leftOut(): Promise<readonly LeftOut[]>;
  deletedRecords<K extends Kind>(kind: K): Promise<readonly DeletedRecord<K>[]>;
  /** Saves a new record, or an edit of `id`. "Saved" may be shown once it resolves with ok. */
  save<K extends Kind>(
    kind: K,
    body: BodyOf<K>,
    id?: RecordId,
  ): Promise<Outcome<RecordOf<K>, SaveProblem>>;
  /** Takes the record out of the current state; `restore` brings it back. */
  erase(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  restore(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  /** Takes the record back for good, wherever it went. */
  eraseForGood(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  newId(): RecordId;
}

/** The greatest revision of a history that has a body. */
const lastWithBody = ({ head, older }: History): Revision | undefined =>
  [...older, head].reverse().find(({ body }) => body !== null);

export const recordStore = (context: StoreContext): RecordStore => {
  const { withDatabase, now, changes } = context;

  /** One strict transaction: the new state of one record, the outbox and the clock. */
  const write = async (
    id: RecordId,
    next: (history: History | undefined) => {
      kind: string;
      body: Body | null;
      sv?: number;
      deleted?: true;
      erased?: true;
    } | null,
  ): Promise<Outcome<Revision | null, SaveProblem>> => {
    try {
      const revision = await withDatabase(async (db) => {
        const tx = db.transaction(RECORD_TABLES, 'readwrite', { durability: 'strict' });
        try {
          const meta = tx.objectStore('meta');
          const session = (await meta.get('session')) as Session | undefined;
          if (!session) throw new Error('a record can be saved only by a member of a group');
          const offset = ((await meta.get('clockOffset')) as number | undefined) ?? 0;
          const writing = tx as unknown as Writing;
          const before = await historyOf(writing, id);
          const change = next(before);
          if (!change) {
            await tx.done;
            return null;
          }
          const saved = saveDraft(
            await clockIn(writing, () => newDevice(context)),
            now() + offset,
            before,
            { sv: SCHEMA_VERSION, ...change, id, author: session.member },
          );
          await putHistory(writing, before, saved.history);
          await meta.put(saved.clock, 'clock');
          await tx.objectStore('outbox').put(saved.revision);
          await tx.done;
          return saved.revision;
        } catch (error) {
          // The transaction's own end says why it failed; both must be heard, or one goes unhandled.
          const end = await tx.done.then(
            () => null,
            (reason: unknown) => reason,
          );
          throw end instanceof DOMException && end.name === 'QuotaExceededError' ? end : error;
        }
      });
      if (revision) changes.tell({ kinds: new Set([revision.kind]) });
      return done(revision);
    } catch (error) {
      if (error instanceof Error && error.message.startsWith('a record can be saved')) throw error;
      return { ok: false, ...saveProblemOf(error) };
    }
  };

  const unit = (outcome: Outcome<Revision | null, SaveProblem>): Outcome<void, SaveProblem> =>
    outcome.ok ? done(undefined) : outcome;

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
    async leftOut() {
      const heads = await withDatabase((db) => db.getAll('heads'));
      return heads.flatMap((head): LeftOut[] => {
        const read = readRecord(head);
        if (read.ok || read.why === 'gone') return [];
        const problems = read.why === 'unreadable' ? { problems: read.problems } : {};
        return [{ id: head.id, kind: head.kind, why: read.why, ...problems }];
      });
    },
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
    async save<K extends Kind>(kind: K, body: BodyOf<K>, id: RecordId = newId(context)) {
      const read = readBody(kind, body);
      if (!read.ok) return { ok: false, why: 'invalid', problems: read.problems };
      const saved = await write(id, () => ({ kind, body: body }));
      if (!saved.ok) return saved;
      return done({ kind, body: read.body, revision: saved.value as Revision });
    },
    erase: async (id) =>
      unit(
        await write(id, (history) =>
          history && history.head.body !== null
            ? { kind: history.head.kind, body: null, deleted: true }
            : null,
        ),
      ),
    restore: async (id) =>
      unit(
        await write(id, (history) => {
          if (!history?.head.deleted || history.head.erased) return null;
          const last = lastWithBody(history);
          return last ? { kind: last.kind, sv: last.sv, body: last.body } : null;
        }),
      ),
    eraseForGood: async (id) =>
      unit(
        await write(id, (history) =>
          history && !history.head.erased
            ? { kind: history.head.kind, body: null, deleted: true, erased: true }
            : null,
        ),
      ),
    newId: () => newId(context),
  };
};
