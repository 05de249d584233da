/** A one-time code to join with, as letters and as a square code to scan; it says whose phone joins what as what. */
import type { Role } from '../../../core/records/index.ts';
import { formatDateTime } from '../../parts/format.ts';
import { session } from '../../parts/state.ts';
import { d } from '../../words/index.ts';
import { SquareCode } from './square-code.tsx';

/** Whether nothing but this machine reaches the page's address, so that no phone can join by it. */
export const isThisMachineOnly = (): boolean => /^(localhost|127\.|\[?::1)/.test(location.hostname);

export interface Invite {
  readonly code: string;
  readonly expiresAt: number;
  readonly role: Role;
  /** The tester's code; null for leads and specialists. */
  readonly tester: string | null;
}

/** The code stands after the #: a browser keeps that part to itself, so it is in no log. */
export const inviteAddress = (code: string): string => `${location.origin}/join#${code}`;

export const InviteCard = ({ code, expiresAt, role, tester }: Invite) => {
  const link = inviteAddress(code);
  const group = session.value?.groupName ?? '';
  const words = d().testers;
  return (
    <div class="sheet" role="status">
      <p>{words.joins[role](group, tester ?? '')}</p>
      <SquareCode address={link} />
      <p class="code">{code}</p>
      <p class="small">
        <a href={link}>{link}</a>
      </p>
      {isThisMachineOnly() && <p class="small">{words.localOnly}</p>}
      <p class="soft small">{words.validUntil(formatDateTime(expiresAt))}</p>
    </div>
  );
};
