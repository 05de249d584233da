/**
 * Installs what is missing, builds the app and starts the hub: with the invented demo test in it, or,
 * where a data folder of one's own is named, without. Further words go to the hub:
 * `npm start -- --port 9000`, `npm start -- --data DIR --group NAME`.
 */
import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { install } from './install.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

install('run');

console.log('Building the app …');
const built = spawnSync(
  process.execPath,
  [
    'node_modules/vite/bin/vite.js',
    'build',
    '--config',
    'app/vite.config.ts',
    '--logLevel',
    'warn',
  ],
  { cwd: root, stdio: 'inherit' },
);
if (built.status !== 0) process.exit(built.status ?? 1);

const words = process.argv.slice(2);
const demo = words.includes('--data') ? [] : ['--demo', 'demo-data/wear-test.pairlog'];
const hub = spawn(
  process.execPath,
  ['--import', 'tsx', 'app/hub/server.ts', '--quiet', ...demo, ...words],
  { cwd: root, stdio: 'inherit' },
);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => hub.kill(signal));
hub.on('close', (code) => process.exit(code ?? 0));
