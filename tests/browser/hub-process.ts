/** A real hub in a process of its own, on a free port, with its data in a scratch folder. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

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

export const startHubProcess = async (...words: string[]): Promise<HubProcess> => {
  const data = await mkdtemp(join(tmpdir(), 'pairlog-hub-'));
  const launch = async (port: string, more: string[]) => {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', 'app/hub/server.ts', '--data', data, '--port', port, '--quiet', ...more],
      { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] },
    );
    return { child, output: await started(child) };
  };
  let { child, output } = await launch('0', words);
  const url = /running: (\S+)/.exec(output)?.[1] as string;
  const codeOf = (role: string) =>
    new RegExp(`as ${role}[^\\n]*\\n\\s+\\S+#([0-9A-Z]{10})`).exec(output)?.[1] ?? null;
  const resume = async () => {
    ({ child, output } = await launch(new URL(url).port, words));
  };
  return {
    url,
    codes: { lead: codeOf('lead') as string, tester: codeOf('tester') },
    async stop() {
      await ended(child);
      await rm(data, { recursive: true, force: true });
    },
    pause: () => ended(child),
    resume,
    async restart() {
      await ended(child);
      await resume();
    },
  };
};
