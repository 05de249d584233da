/** How far has each tester come from an invite to a first run? By what hub, log and this device know. Pure. */
import { INVITE_HOURS, type RecordId } from '../../../core/records/index.ts';

/**
 * `logs`: their phone is in and a run came; `joined`: the phone is in, no run yet; `by-file`: runs came, but no phone is
 * signed in; `invited`: a code is open; `lapsed`: the code was not used in time; `none`: no code was made.
 */
export type InviteState = 'logs' | 'joined' | 'by-file' | 'invited' | 'lapsed' | 'none';

/** A code as it was made. The hub keeps only its fingerprint, so no other device can show it. */
export interface MadeInvite {
  readonly tester: RecordId;
  readonly code: string;
  readonly expiresAt: number;
}

export interface InviteKnowledge {
  /** Testers with a device that is not signed out. */
  readonly joined: ReadonlySet<RecordId>;
  /** Runs that count, by tester. */
  readonly runs: ReadonlyMap<RecordId, number>;
  /** When the latest code of each tester expires, in epoch milliseconds, whoever made it. */
  readonly until: ReadonlyMap<RecordId, number>;
  readonly nowMs: number;
}

export const inviteStateOf = (
  tester: RecordId,
  { joined, runs, until, nowMs }: InviteKnowledge,
): InviteState => {
  const logs = (runs.get(tester) ?? 0) > 0;
  if (joined.has(tester)) return logs ? 'logs' : 'joined';
  const ends = until.get(tester);
  if (ends !== undefined && ends > nowMs) return 'invited';
  if (logs) return 'by-file';
  return ends === undefined ? 'none' : 'lapsed';
};

const INVITE_MS = INVITE_HOURS * 3_600_000;

/** An entry of what was done in the group, as the hub tells it. */
interface Deed {
  readonly what: string;
  readonly atMs: number;
  readonly subject: string | null;
}

/** When each tester's latest code expires: by the hub's list of what was done, and by the codes made here. */
export const openUntil = (
  deeds: readonly Deed[],
  made: readonly MadeInvite[],
): ReadonlyMap<RecordId, number> => {
  const until = new Map<RecordId, number>();
  const put = (tester: RecordId, at: number) =>
    until.set(tester, Math.max(at, until.get(tester) ?? 0));
  for (const { what, atMs, subject } of deeds)
    if (what === 'invite tester' && subject !== null) put(subject as RecordId, atMs + INVITE_MS);
  for (const { tester, expiresAt } of made) put(tester, expiresAt);
  return until;
};
