/** A real hub in a process of its own, on a free port, with its data in a scratch folder. */
import { spawn, type ChildProcess } from 'node:child_process';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export const DEMO = 'demo-data/wear-test.pairlog';

/** The environment's name under which `global-setup.ts` hands on what it prepared. */
export const PREPARED = 'PAIRLOG_PREPARED_HUB';

export interface Prepared {
  /** The hub in one file. */
  readonly server: string;
  /** The data of a first start with the demo, and what that start printed: its codes are still unused. */
  readonly demo: { readonly folder: string; readonly output: string };
}

const said = process.env[PREPARED];
const prepared = said === undefined ? null : (JSON.parse(said) as Prepared);
const hubItself = prepared ? [prepared.server] : ['--import', 'tsx', 'app/hub/server.ts'];

export interface HubProcess {
  readonly url: string;
  /** Codes printed at the start, by what they sign in. */
  readonly codes: { readonly lead: string; readonly tester: string | null };
  stop(): Promise<void>;
  /** Nobody reaches it until `resume`: offline in every engine, which a browser's own switch is not. */
  pause(): Promise<void>;
  /** Starts again on the same data and port. */
  resume(): Promise<void>;
  restart(): Promise<void>;
}

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

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((done) => {
    if (child.exitCode !== null) return done();
    child.on('exit', () => done());
    child.kill('SIGTERM');
  });

/** Starts the hub that `node ITSELF …` runs, on the data in a folder; resolves when it answers. */
export const launchHub = async (
  itself: readonly string[],
  data: string,
  words: readonly string[],
): Promise<{ readonly output: string; stop(): Promise<void> }> => {
  const child = spawn(
    process.execPath,
    [...itself, '--data', data, '--dist', 'dist', '--quiet', ...words],
    { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  return { output: await started(child), stop: () => ended(child) };
};

export const startHubProcess = async (...words: string[]): Promise<HubProcess> => {
  const data = await mkdtemp(join(tmpdir(), 'pairlog-hub-'));
  const demo = prepared && words.includes(DEMO) ? prepared.demo : null;
  if (demo) await cp(demo.folder, data, { recursive: true });
  const more = demo ? words.filter((word) => word !== '--demo' && word !== DEMO) : words;
  const launch = (port: string) => launchHub(hubItself, data, ['--port', port, ...more]);
  let running = await launch('0');
  const url = /running: (\S+)/.exec(running.output)?.[1] as string;
  const printed = demo?.output ?? running.output;
  const codeOf = (role: string) =>
    new RegExp(`as ${role}[^\\n]*\\n\\s+\\S+#([0-9A-Z]{10})`).exec(printed)?.[1] ?? null;
  const resume = async () => {
    running = await launch(new URL(url).port);
  };
  return {
    url,
    codes: { lead: codeOf('lead') as string, tester: codeOf('tester') },
    async stop() {
      await running.stop();
      await rm(data, { recursive: true, force: true });
    },
    pause: () => running.stop(),
    resume,
    async restart() {
      await running.stop();
      await resume();
    },
  };
};
