/**
 * Does a request come from one of the hub's own pages? A browser sends the cookie of a return along with whatever
 * any page of the same site asks, and ports and sibling subdomains are the same site (RFC 6265bis, "SameSite"). So
 * who sets that cookie or acts on it must say where the question comes from: `Sec-Fetch-Site` (W3C Fetch Metadata),
 * which browsers send over https and on this machine, else `Origin` (RFC 6454). No page can set either. A media type
 * of JSON makes a browser ask first whether another origin may send this at all, and the hub never says so.
 */
import type { Context, MiddlewareHandler } from 'hono';
import { fail, type Env, type HubDeps } from './answers.ts';

const lastOf = (list: string | undefined): string | undefined => list?.split(',').at(-1)?.trim();

/**
 * The origin at which browsers know this hub, by the request that reached it; null if the request names none.
 * @param behindProxy believes the scheme and the host that a reverse proxy says it was asked for
 */
export const originOf = (c: Context, behindProxy: boolean): string | null => {
  const { protocol, host } = new URL(c.req.url);
  const proxied = (name: string) => (behindProxy ? lastOf(c.req.header(name)) : undefined);
  const scheme = proxied('x-forwarded-proto') ?? protocol.slice(0, -1);
  const address = `${scheme}://${proxied('x-forwarded-host') ?? host}`;
  return URL.canParse(address) ? new URL(address).origin : null;
};

const isJson = (contentType: string | undefined): boolean =>
  /^application\/json\s*(;|$)/i.test(contentType ?? '');

/** More of what a stranger wrote is not kept in the log. */
const MOST_LOGGED = 100;

/** Refuses what comes from elsewhere, before anything of it is read or counted as a guess. */
export const ownPage =
  ({ originOf: ownOriginOf, log }: Pick<HubDeps, 'originOf' | 'log'>): MiddlewareHandler<Env> =>
  async (c, next) => {
    const site = c.req.header('sec-fetch-site');
    const origin = c.req.header('origin');
    const own = ownOriginOf ? ownOriginOf(c) : originOf(c, false);
    const isOwn = site === undefined ? own !== null && origin === own : site === 'same-origin';
    if (!isOwn) {
      const said = { site: site ?? '', origin: origin ?? '', own: own ?? '' };
      const short = Object.entries(said).map(([name, text]) => [name, text.slice(0, MOST_LOGGED)]);
      log?.({
        event: 'refused',
        path: c.req.path,
        why: 'origin',
        ...(Object.fromEntries(short) as typeof said),
      });
      return fail(c, 'not-allowed', 'origin');
    }
    if (!isJson(c.req.header('content-type'))) {
      log?.({ event: 'refused', path: c.req.path, why: 'content-type' });
      return fail(c, 'bad-request', 'content-type');
    }
    await next();
    return undefined;
  };
