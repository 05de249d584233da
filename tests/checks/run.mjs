/**
 * Every check that reads the code without running the product: types (one world at a time), lint,
 * format, imports, dead code, bundle size, dependencies. Prints one line a check; `node tests/checks/run.mjs NAME …`
 * runs the named ones. Exports `checks` for the test command.
 */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { importsAreDownward } from './imports.mjs';
import { bundleIsSmall } from './bundle-size.mjs';
import { dependenciesAreSafe } from './dependencies.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

const run = (command, ...args) =>
  new Promise((done) => {
    const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    child.stdout.on('data', (data) => (output += data));
    child.stderr.on('data', (data) => (output += data));
    child.on('close', (code) => done({ ok: code === 0, output }));
  });

const npx = (tool, ...args) => run(`node_modules/.bin/${tool}`, ...args);

export const checks = {
  'types core': () => npx('tsc', '-p', 'core'),
  'types app': () => npx('tsc', '-p', 'app'),
  'types hub': () => npx('tsc', '-p', 'app/hub'),
  'types terminal': () => npx('tsc', '-p', 'app/terminal'),
  'types service-worker': () => npx('tsc', '-p', 'service-worker'),
  'types tests': () => npx('tsc', '-p', 'tests'),
  lint: () =>
    npx('eslint', '--config', 'tests/checks/eslint.config.js', '--max-warnings', '0', '.'),
  format: () => npx('prettier', '--check', '--log-level', 'warn', '.'),
  imports: importsAreDownward,
  'dead code': () => npx('knip', '--no-progress'),
  'bundle size': bundleIsSmall,
  dependencies: dependenciesAreSafe,
};

/** Plants a wrong import while it runs, which the others must not see. */
const ALONE = 'imports';
/** The longest first, so that it does not end alone. */
const FIRST = 'lint';

/** Runs the checks two at a time; counts passed and failed. */
export async function runChecks(names = Object.keys(checks)) {
  let passed = 0;
  let failed = 0;
  let skipped = 0;
  const one = async (name) => {
    const began = Date.now();
    const { ok, output, skipped: isSkipped } = await checks[name]();
    console.log(
      `${isSkipped ? 'skip' : ok ? 'ok  ' : 'FAIL'} check: ${name} (${((Date.now() - began) / 1000).toFixed(1)} s)`,
    );
    if (!ok || isSkipped) console.log(output.trimEnd().split('\n').slice(0, 120).join('\n'));
    if (isSkipped) skipped++;
    else if (ok) passed++;
    else failed++;
  };
  if (names.includes(ALONE)) await one(ALONE);
  const rest = names
    .filter((name) => name !== ALONE)
    .sort((a, b) => Number(b === FIRST) - Number(a === FIRST));
  const work = async () => {
    for (let name = rest.shift(); name !== undefined; name = rest.shift()) await one(name);
  };
  await Promise.all([work(), work()]);
  return { passed, failed, skipped };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const named = process.argv.slice(2);
  const unknown = named.filter((name) => !(name in checks));
  if (unknown.length > 0) {
    console.error(
      `no such check: ${unknown.join(', ')}; there are: ${Object.keys(checks).join(', ')}`,
    );
    process.exit(1);
  }
  const { failed } = await runChecks(named.length > 0 ? named : undefined);
  process.exit(failed === 0 ? 0 : 1);
}
