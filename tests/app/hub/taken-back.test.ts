/** A photo that comes after its record was taken back, from a device that did not know yet. */
import { expect, it } from 'vitest';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { pushRevisions } from '../../../app/hub/store/feed.ts';
import { makeGroup } from '../../../app/hub/store/members.ts';
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
