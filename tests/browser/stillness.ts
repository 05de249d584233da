import type { Page } from '@playwright/test';

/** Waits until the page has stopped scrolling by itself: it stood at one place for four frames. */
export const stillness = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((done) => {
        let last = Number.NaN;
        let same = 0;
        const look = () => {
          same = scrollY === last ? same + 1 : 0;
          last = scrollY;
          if (same >= 4) done();
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
