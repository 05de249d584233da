/** How does a log leave this device as a file, and how is one taken in? */
import {
  addRevisions,
  attachmentsOf,
  audiencesIn,
  emptyLog,
  mayRead,
  mediaTypeOfBytes,
  packBundle,
  readBundle,
  sha256OfBytes,
  unpackBundle,
  writeBundle,
  type BundleHeader,
  type BundleProblem,
  type Caller,
  type RecordId,
  type Revision,
  type Sha256,
  type UnpackProblem,
} from '../../core/records/index.ts';
import type { AttachmentStore } from './attachments.ts';
import { sessionChange } from './changes.ts';
import type { StoreContext } from './context.ts';
import { takeRevisions } from './device-side.ts';
import {
  askedParts,
  partOf,
  settingUp,
  sortFile,
  type FilePart,
  type AskedPart,
  type Person,
} from './file-parts.ts';
import { done, type Outcome } from './outcome.ts';
import type { Writing } from './revisions.ts';
import type { Session } from './session.ts';
import { newId } from './new-ids.ts';

export interface FilePreview {
  readonly header: BundleHeader;
  /** Who made the file, as it says; null where it does not. */
  readonly maker: Person | null;
  /** Whose device this one becomes by the file; null: it stays whose it is. */
  readonly setsUp: Session | null;
  /** What is taken in without a choice. */
  readonly taken: FilePart;
  /** What is taken in only where its key is chosen. */
  readonly asked: readonly AskedPart[];
  /** Entries that are here already. */
  readonly known: number;
  /** Entries that are not for the member of this device. */
  readonly away: number;
  readonly attachments: number;
  /** The revisions of the file that are new here. */
  readonly fresh: readonly Revision[];
  /** What is wrong with the file; the whole revisions can be taken all the same. */
  readonly problems: readonly BundleProblem[];
}

export interface FileImport {
  readonly fresh: number;
  readonly known: number;
  /** Entries that nobody chose: the same file brings them again. */
  readonly left: number;
  readonly problems: readonly BundleProblem[];
  /** Set where the file set up this device. */
  readonly session: Session | null;
}

export type FileProblem =
  | { readonly why: UnpackProblem }
  | { readonly why: 'not-a-bundle' | 'newer-bundle' }
  /** This device belongs to nobody yet and the file does not say whose it is. */
  | { readonly why: 'for-nobody' }
  /** The file belongs to another group. */
  | { readonly why: 'other-group'; readonly groupName: string | null };

export interface FileStore {
  /**
   * The log as a file. `mine`: this member's own records and attachments, to be sent to the group;
   * `about-me`: the same with what the group noted of the member, and with attachments that only the hub
   * has by now; `all`: everything held here; a tester: what sets up that tester's phone without a hub; `specialist`: the
   * same for a specialist who is new, with the photos that findings show; one who is known takes what is new from it.
   */
  exportFile(
    what: 'mine' | 'about-me' | 'all' | 'specialist' | { readonly tester: RecordId },
  ): Promise<{ name: string; bytes: Uint8Array }>;
  /** What taking the file in would change; nothing is taken yet. */
  previewFile(file: Uint8Array): Promise<Outcome<FilePreview, FileProblem>>;
  /** @param chosen keys of the parts that the person wants taken in too, as {@link previewFile} names them */
  importFile(
    file: Uint8Array,
    chosen?: readonly string[],
  ): Promise<Outcome<FileImport, FileProblem>>;
}

