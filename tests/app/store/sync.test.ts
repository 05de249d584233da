/** When does a device sync: after another round, beside another page, by hand and by itself? */
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openStore, type Store, type StoreOptions } from '../../../app/store/index.ts';
import { nextSyncMs } from '../../../app/store/sync.ts';
import type { BodyOf, RecordId } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { testHub, type TestHub } from '../hub/hub-for-tests.ts';
import { newId } from '../../new-id.ts';

/** One lock as browsers have it (Node 20 has none): who asks waits in line, or not at all. */
const oneLock = () => {
  let last: Promise<unknown> = Promise.resolve();
  let held = 0;
  const request = async <T>(
    _name: string,
    { ifAvailable, signal }: { ifAvailable?: boolean; signal?: AbortSignal },
    work: (lock: unknown) => Promise<T> | T,
  ): Promise<T> => {
    if (ifAvailable && held > 0) return work(null);
    const before = last;
    held++;
    const granted = (async () => {
      await Promise.race([
        before,
        new Promise((_, reject) =>
          signal?.addEventListener('abort', () => reject(signal.reason as Error)),
        ),
      ]);
      return work({});
    })();
    last = Promise.allSettled([before, granted]).then(() => held--);
    return granted;
  };
  return { request };
};

// What of a page the schedule needs.
vi.stubGlobal('window', new EventTarget());
vi.stubGlobal(
  'document',
  Object.assign(new EventTarget(), { visibilityState: 'visible', cookie: '' }),
);

let hub: TestHub;
let locks: ReturnType<typeof oneLock>;
let count = 0;
beforeEach(async () => {
  hub = await testHub();
  locks = oneLock();
  vi.stubGlobal('navigator', { locks });
});
afterEach(() => vi.useRealTimers());

const tester = '00000000-0000-7000-8000-000000000001' as RecordId;
const joined = (options?: Partial<StoreOptions>) => hub.joined('tester', tester, options);

const log = async (store: Store, distanceM: number) => {
  const body: BodyOf<'run'> = {
    project: newId(),
    pair: newId(),
    tester,
    startedAt: '2026-05-02T07:30:00+02:00',
    distanceM: metres(distanceM),
    distanceFrom: 'typed',
  };
  expect(await store.save('run', body)).toMatchObject({ ok: true });
};

/** A network that stops at the next request of a path until it is let go. */
const gate = () => {
  let stopsAt: string | null = null;
  let arrived = () => undefined as void;
  let open = () => undefined as void;
  return {
    fetch: (async (input: RequestInfo | URL, init?: RequestInit) => {
      if (stopsAt !== null && new Request(input).url.includes(stopsAt)) {
        stopsAt = null;
        const opened = new Promise<void>((go) => (open = go));
        arrived();
        await opened;
      }
      return hub.fetch(input, init);
    }) as typeof fetch,
    /** Resolves when the request is there, and waits. */
    stopAt: (path: string) =>
      new Promise<void>((there) => {
        stopsAt = path;
        arrived = there;
      }),
    letGo: () => open(),
  };
};

/** Runs what begins a round, until that round has looked through its outbox for the last time, and still runs. */
const untilAllIsSent = async <T>(network: ReturnType<typeof gate>, begin: () => T): Promise<T> => {
  const pushing = network.stopAt('/push');
  const begun = begin();
  await pushing;
  const pulling = network.stopAt('/pull');
  network.letGo();
  await pulling;
  return begun;
};

const settles = async (ask: () => Promise<boolean>, withinMs: number) => {
  const deadline = performance.now() + withinMs;
  while (!(await ask())) {
    if (performance.now() > deadline) return false;
    await new Promise((soon) => setTimeout(soon, 50));
  }
  return true;
};

describe('a sync by hand', () => {
  it('waits for the round that runs and then sends what that one did not', async () => {
    const network = gate();
    const phone = await joined({ fetch: network.fetch });
    await log(phone, 1000);
    const [first] = await untilAllIsSent(network, () => [phone.sync()] as const);
    await log(phone, 2000);
    const second = phone.sync();
    network.letGo();
    expect(await first).toMatchObject({ what: 'done', pushed: 1 });
    expect(await second).toMatchObject({ what: 'done', pushed: 1 });
    expect((await phone.unsent()).revisions).toBe(0);
  });

  it('does not wait for ever', async () => {
    const phone = await joined();
    void locks.request('pairlog-sync', {}, () => new Promise(() => undefined));
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const outcome = phone.sync();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(await outcome).toEqual({ what: 'busy' });
  });

  it('says what went wrong in its own round', async () => {
    const phone = await joined({ fetch: hub.fetch });
    await hub.db.destroy();
    expect(await phone.sync()).toEqual({ what: 'hub-trouble' });
  });
});

