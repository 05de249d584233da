/** Starts a hub: database, endpoints, the built app, and the invites of a first start. */
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { createAdaptorServer } from '@hono/node-server';
import { getConnInfo } from '@hono/node-server/conninfo';
import { newRecordId, type RecordId, type Role, type Tiles } from '../../core/records/index.ts';
import { createHub } from './app.ts';
import { loadBundle } from './demo.ts';
import { staticFiles } from './static-files.ts';
import { addInvite, firstGroup, makeGroup, newInviteCode } from './store/members.ts';
import { openSqlite } from './store/sqlite.ts';

export interface HubOptions {
  /** Folder of the database. */
  readonly dataDir: string;
  readonly host: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Folder of the built app; null serves the endpoints alone. */
  readonly dist: string | null;
  readonly groupName: string;
  /** A bundle to begin with, where the hub is new. */
  readonly demo?: string;
  /** Asks for a new lead code although the group is already there. */
  readonly newLeadCode?: boolean;
  readonly tiles?: Tiles;
  readonly log?: (line: Readonly<Record<string, string | number>>) => void;
}

export interface Invite {
  readonly role: Role;
  readonly code: string;
  /** Whom the invite is for, where it is for one tester. */
  readonly who: string | null;
}

export interface RunningHub {
  readonly url: string;
  readonly groupName: string;
  /** Codes made at this start. They are told nowhere else. */
  readonly invites: readonly Invite[];
  /** Answers what is under way, then stops. */
  close(): Promise<void>;
}

const random = (bytes: number): Uint8Array => randomBytes(bytes);

export const startHub = async (options: HubOptions): Promise<RunningHub> => {
  const db = await openSqlite(join(options.dataDir, 'hub.sqlite'));
  const invites: Invite[] = [];
  const invite = async (
    group: RecordId,
    role: Role,
    member: RecordId | null,
    who: string | null,
  ) => {
    const code = newInviteCode(random);
    await addInvite(db, group, code, role, member, Date.now());
    invites.push({ role, code, who });
  };

  let known = await firstGroup(db);
  const isNew = known === null;
  let tester: { id: RecordId; code: string } | null = null;
  if (!known) {
    if (options.demo === undefined)
      await makeGroup(db, newRecordId(Date.now(), random(16)), options.groupName, Date.now());
    known = await firstGroup(db);
  }
  if (options.demo !== undefined) {
    tester = (await loadBundle(db, options.demo, Date.now())).tester;
    known = await firstGroup(db);
  }
  if (!known) throw new Error('the hub has no group although one was just made');
  if (isNew || options.newLeadCode || options.demo !== undefined)
    await invite(known.group, 'lead', null, null);
  if (tester) await invite(known.group, 'tester', tester.id, tester.code);

  const app = createHub({
    db,
    now: Date.now,
    random,
    addressOf: (c) => getConnInfo(c).remote.address ?? 'unknown',
    ...(options.dist !== null && { files: staticFiles(options.dist) }),
    ...(options.tiles && { tiles: options.tiles }),
    ...(options.log && { log: options.log }),
  });
  const server = createAdaptorServer({ fetch: app.fetch });
  // A client that dribbles its request is cut off.
  Object.assign(server, {
    headersTimeout: 15_000,
    requestTimeout: 60_000,
    keepAliveTimeout: 10_000,
  });
  server.listen(options.port, options.host);
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const host = options.host === '127.0.0.1' ? 'localhost' : options.host;
  return {
    url: `http://${host}:${port}`,
    groupName: known.name,
    invites,
    async close() {
      const closed = once(server, 'close');
      server.close();
      if ('closeIdleConnections' in server) server.closeIdleConnections();
      await closed;
      await db.destroy();
    },
  };
};