/** @param fetched the bytes of an attachment of this member, from here or from the hub */
export const fileStore = (
  context: StoreContext,
  fetched: AttachmentStore['attachment'],
): FileStore => {
  const { withDatabase, now, changes } = context;

  const sessionOf = () =>
    withDatabase(async (db) => ((await db.get('meta', 'session')) as Session | undefined) ?? null);

  const allRevisions = () =>
    withDatabase(async (db) => {
      const tx = db.transaction(['heads', 'superseded']);
      const [heads, superseded] = await Promise.all([
        tx.objectStore('heads').getAll(),
        tx.objectStore('superseded').getAll(),
      ]);
      return [...superseded, ...heads];
    });

  /**
   * The attachments that are here and whole: a damaged one would spoil the file. With `everything` also those
   * that only the hub has by now.
   */
  const bytesOf = async (wanted: ReadonlySet<Sha256>, everything: boolean) => {
    const found = new Map<Sha256, Uint8Array>();
    for (const sha256 of wanted) {
      const held = await withDatabase((db) => db.get('attachments', sha256));
      const kept = held?.bytes ?? (everything ? (await fetched(sha256))?.bytes : undefined);
      const bytes = kept && new Uint8Array(kept);
      if (bytes && sha256OfBytes(bytes) === sha256) found.set(sha256, bytes);
    }
    return found;
  };

  const open = (file: Uint8Array) => {
    const unpacked = unpackBundle(file);
    if (!unpacked.ok) return unpacked;
    const bundle = readBundle(unpacked.text);
    if (bundle.header) return { ...unpacked, ...bundle, header: bundle.header };
    const why = bundle.problems[0]?.why === 'newer-bundle' ? 'newer-bundle' : 'not-a-bundle';
    return { ok: false as const, why } as const;
  };

  /** A file as this device sees it, or why it is not for it. */
  const look = async (file: Uint8Array) => {
    const opened = open(file);
    if (!opened.ok) return opened;
    const { header } = opened;
    const session = await sessionOf();
    const revisions = opened.revisions.map(({ revision }) => revision);
    const setsUp = session ? null : settingUp(header, revisions);
    const member = session ?? setsUp;
    if (!member) return { ok: false as const, why: 'for-nobody' } as const;
    if (header.group && header.group !== member.group)
      return {
        ok: false as const,
        why: 'other-group',
        groupName: header.groupName ?? null,
      } as const;
    const log = addRevisions(emptyLog, await allRevisions());
    const sorted = sortFile(header, revisions, member, setsUp !== null, log);
    return { ...opened, session, setsUp, revisions, log, sorted };
  };

  /** Keeps the bytes that a record here shows, and sends on those that this device carries to the hub. */
  const keepShown = async (
    tx: Writing,
    attachments: ReadonlyMap<Sha256, Uint8Array>,
    mediaTypeOf: (sha256: Sha256) => string,
    mayCarry: (revision: Revision) => boolean,
  ): Promise<void> => {
    if (attachments.size === 0) return;
    for (const head of await tx.objectStore('heads').getAll()) {
      if (head.body === null) continue;
      const names = head.kind === 'attachment';
      const shown = names ? [head.body['sha256'] as Sha256] : attachmentsOf(head.body);
      for (const sha256 of shown) {
        const bytes = attachments.get(sha256)?.slice().buffer;
        if (!bytes) continue;
        await tx.objectStore('attachments').put({ sha256, mediaType: mediaTypeOf(sha256), bytes });
        if (names && mayCarry(head)) await tx.objectStore('attachmentOutbox').put({ sha256 });
      }
    }
  };

  return {
    async exportFile(what) {
      const session = await sessionOf();
      if (!session) throw new Error('only a member of a group has a log to export');
      const all = await allRevisions();
      const specialist = newId(context);
      const isOwn = ({ author }: Revision) => author === session.member;
      const revisions =
        what === 'all'
          ? all
          : what === 'mine'
            ? all.filter(isOwn)
            : what === 'about-me'
              ? all.filter((revision) => isOwn(revision) || revision.id === session.member)
              : forMember(
                  what === 'specialist'
                    ? { member: specialist, role: what }
                    : { member: what.tester, role: 'tester' },
                  all,
                );
      const madeAt = new Date(now()).toISOString();
      const origin = {
        madeAt,
        group: session.group,
        groupName: session.groupName,
        by: session.member,
        ...(what === 'specialist' && { forSpecialist: specialist }),
        ...(typeof what === 'object' && { for: what.tester }),
      };
      const name = `pairlog-${madeAt.slice(0, 10)}${typeof what === 'object' ? '-hand-out' : what === 'specialist' ? '-specialist' : ''}.pairlog`;
      const text = writeBundle(origin, revisions);
      // A specialist gets no attachment's own record, so what their findings and reports show is named by these.
      const wanted = what === 'specialist' ? shownIn(revisions) : attachedIn(revisions);
      const everything = what === 'specialist' || what === 'about-me';
      return { name, bytes: packBundle(text, await bytesOf(wanted, everything)) };
    },

    async previewFile(file) {
      const seen = await look(file);
      if (!seen.ok) return seen;
      const { header, problems, attachments, setsUp, revisions, log, sorted } = seen;
      return done({
        header,
        problems,
        setsUp,
        maker: sorted.maker,
        taken: partOf(sorted.plan.taken, revisions, log),
        asked: askedParts(sorted, revisions, log),
        known: sorted.plan.known,
        away: sorted.plan.away,
        attachments: attachments.size,
        fresh: [...sorted.plan.taken, ...sorted.plan.asked],
      });
    },

    async importFile(file, chosen = []) {
      const seen = await look(file);
      if (!seen.ok) return seen;
      const { problems, attachments, setsUp, revisions, sorted } = seen;
      const { taken, asked, known } = sorted.plan;
      const isChosen = (revision: Revision) => chosen.includes(sorted.keyOf(revision));
      const more = asked.filter(isChosen);
      // Who leads from a backup says so first: until then the device stays nobody's.
      const session = setsUp?.role === 'lead' && more.length === 0 ? null : setsUp;
      const before = seen.session;
      // A lead carries the file's revisions on to the hub, a member their own, and the photos that these show.
      const carries = before?.role === 'lead' ? 'all' : before?.hub ? before.member : null;
      const mayCarry = ({ author }: Revision) => carries === 'all' || carries === author;
      const touched = await takeRevisions(context, [...taken, ...more], async (tx, fresh) => {
        if (session) await tx.objectStore('meta').put(session, 'session');
        for (const revision of fresh)
          if (mayCarry(revision)) await tx.objectStore('outbox').put(revision);
        await keepShown(
          tx,
          attachments,
          (sha256) => mediaTypeIn(revisions, sha256, attachments.get(sha256)),
          mayCarry,
        );
      });
      changes.tell(session ? sessionChange(session, touched) : { kinds: touched });
      return done({
        fresh: taken.length + more.length,
        known,
        left: asked.length - more.length,
        problems,
        session,
      });
    },
  };
};

