/** Puts many records into a device's database at once, as if they had been synced: no hub is asked. */
import type { Page } from '@playwright/test';
import type { Revision } from '../../core/records/index.ts';

const AT_ONCE = 20_000;

/** @param page of a device that has joined and syncs nothing at that moment */
export const writeHeads = async (page: Page, revisions: readonly Revision[]): Promise<void> => {
  for (let at = 0; at < revisions.length; at += AT_ONCE)
    await page.evaluate(
      (text) =>
        new Promise<void>((done, fail) => {
          const heads = JSON.parse(text) as readonly Revision[];
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
      // As text: Playwright takes each value of an object apart by itself.
      JSON.stringify(revisions.slice(at, at + AT_ONCE)),
    );
};
