/** Files as somebody may have changed them on the way, opened by real stores. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { openStore, type FilePreview, type Store } from '../../../app/store/index.ts';
import {
  packBundle,
  readBundle,
  sealRevision,
  unpackBundle,
  writeBundle,
  type BodyOf,
  type BundleOrigin,
  type UnsealedRevision,
  type RecordId,
  type Revision,
  type Sha256,
  type Stamp,
} from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { testHub } from '../hub/hub-for-tests.ts';
import { newId } from '../../new-id.ts';

let count = 0;
const open = (): Store => openStore({ name: `files-${++count}` });

const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error(`not ok: ${JSON.stringify(outcome)}`);
  return outcome.value;
};

/** A stamp after every other one: what it seals is what a device shows from then on. */
const late = (n = 0): Stamp => `0200000000${10 + n}-0000-00000000000000aa` as Stamp;

interface Opened {
  readonly origin: BundleOrigin;
  readonly revisions: readonly Revision[];
  readonly attachments: ReadonlyMap<Sha256, Uint8Array>;
}
const unpack = (bytes: Uint8Array): Opened => {
  const unpacked = unpackBundle(bytes);
  if (!unpacked.ok) throw new Error(unpacked.why);
  const { header, revisions } = readBundle(unpacked.text);
  const { format: _, v: __, ...origin } = header as NonNullable<typeof header>;
  return {
    origin: origin as BundleOrigin,
    revisions: revisions.map(({ revision }) => revision),
    attachments: unpacked.attachments,
  };
};
const pack = ({ origin, revisions, attachments }: Opened): Uint8Array =>
  packBundle(writeBundle(origin, revisions), attachments);

/** A revision that anybody can write who has a record before them. */
const forged = (before: Revision, changes: Partial<UnsealedRevision>, n = 0): Revision =>
  sealRevision(
    {
      id: before.id,
      kind: before.kind,
      author: before.author,
      sv: 1,
      body: before.body,
      ...changes,
    },
    late(n),
    before.stamp,
  );
const erasing = { body: null, deleted: true, erased: true } as const;

let lead: Store;
let leadId: RecordId;
let project: RecordId;
let pair: RecordId;
let tester: RecordId;
let other: RecordId;
let phone: Store;

const runOf = (of: RecordId, distanceM = 10_000): BodyOf<'run'> => ({
  project,
  pair,
  tester: of,
  startedAt: '2026-05-03T07:30:00+02:00',
  distanceM: metres(distanceM),
  distanceFrom: 'typed',
});
const brief = {
  runner: 'neutral',
  use: 'trail',
  surfaces: ['trail'],
  distanceM: 600_000,
  allowedRate: { complaint: 0.1, pain: 0.02 },
  limits: [],
  attributes: ['overall'],
} as unknown as BodyOf<'project'>['brief'];

/** A group without a hub: a lead with two testers, and the phone of the first. */
beforeEach(async () => {
  lead = open();
  leadId = (await lead.startGroup('Test group')).member;
  project = value(await lead.save('project', { name: 'Wren', brief })).revision.id;
  const round = value(
    await lead.save('round', {
      project,
      name: 'R1',
      order: 1,
      stage: 'pullover',
      changes: [],
      blueprint: [],
    }),
  ).revision.id;
  const body = { project, round, code: '637', sizeMm: 270 } as unknown as BodyOf<'pair'>;
  pair = value(await lead.save('pair', body)).revision.id;
  tester = value(await lead.save('tester', { code: 'T01', name: 'Ada' })).revision.id;
  other = value(await lead.save('tester', { code: 'T02' })).revision.id;
  const handOut = { project, pair, from: '2026-05-01T00:00:00+02:00', blind: true };
  for (const to of [tester, other]) value(await lead.save('hand-out', { ...handOut, tester: to }));
  phone = open();
  value(await phone.importFile((await lead.exportFile({ tester })).bytes));
  value(await phone.save('run', runOf(tester)));
});

const headOf = async (id: RecordId): Promise<Revision> =>
  ((await lead.history(id)) as { head: Revision }).head;
