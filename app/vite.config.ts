import { readdirSync } from 'node:fs';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { aheadFiles } from './ahead-plugin.ts';
import { faultScreen } from './fault-plugin.ts';
import { packedFiles } from './packed-files-plugin.ts';
import { serviceWorker } from './service-worker-plugin.ts';

const root = new URL('.', import.meta.url).pathname;

interface ModuleGraph {
  getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null;
}

/** Reachable through an index file, but read only by screens that are opened later. */
const LATER = new RegExp(
  [
    'core/foot/(suspects|trade-data|outline|geometry|two-sided-marks|.*-drawing)',
    'core/records/(new-id|track-fingerprint|shown-attachments|hash|seal|edit|log|cursor|wire|number-fields|bundle|bundle-file|policy|file-plan|file-changes|view|json-schema)',
    'core/mileage/(pair-mileage|same-run|run-due|unread)',
    'core/statistics/(?!group-by|index)',
    'core/units/typed',
    'node_modules/fflate/.*',
    'node_modules/zod/v4/(locales/.*|core/(to-json-schema|json-schema.*))',
  ].join('|'),
);

let firstPage: ReadonlySet<string> | null = null;

/** Whatever the page's entry imports, directly or not, without waiting for something to be opened. */
const firstPageOf = (graph: ModuleGraph): ReadonlySet<string> => {
  const found = new Set<string>();
  const visit = (id: string) => {
    if (found.has(id) || LATER.test(id)) return;
    found.add(id);
    for (const next of graph.getModuleInfo(id)?.importedIds ?? []) visit(next);
  };
  visit(`${root}main.tsx`);
  return found;
};

const firstPageChunk = (id: string, graph: ModuleGraph): string | null => {
  firstPage ??= firstPageOf(graph);
  return firstPage.has(id) ? 'first-page' : null;
};

/** What the log screen always needs; the editor of complaints comes when something bothered. */
const LOG =
  /app\/phone\/log\/(?!complaint-editor)|parts\/(reveal|late|controls\/scale)|app\/phone\/track\/(shared-track|send-track)|core\/track\/painting/;
const logChunk = (id: string): string | null => (LOG.test(id) ? 'log' : null);

/** What it takes to speak with the hub: it comes when the first screen stands. */
const HUB =
  /app\/store\/(hub-parts|hub-client|membership|sync|sync-round|device-side|quotes-gone|send-attachments)\./;
const hubChunk = (id: string): string | null => (HUB.test(id) ? 'hub' : null);

/** Notices and reminders, on Today when it stands and in Settings. */
const NOTICES = /app\/phone\/notices\/|core\/mileage\/(run-due|unread)/;
const noticesChunk = (id: string): string | null => (NOTICES.test(id) ? 'notices' : null);

export default defineConfig({
  root,
  plugins: [
    preact({ devToolsEnabled: false, prefreshEnabled: false }),
    faultScreen(),
    aheadFiles(readdirSync(`${root}words/languages`).sort()),
    serviceWorker({
      entry: new URL('../service-worker/service-worker.ts', import.meta.url).pathname,
      // Pictures for the install dialog are of no use offline.
      include: /^(?!pictures\/).*\.(html|js|css|svg|png|webmanifest)$/,
    }),
    // The last: it packs what the others wrote.
    packedFiles({ include: /\.(html|js|css|svg|webmanifest|txt)$/ }),
  ],
  build: {
    target: 'es2022',
    outDir: new URL('../dist', import.meta.url).pathname,
    emptyOutDir: true,
    sourcemap: 'hidden',
    manifest: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The desk is one file: it is fetched once, on a computer, and a warning at each start would hide the links.
    chunkSizeWarningLimit: 2000,
    // The first page in one file: on a phone's network twenty small ones cost more than their bytes.
    rolldownOptions: {
      checks: { pluginTimings: false },
      output: {
        codeSplitting: {
          groups: [
            { name: firstPageChunk, debugName: 'first page' },
            { name: logChunk, debugName: 'log a run' },
            { name: hubChunk, debugName: 'sync with the hub' },
            { name: noticesChunk, debugName: 'notices and reminders' },
          ],
        },
      },
    },
  },
});
