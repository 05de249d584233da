/**
 * A notice reaches a phone on which the app is closed. Everything is the real thing but the push service: no browser
 * of a machine without a network gets an address at one. So the page is given an address at a push service on this
 * machine, the hub sends there, that service reads the message with the phone's own keys, and the browser hands it to the
 * service worker as if it had come over the air.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { randomBytes } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  expect,
  test,
  type APIRequestContext,
  type BrowserContext,
  type CDPSession,
  type Page,
  type Worker,
} from '@playwright/test';
import {
  newRecordId,
  sealRevision,
  type RecordId,
  type Revision,
} from '../../core/records/index.ts';
import { startPushService, type Phone, type PushService } from '../app/hub/push-service.ts';
import { axeFaults } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
let service: PushService;
let folder: string;

test.beforeEach(async () => {
  service = await startPushService();
  folder = await mkdtemp(join(tmpdir(), 'pairlog-notices-'));
  const authority = join(folder, 'authority.crt');
  await writeFile(authority, service.authority);
  hub = await startHubProcess(...['--demo', DEMO, '--push-service-for-tests', authority]);
});
test.afterEach(async () => {
  await hub.stop();
  await service.stop();
  await rm(folder, { recursive: true });
});

/** The browser gives the page this address, once the person has agreed; all else of the Push API stays as it is. */
const giveAddress = async (context: BrowserContext, phone: Phone) => {
  await context.addInitScript((address) => {
    const held = { on: localStorage.getItem('test-address') === 'on' };
    const change = (on: boolean) => {
      held.on = on;
      localStorage.setItem('test-address', on ? 'on' : 'off');
    };
    const subscription = {
      endpoint: address.endpoint,
      options: { applicationServerKey: null },
      toJSON: () => address,
      unsubscribe: () => Promise.resolve(change(false)),
    } as unknown as PushSubscription;
    Object.assign(PushManager.prototype, {
      subscribe: ({ applicationServerKey }: PushSubscriptionOptionsInit) => {
        Object.assign(subscription.options, { applicationServerKey });
        change(true);
        return Promise.resolve(subscription);
      },
      getSubscription: () => Promise.resolve(held.on ? subscription : null),
    });
  }, phone.address);
};

const joinWith = async (page: Page, code: string | null) => {
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('heading', { name: 'Today' }).waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
};

/** The offer to put the app on the home screen comes before that of notices. */
const declineInstall = async (page: Page) => {
  const card = page.locator('.notice', { hasText: 'Keep Pairlog on your home screen' });
  await card.getByRole('button', { name: 'Not now' }).click();
  await card.waitFor({ state: 'hidden' });
  await page.reload();
};

/** A lead who writes by plain requests. */
const leadOf = async (request: APIRequestContext) => {
  const token = randomBytes(32).toString('base64url');
  const headers = { authorization: `Bearer ${token}`, origin: hub.url };
  const joined = await request.post(`${hub.url}/v1/join`, {
    data: { code: hub.codes.lead, token, device: 'c'.repeat(16) },
    headers,
  });
  const { member } = (await joined.json()) as { member: { id: RecordId } };
  const pulled = await request.get(`${hub.url}/v1/pull?scope=all`, { headers });
  const { revisions } = (await pulled.json()) as { revisions: Revision[] };
  const pair = revisions.find(({ kind, body }) => kind === 'pair' && body?.['code'] === '637');
  return {
    async stopUse(reason: string) {
      const project = pair?.body?.['project'];
      const notice = sealRevision(
        {
          ...{ kind: 'stop-use', author: member.id, sv: 1 },
          id: newRecordId(Date.now(), randomBytes(16)),
          body: { project, pairs: [pair?.id], reason, from: '2026-11-01T08:00:00Z' },
        },
        `${Date.now().toString(16).padStart(12, '0')}-0000-${'c'.repeat(16)}` as Revision['stamp'],
        null,
      );
      const pushed = await request.post(`${hub.url}/v1/push`, {
        data: { revisions: [notice] },
        headers,
      });
      expect(await pushed.json()).toMatchObject({ verdicts: [{ verdict: 'stored' }] });
      return notice.id;
    },
    async invite(tester: RecordId) {
      const data = { role: 'tester', tester };
      const answer = await request.post(`${hub.url}/v1/invite`, { data, headers });
      return ((await answer.json()) as { code: string }).code;
    },
    reach: async (record: RecordId) =>
      (await (await request.get(`${hub.url}/v1/reach?record=${record}`, { headers })).json()) as {
        on: string[];
        woken: { sentAt: number | null }[];
      },
  };
};

