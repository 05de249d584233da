/**
 * A tester's hand on the real screen: it taps what is in view, swipes to what is not, types on the keypad,
 * and counts what each would take by the keystroke-level model.
 *
 * Operator times: Card, Moran & Newell, Commun. ACM 1980;23(7):396-410: K 0.28 s (average typist),
 * P 1.10 s, M 1.35 s. P was measured with a mouse; a finger's way is shorter (Lee et al., Hum. Mov.
 * Sci. 2015;44:211-224 measured fingers on glass), so this errs on the slow side. A tap on a control is
 * P + K, a key of the keypad K, a swipe P + K as well (common practice, no source). M stands before
 * each answer that must be thought of, by the paper's rules 0 to 4: none before what ends an entry.
 */
import type { Locator, Page } from '@playwright/test';
import { stillness } from './stillness.ts';

const SECONDS = { K: 0.28, P: 1.1, M: 1.35 } as const;
/** What an on-screen keypad covers while a text field has the focus, CSS px. Judgement, no source. */
const KEYPAD_PX = 290;

export class Hand {
  readonly #page: Page;
  taps = 0;
  swipes = 0;
  seconds = 0;

  constructor(page: Page) {
    this.#page = page;
  }

  think(): void {
    this.seconds += SECONDS.M;
  }

  /** Time in which the phone is busy, not the hand. */
  wait(seconds: number): void {
    this.seconds += seconds;
  }

  /** Taps that happen outside of this app, such as a camera's shutter. */
  tapElsewhere(): void {
    this.taps++;
    this.seconds += SECONDS.P + SECONDS.K;
  }

  async tap(target: Locator): Promise<void> {
    await target.waitFor();
    let point = await this.#pointInReach(target);
    for (let swipe = 0; point === null; swipe++) {
      if (swipe > 12) throw new Error(`no swipe brings it into reach: ${String(target)}`);
      await this.#swipeTowards(target);
      point = await this.#pointInReach(target);
    }
    await this.#page.touchscreen.tap(point.x, point.y);
    this.tapElsewhere();
  }

  /** Keys of the keypad, one tap each. */
  async type(text: string): Promise<void> {
    await this.#page.keyboard.type(text);
    this.taps += text.length;
    this.seconds += SECONDS.K * text.length;
  }

  /**
   * The point of the target nearest to its middle that is on top there, in the part of the window that
   * neither the keypad nor the bar at its foot covers; null where there is none.
   */
  async #pointInReach(target: Locator): Promise<{ x: number; y: number } | null> {
    await stillness(this.#page);
    return target.evaluate((element, keypad) => {
      const box = element.getBoundingClientRect();
      const typing = document.activeElement?.matches('input:not([type=radio],[type=checkbox])');
      const bottom = innerHeight - (typing ? keypad : 0);
      const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];
      for (const down of shares)
        for (const across of shares) {
          const [x, y] = [box.x + across * box.width, box.y + down * box.height];
          if (y < 0 || y > bottom) continue;
          const top = document.elementFromPoint(x, y);
          if (top !== null && element.contains(top)) return { x, y };
          // A caption's control lies under it and gets the tap.
          if (top !== null && top.contains(element) && top.tagName === 'LABEL') return { x, y };
        }
      return null;
    }, KEYPAD_PX);
  }

  async #swipeTowards(target: Locator): Promise<void> {
    await target.evaluate((element) => {
      const box = element.getBoundingClientRect();
      const down = box.y + box.height / 2 > innerHeight / 2;
      scrollBy({ top: (down ? 0.6 : -0.6) * innerHeight, behavior: 'instant' });
    });
    this.swipes++;
    this.seconds += SECONDS.P + SECONDS.K;
  }
}
