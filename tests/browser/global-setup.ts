/**
 * Once before all browser tests: the hub in one file, and the demo's data as a first start leaves them. A hub that
 * compiles itself and takes the demo in costs each test three seconds of a core.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { DEMO, PREPARED, launchHub, type Prepared } from './hub-process.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** In node_modules, so that the packages it imports are found from there. */
const OUT = join(root, 'node_modules/.cache/pairlog-hub');

export default async function prepareHub(): Promise<() => Promise<void>> {
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    build: { ssr: 'app/hub/server.ts', outDir: OUT, emptyOutDir: true, target: 'node20' },
  });
  const server = join(OUT, 'server.js');
  const first = await mkdtemp(join(tmpdir(), 'pairlog-demo-'));
  const { stop, output } = await launchHub([server], first, ['--port', '0', '--demo', DEMO]);
  await stop();
  const prepared: Prepared = { server, demo: { folder: first, output } };
  process.env[PREPARED] = JSON.stringify(prepared);
  return () => rm(first, { recursive: true, force: true });
}
