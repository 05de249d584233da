/** What a device keeps in its own database, asked past the app: whether a thing is there for good, not only shown. */
import { expect, type Page } from '@playwright/test';

const read = <T>(page: Page, store: string, key: string | null): Promise<T> =>
  page.evaluate(
    ([name, wanted]) =>
      new Promise<T>((done) => {
        const opening = indexedDB.open('pairlog');
        opening.onsuccess = () => {
          const records = opening.result.transaction(name).objectStore(name);
          const asking: IDBRequest = wanted === null ? records.getAll() : records.get(wanted);
          asking.onsuccess = () => {
            opening.result.close();
            done(asking.result as T);
          };
        };
      }),
    [store, key] as const,
  );

/** The records of one kind of the log that this device holds. */
export const recordsHeld = async <B>(page: Page, kind: string): Promise<readonly B[]> =>
  (await read<{ kind: string; body: B }[]>(page, 'heads', null))
    .filter((head) => head.kind === kind)
    .map(({ body }) => body);

/** What was typed and not saved, by the form. */
export const draftsHeld = (page: Page): Promise<readonly unknown[]> => read(page, 'drafts', null);

/** How many photos and files this device holds. */
export const photosHeld = async (page: Page): Promise<number> =>
  (await read<unknown[]>(page, 'attachments', null)).length;

const LANGUAGES = { English: 'en', 简体中文: 'zh' } as const;

/** Chooses the language on the settings' screen that is open, and waits until the device has it. */
export const chooseLanguage = async (page: Page, name: keyof typeof LANGUAGES): Promise<void> => {
  await page.getByText(name, { exact: true }).click();
  await expect(page.getByRole('radio', { name })).toBeChecked();
  // The screen speaks it before it is written; a page that is left at once would lose it.
  await expect
    .poll(
      async () =>
        (await read<{ language?: string } | undefined>(page, 'settings', 'settings'))?.language ??
        'en',
    )
    .toBe(LANGUAGES[name]);
};
