/**
 * Installs what is missing, builds the app where it has changed, and starts the hub: with the invented demo test in it, or,
 * where a data folder of one's own is named, without. Further words go to the hub:
 * `npm start -- --port 9000`, `npm start -- --data DIR --group NAME`.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install } from './install.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

install('run');

/** When the newest of these files, and of those in these folders, was written; ms. */
const newest = (...paths) =>
  paths.reduce((latest, path) => {
    const { mtimeMs } = statSync(path);
    const inside = statSync(path).isDirectory()
      ? readdirSync(path, { recursive: true }).map((name) => statSync(join(path, name)).mtimeMs)
      : [];
    return Math.max(latest, mtimeMs, ...inside);
  }, 0);

const sources = ['app', 'core', 'service-worker', 'package-lock.json', 'tsconfig.json'];
const built = join(root, 'dist/.vite/manifest.json');
if (!existsSync(built) || newest(...sources.map((name) => join(root, name))) > newest(built)) {
  console.log('Building the app …');
  const vite = ['node_modules/vite/bin/vite.js', 'build', '--config', 'app/vite.config.ts'];
  const { status } = spawnSync(process.execPath, [...vite, '--logLevel', 'warn'], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

const words = process.argv.slice(2);
const demo = words.includes('--data') ? [] : ['--demo', 'demo-data/wear-test.pairlog'];
const hub = spawn(
  process.execPath,
  ['--import', 'tsx', 'app/hub/server.ts', '--quiet', ...demo, ...words],
  { cwd: root, stdio: 'inherit' },
);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => hub.kill(signal));
hub.on('close', (code) => process.exit(code ?? 0));