/** The browser's own hand on the worker, from a page that is none of the app's. */
const handOnWorker = async (context: BrowserContext) => {
  const blank = await context.newPage();
  const browser: CDPSession = await context.newCDPSession(blank);
  const registered = new Promise<string>((done) => {
    browser.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      const own = registrations.find(({ scopeURL }) => scopeURL.startsWith(hub.url));
      if (own) done(own.registrationId);
    });
  });
  await browser.send('ServiceWorker.enable');
  const registrationId = await registered;
  const origin = hub.url;
  return {
    deliver: (data: string) =>
      browser.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data }),
    look: () =>
      browser.send('ServiceWorker.dispatchPeriodicSyncEvent', {
        ...{ origin, registrationId, tag: 'run-due' },
      }),
  };
};

const workerOf = (context: BrowserContext): Worker => {
  const worker = context.serviceWorkers().find((one) => one.url().startsWith(hub.url));
  if (!worker) throw new Error('the app has no service worker');
  return worker;
};

/** The part of the worker's own scope that is asked here. */
interface Scope {
  readonly registration: ServiceWorkerRegistration;
  readonly NotificationEvent: new (type: string, init: { notification: unknown }) => Event;
  dispatchEvent(event: Event): boolean;
}

const shownBy = (worker: Worker) =>
  worker.evaluate(async () =>
    (await (globalThis as unknown as Scope).registration.getNotifications()).map(
      ({ title, body, lang, tag }) => ({ title, body, lang, tag }),
    ),
  );

/** Remembers what the icon is told, in a page or in the worker. */
const noteBadge = () => {
  const told: number[] = [];
  const scope = globalThis as unknown as { toldBadge: number[]; navigator: object };
  scope.toldBadge = told;
  const note = (count: number) => {
    told.push(count);
    return Promise.resolve();
  };
  Object.assign(Object.getPrototypeOf(scope.navigator) as object, {
    setAppBadge: note,
    clearAppBadge: () => note(0),
  });
};
const badgeTold = (from: { evaluate<T>(work: () => T): Promise<T> }) =>
  from.evaluate(() => (globalThis as unknown as { toldBadge: number[] }).toldBadge.at(-1));

