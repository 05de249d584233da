/**
 * `npm run bench:desk [TESTERS] [RUNS] [FOLDER]`: a desk that holds much, in a real browser. Prints how long
 * each tab took to be there and the longest time that the page could not answer; with a folder, keeps a
 * picture of each. Needs `npm run build` first.
 */
import { mkdirSync } from 'node:fs';
import { chromium, devices } from '@playwright/test';
import { startHubProcess } from '../browser/hub-process.ts';
import { launchOptions } from '../browser/programs.ts';
import { largeGroup } from './large-group.ts';

const [testers = 1000, runs = 200_000] = process.argv.slice(2, 4).map(Number);
const folder = process.argv[4];
if (folder) mkdirSync(folder, { recursive: true });

const hub = await startHubProcess();
const browser = await chromium.launch(launchOptions);
const context = await browser.newContext({ ...devices['Desktop Chrome'], locale: 'en-GB' });
const page = await context.newPage();
await page.goto(`${hub.url}/join#${hub.codes.lead}`);
await page.getByRole('button', { name: 'Join' }).click();
await page.locator('main h1').waitFor();
await page.waitForTimeout(1000);

const { project, revisions } = largeGroup(testers, runs);
for (let at = 0; at < revisions.length; at += 20_000)
  await page.evaluate(
    (heads) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const tx = opening.result.transaction('heads', 'readwrite');
          for (const head of heads) tx.objectStore('heads').put(head);
          tx.oncomplete = () => {
            opening.result.close();
            done();
          };
          tx.onerror = () => fail(new Error('not written'));
        };
      }),
    revisions.slice(at, at + 20_000),
  );

const ready = {
  complaints: '.foot-map-zone:not([data-level=unasked])',
  pairs: 'tbody tr',
  comfort: 'tbody tr',
  testers: 'tbody tr',
  rounds: '.sheet',
} as const;

console.log(`${testers} testers, ${runs} runs\n`);
console.log('| tab | there after | longest time without an answer |\n| --- | --- | --- |');
await page.addInitScript(() => {
  const stalls: number[] = [];
  Object.assign(window, { stalls });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) stalls.push(duration);
  }).observe({ type: 'longtask', buffered: true });
});
for (const [tab, selector] of Object.entries(ready)) {
  const began = Date.now();
  await page.goto(`${hub.url}/desk/${project}/${tab}`);
  await page.locator(selector).first().waitFor({ timeout: 120_000 });
  const took = Date.now() - began;
  await page.waitForTimeout(1500);
  const longest = await page.evaluate(() =>
    Math.max(0, ...(window as unknown as { stalls: number[] }).stalls),
  );
  console.log(
    `| ${tab} | ${(took / 1000).toFixed(1)} s | ${longest === 0 ? 'under 50 ms' : `${longest.toFixed(0)} ms`} |`,
  );
  if (folder) await page.screenshot({ path: `${folder}/${tab}.png` });
}
await browser.close();
await hub.stop();
