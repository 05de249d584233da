/** Loads a bundle into a new group: how the demo comes into a fresh hub. */
import { readFile } from 'node:fs/promises';
import {
  MAX_PUSH_REVISIONS,
  readBundle,
  unpackBundle,
  type RecordId,
} from '../../core/records/index.ts';
import { attachmentState, takeChunk } from './store/attachments.ts';
import { pushRevisions } from './store/feed.ts';
import { makeGroup } from './store/groups.ts';
import type { HubDatabase } from './store/database.ts';

const CHUNK_BYTES = 256 * 1024;

export interface LoadedBundle {
  readonly group: RecordId;
  readonly revisions: number;
  /** The tester whom a visitor may try the phone as: the first by code. */
  readonly tester: { readonly id: RecordId; readonly code: string } | null;
}

/** Loads the bundle in `file`; throws with the file's name where it cannot be read whole. */
export const loadBundle = async (
  db: HubDatabase,
  file: string,
  nowMs: number,
): Promise<LoadedBundle> => {
  const unpacked = unpackBundle(await readFile(file));
  if (!unpacked.ok) throw new Error(`${file} cannot be unpacked: ${unpacked.why}`);
  const { header, revisions, problems } = readBundle(unpacked.text);
  if (!header?.group || !header.by || problems.length > 0)
    throw new Error(`${file} is not a whole bundle of a group: ${JSON.stringify(problems[0])}`);
  const { group } = header;
  await makeGroup(db, group, header.groupName ?? file, nowMs);
  const lead = { member: header.by, role: 'lead' as const };
  for (let at = 0; at < revisions.length; at += MAX_PUSH_REVISIONS) {
    const batch = revisions.slice(at, at + MAX_PUSH_REVISIONS).map(({ revision }) => revision);
    await pushRevisions(db, group, lead, batch);
  }
  for (const [sha256, bytes] of unpacked.attachments) {
    if ((await attachmentState(db, group, sha256)).complete) continue;
    const named = revisions.find(({ revision: { body } }) => body?.['sha256'] === sha256);
    const said = named?.revision.body?.['mediaType'];
    const mediaType = typeof said === 'string' ? said : 'application/octet-stream';
    for (let offset = 0; offset < bytes.length; offset += CHUNK_BYTES)
      await takeChunk(db, group, lead, sha256, {
        offset,
        length: bytes.length,
        mediaType,
        bytes: bytes.subarray(offset, offset + CHUNK_BYTES),
      });
  }
  const testers = revisions
    .filter(({ revision }) => revision.kind === 'tester' && revision.body !== null)
    .map(({ revision }) => ({ id: revision.id, code: String(revision.body?.['code']) }))
    .sort((a, b) => (a.code < b.code ? -1 : 1));
  return { group, revisions: revisions.length, tester: testers[0] ?? null };
};