/** What the lead's devices show of what a tester's file must not touch. */
const shown = async () => ({
  project: (await lead.get('project', project))?.body.name,
  pair: (await lead.get('pair', pair))?.body.code,
});
const untouched = { project: 'Wren', pair: '637' };

const lines = (part: { changes: FilePreview['taken']['changes'] }) =>
  part.changes.map(
    ({ effect, kind, before, label }) =>
      `${effect} ${kind} ${[effect === 'renames' && before?.name, label.name, ...label.pairs, label.tester].filter(Boolean).join(' ')}`,
  );

describe('a tester’s file that speaks as the lead', () => {
  /** The tester's own log, with a new name of the project and a pair that is gone for good, both as the lead's. */
  const forge = async (origin: Partial<BundleOrigin> = {}): Promise<Uint8Array> => {
    const file = unpack((await phone.exportFile('mine')).bytes);
    const project_ = await headOf(project);
    return pack({
      ...file,
      origin: { ...file.origin, ...origin },
      revisions: [
        ...file.revisions,
        forged(project_, { body: { ...project_.body, name: 'Wren is finished' } }),
        forged(await headOf(pair), erasing, 1),
      ],
    });
  };

  it('changes nothing on the lead’s device, and brings what the tester may write', async () => {
    const taken = value(await lead.importFile(await forge()));
    expect(taken).toMatchObject({ fresh: 1, left: 2 });
    expect(await shown()).toEqual(untouched);
    expect(await lead.list('run')).toHaveLength(1);
    // Nor does it go on to a hub, or move the clock of the device.
    const outbox = (await lead.unsent()).revisions;
    value(await lead.save('run', runOf(tester)));
    expect((await lead.unsent()).revisions).toBe(outbox + 1);
    expect((await lead.list('run')).every(({ revision }) => revision.stamp < late())).toBe(true);
  });

  it('is told by author, and what it erases by itself', async () => {
    const preview = value(await lead.previewFile(await forge()));
    expect(preview.maker).toEqual({ member: tester, is: 'tester', code: 'T01', name: 'Ada' });
    expect(lines(preview.taken)).toEqual(['adds run 637 T01']);
    expect(preview.asked.map((part) => [part.author.is, part.erases, lines(part)])).toEqual([
      ['self', false, ['renames project Wren Wren is finished']],
      ['self', true, ['erases-for-good pair 637']],
    ]);
  });

  it('is taken by choice only, each part by its own, now or later', async () => {
    const bytes = await forge();
    const [renames, erases] = value(await lead.previewFile(bytes)).asked.map(({ key }) => key);
    expect(value(await lead.importFile(bytes, [renames as string]))).toMatchObject({ left: 1 });
    expect(await shown()).toEqual({ project: 'Wren is finished', pair: '637' });
    const again = value(await lead.previewFile(bytes));
    expect(again).toMatchObject({ taken: { entries: 0 }, known: 2, asked: [{ key: erases }] });
    value(await lead.importFile(bytes, [erases as string]));
    expect(await shown()).toEqual({ project: 'Wren is finished', pair: undefined });
  });

  it.each([
    ['the lead made it', () => ({ by: leadId })],
    ['another member made it, whom nobody knows', () => ({ by: newId() })],
    ['another tester made it', () => ({ by: other })],
  ])('gets no further by saying that %s', async (_, origin) => {
    const bytes = await forge(origin());
    expect(value(await lead.importFile(bytes))).toMatchObject({ fresh: 0, left: 3 });
    expect(await shown()).toEqual(untouched);
    expect(value(await lead.previewFile(bytes)).asked.map(({ author }) => author.member)).toEqual([
      tester,
      leadId,
      leadId,
    ]);
  });

  it.each(['by', 'group'] as const)('gets no further by leaving out the %s', async (field) => {
    const file = unpack(await forge());
    const { [field]: _, ...origin } = file.origin;
    const bytes = pack({ ...file, origin });
    expect(value(await lead.importFile(bytes))).toMatchObject({ fresh: 0, left: 3 });
    expect(await shown()).toEqual(untouched);
  });

  it('does not touch another tester’s runs', async () => {
    const file = unpack((await phone.exportFile('mine')).bytes);
    const { revision } = value(await lead.save('run', runOf(other)));
    const bytes = pack({
      ...file,
      revisions: [
        // In the other's name, in their own, and a run of the other's that never was.
        forged(revision, { author: other, body: { ...revision.body, distanceM: 1 } }),
        forged(revision, { author: tester, body: { ...revision.body, distanceM: 2 } }, 1),
        forged(revision, { id: newId(), author: tester }, 2),
        forged(revision, { ...erasing, author: tester }, 3),
      ],
    });
    expect(value(await lead.importFile(bytes))).toMatchObject({ fresh: 0, left: 4 });
    expect((await lead.list('run')).map(({ body }) => body.distanceM)).toEqual([10_000]);
  });

  it('hides no entry of the tester behind an erasure that is not taken', async () => {
    const file = unpack((await phone.exportFile('mine')).bytes);
    const [run] = file.revisions as [Revision];
    const early = sealRevision(
      { id: run.id, kind: 'run', author: leadId, sv: 1, ...erasing },
      run.stamp,
      null,
    );
    const bytes = pack({ ...file, revisions: [early, run] });
    expect(value(await lead.importFile(bytes))).toMatchObject({ fresh: 1, left: 1 });
    expect(await lead.list('run')).toHaveLength(1);
  });
});

