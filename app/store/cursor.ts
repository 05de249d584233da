/** How far has this device read the hub's feed, and by how much is its clock off the hub's? */
import type { StoreContext } from './context.ts';

/** Up to where this device has taken the feed in; null: nothing yet. */
export const cursorIn = ({ withDatabase }: StoreContext): Promise<string | null> =>
  withDatabase(async (db) => ((await db.get('meta', 'cursor')) as string | undefined) ?? null);

/** What the hub's clock showed more than this device's at the last sync, ms; 0: they agree, or it is not known. */
export const clockOffsetIn = ({ withDatabase }: StoreContext): Promise<number> =>
  withDatabase(async (db) => ((await db.get('meta', 'clockOffset')) as number | undefined) ?? 0);
