/** Do those who take records back and those who send photos ever wait for each other in a circle? */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { randomBytes } from 'node:crypto';
import { createHub } from '../../../app/hub/app.ts';
import { checkHub } from '../../../app/hub/store/check.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import {
  newRecordId,
  sealRevision,
  sha256OfBytes,
  type RecordId,
  type Role,
  type Sha256,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { OWN_PAGE } from './as-browser.ts';
import { postgresPrograms, startPostgres, type TestPostgres } from './postgres.ts';

const ROUNDS = 30;
const group = idOf(900);
const programs = postgresPrograms();
let postgres: TestPostgres | null = null;
beforeAll(async () => {
  if (programs !== null) postgres = await startPostgres(programs);
}, 60_000);
afterAll(() => postgres?.stop());

it.skipIf(programs === null)(
  'PostgreSQL answers both without a fault, on two hubs of one database',
  async () => {
    const url = await (postgres as TestPostgres).newDatabase();
    const hubs = [await openDatabase({ url }), await openDatabase({ url })] as const;
    await makeGroup(hubs[0].db, group, 'Group', 0);
    const faults: unknown[] = [];
    const apps = hubs.map(({ db }) =>
      createHub({
        db,
        now: Date.now,
        random: (bytes) => randomBytes(bytes),
        log: (line) => line['level'] === 'error' && faults.push(line['code']),
      }),
    );
    let asked = 0;
    /** A request to one hub or the other, in turn. */
    const ask = (path: string, init: RequestInit, token?: string) =>
      (apps[asked++ % 2] as (typeof apps)[0]).request(`http://hub.test/v1/${path}`, {
        ...init,
        headers: {
          ...OWN_PAGE,
          ...init.headers,
          ...(token !== undefined && { authorization: `Bearer ${token}` }),
        },
      });
    const post = (body: unknown) => ({ method: 'POST', body: JSON.stringify(body) });
    const join = async (role: Role, member: RecordId) => {
      const code = newInviteCode(randomBytes);
      await addInvite(hubs[0].db, group, code, role, member, Date.now());
      const token = randomBytes(32).toString('base64url');
      const device = randomBytes(8).toString('hex');
      expect((await ask('join', post({ code, token, device }))).status).toBe(200);
      return token;
    };
    let stamps = 0;
    const member = async (role: Role, n: number) => {
      const id = idOf(n);
      // Two devices of one member: they share its quota of the day.
      const devices = [await join(role, id), await join(role, id)] as const;
      const note = (record: RecordId, kind: string, body: Record<string, unknown> | null) =>
        sealRevision(
          { id: record, kind, author: id, sv: 9, body, ...(body === null && { erased: true }) },
          stampAt(++stamps),
          null,
        );
      const push = async (device: 0 | 1, revisions: readonly unknown[]) =>
        (await ask('push', post({ revisions }), devices[device])).status;
      const upload = async (sha256: Sha256, bytes: Uint8Array) => {
        const answer = await ask(
          `attachment/${sha256}`,
          {
            method: 'PATCH',
            body: new Uint8Array(bytes),
            headers: {
              'upload-offset': '0',
              'upload-length': String(bytes.length),
              'upload-type': 'image/jpeg',
            },
          },
          devices[1],
        );
        return answer.status;
      };
      return { id, note, push, upload };
    };
    const members = await Promise.all([member('lead', 1), member('lead', 2), member('tester', 3)]);
    const statuses = new Map<number, number>();
    const counted = (status: number) => statuses.set(status, (statuses.get(status) ?? 0) + 1);
    const work = async ({ id, note, push, upload }: (typeof members)[0]) => {
      for (let round = 0; round < ROUNDS; round++) {
        const run = newRecordId(Date.now(), randomBytes(16));
        const photos = Array.from({ length: 3 }, () => randomBytes(2000));
        const named = photos.map((bytes) => ({
          record: newRecordId(Date.now(), randomBytes(16)),
          sha256: sha256OfBytes(bytes),
          bytes,
        }));
        counted(
          await push(0, [
            note(run, 'run', { tester: id }),
            ...named.map(({ record, sha256 }) =>
              note(record, 'attachment', {
                record: run,
                sha256,
                mediaType: 'image/jpeg',
                bytes: 2000,
              }),
            ),
          ]),
        );
        const sent = named.map(({ sha256, bytes }) => upload(sha256, bytes));
        // Somewhere among the uploads, not always at the same place of them.
        await new Promise((soon) => setTimeout(soon, round % 6));
        const gone = push(
          0,
          [run, ...named.map(({ record }) => record)].map((one) =>
            note(one, one === run ? 'run' : 'attachment', null),
          ),
        );
        for (const status of await Promise.all([...sent, gone])) counted(status);
      }
    };
    await Promise.all([...members, ...members].map(work));
    console.log(
      `answers by status: ${JSON.stringify(Object.fromEntries(statuses))}; faults ${faults.length}`,
    );
    expect(faults).toEqual([]);
    expect([...statuses.keys()].filter((status) => status >= 500)).toEqual([]);
    expect(await checkHub(hubs[0])).toMatchObject({ attachments: 0, waiting: 0, problems: [] });
    await Promise.all(hubs.map(({ db }) => db.destroy()));
  },
  120_000,
);
