/** One built desk in a browser: its hub, its data, and a walk from place to place that measures each. */
import { pathToFileURL } from 'node:url';
import { devices, type Browser, type Page } from '@playwright/test';
import type { HubProcess } from '../browser/hub-process.ts';
import { writeHeads } from '../browser/write-heads.ts';
import type { BenchPlace } from './desk-places.ts';
import type { LargeGroup } from './large-group.ts';

export interface Measured {
  /** From the press to the frame that shows the answer. */
  readonly thereMs: number;
  /** The longest task of the page's thread, until the place has stood still for a while. */
  readonly longestMs: number;
  /** The same by the thread's processor time: the longest of any task. */
  readonly longestCpuMs: number;
  /** Elements of the page when the answer is there. */
  readonly nodes: number;
}

export interface Side {
  walk(
    places: readonly BenchPlace[],
    pictures?: string,
  ): AsyncGenerator<readonly [name: string, measured: Measured]>;
  close(): Promise<void>;
}

/** What follows the answer belongs to the place for so long: pictures below, answers that take longer. */
const AFTER_MS = 2500;

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds, by the clock and by the thread's processor time. */
  readonly dur?: number;
  readonly tdur?: number;
}

/** Tells the page's thread from those of the browser's own pages, which also draw. */
const MARK = 'desk-bench';

/** The longest task of the page's main thread, ms. */
const longestTask = (trace: Buffer): { readonly wall: number; readonly cpu: number } => {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: readonly TraceEvent[] };
  const mark = traceEvents.find(({ name }) => name === MARK);
  if (!mark) throw new Error('the page left no mark in the trace');
  let [wall, cpu] = [0, 0];
  for (const { name, ph, pid, tid, dur = 0, tdur = 0 } of traceEvents) {
    if (ph !== 'X' || !name.endsWith('RunTask') || pid !== mark.pid || tid !== mark.tid) continue;
    wall = Math.max(wall, dur / 1000);
    cpu = Math.max(cpu, tdur / 1000);
  }
  return { wall, cpu };
};

/** Goes there by a press in the page, and waits for what was not there before. */
const press = ({ href, link, shows }: { href?: string; link?: string; shows: string }) =>
  new Promise<number>((done, fail) => {
    const began = performance.now();
    const main = document.querySelector('main');
    const before = new Set(main?.querySelectorAll('*') ?? []);
    const anchor =
      link === undefined
        ? Object.assign(document.createElement('a'), { href })
        : document.querySelector(link);
    if (!anchor) return fail(new Error(`no link ${link}`));
    if (href !== undefined) document.body.append(anchor);
    anchor.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
    if (href !== undefined) anchor.remove();
    const look = () => {
      const isThere = [...document.querySelectorAll(shows)].some((one) => !before.has(one));
      if (isThere) return requestAnimationFrame(() => done(performance.now() - began));
      if (performance.now() - began > 180_000) return fail(new Error(`never there: ${shows}`));
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });

/** @param root the checkout whose build is measured, with its own hub */
export const openDeskSide = async (
  browser: Browser,
  root: string,
  group: LargeGroup,
): Promise<Side> => {
  const hubAt = new URL('tests/browser/hub-process.ts', pathToFileURL(`${root}/`));
  const { startHubProcess } = (await import(hubAt.href)) as {
    startHubProcess: () => Promise<HubProcess>;
  };
  const hub = await startHubProcess();
  const context = await browser.newContext({ ...devices['Desktop Chrome'], locale: 'en-GB' });
  // tsx names every function by this helper, which the page does not have.
  await context.addInitScript('globalThis.__name = (named) => named');
  const joining = await context.newPage();
  await joining.goto(`${hub.url}/join#${hub.codes.lead}`);
  await joining.getByRole('button', { name: 'Join' }).click();
  await joining.locator('main h1').waitFor();
  await joining.waitForTimeout(1000);
  await writeHeads(joining, group.revisions);
  await joining.close();

  const addressOf = ({ to }: BenchPlace): string | undefined => {
    if (to === 'all-shoes') return '/desk';
    return 'path' in to ? `/desk/${group.project}/${to.path}`.replace(/\/$/, '') : undefined;
  };
  const goCold = async (page: Page, place: BenchPlace): Promise<number> => {
    const began = Date.now();
    await page.goto(`${hub.url}${addressOf(place)}`);
    await page.locator(place.shows).first().waitFor({ timeout: 180_000 });
    return Date.now() - began;
  };
  const goWarm = (page: Page, place: BenchPlace): Promise<number> => {
    const href = addressOf(place);
    const link = typeof place.to === 'object' && 'link' in place.to ? place.to.link : undefined;
    return page.evaluate(press, {
      shows: place.shows,
      ...(href !== undefined && { href }),
      ...(link !== undefined && { link }),
    });
  };
  const measure = async (page: Page, place: BenchPlace): Promise<Measured> => {
    const categories = ['toplevel', 'devtools.timeline', 'blink.user_timing'];
    await browser.startTracing(page, { categories });
    const thereMs = await (place.cold ? goCold(page, place) : goWarm(page, place));
    const nodes = await page.evaluate(() => document.querySelectorAll('*').length);
    await page.waitForTimeout(AFTER_MS);
    await page.evaluate((mark) => performance.mark(mark), MARK);
    const { wall, cpu } = longestTask(await browser.stopTracing());
    return { thereMs, longestMs: wall, longestCpuMs: cpu, nodes };
  };
  return {
    async *walk(places, pictures) {
      const page = await context.newPage();
      for (const place of places) {
        yield [place.name, await measure(page, place)];
        if (pictures)
          await page.screenshot({ path: `${pictures}/${place.name}.png`, fullPage: true });
      }
      await page.close();
    },
    async close() {
      await context.close();
      await hub.stop();
    },
  };
};
