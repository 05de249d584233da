/** How does a log leave this device as a file, and how is one taken in? */
import {
  audienceOf,
  isKind,
  packBundle,
  readBundle,
  sha256OfBytes,
  unpackBundle,
  writeBundle,
  type BundleHeader,
  type BundleProblem,
  type RecordId,
  type Revision,
  type Sha256,
  type UnpackProblem,
} from '../../core/records/index.ts';
import type { AttachmentStore } from './attachments.ts';
import { sessionChange } from './changes.ts';
import type { StoreContext } from './context.ts';
import { takeRevisions } from './device-side.ts';
import { done, type Outcome } from './outcome.ts';
import type { Session } from './session.ts';

export interface FilePreview {
  readonly header: BundleHeader;
  /** Revisions in the file by author: how many are new here, how many known. */
  readonly authors: readonly {
    readonly author: RecordId;
    readonly fresh: number;
    readonly known: number;
  }[];
  readonly attachments: number;
  /** The revisions of the file that are new here. */
  readonly fresh: readonly Revision[];
  /** What is wrong with the file; the whole revisions can be taken all the same. */
  readonly problems: readonly BundleProblem[];
}

export interface FileImport {
  readonly fresh: number;
  readonly known: number;
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
   * has by now; `all`: everything held here; a tester: what sets up that tester's phone without a hub.
   */
  exportFile(
    what: 'mine' | 'about-me' | 'all' | { readonly tester: RecordId },
  ): Promise<{ name: string; bytes: Uint8Array }>;
  previewFile(file: Uint8Array): Promise<Outcome<FilePreview, FileProblem>>;
  importFile(file: Uint8Array): Promise<Outcome<FileImport, FileProblem>>;
}

/** Whether a tester may receive a record, by its body. */
const mayReceive = (tester: RecordId, { kind, id, body, author }: Revision): boolean => {
  if (author === tester) return true;
  if (!isKind(kind)) return false;
  const audience = audienceOf[kind];
  return (
    audience === 'everyone' ||
    (audience === 'named-tester' && (id === tester || body?.['tester'] === tester))
  );
};

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
  const attachmentsOf = async (revisions: readonly Revision[], everything: boolean) => {
    const found = new Map<Sha256, Uint8Array>();
    for (const { kind, body } of revisions) {
      if (kind !== 'attachment' || typeof body?.['sha256'] !== 'string') continue;
      const sha256 = body['sha256'] as Sha256;
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

  const misfit = (session: Session | null, header: BundleHeader): FileProblem | null => {
    if (!session) return header.for && header.group ? null : { why: 'for-nobody' };
    return header.group && header.group !== session.group
      ? { why: 'other-group', groupName: header.groupName ?? null }
      : null;
  };

  const freshOf = async (revisions: readonly Revision[]) => {
    const known = new Set((await allRevisions()).map(({ hash }) => hash));
    return revisions.filter(({ hash }) => !known.has(hash));
  };

  return {
    async exportFile(what) {
      const session = await sessionOf();
      if (!session) throw new Error('only a member of a group has a log to export');
      const all = await allRevisions();
      const isOwn = ({ author }: Revision) => author === session.member;
      const revisions =
        what === 'all'
          ? all
          : what === 'mine'
            ? all.filter(isOwn)
            : what === 'about-me'
              ? all.filter((revision) => isOwn(revision) || revision.id === session.member)
              : all.filter((revision) => mayReceive(what.tester, revision));
      const madeAt = new Date(now()).toISOString();
      const origin = {
        madeAt,
        group: session.group,
        groupName: session.groupName,
        by: session.member,
        ...(typeof what === 'object' && { for: what.tester }),
      };
      const name = `pairlog-${madeAt.slice(0, 10)}${typeof what === 'object' ? '-hand-out' : ''}.pairlog`;
      const text = writeBundle(origin, revisions);
      return { name, bytes: packBundle(text, await attachmentsOf(revisions, what === 'about-me')) };
    },

    async previewFile(file) {
      const opened = open(file);
      if (!opened.ok) return opened;
      const { header, problems, attachments } = opened;
      const wrong = misfit(await sessionOf(), header);
      if (wrong) return { ok: false, ...wrong };
      const revisions = opened.revisions.map(({ revision }) => revision);
      const freshHere = await freshOf(revisions);
      const fresh = new Set(freshHere.map(({ hash }) => hash));
      const authors = new Map<RecordId, { fresh: number; known: number }>();
      for (const { author, hash } of revisions) {
        const counts = authors.get(author) ?? { fresh: 0, known: 0 };
        if (fresh.has(hash)) counts.fresh++;
        else counts.known++;
        authors.set(author, counts);
      }
      return done({
        header,
        problems,
        attachments: attachments.size,
        fresh: freshHere,
        authors: [...authors].map(([author, counts]) => ({ author, ...counts })),
      });
    },

    async importFile(file) {
      const opened = open(file);
      if (!opened.ok) return opened;
      const { header, problems, attachments } = opened;
      const before = await sessionOf();
      const wrong = misfit(before, header);
      if (wrong) return { ok: false, ...wrong };
      const session: Session | null = before
        ? null
        : {
            member: header.for as RecordId,
            role: 'tester',
            group: header.group as RecordId,
            groupName: header.groupName ?? '',
            hub: null,
          };
      for (const [sha256, bytes] of attachments)
        await withDatabase((db) =>
          db.put('attachments', {
            sha256,
            mediaType: mediaTypeIn(opened.revisions, sha256),
            bytes: bytes.slice().buffer,
          }),
        );
      const revisions = opened.revisions.map(({ revision }) => revision);
      const fresh = await freshOf(revisions);
      const carries = before?.role === 'lead';
      const touched = await takeRevisions(context, revisions, async (tx) => {
        if (session) await tx.objectStore('meta').put(session, 'session');
        // A lead carries the file's revisions on to the hub, and the photos that they still show.
        if (!carries) return;
        for (const revision of fresh) await tx.objectStore('outbox').put(revision);
        for (const { body } of await tx.objectStore('heads').index('kind').getAll('attachment')) {
          const sha256 = body?.['sha256'] as Sha256 | undefined;
          if (sha256 && attachments.has(sha256))
            await tx.objectStore('attachmentOutbox').put({ sha256 });
        }
      });
      changes.tell(session ? sessionChange(session, touched) : { kinds: touched });
      return done({
        fresh: fresh.length,
        known: revisions.length - fresh.length,
        problems,
        session,
      });
    },
  };
};

const mediaTypeIn = (
  revisions: readonly { readonly revision: Revision }[],
  sha256: Sha256,
): string => {
  const found = revisions.find(({ revision: { body } }) => body?.['sha256'] === sha256);
  const mediaType = found?.revision.body?.['mediaType'];
  return typeof mediaType === 'string' ? mediaType : 'application/octet-stream';
};