describe('a device that cannot keep what comes', () => {
  it('says so, and takes it in once it can', async () => {
    const phone = await joined({ fetch: hub.fetch });
    await log(phone, 5000);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new RangeError('too deep, or no room');
    });
    const said = vi.spyOn(console, 'error').mockReturnValue();
    expect(await phone.sync()).toEqual({ what: 'device-trouble' });
    expect(said).toHaveBeenCalledOnce();
    put.mockRestore();
    said.mockRestore();
    expect(await phone.sync()).toMatchObject({ what: 'done', pushed: 1 });
  });
});

describe('the sync by itself', () => {
  it('comes back soon where another tab is at it', async () => {
    const phone = await joined();
    await log(phone, 1000);
    let end = () => undefined as void;
    const other = locks.request('pairlog-sync', {}, () => new Promise<void>((go) => (end = go)));
    const stop = phone.startSyncing();
    // The first round of the page finds the other one at it.
    await new Promise((later) => setTimeout(later, 2500));
    end();
    await other;
    const sent = await settles(async () => (await phone.unsent()).revisions === 0, 5000);
    stop();
    expect(sent).toBe(true);
  });

  it('sends soon what was saved while a round of its own was ending', async () => {
    const network = gate();
    const phone = await joined({ fetch: network.fetch });
    await log(phone, 1000);
    const stop = await untilAllIsSent(network, () => phone.startSyncing());
    await log(phone, 2000);
    network.letGo();
    const sent = await settles(async () => (await phone.unsent()).revisions === 0, 5000);
    stop();
    expect(sent).toBe(true);
  });
});

describe('a phone that somebody has just come to', () => {
  it('asks as often as a desk for some minutes, then leaves its radio alone', () => {
    expect(nextSyncMs('tester', 0)).toBe(20_000);
    expect(nextSyncMs('tester', 4 * 60_000)).toBe(20_000);
    expect(nextSyncMs('tester', 5 * 60_000)).toBe(5 * 60_000);
    expect(nextSyncMs('lead', 60 * 60_000)).toBe(20_000);
  });

  it('hears at once of what came in while another window was used', async () => {
    const phone = await joined();
    const desk = await hub.joined('lead');
    const stop = phone.startSyncing();
    // The first round of the page is over.
    await settles(async () => (await phone.unsent()).revisions === 0, 100);
    await new Promise((later) => setTimeout(later, 2600));
    const body = {
      project: newId(),
      round: newId(),
      code: '101',
      sizeMm: 270,
    } as unknown as BodyOf<'pair'>;
    const pair = await desk.save('pair', body);
    if (!pair.ok) throw new Error('no pair');
    const handOut = { project: body.project, pair: pair.value.revision.id, tester };
    const from = '2026-05-02T07:30:00+02:00';
    expect(await desk.save('hand-out', { ...handOut, from, blind: true })).toMatchObject({
      ok: true,
    });
    await desk.sync();
    expect(await phone.list('hand-out')).toEqual([]);
    window.dispatchEvent(new Event('focus'));
    const heard = await settles(async () => (await phone.list('hand-out')).length === 1, 3000);
    stop();
    expect(heard).toBe(true);
  });
});

describe('a page that opens while another one is being left', () => {
  it('hears of what that one took in without being able to tell', async () => {
    const name = `left-${++count}`;
    const channel = globalThis.BroadcastChannel;
    vi.stubGlobal('BroadcastChannel', undefined);
    const left = await joined({ name });
    vi.stubGlobal('BroadcastChannel', channel);
    const desk = await hub.joined('lead');
    const project = newId();
    const body = {
      project,
      round: newId(),
      code: '101',
      sizeMm: 270,
    } as unknown as BodyOf<'pair'>;
    expect(await desk.save('pair', body)).toMatchObject({ ok: true });
    await desk.sync();

    const page = openStore({ name, fetch: hub.fetch });
    expect(await page.list('pair')).toEqual([]);
    let told = 0;
    page.subscribe((change) => {
      if ('kinds' in change && change.kinds.has('pair')) told++;
    });
    await left.sync();
    expect(told).toBe(0);
    expect(await page.sync()).toMatchObject({ what: 'done', pulled: 0 });
    expect(told).toBe(1);
    expect(await page.list('pair')).toHaveLength(1);
    await page.sync();
    expect(told).toBe(1);
  });

  it('is told nothing where nothing came', async () => {
    const name = `quiet-${++count}`;
    const left = await joined({ name });
    await left.sync();
    const page = openStore({ name, fetch: hub.fetch });
    const changes: unknown[] = [];
    page.subscribe((change) => 'kinds' in change && changes.push(change));
    await page.sync();
    expect(changes).toEqual([]);
  });
});