test('a stop-use notice is shown by a phone on which the app is closed, and is there when it is opened', async ({
  page,
  context,
  request,
}) => {
  const phone = service.phone();
  await giveAddress(context, phone);
  await context.addInitScript(noteBadge);
  await context.grantPermissions(['notifications'], { origin: hub.url });
  await joinWith(page, hub.codes.tester);
  await declineInstall(page);
  await page.getByRole('button', { name: 'Turn notices on' }).click();
  await expect(page.getByText('Notices are on.')).toBeVisible();
  const hand = await handOnWorker(context);
  const worker = workerOf(context);
  await worker.evaluate(noteBadge);
  await page.close();

  const lead = await leadOf(request);
  const notice = await lead.stopUse('The plate of this build cracked.');
  await expect.poll(() => service.told(phone)).toEqual(['open Pairlog']);
  expect(await lead.reach(notice)).toMatchObject({ woken: [{ sentAt: expect.any(Number) }] });

  // Nothing of it is on the phone yet, and nothing is shown.
  expect(await shownBy(worker)).toEqual([]);
  await hand.deliver(service.told(phone)[0] as string);
  await expect
    .poll(() => shownBy(worker))
    .toEqual([
      { title: 'Open Pairlog', body: 'There is a notice for you.', lang: 'en', tag: 'notice' },
    ]);
  await expect.poll(() => badgeTold(worker)).toBe(1);

  // It was fetched while the app was closed: it stands there without a network.
  await hub.pause();
  const opened = await context.newPage();
  await opened.goto(`${hub.url}/settings`);
  await expect(opened.getByText('On: this phone tells you even')).toBeVisible();
  // A press on the notification, as far as a browser without a screen has one: it may not bring windows forward.
  await worker.evaluate(async () => {
    const scope = globalThis as unknown as Scope;
    const [notification] = await scope.registration.getNotifications();
    scope.dispatchEvent(new scope.NotificationEvent('notificationclick', { notification }));
  });
  await expect(opened.getByRole('heading', { name: 'Do not wear pair 637' })).toBeVisible();
  expect(new URL(opened.url()).pathname).toBe('/');
  await expect(opened.getByText('The plate of this build cracked.')).toBeVisible();
  await expect.poll(() => badgeTold(opened)).toBe(1);

  // A second message for what is there: shown again, because a browser wants one for each.
  await hand.deliver('open Pairlog');
  await expect.poll(async () => (await shownBy(worker)).length).toBe(1);
  await opened.getByRole('button', { name: 'I have read it' }).click();
  await expect.poll(() => badgeTold(opened)).toBe(0);
  await expect.poll(() => shownBy(worker)).toEqual([]);
});

test('a phone says it in its own language, and even what cannot be fetched', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['notifications'], { origin: hub.url });
  await joinWith(page, hub.codes.tester);
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, '简体中文');
  const hand = await handOnWorker(context);
  const worker = workerOf(context);
  await worker.evaluate(noteBadge);
  await page.close();
  await hub.pause();
  await hand.deliver('');
  await expect
    .poll(() => shownBy(worker))
    .toEqual([{ title: '请打开 Pairlog', body: '有一条通知给你。', lang: 'zh', tag: 'notice' }]);
  await expect.poll(() => badgeTold(worker)).toBe(1);
  await hub.resume();
});

test('notices are offered once a run is logged, once, and Settings turns them on and off', async ({
  page,
  context,
  request,
}) => {
  const phone = service.phone();
  await giveAddress(context, phone);
  const lead = await leadOf(request);
  // Somebody who has not run yet is not asked.
  await context.grantPermissions(['notifications'], { origin: hub.url });
  await joinWith(page, await lead.invite(newRecordId(Date.now(), randomBytes(16))));
  await page.waitForLoadState('networkidle');
  await expect(page.getByText('You hold no pair yet.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Turn notices on' })).toHaveCount(0);

  const own = await context.browser()?.newContext({ locale: 'en-GB' });
  if (!own) throw new Error('no browser');
  await giveAddress(own, phone);
  await own.grantPermissions(['notifications'], { origin: hub.url });
  const t01 = await own.newPage();
  await joinWith(t01, hub.codes.tester);
  const offer = t01.getByRole('heading', { name: 'Get notices even when Pairlog is closed' });
  await t01.getByRole('heading', { name: 'Keep Pairlog on your home screen' }).waitFor();
  await expect(offer).toBeHidden();
  await declineInstall(t01);
  await expect(offer).toBeVisible();
  expect(await axeFaults(t01)).toEqual([]);
  await t01.getByRole('button', { name: 'Not now' }).click();
  await expect(offer).toBeHidden();
  await t01.reload();
  await expect(t01.getByRole('heading', { name: 'Remember to log?' })).toBeVisible();
  await expect(offer).toBeHidden();

  await t01.goto(`${hub.url}/settings`);
  const notices = t01.locator('section', { has: t01.getByRole('heading', { name: 'Notices' }) });
  await notices.getByRole('button', { name: 'Turn notices on' }).click();
  await expect(notices.getByText('On: this phone tells you')).toBeVisible();
  const notice = await lead.stopUse('The plate cracked.');
  await expect.poll(() => service.told(phone)).toHaveLength(1);
  await notices.getByRole('button', { name: 'Turn notices off' }).click();
  await expect(notices.getByText('Off: you see notices')).toBeVisible();
  await expect.poll(async () => (await lead.reach(notice)).on).toEqual([]);
  await lead.stopUse('Another plate cracked.');
  await t01.waitForTimeout(2000);
  expect(service.told(phone)).toHaveLength(1);
  expect(await axeFaults(t01)).toEqual([]);
  await own.close();
});

