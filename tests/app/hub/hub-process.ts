/**
 * A real hub in a process of its own, that can be killed and started again on the same data and port.
 * The hub's code is put together into one file first: it starts in a third of the time.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { placeOf } from '../../../app/hub/start.ts';
import type { DatabasePlace } from '../../../app/hub/store/database.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** Builds the hub once; answers the file, and how to remove it. */
const builtHub = async (): Promise<{ file: string; remove(): void }> => {
  // Inside the tree, because the packages with programs of their own are found from there.
  mkdirSync(join(root, 'test-results'), { recursive: true });
  const outDir = mkdtempSync(join(root, 'test-results', 'hub-'));
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true, external: ['better-sqlite3', 'pg', 'prom-client'] },
    build: { ssr: 'app/hub/server.ts', outDir, target: 'node20' },
  });
  return {
    file: join(outDir, 'server.js'),
    remove: () => rmSync(outDir, { recursive: true, force: true }),
  };
};

export interface HubProcess {
  /** Known from the first start on; stays the same. */
  readonly url: string;
  readonly leadCode: string;
  readonly place: DatabasePlace;
  readonly pid: number | undefined;
  readonly runs: boolean;
  start(): Promise<void>;
  /** By SIGKILL: nothing of the process gets to tidy up. */
  kill(): Promise<void>;
  /** By SIGTERM. */
  stop(): Promise<void>;
  /** Stops it where it runs, and removes its folder. */
  remove(): Promise<void>;
}

export interface HubProcessOptions {
  /** `postgres://…`; absent: SQLite in the folder. */
  readonly databaseUrl?: string;
  /** Folder of the data; absent: a new one, removed at the end. */
  readonly dataDir?: string;
  /** Options of Node, such as `--expose-gc`. */
  readonly node?: readonly string[];
  /** Words before the command, such as `taskset -c 0`. */
  readonly before?: readonly string[];
}

const ended = (child: ChildProcess, signal: NodeJS.Signals): Promise<void> =>
  new Promise((done) => {
    if (child.exitCode !== null || child.signalCode !== null) return done();
    child.on('exit', () => done());
    child.kill(signal);
  });

const started = (child: ChildProcess): Promise<string> =>
  new Promise((done, fail) => {
    let output = '';
    child.stdout?.on('data', (data) => {
      output += String(data);
      if (output.includes('Stop with')) done(output);
    });
    child.stderr?.on('data', (data) => (output += String(data)));
    child.on('exit', () => fail(new Error(`the hub did not start:\n${output}`)));
  });

/** Starts a hub. */
export const startHubProcess = async (options: HubProcessOptions = {}): Promise<HubProcess> => {
  const own = mkdtempSync(join(tmpdir(), 'pairlog-hub-'));
  const dataDir = options.dataDir ?? own;
  const dist = join(own, 'no-app');
  mkdirSync(dist);
  const hub = await builtHub();
  let child: ChildProcess | null = null;
  let port = '0';
  const start = async (): Promise<string> => {
    const words = [
      ...(options.before ?? []),
      process.execPath,
      ...(options.node ?? []),
      hub.file,
      ...['--data', dataDir, '--dist', dist, '--port', port, '--quiet'],
      ...(options.databaseUrl === undefined ? [] : ['--database', options.databaseUrl]),
    ];
    child = spawn(words[0] as string, words.slice(1), {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    return started(child);
  };
  const end = async (signal: NodeJS.Signals) => {
    if (child) await ended(child, signal);
    child = null;
  };
  const output = await start();
  const url = (/running: (\S+)/.exec(output)?.[1] as string).replace('localhost', '127.0.0.1');
  port = new URL(url).port;
  return {
    url,
    leadCode: /as lead[^\n]*\n\s+\S+#([0-9A-Z]{10})/.exec(output)?.[1] as string,
    place: placeOf({
      dataDir,
      ...(options.databaseUrl !== undefined && { databaseUrl: options.databaseUrl }),
    }),
    get pid() {
      return child?.pid;
    },
    get runs() {
      return child !== null && child.exitCode === null && child.signalCode === null;
    },
    async start() {
      await start();
    },
    kill: () => end('SIGKILL'),
    stop: () => end('SIGTERM'),
    async remove() {
      await end('SIGKILL');
      hub.remove();
      rmSync(own, { recursive: true, force: true });
    },
  };
};
