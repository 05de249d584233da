/**
 * A fresh device takes in a whole group, in a real browser: our store over HTTP from our hub (SQLite in memory)
 * into IndexedDB, against PouchDB replicating documents of the same content from one IndexedDB database of the
 * page to another. Our side also makes, sends and reads the text of every answer and checks the hash of every
 * revision; PouchDB's has no network between its two ends.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { createHub } from '../../app/hub/app.ts';
import { listen } from '../../app/hub/listen.ts';
import { openDatabase } from '../../app/hub/store/database.ts';
import { makeGroup } from '../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../app/hub/store/members.ts';
import { newRecordId } from '../../core/records/index.ts';
import { OWN_PAGE } from '../app/hub/as-browser.ts';
import { launchOptions } from '../browser/programs.ts';
import { seeded } from '../seeded.ts';
import { largeGroup } from './large-group.ts';
import type { BenchRow } from './row.ts';
import type { SyncBench } from './sync-page.ts';

const REVISIONS = 50_000;
const GROUP = newRecordId(0, new Uint8Array(16).fill(7));

declare const bench: SyncBench;

/** The page's script, bundled for the browser. */
const bundle = async (): Promise<string> => {
  const outDir = mkdtempSync(join(tmpdir(), 'pairlog-bench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      // PouchDB asks for Node's events; the browser has none, the package is the same.
      resolve: {
        alias: {
          events: fileURLToPath(new URL('../../node_modules/events/events.js', import.meta.url)),
        },
      },
      define: { global: 'globalThis', 'process.env.NODE_ENV': '"production"' },
      build: {
        outDir,
        lib: {
          entry: fileURLToPath(new URL('./sync-page.ts', import.meta.url)),
          formats: ['es'],
          fileName: 'page',
        },
        rolldownOptions: { output: { codeSplitting: false } },
      },
    });
    return readFileSync(join(outDir, 'page.js'), 'utf8');
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
};

export const syncRow: BenchRow = {
  name: `${REVISIONS.toLocaleString('en')} revisions to a fresh device, in Chromium`,
  peerName: 'PouchDB, as many documents',
  rounds: 3,
  async setUp() {
    const { revisions } = largeGroup(500, REVISIONS);
    const sent = revisions.slice(0, REVISIONS);
    const seed = seeded(3);
    const random = (bytes: number) => Uint8Array.from({ length: bytes }, () => seed() * 256);
    const { db } = await openDatabase({ file: ':memory:' });
    await makeGroup(db, GROUP, 'Bench', Date.now());
    const script = await bundle();
    const app = createHub({
      db,
      now: Date.now,
      random,
      files: (c) =>
        Promise.resolve(
          c.req.path === '/page.js'
            ? c.body(script, 200, { 'content-type': 'text/javascript' })
            : c.html('<!doctype html><script type="module" src="/page.js"></script>'),
        ),
    });
    const code = async () => {
      const fresh = newInviteCode(random);
      await addInvite(db, GROUP, fresh, 'lead', null, Date.now());
      return fresh;
    };
    const server = await listen(app.fetch, 0, '127.0.0.1');
    const url = `http://127.0.0.1:${server.port}`;
    const ask = (path: string, body: unknown) =>
      app.request(`${url}/v1/${path}`, {
        method: 'POST',
        headers: { ...OWN_PAGE, authorization: `Bearer ${'t'.repeat(43)}` },
        body: JSON.stringify(body),
      });
    await ask('join', { code: await code(), token: 't'.repeat(43), device: 'a'.repeat(16) });
    for (let at = 0; at < sent.length; at += 500)
      await ask('push', { revisions: sent.slice(at, at + 500) });

    const browser = await chromium.launch(launchOptions);
    const page = await browser.newPage();
    await page.goto(url);
    await page.waitForFunction(() => 'bench' in window);
    const documents = sent.map(({ id, kind, author, stamp, prev, sv, body }) => ({
      _id: id,
      kind,
      author,
      stamp,
      prev,
      sv,
      body,
    }));
    for (let at = 0; at < documents.length; at += 10_000)
      await page.evaluate((part) => bench.fill(part), documents.slice(at, at + 10_000));
    return {
      ours: async () => page.evaluate((fresh) => bench.ours(fresh), await code()),
      peer: () => page.evaluate(() => bench.peer()),
      check(ours, peer) {
        if (ours !== REVISIONS || peer !== REVISIONS)
          throw new Error(`the two sides hold ${String(ours)} and ${String(peer)}`);
      },
      async tearDown() {
        await browser.close();
        await server.close();
        await db.destroy();
      },
    };
  },
};
