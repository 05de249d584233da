/**
 * Real devices and a real hub with a bad network between them: once it is good again, all of them hold the same,
 * nothing is lost, nothing is there twice, and every photo is whole. `PAIRLOG_SEEDS=100` tries as many.
 */
import 'fake-indexeddb/auto';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createHub } from '../../../app/hub/app.ts';
import { listen } from '../../../app/hub/listen.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { openStore, type Store } from '../../../app/store/index.ts';
import type { BodyOf, RecordId, Role, Sha256 } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';
import { seeded } from '../../seeded.ts';
import { asBrowser } from './as-browser.ts';
import { badNetwork } from './bad-network.ts';
import { newId } from '../../new-id.ts';

const SEEDS = Number(process.env['PAIRLOG_SEEDS'] ?? 3);
const ROUNDS = 8;
const group = idOf(900);

const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error(`not ok: ${JSON.stringify(outcome)}`);
  return outcome.value;
};

interface Saved {
  readonly distanceM: number;
  readonly photo: { readonly sha256: Sha256; readonly bytes: Uint8Array } | null;
}

describe('a network that drops, doubles, delays, cuts and answers itself', () => {
  const happened = new Map<string, number>();

  it.each(Array.from({ length: SEEDS }, (_, at) => at + 1))(
    'leaves all devices and the hub with the same, seed %i',
    async (seed) => {
      const random = seeded(seed);
      const folder = mkdtempSync(join(tmpdir(), 'pairlog-network-'));
      const database = await openDatabase({ file: join(folder, 'hub.sqlite') });
      const { db } = database;
      await makeGroup(db, group, 'Group', Date.now());
      const app = createHub({ db, now: Date.now, random: (bytes) => randomBytes(bytes) });
      const server = await listen(app.fetch, 0, '127.0.0.1');
      const network = await badNetwork(`http://127.0.0.1:${server.port}`, seed);

      let devices = 0;
      const joined = async (role: Role, member: RecordId | null): Promise<Store> => {
        const code = newInviteCode(randomBytes);
        await addInvite(db, group, code, role, member, Date.now());
        const store = openStore({
          name: `bad-network-${seed}-${++devices}`,
          fetch: asBrowser(fetch),
        });
        // The same code again, as a person taps again: a join whose answer was lost is the same join.
        for (let tries = 0; tries < 40; tries++)
          if ((await store.join(network.url, code, 'device')).ok) return store;
        throw new Error('could not join in 40 tries');
      };

      network.badness = 0.5;
      const lead = await joined('lead', null);
      const desk = await joined('lead', null);
      const project = newId();
      const pair = newId();
      const people = [newId(), newId()];
      for (const [at, id] of people.entries())
        value(await lead.save('tester', { code: `T0${at + 1}` }, id));
      const phones = [
        await joined('tester', people[0] as RecordId),
        await joined('tester', people[1] as RecordId),
      ];
      const saved = new Map<RecordId, Saved>();
      const gone = new Set<RecordId>();

      const act = async (phone: Store, tester: RecordId) => {
        const own = [...saved.keys()].filter((id) => !gone.has(id));
        const dice = random();
        if (dice < 0.1 && own.length > 0) {
          const id = own[Math.floor(random() * own.length)] as RecordId;
          if ((await phone.get('run', id))?.body.tester !== tester) return;
          value(await phone.eraseForGood(id));
          gone.add(id);
          return;
        }
        const photo =
          dice < 0.45
            ? { bytes: randomBytes(dice < 0.2 ? 300_000 : 2000), sha256: '' as Sha256 }
            : null;
        if (photo) photo.sha256 = value(await phone.putAttachment(photo.bytes, 'image/jpeg'));
        const id = newId();
        const distanceM = 1000 + saved.size;
        const body: BodyOf<'run'> = {
          project,
          pair,
          tester,
          startedAt: '2026-05-02T07:30:00+02:00',
          distanceM: metres(distanceM),
          distanceFrom: 'typed',
          ...(photo && { photos: [photo.sha256] }),
        };
        value(await phone.save('run', body, id));
        saved.set(id, { distanceM, photo });
      };

      network.badness = 0.6;
      for (let round = 0; round < ROUNDS; round++) {
        for (const [at, phone] of phones.entries()) await act(phone, people[at] as RecordId);
        await Promise.all([lead, desk, ...phones].map((store) => store.sync()));
      }

      network.badness = 0;
      for (let round = 0; round < 3; round++)
        for (const store of [...phones, lead, desk]) {
          const outcome = await store.sync();
          if (round > 0) expect(outcome).toMatchObject({ what: 'done', refused: 0 });
        }

      for (const store of [...phones, lead, desk])
        expect(await store.unsent()).toMatchObject({ revisions: 0, attachments: 0, refused: [] });
      const headsOf = async (store: Store) =>
        new Map((await store.heads()).map(({ id, hash }) => [id, hash]));
      const [ofLead, ofDesk] = [await headsOf(lead), await headsOf(desk)];
      expect(ofDesk).toEqual(ofLead);
      for (const phone of phones)
        for (const [id, hash] of await headsOf(phone)) expect(ofLead.get(id)).toBe(hash);
      const rows = await db.selectFrom('revisions').select(['id', 'hash']).execute();
      const onHub = new Set(rows.map(({ hash }) => hash));
      expect(new Set(rows.map(({ id }) => id))).toEqual(new Set(ofLead.keys()));
      for (const hash of ofLead.values()) expect(onHub).toContain(hash);

      const runs = await desk.list('run');
      expect(new Map(runs.map(({ revision, body }) => [revision.id, body.distanceM]))).toEqual(
        new Map([...saved].filter(([id]) => !gone.has(id)).map(([id, run]) => [id, run.distanceM])),
      );
      for (const [id, { photo }] of saved)
        if (photo && !gone.has(id))
          expect(
            Buffer.compare(
              (await desk.attachment(photo.sha256))?.bytes ?? new Uint8Array(),
              photo.bytes,
            ),
            'the photo is whole at the desk',
          ).toBe(0);
      expect((await checkHub(database)).problems).toEqual([]);
      for (const [what, count] of network.done)
        happened.set(what, (happened.get(what) ?? 0) + count);
      await network.close();
      await server.close();
      await db.destroy();
      rmSync(folder, { recursive: true });
    },
    120_000,
  );

  it('did each of these things', () => {
    expect([...happened.keys()].sort()).toHaveLength(11);
    if (SEEDS > 3) console.log(SEEDS, 'seeds', [...happened]);
  });
});
