/** Questions, answers, proposals and thanks between devices: by the hub, and by files without one. */
import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openStore, type Store } from '../../../app/store/index.ts';
import { isToTakeBack, type BodyOf, type RecordId } from '../../../core/records/index.ts';
import { openQuestions } from '../../../core/talk/index.ts';
import { metres } from '../../../core/units/index.ts';
import { testHub, type TestHub } from '../hub/hub-for-tests.ts';
import { newId } from '../../new-id.ts';

let count = 0;
const open = (): Store => openStore({ name: `talk-${++count}`, now: () => 1_780_000_000_000 });
const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error(`not ok: ${JSON.stringify(outcome)}`);
  return outcome.value;
};
const at = '2026-05-03T07:30:00+02:00';

const setUp = async (lead: Store) => {
  const [project, round] = [newId(), newId()];
  const body = { project, round, code: '101', sizeMm: 270 } as unknown as BodyOf<'pair'>;
  const pair = value(await lead.save('pair', body)).revision.id;
  const tester = value(await lead.save('tester', { code: 'T01' })).revision.id;
  const other = value(await lead.save('tester', { code: 'T02' })).revision.id;
  value(await lead.save('hand-out', { project, pair, tester, from: at, blind: true }));
  const finding = value(
    await lead.save('finding', {
      ...{ project, round, title: 'The collar rubs', part: 'upper-pattern', priority: 'high' },
      state: 'asked-for',
    }),
  ).revision.id;
  return { project, pair, tester, other, finding };
};

const runOf = ({ project, pair, tester }: Record<'project' | 'pair' | 'tester', RecordId>) =>
  ({
    ...{ project, pair, tester, startedAt: at, distanceM: metres(212_000) },
    distanceFrom: 'typed',
  }) satisfies BodyOf<'run'>;

const waiting = async (phone: Store, tester: RecordId) => {
  const runs = new Set((await phone.list('run')).map(({ revision }) => revision.id));
  return openQuestions(
    { question: await phone.list('question'), answer: await phone.list('answer') },
    tester,
    (id) => runs.has(id),
  );
};

/** What Settings do. */
const takeBackAll = async (phone: Store) => {
  const session = await phone.session();
  if (!session) throw new Error('no session');
  for (const head of await phone.heads())
    if (isToTakeBack(session, head)) value(await phone.eraseForGood(head.id));
};

describe('a question by file, without a hub', () => {
  const handedOut = async () => {
    const lead = open();
    await lead.startGroup('Test group');
    const made = await setUp(lead);
    const phone = open();
    value(await phone.importFile((await lead.exportFile({ tester: made.tester })).bytes));
    const run = value(await phone.save('run', runOf(made))).revision.id;
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    const question = value(
      await lead.save('question', {
        ...{ project: made.project, tester: made.tester, at, ask: 'really-distance' as const },
        about: { record: { id: run, kind: 'run' }, pair: made.pair },
      }),
    ).revision.id;
    value(await phone.importFile((await lead.exportFile({ tester: made.tester })).bytes));
    return { ...made, lead, phone, run, question };
  };

  it('waits on the phone it is for, and its answer comes back without a choice', async () => {
    const { lead, phone, project, tester, other, question } = await handedOut();
    expect((await waiting(phone, tester)).map(({ revision }) => revision.id)).toEqual([question]);
    const answer = { project, tester, at, question, option: 'mistyped' as const };
    value(await phone.save('answer', answer));
    expect(await waiting(phone, tester)).toEqual([]);
    const file = (await phone.exportFile('mine')).bytes;
    expect(value(await lead.previewFile(file)).asked).toEqual([]);
    value(await lead.importFile(file));
    expect((await lead.list('answer')).map(({ body }) => body.option)).toEqual(['mistyped']);
    // Nobody else gets the question.
    const second = open();
    value(await second.importFile((await lead.exportFile({ tester: other })).bytes));
    expect(await second.list('question')).toEqual([]);
    expect(await second.list('answer')).toEqual([]);
  });

  it('is answered by nobody else: such an answer stays out until the lead takes it', async () => {
    const { lead, project, other, question } = await handedOut();
    const second = open();
    value(await second.importFile((await lead.exportFile({ tester: other })).bytes));
    value(await second.save('answer', { project, tester: other, at, question, option: 'yes' }));
    const preview = value(await lead.previewFile((await second.exportFile('mine')).bytes));
    expect(preview.taken.entries).toBe(0);
    expect(preview.asked).toHaveLength(1);
  });

  it('goes with the run that it is about, and so does its answer', async () => {
    const { lead, phone, project, tester, run, question } = await handedOut();
    value(await phone.save('answer', { project, tester, at, question, option: 'yes' }));
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    value(await phone.eraseForGood(run));
    const file = (await phone.exportFile('mine')).bytes;
    expect(value(await lead.previewFile(file)).asked).toEqual([]);
    value(await lead.importFile(file));
    for (const device of [phone, lead])
      for (const kind of ['run', 'question', 'answer'] as const)
        expect(await device.list(kind), kind).toEqual([]);
  });

  it('goes when its tester takes everything back, as thanks do; no word is left of them', async () => {
    const { lead, phone, project, tester, finding, question } = await handedOut();
    const thanks = { project, tester, at, finding, result: 'mended' as const, words: 'Thank you.' };
    value(await lead.save('thanks', thanks));
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    value(await phone.save('answer', { project, tester, at, question, words: 'My watch died.' }));
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    await takeBackAll(phone);
    for (const kind of ['run', 'question', 'answer', 'thanks', 'tester'] as const)
      expect(await phone.list(kind), kind).toEqual([]);
    expect(JSON.stringify(await phone.heads())).not.toMatch(/My watch died|Thank you/);
  });
});

