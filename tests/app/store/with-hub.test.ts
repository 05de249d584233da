/** The device's store and the hub against each other, both real. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  openStore,
  type HubClient,
  type Store,
  type StoreOptions,
} from '../../../app/store/index.ts';
import { openDB } from 'idb';
import { sql } from 'kysely';
import {
  readBundle,
  unpackBundle,
  type BodyOf,
  type DeviceId,
  type RecordId,
} from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { testHub, URL_OF_HUB, type TestHub } from '../hub/hub-for-tests.ts';
import { newId } from '../../new-id.ts';

let hub: TestHub;
let lead: Store;
let project: RecordId;
let pair: RecordId;

const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error(`not ok: ${JSON.stringify(outcome)}`);
  return outcome.value;
};

const newTester = async (
  code: string,
  options?: Partial<StoreOptions>,
): Promise<{ id: RecordId; phone: Store }> => {
  const id = value(await lead.save('tester', { code })).revision.id;
  value(
    await lead.save('hand-out', {
      project,
      pair,
      tester: id,
      from: '2026-05-01T00:00:00+02:00',
      blind: true,
    }),
  );
  await lead.sync();
  const phone = await hub.joined('tester', id, options);
  await phone.sync();
  return { id, phone };
};

const runOf = (tester: RecordId, distanceM = 10_000): BodyOf<'run'> => ({
  project,
  pair,
  tester,
  startedAt: '2026-05-02T07:30:00+02:00',
  distanceM: metres(distanceM),
  distanceFrom: 'typed',
});

beforeEach(async () => {
  hub = await testHub();
  lead = await hub.joined('lead');
  project = newId();
  const round = newId();
  value(
    await lead.save(
      'round',
      { project, name: 'R1', order: 1, stage: 'pullover', changes: [], blueprint: [] },
      round,
    ),
  );
  const body = { project, round, code: '101', sizeMm: 270 } as unknown as BodyOf<'pair'>;
  pair = value(await lead.save('pair', body)).revision.id;
});

describe('sync', () => {
  it('carries a run from the phone to the lead and clears the outbox only then', async () => {
    const { id, phone } = await newTester('T01');
    value(await phone.save('run', runOf(id)));
    expect((await phone.unsent()).revisions).toBe(1);
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 1, refused: 0 });
    expect((await phone.unsent()).revisions).toBe(0);
    await lead.sync();
    expect(await lead.list('run')).toMatchObject([{ body: { distanceM: 10_000 } }]);
  });

  it('gives a tester what is theirs and what they log with, and nothing else', async () => {
    const first = await newTester('T01');
    const second = await newTester('T02');
    value(await first.phone.save('run', runOf(first.id)));
    await first.phone.sync();
    await second.phone.sync();
    expect(await second.phone.list('run')).toEqual([]);
    expect(await second.phone.list('round')).toEqual([]);
    expect((await second.phone.list('tester')).map((t) => t.body.code)).toEqual(['T02']);
    expect((await second.phone.list('hand-out')).map((h) => h.body.tester)).toEqual([second.id]);
    expect(await second.phone.list('pair')).toHaveLength(1);
  });

  it('refuses what a tester writes as another, keeps it on the phone and goes on', async () => {
    const first = await newTester('T01');
    const second = await newTester('T02');
    value(await first.phone.save('run', runOf(second.id)));
    value(await first.phone.save('run', runOf(first.id)));
    expect(await first.phone.sync()).toMatchObject({ what: 'done', pushed: 1, refused: 1 });
    const { refused, revisions } = await first.phone.unsent();
    expect(refused).toMatchObject([{ why: 'not-allowed' }]);
    expect(revisions).toBe(0);
    expect(await first.phone.list('run')).toHaveLength(2);
  });

  it('lets a lead correct a run, and the tester receive the correction', async () => {
    const { id, phone } = await newTester('T01');
    const { revision } = value(await phone.save('run', runOf(id, 100_000)));
    await phone.sync();
    await lead.sync();
    value(await lead.save('run', runOf(id, 10_000), revision.id));
    await lead.sync();
    await phone.sync();
    expect((await phone.get('run', revision.id))?.body.distanceM).toBe(10_000);
    value(await phone.save('run', runOf(id, 11_000), revision.id));
    expect(await phone.sync()).toMatchObject({ refused: 0 });
    await lead.sync();
    expect((await lead.get('run', revision.id))?.body.distanceM).toBe(11_000);
  });

  it('takes a record back everywhere, bodies and photos included', async () => {
    const { id, phone } = await newTester('T01');
    const photo = new TextEncoder().encode('a photo of a blister');
    const sha256 = value(await phone.putAttachment(photo, 'image/jpeg'));
    const run = value(
      await phone.save('run', { ...runOf(id), words: 'my sore knee', photos: [sha256] }),
    );
    await phone.sync();
    await lead.sync();
    expect(await lead.attachment(sha256)).toEqual({ bytes: photo, mediaType: 'image/jpeg' });
    value(await phone.eraseForGood(run.revision.id));
    await phone.sync();
    await lead.sync();
    expect(await lead.list('run')).toEqual([]);
    expect((await lead.history(run.revision.id))?.older).toEqual([]);
    const left = await sql<{ json: string }>`select json from revisions`.execute(hub.db);
    expect(JSON.stringify(left.rows)).not.toContain('knee');
    for (const table of ['attachments', 'chunks'] as const)
      expect(await hub.db.selectFrom(table).selectAll().execute()).toEqual([]);
  });

  it('names and sends the photos that a saved record shows, and takes back those it shows no more', async () => {
    const { id, phone } = await newTester('T01');
    const keep = async (text: string) =>
      value(await phone.putAttachment(new TextEncoder().encode(text), 'image/jpeg'));
    const [first, second] = [await keep('first photo'), await keep('second photo')];
    expect((await phone.unsent()).attachments).toBe(0);
    const run = value(await phone.save('run', { ...runOf(id), photos: [first, second] }));
    expect((await phone.unsent()).attachments).toBe(2);
    const named = (await phone.list('attachment')).map(({ body }) => body);
    expect(named).toHaveLength(2);
    expect(named).toContainEqual(
      expect.objectContaining({ record: run.revision.id, sha256: first, bytes: 11 }),
    );
    expect(named).toContainEqual(
      expect.objectContaining({ record: run.revision.id, sha256: second, bytes: 12 }),
    );
    await phone.sync();
    await lead.sync();
    expect((await phone.unsent()).attachments).toBe(0);
    expect(await lead.attachment(second)).not.toBeNull();
    value(await phone.save('run', { ...runOf(id), photos: [first] }, run.revision.id));
    await phone.sync();
    const left = await sql<{ sha256: string }>`select sha256 from attachments`.execute(hub.db);
    expect(left.rows).toEqual([{ sha256: first }]);
  });

  it('keeps photos back until the network is one they may use', async () => {
    const { id, phone } = await newTester('T01', { maySendAttachments: () => false });
    const photo = value(await phone.putAttachment(new Uint8Array(9), 'image/jpeg'));
    value(await phone.save('run', { ...runOf(id), photos: [photo] }));
    await phone.sync();
    expect(await phone.unsent()).toMatchObject({ revisions: 0, attachments: 1 });
    await phone.sync({ attachmentsNow: true });
    expect(await phone.unsent()).toMatchObject({ revisions: 0, attachments: 0 });
  });

  it('goes on with a photo where a lost network stopped it', async () => {
    let allowed = Number.POSITIVE_INFINITY;
    const sent: number[] = [];
    const { id, phone } = await newTester('T01', {
      fetch: (input, init) => {
        if (init?.method === 'PATCH') {
          if (allowed-- <= 0) return Promise.reject(new TypeError('network lost'));
          sent.push((init.body as ArrayBuffer).byteLength);
        }
        return hub.fetch(input, init);
      },
    });
    const bytes = new Uint8Array(2_500_000).map((_, at) => at % 251);
    const photo = value(await phone.putAttachment(bytes, 'image/jpeg'));
    value(await phone.save('run', { ...runOf(id), photos: [photo] }));
    allowed = 1;
    expect(await phone.sync()).toEqual({ what: 'offline' });
    expect((await phone.unsent()).attachments).toBe(1);
    allowed = Number.POSITIVE_INFINITY;
    await phone.sync();
    expect((await phone.unsent()).attachments).toBe(0);
    expect(sent.reduce((sum, size) => sum + size, 0)).toBe(bytes.length);
    await lead.sync();
    expect((await lead.attachment(photo))?.bytes).toEqual(bytes);
  });

  it('sets a photo aside that was damaged on the phone, sends the rest, and sends it once it is whole', async () => {
    let chunks = 0;
    const { id, phone } = await newTester('T01', {
      name: 'damaged-photo',
      fetch: (input, init) => {
        if (init?.method === 'PATCH') chunks++;
        return hub.fetch(input, init);
      },
    });
    const [good, spoilt] = ['a good photo', 'a photo of a blister'].map((text) =>
      new TextEncoder().encode(text),
    ) as [Uint8Array, Uint8Array];
    const photos = [
      value(await phone.putAttachment(good, 'image/jpeg')),
      value(await phone.putAttachment(spoilt, 'image/jpeg')),
    ] as const;
    const run = value(await phone.save('run', { ...runOf(id), photos: [...photos] }));
    const db = await openDB('damaged-photo');
    await db.put('attachments', {
      sha256: photos[1],
      mediaType: 'image/jpeg',
      bytes: new Uint8Array(20).buffer,
    });
    db.close();
    expect(await phone.sync()).toMatchObject({ what: 'done' });
    const after = chunks;
    await phone.sync();
    expect(chunks).toBe(after);
    expect(await phone.unsent()).toMatchObject({
      revisions: 0,
      attachments: 0,
      damaged: [{ sha256: photos[1], shownBy: { id: run.revision.id, kind: 'run' } }],
    });
    // What is whole of it goes along in a file.
    const file = (await phone.exportFile('mine')).bytes;
    expect(await lead.previewFile(file)).toMatchObject({ ok: true, value: { attachments: 1 } });
    await lead.sync();
    expect((await lead.attachment(photos[0]))?.bytes).toEqual(good);
    expect(await lead.attachment(photos[1])).toBeNull();
    value(await phone.putAttachment(spoilt, 'image/jpeg'));
    expect(await phone.unsent()).toMatchObject({ attachments: 1, damaged: [] });
    await phone.sync();
    expect((await lead.attachment(photos[1]))?.bytes).toEqual(spoilt);
  });

  it('forgets a damaged photo once the run shows it no more', async () => {
    const { id, phone } = await newTester('T01', { name: 'damaged-and-gone' });
    const photo = value(await phone.putAttachment(new Uint8Array(9), 'image/jpeg'));
    const run = value(await phone.save('run', { ...runOf(id), photos: [photo] }));
    const db = await openDB('damaged-and-gone');
    await db.put('attachments', {
      sha256: photo,
      mediaType: 'image/jpeg',
      bytes: new ArrayBuffer(0),
    });
    db.close();
    await phone.sync();
    expect((await phone.unsent()).damaged).toHaveLength(1);
    // Done without, it is sent after all once it is added again, whether or not the run is saved anew.
    await phone.giveUpDamaged(photo);
    expect(await phone.unsent()).toMatchObject({ attachments: 0, damaged: [] });
    value(await phone.putAttachment(new Uint8Array(9), 'image/jpeg'));
    expect(await phone.unsent()).toMatchObject({ attachments: 1, damaged: [] });
    value(await phone.save('run', { ...runOf(id), photos: [] }, run.revision.id));
    expect(await phone.unsent()).toMatchObject({ attachments: 0, damaged: [] });
  });

  it('refills a hub that was restored from an old backup', async () => {
    const { id, phone } = await newTester('T01');
    const rows = () => sql<{ n: number }>`select count(*) n from revisions`.execute(hub.db);
    const old = (await rows()).rows[0]?.n as number;
    for (let at = 0; at < 3; at++) {
      value(await phone.save('run', runOf(id, 5000 + at)));
      await phone.sync();
    }
    // The hub's disk goes back to what it was before the three runs, and takes another one since.
    await sql`delete from revisions where seq > ${old}`.execute(hub.db);
    await sql`update groups set last_seq = ${old}, last_chain = (select chain from revisions where seq = ${old})`.execute(
      hub.db,
    );
    const other = await newTester('T02');
    value(await other.phone.save('run', runOf(other.id, 9000)));
    await other.phone.sync();
    expect(await phone.sync()).toMatchObject({ what: 'done' });
    await lead.sync();
    expect((await lead.list('run')).map((r) => r.body.distanceM).sort()).toEqual(
      [5000, 5001, 5002, 9000].sort(),
    );
  });

  it('pages through more than one answer holds', async () => {
    const { id, phone } = await newTester('T01');
    for (let at = 0; at < 60; at++)
      value(await phone.save('run', { ...runOf(id, at), words: 'x'.repeat(4000) }));
    await phone.sync();
    const fresh = await hub.joined('lead');
    expect(await fresh.sync()).toMatchObject({ what: 'done' });
    expect(await fresh.list('run')).toHaveLength(60);
  });

  it('says so when the network is away, and keeps everything', async () => {
    const { id } = await newTester('T01');
    const store = openStore({
      name: 'no-network',
      fetch: () => Promise.reject(new TypeError('network')),
    });
    expect(await store.join(URL_OF_HUB, await hub.invite('tester', id), 'x')).toEqual({
      ok: false,
      why: 'offline',
    });
  });

  it('repeats a join whose answer was lost', async () => {
    const code = await hub.invite('lead');
    let lose = true;
    const store = openStore({
      name: 'lost-answer',
      fetch: (async (input: string, init?: RequestInit) => {
        const answer = await hub.fetch(input, init);
        if (lose) throw new TypeError('the answer was lost');
        return answer;
      }) as typeof fetch,
    });
    expect(await store.join(URL_OF_HUB, code, 'phone')).toMatchObject({ ok: false });
    lose = false;
    expect(await store.join(URL_OF_HUB, code, 'phone')).toMatchObject({ ok: true });
    const thief = openStore({ name: 'thief', fetch: hub.fetch });
    expect(await thief.join(URL_OF_HUB, code, 'thief')).toEqual({
      ok: false,
      why: 'refused',
      code: 'unknown-code',
    });
  });

  it('keeps a revoked phone working, and its log can leave as a file', async () => {
    const { id, phone } = await newTester('T01');
    const client = (await lead.hub()) as HubClient;
    const device = value(await client.devices()).devices.find(({ member }) => member === id);
    value(await client.revoke(device?.device as DeviceId));
    value(await phone.save('run', runOf(id)));
    expect(await phone.sync()).toEqual({ what: 'revoked' });
    expect(await phone.session()).toMatchObject({ revoked: true });
    const { bytes } = await phone.exportFile('mine');
    expect(value(await lead.importFile(bytes))).toMatchObject({ fresh: 1 });
    await lead.sync();
    expect((await lead.unsent()).revisions).toBe(0);
  });

  it('loses nothing from a phone whose clock is years off', async () => {
    const { id } = await newTester('T01');
    const phone = openStore({
      name: 'old-clock',
      fetch: hub.fetch,
      now: () => Date.UTC(2009, 0, 1),
    });
    value(await phone.join(URL_OF_HUB, await hub.invite('tester', id), 'old'));
    value(await phone.save('run', runOf(id, 7000)));
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 1 });
    await lead.sync();
    expect((await lead.list('run')).map((r) => r.body.distanceM)).toEqual([7000]);
  });

  it('renews a token that has been in use for a month, also when the answer is lost', async () => {
    const clock = { ms: Date.now() };
    let loseAnswer = false;
    const { id, phone } = await newTester('T01', {
      now: () => clock.ms,
      fetch: async (input: RequestInfo | URL, init?: RequestInit) => {
        const answer = await hub.fetch(input, init);
        const isRenewal = String(input instanceof Request ? input.url : input).endsWith('/renew');
        if (isRenewal && loseAnswer) throw new TypeError('network');
        return answer;
      },
    });
    const hashes = () =>
      hub.db
        .selectFrom('devices')
        .select(['token_hash', 'next_hash'])
        .where('member_id', '=', id)
        .executeTakeFirstOrThrow();
    const first = await hashes();
    await phone.sync();
    expect(await hashes()).toEqual(first);
    clock.ms += 31 * 86_400_000;
    loseAnswer = true;
    await phone.sync();
    const waiting = await hashes();
    expect(waiting.token_hash).toBe(first.token_hash);
    expect(waiting.next_hash).not.toBeNull();
    loseAnswer = false;
    expect(await phone.sync()).toMatchObject({ what: 'done' });
    expect((await hashes()).next_hash).toBe(waiting.next_hash);
    value(await phone.save('run', runOf(id)));
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 1 });
    expect(await hashes()).toEqual({ token_hash: waiting.next_hash, next_hash: null });
  });

  it('works with a hub from before: no renewal, no packed bodies, no word of encodings', async () => {
    const seen = new Set<string>();
    const { id, phone } = await newTester('T01', {
      now: () => Date.now() + 40 * 86_400_000,
      fetch: async (input: RequestInfo | URL, init?: RequestInit) => {
        const path = new URL(String(input instanceof Request ? input.url : input)).pathname;
        if (new Headers(init?.headers).get('content-encoding') !== null) seen.add('packed');
        if (path === '/v1/renew') {
          seen.add('renewal');
          return Response.json({ error: 'not-found' }, { status: 404 });
        }
        const answer = await hub.fetch(input, init);
        if (path !== '/v1/hello') return answer;
        const { protocols, hubNow, limits } = (await answer.json()) as Record<string, unknown>;
        return Response.json({ protocols, hubNow, limits });
      },
    });
    for (let n = 0; n < 30; n++) value(await phone.save('run', runOf(id, 1000 + n)));
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 30 });
    expect(await phone.sync()).toMatchObject({ what: 'done' });
    expect([...seen]).not.toContain('packed');
    expect((await phone.session())?.revoked).toBeUndefined();
  });

  it('packs what it sends once the hub has said that it reads it', async () => {
    const sizes: { packed: boolean; bytes: number }[] = [];
    const { id, phone } = await newTester('T01', {
      fetch: async (input: RequestInfo | URL, init?: RequestInit) => {
        if (new Request(input).url.endsWith('/push'))
          sizes.push({
            packed: new Headers(init?.headers).get('content-encoding') === 'gzip',
            bytes: (await new Response(init?.body).arrayBuffer()).byteLength,
          });
        return hub.fetch(input, init);
      },
    });
    for (let n = 0; n < 40; n++) value(await phone.save('run', runOf(id, 1000 + n)));
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 40 });
    expect(sizes.at(-1)?.packed).toBe(true);
    expect(sizes.at(-1)?.bytes).toBeLessThan(8000);
    await lead.sync();
    expect(await lead.list('run')).toHaveLength(40);
  });

  it('joins under a new id where a member of the group already goes by its own', async () => {
    const { id, phone } = await newTester('T01');
    const before = await phone.device();
    // Another profile with a copy of the storage: its device id is the phone's.
    await hub.db.updateTable('devices').set({ token_hash: 'another' }).execute();
    const second = value(await lead.save('tester', { code: 'T02' })).revision.id;
    const code = await hub.invite('tester', second);
    expect(await phone.join(URL_OF_HUB, code, 'copy')).toMatchObject({ ok: true });
    expect(await phone.device()).not.toBe(before);
    const devices = await hub.db.selectFrom('devices').select('device').execute();
    expect(devices.map(({ device }) => device)).toContain(before);
    expect(id).not.toBe(second);
  });

  it('gives a member all of theirs as one file, with photos that only the hub has by now', async () => {
    const { id, phone } = await newTester('T01');
    const photo = new TextEncoder().encode('a photo of a blister');
    const sha256 = value(await phone.putAttachment(photo, 'image/jpeg'));
    value(await phone.save('run', { ...runOf(id), photos: [sha256] }));
    await phone.sync();
    const fresh = await hub.joined('tester', id);
    await fresh.sync();
    const { bytes } = await fresh.exportFile('about-me');
    const unpacked = unpackBundle(bytes);
    if (!unpacked.ok) throw new Error(unpacked.why);
    expect(unpacked.attachments.get(sha256)).toEqual(photo);
    const kinds = readBundle(unpacked.text).revisions.map(({ revision }) => revision.kind);
    expect([...new Set(kinds)].sort()).toEqual(['attachment', 'run', 'tester']);
  });

  it('drops the quotes of a run that is taken back, on the leads’ and on the specialists’ devices', async () => {
    const { id, phone } = await newTester('T01');
    const words = 'The tongue slides to the outside.';
    const run = value(await phone.save('run', { ...runOf(id), words })).revision.id;
    await phone.sync();
    await lead.sync();
    const at = '2026-05-03T07:30:00+02:00';
    const body: BodyOf<'quote'> = {
      ...{ project, source: run, sourceKind: 'run', field: 'words', words, tester: id, at },
    };
    const [kept, sent, removed] = [
      value(await lead.save('quote', body)).revision.id,
      value(await lead.save('quote', { ...body, sent: at })).revision.id,
      value(await lead.save('quote', body)).revision.id,
    ];
    value(await lead.erase(removed));
    await lead.sync();
    const reader = await hub.joined('specialist');
    await reader.sync();
    expect((await reader.list('quote')).map(({ body: said }) => said.words)).toEqual([words]);
    // A lead who is offline quotes it once more.
    const away = await hub.joined('lead');
    await away.sync();
    const late = value(await away.save('quote', body)).revision.id;
    value(await phone.eraseForGood(run));
    await phone.sync();
    for (const device of [lead, reader, away]) await device.sync();
    for (const device of [lead, reader, away]) {
      expect(await device.list('quote')).toEqual([]);
      for (const quote of [kept, sent, removed, late])
        expect(await device.history(quote)).toBeNull();
      expect((await device.unsent()).refused).toEqual([]);
    }
  });

  it('takes a quote back from specialists, and gives them none that was not sent', async () => {
    const at = '2026-05-03T07:30:00+02:00';
    const body: BodyOf<'quote'> = {
      ...{
        project,
        source: newId(),
        sourceKind: 'run',
        field: 'words',
        words: 'It rubs.',
        at,
      },
    };
    const quote = value(await lead.save('quote', body)).revision.id;
    await lead.sync();
    const reader = await hub.joined('specialist');
    await reader.sync();
    expect(await reader.list('quote')).toEqual([]);
    value(await lead.save('quote', { ...body, sent: at }, quote));
    await lead.sync();
    await reader.sync();
    expect(await reader.list('quote')).toHaveLength(1);
    value(await lead.eraseForGood(quote));
    await lead.sync();
    await reader.sync();
    expect(await reader.list('quote')).toEqual([]);
    expect((await reader.history(quote))?.older).toEqual([]);
  });

  it('drops a photo that waits when its run is taken back, on every device', async () => {
    let goodNetwork = false;
    const { id, phone } = await newTester('T01', { maySendAttachments: () => goodNetwork });
    const photo = new TextEncoder().encode('a photo of a blister');
    const sha256 = value(await phone.putAttachment(photo, 'image/jpeg'));
    const { revision } = value(await phone.save('run', { ...runOf(id), photos: [sha256] }));
    await phone.sync();
    value(await phone.eraseForGood(revision.id));
    await phone.sync();
    goodNetwork = true;
    expect(await phone.sync()).toMatchObject({ what: 'done' });
    expect((await phone.unsent()).attachments).toBe(0);
    expect(await phone.attachment(sha256)).toBeNull();
    for (const table of ['attachments', 'chunks'] as const)
      expect(await hub.db.selectFrom(table).selectAll().execute()).toEqual([]);
  });
});
