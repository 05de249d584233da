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
  /** Address of a new, empty database; its tables in `folder` where one is named. */
  newDatabase(folder?: string): Promise<string>;
  /** Kills it with all that it is doing, and starts it again: it recovers from its own log. */
  crash(): Promise<void>;
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

export interface PostgresOptions {
  /** Where its folder is made; absent: where temporary files are. */
  readonly parent?: string;
  /** Settings beside its own defaults. */
  readonly settings?: Readonly<Record<string, string>>;
}

/** Starts one; `programs` as {@link postgresPrograms} found them. */
export const startPostgres = async (
  programs: string,
  { parent = tmpdir(), settings = {} }: PostgresOptions = {},
): Promise<TestPostgres> => {
  const folder = mkdtempSync(join(parent, 'pairlog-pg-'));
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
  const given = { listen_addresses: '', max_connections: '60', ...settings };
  const launch = () =>
    spawn(
      join(programs, 'postgres'),
      [
        ...['-D', data, '-k', folder],
        ...Object.entries(given).flatMap(([name, value]) => ['-c', `${name}=${value}`]),
      ],
      { ...as, cwd: folder, env, stdio: 'ignore' },
    );
  let server = launch();
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
  const hasEnded = () => server.exitCode !== null || server.signalCode !== null;
  const answers = async () => {
    const deadline = Date.now() + 30_000;
    for (;;) {
      try {
        return await run('select 1');
      } catch (error) {
        if (Date.now() > deadline) throw error;
        await new Promise((soon) => setTimeout(soon, 50));
        // What a killed server left behind holds its memory for a moment: then it starts at the next try.
        if (hasEnded()) server = launch();
      }
    }
  };
  const killed = async (signal: NodeJS.Signals) => {
    const gone = new Promise((ended) => server.once('exit', ended));
    server.kill(signal);
    await gone;
  };
  await answers();
  let count = 0;
  return {
    async newDatabase(folderOfTables) {
      const name = `test${++count}`;
      if (folderOfTables !== undefined) {
        if (isRoot) chownSync(folderOfTables, idOf('-u', 'postgres'), idOf('-g', 'postgres'));
        await run(`create tablespace of_${name} location '${folderOfTables}'`);
      }
      const where = folderOfTables === undefined ? '' : ` tablespace of_${name}`;
      await run(`create database ${name}${where}`);
      // For the check of indexes; the extension comes with the server.
      await run('create extension amcheck', name);
      return urlOf(name);
    },
    async crash() {
      await killed('SIGKILL');
      server = launch();
      await answers();
    },
    async stop() {
      await killed('SIGINT');
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
