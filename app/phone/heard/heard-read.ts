/** What of the news about their reports has the tester read, on this device? */
import * as z from 'zod/mini';
import type { Store } from '../../store/index.ts';

const KEY = 'heard';
const keptSchema = z.object({ thanks: z.array(z.string()), tests: z.array(z.string()) });

/** Ids of thanks that were read, and of tests whose end was. */
export type HeardRead = z.infer<typeof keptSchema>;

const NONE: HeardRead = { thanks: [], tests: [] };

export const readHeard = async (from: Pick<Store, 'setting'>): Promise<HeardRead> => {
  const read = z.safeParse(keptSchema, await from.setting(KEY));
  return read.success ? read.data : NONE;
};

/** Notes one as read; once more changes nothing. */
export const noteHeard = async (
  from: Pick<Store, 'setting' | 'saveSetting'>,
  what: keyof HeardRead,
  id: string,
): Promise<void> => {
  const before = await readHeard(from);
  if (before[what].includes(id)) return;
  await from.saveSetting(KEY, { ...before, [what]: [...before[what], id] });
};
