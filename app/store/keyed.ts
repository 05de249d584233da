/** Drafts of half-filled forms and this device's own settings: values under a name, written as they come. */
import type { StoreContext } from './context.ts';

export interface KeyedStore {
  draft(key: string): Promise<unknown>;
  /** Resolves once the draft is kept; rejects where it could not be, so that the form can say so. */
  saveDraft(key: string, value: unknown): Promise<void>;
  dropDraft(key: string): Promise<void>;
  setting(key: string): Promise<unknown>;
  saveSetting(key: string, value: unknown): Promise<void>;
}

export const keyedStore = ({ withDatabase }: StoreContext): KeyedStore => ({
  draft: (key) => withDatabase((db) => db.get('drafts', key)),
  saveDraft: (key, value) =>
    withDatabase(async (db) => {
      await db.put('drafts', value, key);
    }),
  dropDraft: (key) => withDatabase((db) => db.delete('drafts', key)),
  setting: (key) => withDatabase((db) => db.get('settings', key)),
  saveSetting: (key, value) =>
    withDatabase(async (db) => {
      await db.put('settings', value, key);
    }),
});