describe('photos in a file', () => {
  const photo = new TextEncoder().encode('a photo of a heel counter');

  it('come with the run that shows them, and not where nothing that is taken names them', async () => {
    const sha256 = value(await phone.putAttachment(photo, 'image/jpeg'));
    value(await phone.save('run', { ...runOf(tester), photos: [sha256] }));
    const file = unpack((await phone.exportFile('mine')).bytes);
    const nameless = pack({
      ...file,
      revisions: file.revisions.filter(({ body }) => !JSON.stringify(body).includes(sha256)),
    });
    value(await lead.importFile(nameless));
    expect(await lead.attachment(sha256)).toBeNull();
    value(await lead.importFile(pack(file)));
    expect(await lead.attachment(sha256)).toEqual({ bytes: photo, mediaType: 'image/jpeg' });
  });

  it('do not come again with a run that was taken back', async () => {
    const sha256 = value(await phone.putAttachment(photo, 'image/jpeg'));
    const run = value(await phone.save('run', { ...runOf(tester), photos: [sha256] }));
    const before = (await phone.exportFile('mine')).bytes;
    value(await phone.eraseForGood(run.revision.id));
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    value(await lead.importFile(before));
    expect(await lead.attachment(sha256)).toBeNull();
    expect(await lead.list('attachment')).toEqual([]);
  });
});

describe('a tester’s phone', () => {
  it('takes from its lead what the hub would send it, whatever the file holds', async () => {
    value(await lead.save('pair', (await lead.get('pair', pair))?.body as BodyOf<'pair'>, pair));
    value(await lead.save('run', runOf(other)));
    const { bytes } = await lead.exportFile('all');
    const preview = value(await phone.previewFile(bytes));
    expect(preview).toMatchObject({ maker: { is: 'lead' }, asked: [], taken: { entries: 1 } });
    // A round, another tester, that tester's hand-out and run.
    expect(preview.away).toBe(4);
    value(await phone.importFile(bytes));
    expect(await phone.list('round')).toEqual([]);
    expect((await phone.list('run')).map(({ body }) => body.tester)).toEqual([tester]);
    expect((await phone.list('tester')).map(({ body }) => body.code)).toEqual(['T01']);
  });

  it('takes the erasure of what it holds from its lead, and shows it', async () => {
    value(await lead.erase(pair));
    const { bytes } = await lead.exportFile({ tester });
    expect(lines(value(await phone.previewFile(bytes)).taken)).toEqual(['erases pair 637']);
    value(await phone.importFile(bytes));
    expect(await phone.list('pair')).toEqual([]);
  });

  it('hears that a hand-out was erased', async () => {
    const [own] = await phone.list('hand-out');
    value(await lead.erase(own?.revision.id as RecordId));
    value(await phone.importFile((await lead.exportFile({ tester })).bytes));
    expect(await phone.list('hand-out')).toEqual([]);
  });

  it('asks where somebody made the file whom it does not know as a lead', async () => {
    const project_ = await headOf(project);
    const renamed = forged(project_, { body: { ...project_.body, name: 'Mine' } });
    const file = unpack((await lead.exportFile({ tester })).bytes);
    for (const by of [other, newId(), tester]) {
      const bytes = pack({ ...file, origin: { ...file.origin, by }, revisions: [renamed] });
      expect(value(await phone.importFile(bytes))).toMatchObject({ fresh: 0, left: 1 });
    }
    expect((await phone.get('project', project))?.body.name).toBe('Wren');
  });

  it('is not set up for another by the hand-out file of another', async () => {
    const { bytes } = await lead.exportFile({ tester: other });
    expect(value(await phone.importFile(bytes))).toMatchObject({ fresh: 0, session: null });
    expect((await phone.session())?.member).toBe(tester);
    expect((await phone.list('hand-out')).map(({ body }) => body.tester)).toEqual([tester]);
  });

  it('sends on to its hub what it takes in of its own', async () => {
    const hub = await testHub();
    const group = hub.group;
    const device = await hub.joined('tester', tester);
    const file = unpack((await phone.exportFile('mine')).bytes);
    value(await device.importFile(pack({ ...file, origin: { ...file.origin, group } })));
    expect(await device.sync()).toMatchObject({ what: 'done', pushed: 1 });
    expect((await device.unsent()).revisions).toBe(0);
  });
});

