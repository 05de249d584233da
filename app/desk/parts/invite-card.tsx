/** A one-time code to join with, as letters and as a square code to scan. */
import { encode } from 'uqr';
import { formatDateTime } from '../../parts/format.ts';
import { d } from '../../words/index.ts';

/** The square code as one path, a unit square a module, with the quiet border that scanners need. */
const pathOf = (text: string) => {
  const { data, size } = encode(text, { border: 4 });
  const path = data
    .flatMap((row, y) => row.map((dark, x) => (dark ? `M${x},${y}h1v1h-1z` : '')))
    .join('');
  return { path, size };
};

/** Whether nothing but this machine reaches that name. */
const isLocal = (name: string): boolean => /^(localhost|127\.|\[?::1)/.test(name);

export interface Invite {
  readonly code: string;
  readonly expiresAt: number;
  readonly who: string;
}

export const InviteCard = ({ code, expiresAt, who }: Invite) => {
  // The code stands after the #: a browser keeps that part to itself, so it is in no log.
  const link = `${location.origin}/join#${code}`;
  const { path, size } = pathOf(link);
  return (
    <div class="sheet" role="status">
      <p>{d().testers.scan(who)}</p>
      <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={link}>
        <path d={path} fill="#000" shape-rendering="crispEdges" />
      </svg>
      <p class="code">{code}</p>
      <p class="small">
        <a href={link}>{link}</a>
      </p>
      {isLocal(location.hostname) && <p class="small">{d().testers.localOnly}</p>}
      <p class="soft small">{d().testers.validUntil(formatDateTime(expiresAt))}</p>
    </div>
  );
};
