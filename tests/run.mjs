/**
 * Installs what the tests need and runs all of them: checks, unit and property tests, browser tests.
 * The last line sums them up: `N passed, N failed`, with `, N skipped` where something was skipped.
 * Plain Node, no package: it is the one command on a fresh machine.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install } from '../app/install.mjs';
import { setUpSystem } from './set-up.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'pairlog-tests-'));
const total = { passed: 0, failed: 0, skipped: 0 };

install('all');
const programs = setUpSystem();
const env = {
  ...process.env,
  PAIRLOG_PROGRAMS: JSON.stringify(programs),
  PLAYWRIGHT_JSON_OUTPUT_NAME: join(reports, 'browser.json'),
};

const node = (...args) =>
  spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit', env }).status === 0;

/** Adds a step's counts; a step that broke before it could count is one failure. */
const add = (step, finished, count) => {
  let counts;
  try {
    counts = count();
  } catch {
    counts = { passed: 0, failed: 0, skipped: 0 };
  }
  if (!finished && counts.failed === 0) counts.failed = 1;
  for (const key of Object.keys(total)) total[key] += counts[key] ?? 0;
  const skipped = counts.skipped ? `, ${counts.skipped} skipped` : '';
  console.log(`— ${step}: passed ${counts.passed}, failed ${counts.failed}${skipped}\n`);
};

add(
  'build',
  node(
    'node_modules/vite/bin/vite.js',
    'build',
    '--config',
    'app/vite.config.ts',
    '--logLevel',
    'warn',
  ),
  () => ({ passed: 1, failed: 0 }),
);

const { runChecks } = await import('./checks/run.mjs');
const checked = await runChecks();
add('checks', checked.failed === 0, () => checked);

const unitReport = join(reports, 'unit.json');
const unit = node(
  'node_modules/vitest/vitest.mjs',
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${unitReport}`,
);
add('unit, property and simulation tests', unit, () => {
  const report = JSON.parse(readFileSync(unitReport, 'utf8'));
  return {
    passed: report.numPassedTests,
    failed: Math.max(report.numFailedTests, report.success ? 0 : 1),
    skipped: report.numPendingTests + report.numTodoTests,
  };
});

const browser = node(
  'node_modules/@playwright/test/cli.js',
  'test',
  '--config',
  'tests/browser/playwright.config.ts',
  '--reporter=list,json',
);
add('browser tests', browser, () => {
  const { stats } = JSON.parse(readFileSync(env.PLAYWRIGHT_JSON_OUTPUT_NAME, 'utf8'));
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected,
    skipped: stats.skipped,
  };
});

const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exit(total.failed === 0 ? 0 : 1);
