/** Files as they come to a group of the demo, some of them as nobody of the group would make them. */
import { readFileSync } from 'node:fs';
import {
  packBundle,
  readBundle,
  sealRevision,
  unpackBundle,
  writeBundle,
  type BundleOrigin,
  type RecordId,
  type Revision,
  type Stamp,
} from '../../core/records/index.ts';

const unpacked = unpackBundle(
  readFileSync(new URL('../../demo-data/wear-test.pairlog', import.meta.url)),
);
if (!unpacked.ok) throw new Error(unpacked.why);
const { header, revisions } = readBundle(unpacked.text);
if (!header?.group || !header.by) throw new Error('the demo names no group');
const { group, by: chief, groupName } = header;
const all = revisions.map(({ revision }) => revision);

const byCode = (kind: string, code: string): Revision => {
  const found = all.find((one) => one.kind === kind && one.body?.['code'] === code);
  if (!found) throw new Error(`the demo has no ${kind} ${code}`);
  return found;
};
export const ada = byCode('tester', 'T01').id;
const ben = byCode('tester', 'T02').id;
const project = all.find(({ kind }) => kind === 'project') as Revision;
export const projectName = String(project.body?.['name']);
const runOf = (tester: RecordId) =>
  all.find(({ kind, body }) => kind === 'run' && body?.['tester'] === tester) as Revision;

let count = 0;
/** A later revision of a record, in anybody's name. */
const edited = (
  before: Revision,
  author: RecordId,
  body: Revision['body'],
  id = before.id,
): Revision =>
  sealRevision(
    {
      id,
      kind: before.kind,
      author,
      sv: 1,
      body,
      ...(body === null && { deleted: true as const, erased: true as const }),
    },
    `0200000000${(16 + ++count).toString(16)}-0000-00000000000000aa` as Stamp,
    before.stamp,
  );

const fileOf = (origin: Partial<BundleOrigin>, some: readonly Revision[]) => {
  const named = { ...(groupName !== undefined && { groupName }), ...origin };
  const text = writeBundle({ madeAt: '2026-11-20T08:15:00.000Z', group, ...named }, some);
  return {
    name: 'pairlog-2026-11-20.pairlog',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(packBundle(text, new Map())),
  };
};

/** A new run of T01's, in a pair of the demo. */
const freshRun = (n: number): Revision => {
  const run = runOf(ada);
  const id = `${run.id.slice(0, -2)}${(16 + n).toString(16)}` as RecordId;
  return edited(run, ada, { ...run.body, startedAt: '2026-11-19T07:00:00+01:00' }, id);
};

/** The file of T01 with two runs of theirs, and what somebody put into it: in the lead's name, and in T02's. */
export const changedFile = () =>
  fileOf({ by: ada }, [
    freshRun(1),
    freshRun(2),
    edited(project, chief, { ...project.body, name: 'Demo trainer, stopped' }),
    edited(byCode('pair', '146'), chief, null),
    edited(runOf(ben), ben, { ...runOf(ben).body, distanceM: 1000 }),
  ]);

/** A lead's file for T01: one pair is gone, another is of another size; and a round, which is not for testers. */
export const leadsFile = () => {
  const round = all.find(({ kind }) => kind === 'round') as Revision;
  const pair = all.find(
    ({ kind, body }) => kind === 'pair' && body?.['code'] !== '146',
  ) as Revision;
  return fileOf({ by: chief, for: ada }, [
    edited(byCode('pair', '146'), chief, null),
    edited(pair, chief, { ...pair.body, sizeMm: 275 }),
    edited(round, chief, round.body),
  ]);
};

/** A lead's backup, for a device that is nobody's yet. */
export const backup = () => fileOf({ by: chief }, all);

export const foreignFile = () =>
  fileOf({ by: chief, group: ben, groupName: 'Another group' }, [freshRun(3)]);