describe('by the hub', () => {
  const startedAt = async (hub: TestHub) => {
    const lead = await hub.joined('lead');
    const made = await setUp(lead);
    await lead.sync();
    return { lead, ...made };
  };

  it('a specialist’s proposal and sketch reach the lead, and the outbox is empty after', async () => {
    const hub = await testHub();
    const { lead, project, finding } = await startedAt(hub);
    const reader = await hub.joined('specialist');
    await reader.sync();
    expect(await reader.list('finding')).toHaveLength(1);
    const sketch = new TextEncoder().encode('a sketch of the collar');
    const sha256 = value(await reader.putAttachment(sketch, 'image/jpeg'));
    const proposal = value(
      await reader.save('proposal', {
        ...{ project, finding, at, answer: 'other', photos: [sha256] },
        change: {
          ...{ part: 'upper-pattern', line: 'collar', direction: 'lower' },
          by: { amount: 2, unit: 'mm' },
        },
      }),
    );
    expect(await reader.sync()).toMatchObject({ what: 'done', refused: 0 });
    expect(await reader.unsent()).toMatchObject({ revisions: 0, attachments: 0, refused: [] });
    await lead.sync();
    expect((await lead.list('proposal')).map(({ body }) => body.change?.by?.amount)).toEqual([2]);
    expect(new TextDecoder().decode((await lead.attachment(sha256))?.bytes)).toBe(
      'a sketch of the collar',
    );
    const { id, stamp } = proposal.revision;
    value(
      await lead.save('proposal-reply', {
        ...{ project, finding, proposal: id, judged: stamp, at, answer: 'accepted' },
      }),
    );
    await lead.sync();
    await reader.sync();
    expect(await reader.list('proposal-reply')).toHaveLength(1);
    // What is taken back leaves no bytes.
    value(await reader.eraseForGood(id));
    await reader.sync();
    await lead.sync();
    expect(await lead.list('proposal')).toEqual([]);
    expect(await hub.db.selectFrom('chunks').selectAll().execute()).toEqual([]);
  });

  it('a specialist may not put a photo into a finding, nor change one', async () => {
    const hub = await testHub();
    const { finding } = await startedAt(hub);
    const reader = await hub.joined('specialist');
    await reader.sync();
    const [held] = await reader.list('finding');
    const sha256 = value(
      await reader.putAttachment(new TextEncoder().encode('another shoe'), 'image/jpeg'),
    );
    const body = { ...(held?.body as BodyOf<'finding'>), photos: [sha256] };
    value(await reader.save('finding', body, finding));
    expect(await reader.sync()).toMatchObject({ what: 'done', refused: 2 });
    expect(await hub.db.selectFrom('chunks').selectAll().execute()).toEqual([]);
  });

  it('question, answer and thanks go to and fro, and are gone when the tester takes all back', async () => {
    const hub = await testHub();
    const { lead, project, pair, tester, other, finding } = await startedAt(hub);
    const phone = await hub.joined('tester', tester);
    const second = await hub.joined('tester', other);
    const question = value(
      await lead.save('question', {
        ...{ project, tester, at, words: 'Which socks?', language: 'en', about: { pair } },
      }),
    ).revision.id;
    await lead.sync();
    for (const device of [phone, second]) await device.sync();
    expect((await waiting(phone, tester)).map(({ revision }) => revision.id)).toEqual([question]);
    expect(await second.list('question')).toEqual([]);
    value(await phone.save('answer', { project, tester, at, question, words: 'Thin wool.' }));
    await phone.sync();
    value(await lead.save('thanks', { project, tester, at, finding, result: 'carried' }));
    await lead.sync();
    expect((await lead.list('answer')).map(({ body }) => body.words)).toEqual(['Thin wool.']);
    await phone.sync();
    expect(await phone.list('thanks')).toHaveLength(1);
    await takeBackAll(phone);
    expect(await phone.sync()).toMatchObject({ what: 'done', refused: 0 });
    await lead.sync();
    for (const kind of ['question', 'answer', 'thanks'] as const)
      expect(await lead.list(kind), kind).toEqual([]);
    const rows = await hub.db.selectFrom('revisions').select('json').execute();
    expect(JSON.stringify(rows)).not.toMatch(/Which socks|Thin wool/);
  });
});