describe('a specialist’s device', () => {
  it('takes findings, reports with their files, and the project, and nothing else', async () => {
    const hub = await testHub();
    const desk = await hub.joined('lead');
    const specialist = await hub.joined('specialist');
    const of = value(await desk.save('project', { name: 'Wren', brief })).revision.id;
    await desk.sync();
    await specialist.sync();
    const page = new TextEncoder().encode('<!doctype html><p>report</p>');
    const sha256 = value(await desk.putAttachment(page, 'text/html'));
    value(
      await desk.save('report', {
        project: of,
        round: newId(),
        title: 'Round 1',
        at: '2026-05-01T07:30:00+02:00',
        languages: ['en'],
        sha256,
      }),
    );
    value(await desk.save('tester', { code: 'T01' }));
    const { bytes } = await desk.exportFile('all');
    expect(value(await specialist.previewFile(bytes))).toMatchObject({
      taken: { entries: 1, changes: [{ kind: 'report' }] },
      asked: [],
      away: 2,
      known: 1,
    });
    value(await specialist.importFile(bytes));
    expect(await specialist.list('report')).toHaveLength(1);
    expect(await specialist.list('tester')).toEqual([]);
    expect((await specialist.attachment(sha256))?.bytes).toEqual(page);
  });
});

describe('a device that is nobody’s', () => {
  it('becomes the lead’s by the lead’s own backup, where the lead says so', async () => {
    value(await lead.importFile((await phone.exportFile('mine')).bytes));
    const { bytes } = await lead.exportFile('all');
    const fresh = open();
    const preview = value(await fresh.previewFile(bytes));
    expect(preview).toMatchObject({
      setsUp: { role: 'lead', member: leadId, groupName: 'Test group' },
      taken: { entries: 0 },
      asked: [{ erases: false, entries: 8 }],
    });
    expect(value(await fresh.importFile(bytes))).toMatchObject({ fresh: 0, session: null });
    expect(await fresh.session()).toBeNull();
    const keys = preview.asked.map(({ key }) => key);
    expect(value(await fresh.importFile(bytes, keys))).toMatchObject({ fresh: 8, left: 0 });
    expect(await fresh.session()).toMatchObject({ role: 'lead', member: leadId, hub: null });
    expect(await fresh.list('run')).toHaveLength(1);
    // From then on it is the lead's device, with a clock of its own.
    value(await fresh.save('tester', { code: 'T03' }));
    expect(await fresh.device()).not.toBe(await lead.device());
  });

  it('does not become a lead’s by the file of a tester', async () => {
    value(await phone.eraseForGood(tester));
    const { bytes } = await phone.exportFile('mine');
    expect(await open().importFile(bytes, ['backup'])).toEqual({ ok: false, why: 'for-nobody' });
  });

  it('becomes its tester’s by a hand-out file, with all of it shown first', async () => {
    const preview = value(await open().previewFile((await lead.exportFile({ tester })).bytes));
    expect(preview).toMatchObject({
      maker: { is: 'lead' },
      setsUp: { role: 'tester', member: tester },
      asked: [],
      away: 0,
      taken: { entries: 4 },
    });
  });
});

