/** A real hub on a database in memory, reached without a socket. */
import { createHub } from '../../../app/hub/app.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import {
  openDatabase,
  type DatabasePlace,
  type HubDatabase,
} from '../../../app/hub/store/database.ts';
import { openStore, type Store, type StoreOptions } from '../../../app/store/index.ts';
import { newRecordId, type RecordId, type Role } from '../../../core/records/index.ts';
import { asBrowser } from './as-browser.ts';

export interface TestHub {
  readonly db: HubDatabase;
  readonly group: RecordId;
  readonly fetch: typeof fetch;
  /** A code for a member of this role; a tester's names the tester. */
  invite(role: Role, member?: RecordId): Promise<string>;
  /** A store of its own that has joined. */
  joined(role: Role, member?: RecordId, options?: Partial<StoreOptions>): Promise<Store>;
  clock: { ms: number };
}

const random = (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes));
let count = 0;

export const URL_OF_HUB = 'http://hub.test';

export const testHub = async (place: DatabasePlace = { file: ':memory:' }): Promise<TestHub> => {
  const { db } = await openDatabase(place);
  const clock = { ms: Date.now() };
  const group = newRecordId(clock.ms, random(16));
  await makeGroup(db, group, 'Test group', clock.ms);
  const app = createHub({ db, now: () => clock.ms, random });
  const fetchHub = asBrowser(((input: RequestInfo | URL, init?: RequestInit) =>
    app.request(input instanceof Request ? input : String(input), init)) as typeof fetch);
  const invite = async (role: Role, member?: RecordId) => {
    const code = newInviteCode(random);
    await addInvite(db, group, code, role, member ?? null, clock.ms);
    return code;
  };
  return {
    db,
    group,
    clock,
    fetch: fetchHub,
    invite,
    async joined(role, member, options) {
      const store = openStore({
        name: `hub-test-${++count}`,
        fetch: fetchHub,
        now: () => clock.ms,
        ...options,
      });
      const joined = await store.join(URL_OF_HUB, await invite(role, member), 'test device');
      if (!joined.ok) throw new Error(`could not join: ${JSON.stringify(joined)}`);
      return store;
    },
  };
};
