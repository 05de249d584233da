/** The demo as the desk's worker reads it, for tests of what its places say. */
import { readFileSync } from 'node:fs';
import { deskWork } from '../../../app/desk/worker/desk-work.ts';
import {
  addRevisions,
  emptyLog,
  readBundle,
  unpackBundle,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';

/** The revisions of the demo. */
const demoRevisions = (): readonly Revision[] => {
  const unpacked = unpackBundle(
    new Uint8Array(readFileSync(new URL('../../../demo-data/wear-test.pairlog', import.meta.url))),
  );
  if (!unpacked.ok) throw new Error(unpacked.why);
  return readBundle(unpacked.text).revisions.map(({ revision }) => revision);
};

/** @param nowMs when it is asked @param more what is added to the demo */
export const openedDemo = async (nowMs: number, more: readonly Revision[] = []) => {
  const log = addRevisions(emptyLog, [...demoRevisions(), ...more]);
  const work = deskWork(
    () => Promise.resolve([...log.values()].map(({ head }) => head)),
    () => nowMs,
  );
  const records = await work.read();
  const project = records.project[0]?.revision.id as RecordId;
  return { work, records, project };
};