describe('a specialist without a hub', () => {
  const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]);
  /** A finding with a photo, and the device of a specialist that a file has set up. */
  const setUp = async () => {
    const sha256 = value(await lead.putAttachment(png, 'image/png'));
    const finding = value(
      await lead.save('finding', {
        ...{ project, round: newId(), title: 'The collar rubs', part: 'upper-pattern' },
        ...{ priority: 'high', state: 'asked-for', photos: [sha256] },
      } as unknown as BodyOf<'finding'>),
    ).revision.id;
    const specialist = open();
    const { name, bytes } = await lead.exportFile('specialist');
    const preview = value(await specialist.previewFile(bytes));
    value(await specialist.importFile(bytes));
    return { sha256, finding, specialist, name, bytes, preview };
  };

  it('is set up by a file, with the findings and their photos and nothing else', async () => {
    const { sha256, specialist, name, preview } = await setUp();
    expect(name).toMatch(/-specialist\.pairlog$/);
    expect(preview).toMatchObject({ setsUp: { role: 'specialist' }, asked: [], away: 0 });
    expect(await specialist.session()).toMatchObject({ role: 'specialist', hub: null });
    expect(await specialist.list('finding')).toHaveLength(1);
    expect(await specialist.attachment(sha256)).toEqual({ bytes: png, mediaType: 'image/png' });
    for (const kind of ['round', 'pair', 'tester', 'run', 'hand-out', 'attachment'] as const)
      expect(await specialist.list(kind), kind).toEqual([]);
  });

  it('answers by file: asked about the first time, and known from then on', async () => {
    const { finding, specialist } = await setUp();
    const sketch = value(await specialist.putAttachment(png, 'image/png'));
    const answer = {
      ...{ project, finding, at: '2026-06-01T08:00:00Z', answer: 'cannot' as const },
      ...{ words: 'The mould is closed.', photos: [sketch] },
    };
    const first = value(await specialist.save('proposal', answer)).revision.id;
    const file = (await specialist.exportFile('mine')).bytes;
    const seen = value(await lead.previewFile(file));
    expect(seen).toMatchObject({ taken: { entries: 0 }, asked: [{ author: { is: 'unknown' } }] });
    value(
      await lead.importFile(
        file,
        seen.asked.map(({ key }) => key),
      ),
    );
    expect((await lead.get('proposal', first))?.body.words).toBe('The mould is closed.');
    expect(await lead.attachment(sketch)).toMatchObject({ mediaType: 'image/png' });

    value(await specialist.save('proposal', { ...answer, words: 'Now it can be done.' }, first));
    value(await lead.importFile((await specialist.exportFile('mine')).bytes));
    expect((await lead.get('proposal', first))?.body.words).toBe('Now it can be done.');

    const reply = {
      ...{ project, finding, proposal: first, at: '2026-06-02T08:00:00Z', answer: 'ask-again' },
      ...{ judged: (await headOf(first)).stamp, words: 'By when?' },
    } as unknown as BodyOf<'proposal-reply'>;
    value(await lead.save('proposal-reply', reply));
    // A later file is made for somebody new; a device that has its specialist stays theirs.
    const before = await specialist.session();
    value(await specialist.importFile((await lead.exportFile('specialist')).bytes));
    expect(await specialist.session()).toEqual(before);
    expect(await specialist.list('proposal-reply')).toHaveLength(1);
  });
});

it('a file of another group says whose it is, and nothing of it is taken', async () => {
  const stranger = open();
  await stranger.startGroup('Another');
  value(await stranger.save('tester', { code: 'T09' }));
  const { bytes } = await stranger.exportFile('all');
  for (const store of [lead, phone])
    expect(await store.importFile(bytes)).toEqual({
      ok: false,
      why: 'other-group',
      groupName: 'Another',
    });
});
