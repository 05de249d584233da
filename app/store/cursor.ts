/** How far has this device read the hub's feed? */
import type { StoreContext } from './context.ts';

/** Up to where this device has taken the feed in; null: nothing yet. */
export const cursorIn = ({ withDatabase }: StoreContext): Promise<string | null> =>
  withDatabase(async (db) => ((await db.get('meta', 'cursor')) as string | undefined) ?? null);