/** The attachments whose own records these are. */
const attachedIn = (revisions: readonly Revision[]): ReadonlySet<Sha256> =>
  new Set(
    revisions.flatMap(({ kind, body }) =>
      kind === 'attachment' && typeof body?.['sha256'] === 'string'
        ? [body['sha256'] as Sha256]
        : [],
    ),
  );

/** The attachments that records show. */
const shownIn = (revisions: readonly Revision[]): ReadonlySet<Sha256> =>
  new Set(revisions.flatMap(({ body }) => (body === null ? [] : attachmentsOf(body))));

/** What the hub would send to a member. */
const forMember = (reader: Caller, revisions: readonly Revision[]): readonly Revision[] =>
  [...addRevisions(emptyLog, revisions).values()].flatMap((history) =>
    audiencesIn(history)
      .filter(({ held }) => mayRead(reader, held))
      .map(({ revision }) => revision),
  );

/** As the attachment's own record says; else by how its bytes begin. */
const mediaTypeIn = (
  revisions: readonly Revision[],
  sha256: Sha256,
  bytes: Uint8Array | undefined,
): string => {
  const found = revisions.find(
    ({ kind, body }) => kind === 'attachment' && body?.['sha256'] === sha256,
  );
  const mediaType = found?.body?.['mediaType'];
  return typeof mediaType === 'string' ? mediaType : mediaTypeOfBytes(bytes ?? new Uint8Array());
};
