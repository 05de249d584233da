/** Starts a hub: database, endpoints, the built app, and the invites of a first start. */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { getConnInfo } from '@hono/node-server/conninfo';
import { newRecordId, type RecordId, type Role, type Tiles } from '../../core/records/index.ts';
import { Hono, type Context } from 'hono';
import type { LogLine } from './answers.ts';
import { createHub } from './app.ts';
import { lanAddresses, lanCertificate } from './certificate.ts';
import { loadBundle } from './demo.ts';
import { forwardedFor } from './forwarded-for.ts';
import { listen, type Listening, type SlowClients } from './listen.ts';
import { createMetrics, type Metrics } from './metrics.ts';
import { originOf } from './own-page.ts';
import { scheduleBackups } from './scheduled-backups.ts';
import { inlineHashes, staticFiles } from './static-files.ts';
import { firstGroup, makeFirstGroup, hasMember } from './store/groups.ts';
import { addInvite, newInviteCode } from './store/members.ts';
import { openDatabase, type DatabasePlace } from './store/database.ts';
import { trustPage } from './trust-page.ts';
import type { PushServiceForTests } from './wake/safe-endpoint.ts';
import { createSend } from './wake/send.ts';
import { createWaker } from './wake/waker.ts';

export interface HubOptions {
  /** Folder of the database, and of the certificate of the local network. */
  readonly dataDir: string;
  /** `postgres://…`: the database is there instead. */
  readonly databaseUrl?: string;
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
  /** https for the phones of the local network, on all of its addresses. */
  readonly lan?: boolean;
  /** A reverse proxy stands before the hub and says in `X-Forwarded-…` who asks, and at which origin. */
  readonly behindProxy?: boolean;
  /** Port on this machine at which a Prometheus server reads; 0 takes any. */
  readonly metricsPort?: number;
  /** A backup a day into this folder, each kept for so many days. */
  readonly backups?: { readonly folder: string; readonly days: number };
  /** Whom push services may write to about this hub, `mailto:…` or `https:…`; absent: its own https address. */
  readonly contact?: string;
  /** Trusts a push service on this machine. Only for tests: elsewhere it opens what nobody outside should reach. */
  readonly pushServiceForTests?: PushServiceForTests;
  readonly slow?: SlowClients;
  readonly log?: (line: LogLine) => void;
}

export interface Invite {
  readonly role: Role;
  readonly code: string;
  /** Whom the invite is for, where it is for one tester. */
  readonly who: string | null;
}

export interface RunningHub {
  readonly url: string;
  /** Where phones of the local network get the certificate; null without `lan`. */
  readonly trustUrl: string | null;
  readonly metricsPort: number | null;
  readonly groupName: string;
  /** Codes made at this start. They are told nowhere else. */
  readonly invites: readonly Invite[];
  /** Answers what is under way, then stops. */
  close(): Promise<void>;
}

/** Which database these options mean. */
export const placeOf = ({
  dataDir,
  databaseUrl,
}: Pick<HubOptions, 'dataDir' | 'databaseUrl'>): DatabasePlace =>
  databaseUrl === undefined ? { file: join(dataDir, 'hub.sqlite') } : { url: databaseUrl };

const random = (bytes: number): Uint8Array => randomBytes(bytes);

export const startHub = async (options: HubOptions): Promise<RunningHub> => {
  const place = placeOf(options);
  const { db } = await openDatabase(place);
  const log = options.log ?? (() => undefined);
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

  let tester: { id: RecordId; code: string } | null = null;
  const before = await firstGroup(db);
  const isNew = before === null;
  let known =
    before ??
    (options.demo === undefined
      ? await makeFirstGroup(db, newRecordId(Date.now(), random(16)), options.groupName, Date.now())
      : null);
  if (options.demo !== undefined) {
    tester = (await loadBundle(db, options.demo, Date.now())).tester;
    known = await firstGroup(db);
  }
  if (!known) throw new Error('the hub has no group although one was just made');
  const isLed = await hasMember(db, known.group, 'lead');
  if (isNew || !isLed || options.newLeadCode || options.demo !== undefined)
    await invite(known.group, 'lead', null, null);
  if (tester) await invite(known.group, 'tester', tester.id, tester.code);

  const metrics = options.metricsPort === undefined ? null : createMetrics();
  const send = createSend({
    ...(options.contact !== undefined && { contact: options.contact }),
    ...(options.pushServiceForTests && { forTests: options.pushServiceForTests }),
  });
  const waker = createWaker({ db, now: Date.now, ...(options.log && { log }) }, send);
  // What a hub that was ended had not sent.
  waker.soon();
  let trustUrl: string | null = null;
  const app = createHub({
    db,
    now: Date.now,
    random,
    wakeSoon: waker.soon,
    ...(options.pushServiceForTests && { pushServiceForTests: options.pushServiceForTests }),
    addressOf: (c) => addressOf(c, options.behindProxy ?? false),
    ...(options.dist !== null && {
      files: staticFiles(options.dist),
      inline: inlineHashes(options.dist),
    }),
    originOf: (c) => originOf(c, options.behindProxy ?? false),
    trustUrl: () => trustUrl,
    ...(options.tiles && { tiles: options.tiles }),
    ...(options.backups && { backupDays: options.backups.days }),
    ...(metrics && { metrics }),
    ...(options.log && { log }),
  });
  const addresses = options.lan ? lanAddresses() : [];
  const certificate = options.lan
    ? await lanCertificate(join(options.dataDir, 'certificate'), addresses, Date.now())
    : null;
  const host = options.lan ? '0.0.0.0' : options.host;
  const main = await listen(app.fetch, options.port, host, certificate, options.slow);
  const shown = addresses[0] ?? (host === '127.0.0.1' ? 'localhost' : host);
  const url = `${certificate ? 'https' : 'http'}://${shown}:${main.port}`;
  const others: Listening[] = [];
  if (certificate) {
    const port = options.port === 0 ? 0 : options.port + 1;
    const trust = await listen(trustPage(certificate.authority, url).fetch, port, host);
    others.push(trust);
    trustUrl = `http://${shown}:${trust.port}`;
  }
  if (metrics && options.metricsPort !== undefined)
    // On this machine only: what the hub is doing is for who runs it.
    others.push(await listen(metricsPage(metrics).fetch, options.metricsPort, '127.0.0.1'));
  const backups = options.backups
    ? scheduleBackups(() => openDatabase(place), options.backups.folder, options.backups.days, log)
    : null;
  return {
    url,
    trustUrl,
    metricsPort: metrics ? (others.at(-1)?.port ?? null) : null,
    groupName: known.name,
    invites,
    async close() {
      await Promise.all([main, ...others].map((server) => server.close()));
      await backups?.stop();
      await waker.stop();
      await db.destroy();
    },
  };
};

/** Who asks: the other end of the connection, or whom the proxy in front of the hub names last. */
const addressOf = (c: Context, behindProxy: boolean): string =>
  (behindProxy ? forwardedFor(c.req.header('x-forwarded-for') ?? '') : null) ??
  getConnInfo(c).remote.address ??
  'unknown';

const metricsPage = (metrics: Metrics): Hono => {
  const app = new Hono();
  app.get('/metrics', async (c) =>
    c.body(await metrics.text(), 200, { 'content-type': metrics.contentType }),
  );
  return app;
};
