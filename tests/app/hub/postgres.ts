/**
 * A real PostgreSQL for tests: a cluster of its own in a temporary folder, reached by a socket there and by
 * no network. PostgreSQL refuses to run as root, so as root it runs as the system's own user for it.
 */
import { execFileSync, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import pg from 'pg';
import { setUpSystem } from '../../set-up.mjs';

export interface TestPostgres {
  /** Address of a new, empty database. */
  newDatabase(): Promise<string>;
  stop(): Promise<void>;
}

const idOf = (flag: '-u' | '-g', name: string): number =>
  Number(execFileSync('id', [flag, name], { encoding: 'utf8' }));

/** The folder of PostgreSQL's programs; null where this machine has none. */
export const postgresPrograms = (): string | null => {
  const server = setUpSystem()['postgres'];
  return server !== undefined && existsSync(join(dirname(server), 'initdb'))
    ? dirname(server)
    : null;
};

/** Starts one; `programs` as {@link postgresPrograms} found them. */
export const startPostgres = async (programs: string): Promise<TestPostgres> => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-pg-'));
  const isRoot = process.getuid?.() === 0;
  const as = isRoot ? { uid: idOf('-u', 'postgres'), gid: idOf('-g', 'postgres') } : {};
  if (isRoot) chownSync(folder, idOf('-u', 'postgres'), idOf('-g', 'postgres'));
  const data = join(folder, 'data');
  const env = { ...process.env, LC_ALL: 'C' };
  execFileSync(
    join(programs, 'initdb'),
    ['-D', data, '-U', 'pairlog', '-A', 'trust', '-E', 'UTF8', '--no-sync'],
    { ...as, cwd: folder, env, stdio: 'ignore' },
  );
  const server = spawn(
    join(programs, 'postgres'),
    ['-D', data, '-k', folder, '-c', 'listen_addresses=', '-c', 'max_connections=60'],
    { ...as, cwd: folder, env, stdio: 'ignore' },
  );
  const urlOf = (name: string) =>
    `postgres://pairlog@localhost/${name}?host=${encodeURIComponent(folder)}`;
  const run = async (text: string, database = 'postgres') => {
    const client = new pg.Client({ connectionString: urlOf(database) });
    await client.connect();
    try {
      await client.query(text);
    } finally {
      await client.end();
    }
  };
  const deadline = Date.now() + 30_000;
  for (;;) {
    try {
      await run('select 1');
      break;
    } catch (error) {
      if (Date.now() > deadline) throw error;
      await new Promise((soon) => setTimeout(soon, 100));
    }
  }
  let count = 0;
  return {
    async newDatabase() {
      const name = `test${++count}`;
      await run(`create database ${name}`);
      // For the check of indexes; the extension comes with the server.
      await run('create extension amcheck', name);
      return urlOf(name);
    },
    async stop() {
      const gone = new Promise((ended) => server.once('exit', ended));
      server.kill('SIGINT');
      await gone;
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
