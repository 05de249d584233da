/** Who writes on this phone, when, and in which language? */
import type { Writer } from '../../drafts/answer.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { session } from '../../parts/state.ts';

/** Null: the phone belongs to nobody. */
export const writer = (): Writer | null => {
  const tester = session.value?.member;
  return tester ? { tester, at: toInstant(Date.now()), language: settings.value.language } : null;
};
