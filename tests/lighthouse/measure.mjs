/**
 * Lighthouse on the built app as a phone on a slow network sees it: today and log-a-run, median of five,
 * each category. Every run starts without any cache or service worker; only the sign-in is kept.
 * `npm run lighthouse` prints the table; exports `measure` for the test command.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));
const LEAST = 98;
const RUNS = 5;
const PORT = 9333;
const CATEGORIES = ['performance', 'accessibility', 'best-practices'];

/** Lighthouse is heavy, so it has a package.json of its own and is installed only here. */
const lighthouseOf = async () => {
  if (!existsSync(join(here, 'node_modules/lighthouse'))) {
    const { status } = spawnSync('npm', ['ci', '--no-fund', '--no-audit'], {
      cwd: here,
      stdio: 'inherit',
      shell: process.platform === 'win32',
    });
    if (status !== 0) throw new Error('npm could not install Lighthouse');
  }
  const path = createRequire(join(here, 'package.json')).resolve('lighthouse');
  return (await import(path)).default;
};

const startHub = (data) =>
  new Promise((done, fail) => {
    const child = spawn(
      process.execPath,
      [
        ...['--import', 'tsx', 'app/hub/server.ts', '--data', data, '--port', '0', '--quiet'],
        ...['--demo', 'demo-data/wear-test.pairlog'],
      ],
      { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] },
    );
    let output = '';
    child.stdout.on('data', (piece) => {
      output += String(piece);
      if (!output.includes('Stop with')) return;
      const url = /running: (\S+)/.exec(output)[1];
      const code = /as tester[^\n]*\n\s+\S+#([0-9A-Z]{10})/.exec(output)[1];
      done({ child, url, code });
    });
    child.on('exit', () => fail(new Error(`the hub did not start:\n${output}`)));
  });

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** @returns {Promise<{ page: string, category: string, median: number, scores: number[] }[]>} scores of 100 */
export async function measure(executablePath) {
  const lighthouse = await lighthouseOf();
  const scratch = mkdtempSync(join(tmpdir(), 'pairlog-lighthouse-'));
  const hub = await startHub(join(scratch, 'hub'));
  const context = await chromium.launchPersistentContext(join(scratch, 'browser'), {
    executablePath,
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
      ...['--disable-background-networking', `--remote-debugging-port=${PORT}`],
    ],
  });
  try {
    const page = context.pages()[0];
    await page.goto(`${hub.url}/join#${hub.code}`);
    await page.getByRole('button', { name: 'Join' }).click();
    const link = page.getByRole('link', { name: 'Log a run' });
    await link.waitFor();
    const log = await link.getAttribute('href');
    const session = await context.newCDPSession(page);
    await page.goto('about:blank');
    const results = [];
    for (const [name, path] of [
      ['today', '/'],
      ['log a run', log],
    ]) {
      const runs = [];
      for (let run = 0; run < RUNS; run++) {
        await session.send('Storage.clearDataForOrigin', {
          origin: hub.url,
          storageTypes: 'service_workers,cache_storage',
        });
        await session.send('Network.clearBrowserCache');
        const { lhr } = await lighthouse(hub.url + path, {
          port: PORT,
          onlyCategories: CATEGORIES,
          disableStorageReset: true,
          logLevel: 'error',
        });
        runs.push(lhr);
      }
      for (const category of CATEGORIES) {
        const scores = runs.map((lhr) => Math.round(100 * lhr.categories[category].score));
        results.push({ page: name, category, median: median(scores), scores });
      }
      const seconds = (audit) =>
        (median(runs.map((lhr) => lhr.audits[audit].numericValue)) / 1000).toFixed(2);
      console.log(
        `${name}: largest paint ${seconds('largest-contentful-paint')} s, blocked ${seconds('total-blocking-time')} s`,
      );
      const { audits, categories } = runs[0];
      const lost = CATEGORIES.flatMap((id) => categories[id].auditRefs)
        .filter(({ id, weight }) => weight > 0 && (audits[id].score ?? 1) < 1)
        .map(({ id }) => `${id} ${audits[id].score} (${audits[id].displayValue ?? ''})`);
      if (lost.length > 0) console.log(`  below full: ${lost.join(', ')}`);
    }
    return results;
  } finally {
    await context.close();
    hub.child.kill('SIGTERM');
    rmSync(scratch, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** Measures and judges; prints a line each. */
export async function lighthouseScores(executablePath) {
  const results = await measure(executablePath);
  for (const { page, category, median: score, scores } of results)
    console.log(
      `${score >= LEAST ? 'ok  ' : 'FAIL'} lighthouse: ${page}, ${category}: ${score} (${scores.join(' ')})`,
    );
  const failed = results.filter(({ median: score }) => score < LEAST).length;
  return { passed: results.length - failed, failed };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { setUpSystem } = await import('../set-up.mjs');
  const { failed } = await lighthouseScores(setUpSystem().chromium);
  process.exit(failed === 0 ? 0 : 1);
}
