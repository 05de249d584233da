/** How does a device come in, come back, and renew what it comes in with? */
import type { Context, Hono, MiddlewareHandler } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import {
  invitedRequest,
  joinRequest,
  newRecordId,
  renewRequest,
  returnRequest,
  type DeviceId,
} from '../../../core/records/index.ts';
import { bodyOf, fail, noteDone, tooMany, type Env, type HubDeps } from '../answers.ts';
import { createGuesses } from '../guesses.ts';
import { ownPage } from '../own-page.ts';
import { joinByInvite, lookAtInvite, renewToken, type Joined } from '../store/members.ts';
import { keepReturn, returnBySecret } from '../store/returning.ts';

/**
 * Over https the name begins with `__Host-`: browsers then let no other host set it (RFC 6265bis), so that a
 * sibling subdomain cannot make a device come back as somebody else. Such a cookie has the path `/`.
 */
const RETURN_COOKIE = { https: '__Host-pairlog-return', http: 'pairlog-return' };
/** Browsers keep no cookie for longer than 400 days. */
const RETURN_COOKIE_S = 400 * 86_400;

export const joining = (api: Hono<Env>, member: MiddlewareHandler<Env>, deps: HubDeps): void => {
  const { db, now, random } = deps;
  // Taken before anything is looked up, so that many at once are no way around; given back where it was none.
  const guesses = createGuesses();
  const addressOf = (c: Context) => deps.addressOf?.(c) ?? 'unknown';
  const newSecret = () => Buffer.from(random(32)).toString('base64url');

  const isHttps = (c: Context) =>
    new URL(c.req.url).protocol === 'https:' || c.req.header('x-forwarded-proto') === 'https';
  const setReturnCookie = (c: Context, secret: string) => {
    const secure = isHttps(c);
    setCookie(c, secure ? RETURN_COOKIE.https : RETURN_COOKIE.http, secret, {
      httpOnly: true,
      sameSite: 'Strict',
      path: secure ? '/' : '/v1/return',
      maxAge: RETURN_COOKIE_S,
      secure,
    });
  };
  /** Over https only what this host has set itself. */
  const returnCookie = (c: Context): string =>
    getCookie(c, isHttps(c) ? RETURN_COOKIE.https : RETURN_COOKIE.http) ?? '';
  const ownPagesOnly = ownPage(deps);

  const welcome = async (
    c: Context,
    { group, groupName, caller, again }: Joined,
    device: DeviceId,
    what: string,
  ) => {
    if (!again) await noteDone(deps, { group, device, caller }, what);
    return c.json({
      member: { id: caller.member, role: caller.role, group, groupName },
      hubNow: now(),
    });
  };

  api.post('/join', ownPagesOnly, async (c) => {
    const forgive = guesses.takeCode(addressOf(c), now());
    if (!forgive) return tooMany(c, 600);
    const body = await bodyOf(c, joinRequest);
    if (!body.ok) {
      forgive();
      return body.answer;
    }
    const { code, token, device, deviceName, before } = body.value;
    const joined = await joinByInvite(
      db,
      { code, token, device, deviceName: deviceName ?? '', before },
      now(),
      () => newRecordId(now(), random(16)),
    );
    if (!joined) return fail(c, 'unknown-code');
    // A group that joins from one office is not locked out.
    forgive();
    if (joined === 'other-device') return fail(c, 'bad-request', 'device');
    const secret = newSecret();
    await keepReturn(db, joined.group, device, token, secret);
    setReturnCookie(c, secret);
    return welcome(c, joined, device, 'join');
  });

  // Before a device joins: whoever holds a code may join by it, so it tells nobody more. A wrong one is a guess.
  api.post('/invited', ownPagesOnly, async (c) => {
    const forgive = guesses.takeCode(addressOf(c), now());
    if (!forgive) return tooMany(c, 600);
    const body = await bodyOf(c, invitedRequest);
    if (!body.ok) {
      forgive();
      return body.answer;
    }
    const invited = await lookAtInvite(db, body.value.code, now());
    if (!invited) return fail(c, 'unknown-code');
    forgive();
    return c.json(invited);
  });

  // For a device whose browser cleared its storage, and with it the token.
  api.post('/return', ownPagesOnly, async (c) => {
    const forgive = guesses.takeSecret(addressOf(c), now());
    if (!forgive) return tooMany(c, 600);
    const body = await bodyOf(c, returnRequest);
    if (!body.ok) {
      forgive();
      return body.answer;
    }
    const { token, device, deviceName } = body.value;
    const nextSecret = newSecret();
    const back = await returnBySecret(
      db,
      {
        secret: returnCookie(c),
        nextSecret,
        token,
        device,
        deviceName: deviceName ?? '',
      },
      now(),
    );
    if (!back) return fail(c, 'unknown-code');
    forgive();
    if (back === 'other-device') return fail(c, 'bad-request', 'device');
    setReturnCookie(c, nextSecret);
    return welcome(c, back, device, 'return');
  });

  api.post('/renew', member, async (c) => {
    const body = await bodyOf(c, renewRequest);
    if (!body.ok) return body.answer;
    await renewToken(db, c.get('device'), body.value.token, now());
    return c.json({ hubNow: now() });
  });
};
