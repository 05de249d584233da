/** Sends what is due to be sent to closed phones, some at a time, and again later where a push service asks for that. */
import webPush from 'web-push';
import type { HubDeps } from '../answers.ts';
import {
  dropGoneAddress,
  dueDevices,
  nextDue,
  settleWakeUp,
  takeWakeUp,
  type WakeUp,
} from '../store/wake-ups.ts';
import { wakeKeyOf, type WakeKey } from '../store/waking.ts';
import type { Send, SendOutcome } from './send.ts';

/** Messages under way at once. */
const AT_ONCE = 8;
const DEVICES_A_ROUND = 500;
/** After something came in; what comes with it is then in the same message. */
const SOON_MS = 300;
/** Whatever else happens: another hub on the same database may have died. */
const LOOK_EVERY_MS = 60_000;
const FIRST_RETRY_MS = 30_000;
const LAST_RETRY_MS = 3_600_000;
/** Then the notice is read where the app is opened, as without push. */
const GIVE_UP_MS = 24 * 3_600_000;

export interface Waker {
  /** Something may be due; returns at once. */
  soon(): void;
  /** Sends all that is due now, and resolves when it has been tried. */
  run(): Promise<void>;
  stop(): Promise<void>;
}

export const newWakeKey = (): WakeKey => webPush.generateVAPIDKeys();

/**
 * How long to wait after a try that came to nothing: twice as long each time, an hour at most, never less than asked for.
 * @param jitter 0 to 1: spreads those that failed together
 */
export const retryDelayMs = (tries: number, afterMs: number, jitter: number): number =>
  Math.max(
    Math.min(afterMs, GIVE_UP_MS),
    Math.min(FIRST_RETRY_MS * 2 ** Math.min(tries, 20), LAST_RETRY_MS) * (0.5 + 0.5 * jitter),
  );

export const createWaker = (
  { db, now, log }: Pick<HubDeps, 'db' | 'now' | 'log'>,
  send: Send,
  jitter: () => number = Math.random,
): Waker => {
  const settle = async (wakeUp: WakeUp, outcome: SendOutcome): Promise<void> => {
    switch (outcome.what) {
      case 'sent':
        return settleWakeUp(db, wakeUp, { sentMs: now(), next: null });
      case 'gone':
        return dropGoneAddress(db, wakeUp);
      case 'refused':
        return settleWakeUp(db, wakeUp, { sentMs: null, next: null });
      case 'later': {
        const at = now() + retryDelayMs(wakeUp.tries, outcome.afterMs, jitter());
        const next = at - wakeUp.askedMs > GIVE_UP_MS ? null : at;
        return settleWakeUp(db, wakeUp, { sentMs: null, next });
      }
    }
  };

  const wake = async (group: string, device: string): Promise<void> => {
    const wakeUp = await takeWakeUp(db, group, device, now());
    if (!wakeUp) return;
    const outcome = await send(wakeUp.address, await wakeKeyOf(db, wakeUp.group, newWakeKey));
    await settle(wakeUp, outcome);
    // Neither who nor where.
    log?.({ event: 'wake', outcome: outcome.what });
  };

  const round = async (): Promise<void> => {
    const due = await dueDevices(db, now(), DEVICES_A_ROUND);
    const one = async (): Promise<void> => {
      for (let next = due.shift(); next; next = due.shift()) await wake(next.group_id, next.device);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, one));
  };

  let stopped = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let plannedAt = Infinity;
  let running: Promise<void> | null = null;
  /** Plans the next look, unless one comes earlier: what comes in all the time does not put it off. */
  const within = (ms: number) => {
    const at = performance.now() + ms;
    if (stopped || plannedAt <= at) return;
    clearTimeout(timer);
    plannedAt = at;
    timer = setTimeout(look, ms);
    timer.unref();
  };
  const run = async (): Promise<void> => {
    while (running) await running;
    running = round().finally(() => (running = null));
    await running;
  };
  const look = () => {
    plannedAt = Infinity;
    const work = async () => {
      await run();
      const at = await nextDue(db);
      within(at === null ? LOOK_EVERY_MS : Math.min(LOOK_EVERY_MS, Math.max(SOON_MS, at - now())));
    };
    work().catch((error: unknown) => {
      log?.({ level: 'error', event: 'wake', error: (error as Error).name });
      within(LOOK_EVERY_MS);
    });
  };
  return {
    soon: () => within(SOON_MS),
    run,
    async stop() {
      stopped = true;
      clearTimeout(timer);
      await running?.catch(() => undefined);
    },
  };
};
