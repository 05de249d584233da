/** A specialist receives findings and reports, in a language of their own, without a network too, and nothing else. */
import { expect, test } from '@playwright/test';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', 'demo-data/wear-test.pairlog');
});
test.afterEach(() => hub.stop());

test('a report that is sent opens on the specialist’s phone without the hub', async ({
  page: lead,
  browser,
}) => {
  await lead.goto(`${hub.url}/join#${hub.codes.lead}`);
  await lead.getByRole('button', { name: 'Join' }).click();
  await lead.getByRole('link', { name: /Demo trainer/ }).click();
  await lead.locator('.tabs').waitFor();
  const project = hub.url + new URL(lead.url()).pathname;
  await lead.goto(`${project}/report?trade=upper&languages=zh`);
  await lead.getByLabel('Round').selectOption({ label: 'Round 1' });
  await lead
    .getByRole('article')
    .getByRole('heading', { name: /Round 1：帮面工种单/ })
    .waitFor();
  await lead.getByRole('button', { name: 'Send to the specialists' }).click();
  await lead.getByText(/^Sent\. Specialists receive it/).waitFor();
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await lead.getByRole('button', { name: 'Invite a specialist' }).click();
  const code = await lead.locator('.code').textContent();
  await lead.goto(`${hub.url}/unsent`);
  await lead.getByText('Everything is with your group.').waitFor();

  const context = await browser.newContext({ locale: 'zh-CN' });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  const file = page.waitForResponse(
    (answer) => answer.url().includes('/v1/attachment/') && answer.status() === 200,
  );
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: '加入' }).click();
  await expect(page.getByRole('heading', { name: '帮面版型 · 帮面' })).toBeVisible();
  const finding = page.getByRole('article').filter({ hasText: 'Heel slips in the heel cup' });
  await expect(finding.getByText(/^部件：帮面版型。工种：帮面。/)).toBeVisible();
  await expect(finding.getByText(/3\s*mm$/)).toBeVisible();
  await page.getByRole('radio', { name: '发泡' }).check({ force: true });
  await expect(finding).toHaveCount(0);
  await page.getByRole('radio', { name: '全部' }).check({ force: true });

  // Nothing else is theirs, whatever the address.
  await page.goto(`${hub.url}/desk`);
  await expect(page.getByRole('heading', { name: '报告' })).toBeVisible();
  await (await file).finished();
  await page.evaluate(() => navigator.serviceWorker.ready);

  await hub.pause();
  await page.getByRole('link', { name: /打开/ }).click();
  await expect(page.getByRole('heading', { name: /Round 1：帮面工种单/ })).toBeVisible();
  await expect(page.locator('.foot-map-picked').first()).toBeAttached();
  // Its own styles hold inside the app's policy, which allows none inline.
  expect(troubles.filter((text) => text.includes('Content Security Policy'))).toEqual([]);
  await context.close();
  await hub.resume();
});
