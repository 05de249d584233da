/**
 * A page of another origin on the hub's own site, in a real browser: it may make the browser ask the hub, cookie and
 * all, and must get nothing by it. Another port of one host is the same site to a browser, and so is a sibling
 * subdomain; names under `.localhost` lead to this machine (RFC 6761).
 */
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
let stranger: Server;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
  stranger = createServer((_, answer) => {
    answer.setHeader('content-type', 'text/html');
    answer.end('<!doctype html><title>Canteen</title><p>Menu of the week');
  });
  stranger.listen(0, '127.0.0.1');
  await once(stranger, 'listening');
});
test.afterEach(async () => {
  stranger.close();
  await hub.stop();
});

const portOf = (address: string) => new URL(address).port;

/** What the stranger's page tries: every way in which a page may send a body elsewhere. */
const attack = (page: Page, hubUrl: string, token: string) =>
  page.evaluate(
    async ({ url, body }) => {
      const plain = { method: 'POST', credentials: 'include', body } as const;
      const headers = { 'content-type': 'application/json' };
      await fetch(url, { ...plain, mode: 'no-cors' }).catch(() => undefined);
      await fetch(url, { ...plain, headers }).catch(() => undefined);
      navigator.sendBeacon(url, body);
      const form = document.createElement('form');
      form.method = 'POST';
      form.action = url;
      form.enctype = 'text/plain';
      form.target = 'frame';
      const frame = document.createElement('iframe');
      frame.name = 'frame';
      const input = document.createElement('input');
      // The rest of the object's text is the name, so that name=value reads as JSON.
      input.name = `${body.slice(0, -1)},"x":"`;
      input.value = '"}';
      form.append(input);
      document.body.append(frame, form);
      form.submit();
      await new Promise((done) => frame.addEventListener('load', done, { once: true }));
    },
    {
      url: `${hubUrl}/v1/return`,
      body: JSON.stringify({ token, device: 'e'.repeat(16) }),
    },
  );

const isIn = async (page: Page, token: string) =>
  (
    await page.request.get(`${hub.url}/v1/pull`, { headers: { authorization: `Bearer ${token}` } })
  ).status() === 200;

for (const [what, hubHost, strangerHost] of [
  ['another port of the same host', 'localhost', 'localhost'],
  ['a sibling subdomain', 'hub.team.localhost', 'canteen.team.localhost'],
] as const)
  test(`a page on ${what} does not take over the lead who visits it`, async ({ page }) => {
    const hubUrl = `http://${hubHost}:${portOf(hub.url)}`;
    await page.goto(`${hubUrl}/join#${hub.codes.lead}`);
    await page.getByRole('button', { name: 'Join' }).click();
    await page.waitForURL('**/desk');
    const cookies = await page.context().cookies(`${hubUrl}/v1/return`);
    expect(cookies.map(({ name }) => name)).toContain('pairlog-return');

    await page.goto(`http://${strangerHost}:${(stranger.address() as AddressInfo).port}/`);
    const stolen = 's'.repeat(43);
    await attack(page, hubUrl, stolen);
    expect(await isIn(page, stolen)).toBe(false);

    // The lead is who they were, and the cookie still brings them back where the browser clears the rest.
    await page.goto(`${hubUrl}/`);
    const session = await page.context().newCDPSession(page);
    await session.send('Storage.clearDataForOrigin', {
      origin: hubUrl,
      storageTypes: 'indexeddb,cache_storage,service_workers,local_storage',
    });
    await page.goto(`${hubUrl}/`);
    await expect(page.getByText('The browser had cleared this phone.')).toBeVisible();
  });
