/** How are records saved, erased and brought back on this device? Fetched when the first one is. */
import {
  attachmentsOf,
  readBody,
  saveDraft,
  schemaVersionOf,
  type Body,
  type BodyOf,
  type History,
  type Kind,
  type RecordId,
  type Revision,
  type Sha256,
} from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';
import { historyOf, lastWithBody } from './histories.ts';
import { done, saveProblemOf, type Outcome, type SaveProblem } from './outcome.ts';
import type { RecordWriter } from './record-writer.ts';
import { clockIn, putHistory, RECORD_TABLES, type Writing } from './revisions.ts';
import type { Session } from './session.ts';
import { newDevice, newId } from './new-ids.ts';

/** What becomes of one record: its next state, or null where nothing is to be done. */
interface Change {
  readonly id: RecordId;
  readonly next: (history: History | undefined) => {
    readonly kind: string;
    readonly body: Body | null;
    readonly sv?: number;
    readonly deleted?: true;
    readonly erased?: true;
  } | null;
}

export const recordWriter = (context: StoreContext): RecordWriter => {
  const { withDatabase, now } = context;
  const { tell } = context.changes;

  /** One strict transaction: the new states of some records, the outbox, the photos to send, and the clock. */
  const write = async (
    changes: readonly Change[],
    photos: readonly Sha256[] = [],
  ): Promise<Outcome<readonly Revision[], SaveProblem>> => {
    try {
      const written = await withDatabase(async (db) => {
        const tx = db.transaction(RECORD_TABLES, 'readwrite', {
          durability: 'strict',
        });
        try {
          const meta = tx.objectStore('meta');
          const session = (await meta.get('session')) as Session | undefined;
          if (!session) throw new Error('a record can be saved only by a member of a group');
          const offset = ((await meta.get('clockOffset')) as number | undefined) ?? 0;
          const writing = tx as unknown as Writing;
          let clock = await clockIn(writing, () => newDevice(context));
          const revisions: Revision[] = [];
          for (const { id, next } of changes) {
            const before = await historyOf(writing, id);
            const draft = next(before);
            if (!draft) continue;
            const saved = saveDraft(clock, now() + offset, before, {
              sv: schemaVersionOf(draft.kind, draft.body ?? {}),
              ...draft,
              id,
              author: session.member,
            });
            await putHistory(writing, before, saved.history);
            await tx.objectStore('outbox').put(saved.revision);
            clock = saved.clock;
            revisions.push(saved.revision);
          }
          await meta.put(clock, 'clock');
          for (const sha256 of photos) await tx.objectStore('attachmentOutbox').put({ sha256 });
          await tx.done;
          return revisions;
        } catch (error) {
          // The transaction's own end says why it failed; both must be heard, or one goes unhandled.
          const end = await tx.done.then(
            () => null,
            (reason: unknown) => reason,
          );
          throw end instanceof DOMException && end.name === 'QuotaExceededError' ? end : error;
        }
      });
      if (written.length > 0) tell({ kinds: new Set(written.map(({ kind }) => kind)) });
      return done(written);
    } catch (error) {
      if (error instanceof Error && error.message.startsWith('a record can be saved')) throw error;
      return { ok: false, ...saveProblemOf(error) };
    }
  };

  const unit = (outcome: Outcome<unknown, SaveProblem>): Outcome<void, SaveProblem> =>
    outcome.ok ? done(undefined) : outcome;

  const erasing = (id: RecordId): Change => ({
    id,
    next: (history) =>
      history && history.head.body !== null
        ? { kind: history.head.kind, body: null, deleted: true }
        : null,
  });

  const eraseForGood = (id: RecordId): Change => ({
    id,
    next: (history) =>
      history && !history.head.erased
        ? { kind: history.head.kind, body: null, deleted: true, erased: true }
        : null,
  });

  /** The records that name the photos of a record, by the photo. */
  const namedPhotos = async (record: RecordId): Promise<ReadonlyMap<string, RecordId>> => {
    const own = await withDatabase((db) => db.getAllFromIndex('heads', 'kind', 'attachment'));
    return new Map(
      own
        .filter(({ body }) => body?.['record'] === record)
        .map(({ id, body }) => [String(body?.['sha256']), id]),
    );
  };

  /** What must be written beside a record so that exactly the photos it shows are named and sent. */
  const photoChanges = async (
    record: RecordId,
    body: Body,
  ): Promise<{ changes: readonly Change[]; send: readonly Sha256[] }> => {
    const shown = attachmentsOf(body);
    const named = await namedPhotos(record);
    const gone = [...named].filter(([sha256]) => !shown.includes(sha256 as Sha256));
    const fresh = await withDatabase((db) =>
      Promise.all(
        shown.filter((sha256) => !named.has(sha256)).map((sha256) => db.get('attachments', sha256)),
      ),
    );
    const held = fresh.flatMap((one) => (one ? [one] : []));
    return {
      changes: [
        ...held.map(({ sha256, mediaType, bytes }) => ({
          id: newId(context),
          next: () => ({
            kind: 'attachment',
            body: {
              ...(typeof body['project'] === 'string' && { project: body['project'] }),
              record,
              sha256,
              mediaType,
              bytes: bytes.byteLength,
            },
          }),
        })),
        ...gone.map(([, id]) => eraseForGood(id)),
      ],
      send: held.map(({ sha256 }) => sha256),
    };
  };

  const headsOf = (kind: string) => withDatabase((db) => db.getAllFromIndex('heads', 'kind', kind));

  /** The questions about a record with their answers: they would still tell what it said. */
  const talkAbout = async (id: RecordId): Promise<readonly Revision[]> => {
    const questions = (await headsOf('question')).filter(({ body }) => {
      const about = body?.['about'] as { readonly record?: { readonly id?: unknown } } | undefined;
      return about?.record?.id === id;
    });
    if (questions.length === 0) return [];
    const asked = new Set<unknown>(questions.map((one) => one.id));
    const answers = (await headsOf('answer')).filter(({ body }) => asked.has(body?.['question']));
    return [...questions, ...answers];
  };

  return {
    newId: () => newId(context),
    async save<K extends Kind>(kind: K, body: BodyOf<K>, id: RecordId = newId(context)) {
      const read = readBody(kind, body);
      if (!read.ok) return { ok: false, why: 'invalid', problems: read.problems };
      const { changes, send } = await photoChanges(id, body);
      const saved = await write([{ id, next: () => ({ kind, body }) }, ...changes], send);
      if (!saved.ok) return saved;
      return done({ kind, body: read.body, revision: saved.value[0] as Revision });
    },
    async saveAll(drafts) {
      for (const draft of drafts) {
        const read = draft.body && readBody(draft.kind, draft.body);
        if (read && !read.ok) return { ok: false, why: 'invalid', problems: read.problems };
      }
      return write(
        drafts.map((draft) =>
          draft.body === null
            ? erasing(draft.id)
            : { id: draft.id ?? newId(context), next: () => draft },
        ),
      );
    },
    erase: async (id) => unit(await write([erasing(id)])),
    restore: async (id) =>
      unit(
        await write([
          {
            id,
            next: (history) => {
              if (!history?.head.deleted || history.head.erased) return null;
              const last = lastWithBody(history);
              return last ? { kind: last.kind, sv: last.sv, body: last.body } : null;
            },
          },
        ]),
      ),
    eraseForGood: async (id) => {
      const photos = [...(await namedPhotos(id)).values()];
      const quotes = (await headsOf('quote')).filter(({ body }) => body?.['source'] === id);
      const talk = await talkAbout(id);
      const also = [...quotes, ...talk].map((one) => one.id);
      return unit(await write([id, ...photos, ...also].map(eraseForGood)));
    },
  };
};
