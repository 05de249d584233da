/** The device's store on a real IndexedDB implementation (fake-indexeddb), without a hub. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Change } from '../../../app/store/changes.ts';
import { openStore, type Store } from '../../../app/store/index.ts';
import type { BodyOf, RecordId } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { newId } from '../../new-id.ts';

let count = 0;
const open = (now = () => 1_780_000_000_000): Store => openStore({ name: `test-${++count}`, now });

const runBody = (distanceM = 10_000): BodyOf<'run'> => ({
  project: newId(),
  pair: newId(),
  tester: newId(),
  startedAt: '2026-05-01T07:30:00+02:00',
  distanceM: metres(distanceM),
  distanceFrom: 'typed',
});

let lead: Store;
beforeEach(async () => {
  lead = open();
  await lead.startGroup('Test group');
});

const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error(`not ok: ${JSON.stringify(outcome)}`);
  return outcome.value;
};

describe('saving', () => {
  it('keeps a record, counts it as unsent and tells who listens', async () => {
    const told: unknown[] = [];
    lead.subscribe((change) => told.push(change));
    const saved = value(await lead.save('run', runBody()));
    expect(await lead.list('run')).toEqual([saved]);
    expect(await lead.unsent()).toMatchObject({ revisions: 1, refused: [] });
    expect(told).toContainEqual({ kinds: new Set(['run']) });
  });

  it('refuses an invalid body and changes nothing', async () => {
    const outcome = await lead.save('run', { ...runBody(), distanceM: metres(-5) });
    expect(outcome).toMatchObject({
      ok: false,
      why: 'invalid',
      problems: [{ field: 'distanceM' }],
    });
    expect((await lead.unsent()).revisions).toBe(0);
  });

  it('saves many at once or none, and ends others in the same breath', async () => {
    const told: unknown[] = [];
    const first = value(await lead.save('run', runBody(1)));
    lead.subscribe((change) => told.push(change));
    const wrong = await lead.saveAll([
      { kind: 'run', body: runBody(2) },
      { kind: 'run', body: { ...runBody(), distanceM: metres(-5) } },
    ]);
    expect(wrong).toMatchObject({ ok: false, why: 'invalid' });
    expect(await lead.list('run')).toHaveLength(1);
    const many = value(
      await lead.saveAll([
        ...Array.from({ length: 300 }, (_, at) => ({
          kind: 'run' as const,
          body: runBody(10 + at),
        })),
        { kind: 'run', body: { ...first.body, distanceM: metres(5) }, id: first.revision.id },
      ]),
    );
    expect(many).toHaveLength(301);
    expect(many.at(-1)).toMatchObject({ id: first.revision.id, prev: first.revision.stamp });
    expect(await lead.list('run')).toHaveLength(301);
    const undone = await lead.saveAll([
      ...many.slice(0, 300).map(({ id }) => ({ id, body: null })),
      { kind: 'run', body: first.body, id: first.revision.id },
    ]);
    expect(undone.ok).toBe(true);
    expect((await lead.list('run')).map(({ body }) => body)).toEqual([first.body]);
    // Each is one message to the screens.
    expect(told).toEqual([{ kinds: new Set(['run']) }, { kinds: new Set(['run']) }]);
  });

  it('keeps the state before an edit as history', async () => {
    const { revision } = value(await lead.save('run', runBody()));
    value(await lead.save('run', runBody(12_000), revision.id));
    const history = await lead.history(revision.id);
    expect(history?.head.body).toMatchObject({ distanceM: 12_000 });
    expect(history?.older).toEqual([revision]);
    expect(history?.head.prev).toBe(revision.stamp);
  });

  it('is safe against many saves of one record at once', async () => {
    const id = newId();
    await Promise.all(Array.from({ length: 20 }, (_, at) => lead.save('run', runBody(at), id)));
    const history = await lead.history(id);
    expect(history?.older).toHaveLength(19);
    const stamps = [...(history?.older ?? []), history?.head].map((r) => r?.stamp);
    expect(new Set(stamps).size).toBe(20);
  });

  it('loses nothing when the clock goes back', async () => {
    let clock = 1_780_000_000_000;
    const store = openStore({ name: `test-${++count}`, now: () => clock });
    await store.startGroup('Test group');
    const { revision } = value(await store.save('run', runBody(1)));
    clock -= 86_400_000;
    value(await store.save('run', runBody(2), revision.id));
    expect((await store.get('run', revision.id))?.body.distanceM).toBe(2);
  });
});

describe('erasing', () => {
  it('takes a record away and brings it back', async () => {
    const { revision, body } = value(await lead.save('run', runBody()));
    value(await lead.erase(revision.id));
    expect(await lead.list('run')).toEqual([]);
    expect(await lead.deletedRecords('run')).toMatchObject([{ id: revision.id, lastBody: body }]);
    value(await lead.restore(revision.id));
    expect((await lead.list('run'))[0]?.body).toEqual(body);
    expect((await lead.history(revision.id))?.older).toHaveLength(2);
  });

  it('for good leaves nothing but that it was taken back', async () => {
    const { revision } = value(await lead.save('run', { ...runBody(), words: 'my knee' }));
    value(await lead.save('run', runBody(2), revision.id));
    value(await lead.eraseForGood(revision.id));
    const history = await lead.history(revision.id);
    expect(history).toMatchObject({ head: { body: null, erased: true }, older: [] });
    expect(JSON.stringify(await lead.exportFile('all'))).not.toContain('knee');
    expect((await lead.unsent()).revisions).toBe(1);
    value(await lead.restore(revision.id));
    expect(await lead.list('run')).toEqual([]);
  });
});

describe('drafts and settings', () => {
  it('are kept as they come and survive a closed app', async () => {
    const store = openStore({ name: 'kept' });
    await store.saveDraft('run', { distance: '12,' });
    await store.saveSetting('language', 'zh');
    await store.close();
    const again = openStore({ name: 'kept' });
    expect(await again.draft('run')).toEqual({ distance: '12,' });
    expect(await again.setting('language')).toBe('zh');
    await again.dropDraft('run');
    expect(await again.draft('run')).toBeUndefined();
  });
});

describe('files', () => {
  const handOut = async () => {
    const project = newId();
    const tester = value(await lead.save('tester', { code: 'T01' })).revision.id;
    const other = value(await lead.save('tester', { code: 'T02' })).revision.id;
    const round = newId();
    value(
      await lead.save(
        'round',
        { project, name: 'R1', order: 1, stage: 'pullover', changes: [], blueprint: [] },
        round,
      ),
    );
    const body = { project, round, code: '101', sizeMm: 270 } as unknown as BodyOf<'pair'>;
    const pair = value(await lead.save('pair', body)).revision.id;
    for (const to of [tester, other])
      value(
        await lead.save('hand-out', {
          project,
          pair,
          tester: to,
          from: '2026-05-01T00:00:00+02:00',
          blind: true,
        }),
      );
    return { tester, pair };
  };

  it('set up a phone with what its tester may see and no more', async () => {
    const { tester, pair } = await handOut();
    const { bytes } = await lead.exportFile({ tester });
    const phone = open();
    const taken = value(await phone.importFile(bytes));
    expect(taken.session).toMatchObject({ member: tester, role: 'tester', hub: null });
    expect((await phone.list('pair')).map((p) => p.revision.id)).toEqual([pair]);
    expect(await phone.list('round')).toEqual([]);
    expect((await phone.list('hand-out')).map(({ body }) => body.tester)).toEqual([tester]);
    expect((await phone.list('tester')).map(({ revision }) => revision.id)).toEqual([tester]);
  });

  it('announce whose phone it is now, once it is stored', async () => {
    const { tester } = await handOut();
    const phone = open();
    const told: Change[] = [];
    let stored: Promise<unknown> = Promise.resolve(null);
    phone.subscribe((change) => {
      told.push(change);
      stored = phone.session();
    });
    const { session } = value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ session: { member: tester, role: 'tester', hub: null } });
    expect([...(told[0] as { kinds: Set<string> }).kinds]).toEqual(
      expect.arrayContaining(['session', 'pair', 'hand-out']),
    );
    expect(await stored).toEqual(session);
    // A second file changes the log, not whose phone it is.
    value(await lead.save('tester', { code: 'T01', name: 'Ada' }, tester));
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    expect(told.at(-1)).toEqual({ kinds: new Set(['tester']) });
  });

  it('take to a tester what the lead answered them, and to nobody else', async () => {
    const { tester } = await handOut();
    const phone = open();
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    const run = value(await phone.save('run', { ...runBody(), tester })).revision.id;
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    const reply = { project: newId(), about: run, at: '2026-05-02T08:00:00+02:00' };
    const other = (await lead.list('tester')).find(({ body }) => body.code === 'T02');
    for (const [to, words] of [
      [tester, 'Stay out for now.'],
      [other?.revision.id as RecordId, 'Not for you.'],
    ] as const)
      value(await lead.save('reply', { ...reply, tester: to, advice: 'stay-out', words }));
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    expect((await phone.list('reply')).map(({ body }) => body.words)).toEqual([
      'Stay out for now.',
    ]);
  });

  it('bring the log to the lead in any order, any number of times', async () => {
    const { tester } = await handOut();
    const phone = open();
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    value(await phone.save('run', { ...runBody(), tester: tester }));
    const early = (await phone.exportFile('mine')).bytes;
    value(await phone.save('run', { ...runBody(), tester: tester }));
    const late = (await phone.exportFile('mine')).bytes;
    expect(value(await lead.previewFile(late))).toMatchObject({
      maker: { member: tester, is: 'tester', code: 'T01' },
      taken: { entries: 2, changes: [{ effect: 'adds', kind: 'run' }, { effect: 'adds' }] },
      asked: [],
      known: 0,
      problems: [],
    });
    expect(value(await lead.importFile(late))).toMatchObject({ fresh: 2, known: 0 });
    expect(value(await lead.importFile(early))).toMatchObject({ fresh: 0, known: 1 });
    expect(value(await lead.importFile(late))).toMatchObject({ fresh: 0, known: 2 });
    expect(await lead.list('run')).toHaveLength(2);
  });

  it('carry photos along', async () => {
    const photo = new TextEncoder().encode('a photo');
    const sha256 = value(await lead.putAttachment(photo, 'image/jpeg'));
    value(
      await lead.save('attachment', {
        record: newId(),
        sha256,
        mediaType: 'image/jpeg',
        bytes: photo.length,
      }),
    );
    const { bytes } = await lead.exportFile('all');
    const again = await lead.importFile(bytes);
    expect(again.ok).toBe(true);
    expect(await lead.attachment(sha256)).toEqual({ bytes: photo, mediaType: 'image/jpeg' });
  });

  it('of another group are refused', async () => {
    const other = open();
    await other.startGroup('Another');
    const { bytes } = await other.exportFile('all');
    expect(await lead.importFile(bytes)).toEqual({
      ok: false,
      why: 'other-group',
      groupName: 'Another',
    });
  });

  it('for nobody do not set up a phone', async () => {
    const { bytes } = await lead.exportFile('all');
    expect(await open().importFile(bytes)).toEqual({ ok: false, why: 'for-nobody' });
  });
});

describe('a report that is sent', () => {
  const page = new TextEncoder().encode('<!doctype html><p>report</p>');

  it('takes its file along as an attachment that names it, in one transaction', async () => {
    const sha256 = value(await lead.putAttachment(page, 'text/html'));
    const saved = value(
      await lead.save('report', {
        project: newId(),
        round: newId(),
        title: 'Round 1: report of the round',
        at: '2026-05-01T07:30:00+02:00',
        languages: ['en', 'zh'],
        sha256,
      }),
    );
    const [named] = await lead.list('attachment');
    expect(named?.body).toMatchObject({
      record: saved.revision.id,
      sha256,
      mediaType: 'text/html',
      bytes: page.length,
    });
    expect(await lead.unsent()).toMatchObject({ revisions: 2, attachments: 1 });
    expect((await lead.attachment(sha256))?.bytes).toEqual(page);
  });

  it('is taken back with its file', async () => {
    const sha256 = value(await lead.putAttachment(page, 'text/html'));
    const { revision } = value(
      await lead.save('report', {
        project: newId(),
        round: newId(),
        title: 'Sheet for foam',
        at: '2026-05-01T07:30:00+02:00',
        languages: ['zh'],
        trade: 'foam',
        sha256,
      }),
    );
    value(await lead.eraseForGood(revision.id));
    expect(await lead.list('report')).toEqual([]);
    expect(await lead.list('attachment')).toEqual([]);
  });
});
