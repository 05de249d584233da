/**
 * Codes of invites that were made on this device, until they expire: the hub keeps only their fingerprints, so what is not
 * kept here cannot be shown again.
 */
import * as z from 'zod/mini';
import { inviteCodeSchema, recordIdSchema } from '../../../core/records/index.ts';
import { session, store } from '../../parts/state.ts';
import type { MadeInvite } from './invite-states.ts';

const keptSchema = z.array(
  z.object({ tester: recordIdSchema, code: inviteCodeSchema, expiresAt: z.number() }),
);

const keyHere = (): string => `invites ${session.value?.group ?? ''}`;

/** The codes that are still good, the latest of each tester. */
export const keptInvites = async (nowMs: number): Promise<readonly MadeInvite[]> => {
  const read = z.safeParse(keptSchema, await store.draft(keyHere()));
  const good = read.success ? read.data.filter(({ expiresAt }) => expiresAt > nowMs) : [];
  return [...new Map(good.map((one) => [one.tester, one])).values()];
};

/** Keeps a code that was just made. Where this device has no room it stands on the screen still. */
export const keepInvite = async (made: MadeInvite, nowMs: number): Promise<void> => {
  const others = (await keptInvites(nowMs)).filter(({ tester }) => tester !== made.tester);
  await store.saveDraft(keyHere(), [...others, made]);
};
