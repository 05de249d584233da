/** What may a member ask of the hub itself? Who writes and reads which record stands in core (`policy.ts`). */
import type { Caller, Scope } from '../../core/records/index.ts';

/** Whether the caller may pull with this scope. */
export const mayPull = ({ role }: Caller, scope: Scope): boolean =>
  scope === 'mine' || role === 'lead';

/** What only a lead may do: invite, list and revoke the devices of others, read the audit. */
export const mayManage = ({ role }: Caller): boolean => role === 'lead';

/** Who may have a closed phone woken: only testers are ever told something that cannot wait. */
export const mayBeWoken = ({ role }: Caller): boolean => role === 'tester';
