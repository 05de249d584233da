/** A finger as the browser sees it: touches by the DevTools protocol, which scroll the page like a real one's. */
import type { CDPSession, Locator, Page } from '@playwright/test';
import { stillness } from './stillness.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

const STEPS = 5;

export class Finger {
  readonly #page: Page;
  readonly #session: Promise<CDPSession>;

  constructor(page: Page) {
    this.#page = page;
    this.#session = page.context().newCDPSession(page);
  }

  /** Goes from one point to the other and stays there, so that the page does not fly on. */
  async move(from: Point, to: Point): Promise<void> {
    const session = await this.#session;
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: [...points] });
    await touch('touchStart', [from]);
    for (let step = 1; step <= STEPS; step++) {
      const share = step / STEPS;
      await touch('touchMove', [
        { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) },
      ]);
    }
    await this.#page.waitForTimeout(60);
    await touch('touchMove', [to]);
    await touch('touchEnd', []);
    await stillness(this.#page);
  }

  /** A point of the element that is on top there; it is scrolled to the middle first. Null where there is none. */
  async pointOn(target: Locator, share = 0.7): Promise<Point | null> {
    return target.evaluate((element, across) => {
      element.scrollIntoView({ block: 'center', behavior: 'instant' });
      const box = element.getBoundingClientRect();
      for (const part of [across, 0.5, 0.3, 0.1, 0.9]) {
        const [x, y] = [box.x + part * box.width, box.y + box.height / 2];
        const top = document.elementFromPoint(x, y);
        if (top && (element.contains(top) || (top.tagName === 'LABEL' && top.contains(element))))
          return { x, y };
      }
      return null;
    }, share);
  }
}
