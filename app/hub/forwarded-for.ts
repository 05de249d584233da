/** Whom does a reverse proxy name as the one who asks? */
import { isIP } from 'node:net';

/** `192.0.2.7:51234` and `[2001:db8::1]:443`: some proxies add the port. */
const WITH_PORT = /^(?:\[([^\]]*)\]|([^:]*))(?::\d+)?$/;

/** The last address of an `X-Forwarded-For`, which the nearest proxy added, without a port; null where it is none. */
export const forwardedFor = (header: string): string | null => {
  const last = header.split(',').at(-1)?.trim() ?? '';
  const [, inBrackets, before] = WITH_PORT.exec(last) ?? [];
  const address = inBrackets ?? before ?? last;
  return isIP(address) > 0 ? address : null;
};
