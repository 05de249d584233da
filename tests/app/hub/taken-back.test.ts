/** A photo or a quote that comes after its record was taken back, from a device that did not know yet. */
import { expect, it } from 'vitest';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { pullRevisions, pushRevisions } from '../../../app/hub/store/feed.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { migrationsFor } from '../../../app/hub/store/migrations.ts';
import { sealRevision, sha256OfText } from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';

it('is refused, in the same batch and later', async () => {
  const group = idOf(900);
  const lead = { member: idOf(1), role: 'lead' as const };
  const { db } = await openDatabase({ file: ':memory:' });
  await makeGroup(db, group, 'Group', 0);
  const about = (n: number, record: number) =>
    sealRevision(
      {
        id: idOf(n),
        kind: 'attachment',
        author: lead.member,
        sv: 1,
        body: {
          record: idOf(record),
          sha256: sha256OfText(String(n)),
          mediaType: 'image/jpeg',
          bytes: 9,
        },
      },
      stampAt(n),
      null,
    );
  const gone = sealRevision(
    { id: idOf(5), kind: 'run', author: lead.member, sv: 1, body: null, erased: true },
    stampAt(9),
    null,
  );
  expect(
    await pushRevisions(db, group, lead, [about(10, 5), about(11, 6), gone, about(12, 5)]),
  ).toEqual({
    what: 'done',
    verdicts: [
      { verdict: 'stored' },
      { verdict: 'stored' },
      { verdict: 'stored' },
      { verdict: 'refused', why: 'erased' },
    ],
  });
  expect(await pushRevisions(db, group, lead, [about(13, 5), about(14, 6)])).toMatchObject({
    verdicts: [{ verdict: 'refused', why: 'erased' }, { verdict: 'stored' }],
  });
  const rows = await db.selectFrom('revisions').select(['id', 'json']).execute();
  expect(rows.filter(({ json }) => json !== null).map(({ id }) => id)).toEqual([
    idOf(11),
    idOf(5),
    idOf(14),
  ]);
  await db.destroy();
});

it('takes every state of its quotes along, and tells the specialists who had one', async () => {
  const group = idOf(901);
  const lead = { member: idOf(1), role: 'lead' as const };
  const reader = { member: idOf(2), role: 'specialist' as const };
  const { db } = await openDatabase({ file: ':memory:' });
  await makeGroup(db, group, 'Group', 0);
  const quote = (n: number, source: number, stamp: number, more: Record<string, unknown> = {}) =>
    sealRevision(
      {
        ...{ id: idOf(n), kind: 'quote', author: lead.member, sv: 1 },
        body: {
          ...{ project: idOf(9), source: idOf(source), sourceKind: 'run', field: 'words' },
          ...{ words: 'The tongue slides.', at: '2026-05-01T07:30:00Z', ...more },
        },
      },
      stampAt(stamp),
      null,
    );
  const sent = { sent: '2026-05-02T07:30:00Z' };
  const gone = sealRevision(
    { id: idOf(5), kind: 'run', author: lead.member, sv: 1, body: null, erased: true },
    stampAt(40),
    null,
  );
  const pull = async () =>
    (await pullRevisions(db, group, reader, 'none', null, 'mine', 100, true))?.revisions.map(
      (json) => (JSON.parse(json) as { id: string }).id,
    );
  await pushRevisions(db, group, lead, [
    quote(10, 5, 1),
    quote(10, 5, 2, sent),
    quote(11, 5, 3),
    quote(12, 6, 4, sent),
  ]);
  expect(await pull()).toEqual([idOf(10), idOf(12)]);
  // Of a quote that is no longer sent whoever had it hears; of one that never was nobody does.
  await pushRevisions(db, group, lead, [quote(12, 6, 5), quote(11, 5, 6)]);
  expect(await pull()).toEqual([idOf(10), idOf(12), idOf(12)]);
  expect(await pushRevisions(db, group, lead, [gone, quote(13, 5, 41)])).toMatchObject({
    verdicts: [{ verdict: 'stored' }, { verdict: 'refused', why: 'erased' }],
  });
  expect(await pull()).toEqual([idOf(12), idOf(12), idOf(5)]);
  const rows = await db.selectFrom('revisions').select(['id', 'json']).execute();
  for (const { id, json } of rows) if (id === idOf(10) || id === idOf(11)) expect(json).toBeNull();
  await db.destroy();
});

it('takes quotes along that came before the hub knew the kind', async () => {
  const group = idOf(902);
  const lead = { member: idOf(1), role: 'lead' as const };
  const { db } = await openDatabase({ file: ':memory:' });
  await makeGroup(db, group, 'Group', 0);
  const state = (n: number, kind: string, body: Record<string, string> | null) =>
    sealRevision(
      {
        ...{ id: idOf(n), kind, author: lead.member, sv: 1, body: body && { ...body } },
        ...(body === null && { deleted: true as const, erased: true as const }),
      },
      stampAt(n),
      null,
    );
  const quote = (n: number, source: number, more: Record<string, string> = {}) =>
    state(n, 'quote', {
      ...{ project: idOf(9), source: idOf(source), sourceKind: 'run', field: 'words' },
      ...{ words: 'It rubs.', at: '2026-05-01T07:30:00Z', ...more },
    });
  await pushRevisions(db, group, lead, [
    quote(10, 5),
    quote(11, 6, { sent: '2026-05-02T07:30:00Z' }),
    state(20, 'run', null),
  ]);
  // As an older hub kept them, and a run that was taken back there.
  await db.updateTable('revisions').set({ about: null, audience: '' }).execute();
  await db
    .updateTable('revisions')
    .set({ id: idOf(5) })
    .where('kind', '=', 'run')
    .execute();
  await migrationsFor('sqlite')['0007-quotes']?.up(db);
  const rows = await db
    .selectFrom('revisions')
    .select(['id', 'about', 'audience', 'json'])
    .where('kind', '=', 'quote')
    .orderBy('seq')
    .execute();
  expect(rows).toMatchObject([
    { id: idOf(10), about: idOf(5), audience: '', json: null },
    { id: idOf(11), about: idOf(6), audience: '+' },
  ]);
  expect(rows[1]?.json).not.toBeNull();
  await db.destroy();
});