test('Settings says where notices cannot work, and what would help', async ({ page, context }) => {
  await joinWith(page, hub.codes.tester);
  await page.goto(`${hub.url}/settings`);
  // Nobody gave this browser leave: a press is answered with what to do.
  await page.getByRole('button', { name: 'Turn notices on' }).click();
  await expect(page.getByText('You have blocked notices for Pairlog.')).toBeVisible();

  const states = [
    ['tab on an iPhone', 'On an iPhone or iPad this works only from the home screen'],
    ['browser without it', 'This browser cannot do it.'],
  ] as const;
  for (const [what, said] of states) {
    const other = await context.newPage();
    await other.addInitScript((isTab) => {
      Reflect.deleteProperty(globalThis, 'PushManager');
      if (isTab) Object.defineProperty(navigator, 'standalone', { value: false });
    }, what === 'tab on an iPhone');
    await other.goto(`${hub.url}/settings`);
    await expect(other.getByText(said), what).toBeVisible();
    await expect(other.getByRole('button', { name: 'Turn notices on' })).toHaveCount(0);
    await other.close();
  }
});

/** Half an hour before midnight, so many days after the tester's last run, by the browser's clock. */
const lateOn = async (page: Page, days: number): Promise<number> => {
  const last = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const asking = opening.result.transaction('heads').objectStore('heads').getAll();
          asking.onsuccess = () => {
            opening.result.close();
            const runs = (asking.result as Revision[]).filter(({ kind }) => kind === 'run');
            done(Math.max(...runs.map(({ body }) => Date.parse(String(body?.['startedAt'])))));
          };
        };
      }),
  );
  const day = new Date(last);
  day.setDate(day.getDate() + days);
  return day.setHours(23, 30);
};

test('a run that was due is said on Today once a day, and marked on the icon of a closed app', async ({
  page,
  context,
}) => {
  await joinWith(page, hub.codes.tester);
  const due = await lateOn(page, 3);
  await page.clock.setFixedTime(due);
  await page.reload();
  // Nobody is reminded who did not ask for it.
  await expect(page.getByRole('button', { name: 'Not today' })).toHaveCount(0);
  await page.goto(`${hub.url}/settings`);
  await page.getByRole('button', { name: 'Turn reminders on' }).click();
  const section = page.locator('section', {
    has: page.getByRole('heading', { name: 'Reminders' }),
  });
  await expect(section.getByText(/^On. You log about every \d days, mostly around/)).toBeVisible();

  const worker = workerOf(context);
  const hand = await handOnWorker(context);
  await worker.evaluate(noteBadge);
  const lookAt = async (ms: number) => {
    await worker.evaluate((now) => (Date.now = () => now), ms);
    await hand.look();
  };
  // In the morning it is too early.
  await lookAt(due - 20 * 3_600_000);
  await page.waitForTimeout(1500);
  expect(await badgeTold(worker)).toBeUndefined();
  await lookAt(due);
  await expect.poll(() => badgeTold(worker)).toBe(1);
  expect(await shownBy(worker)).toEqual([]);

  await page.goto(hub.url);
  await expect(page.getByText('No run for 3 days')).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Not today' }).click();
  await expect(page.getByText('No run for 3 days')).toBeHidden();
  await page.reload();
  await page.getByRole('link', { name: 'Log a run in 637' }).waitFor();
  await page.waitForTimeout(1000);
  await expect(page.getByText('No run for 3 days')).toBeHidden();
  await page.clock.setFixedTime(due + 24 * 3_600_000);
  await page.reload();
  await expect(page.getByText('No run for 4 days')).toBeVisible();
});
