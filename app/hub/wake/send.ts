/**
 * One message to one push service (RFC 8030), encrypted for the device (RFC 8291) and signed with the group's key
 * (RFC 8292); both by the package `web-push`. It says nothing but that Pairlog is to be opened.
 */
import { request } from 'node:https';
import webPush from 'web-push';
import type { WakeKey } from '../store/waking.ts';
import type { WakeUp } from '../store/wake-ups.ts';
import { isSafeEndpoint, publicLookup, type PushServiceForTests } from './safe-endpoint.ts';

/** All that a phone is ever told. */
export const WAKE_PAYLOAD = 'open Pairlog';
/** How long a push service keeps it for a phone that is off. */
const TTL_S = 7 * 86_400;
/** Of several that wait for a phone that is off, the push service keeps the last (RFC 8030, section 5.4). */
const TOPIC = 'pairlog';
const TIMEOUT_MS = 10_000;
/** A hub that nobody can write to about it, in a domain that will never be (RFC 2606). */
const NO_CONTACT = 'mailto:hub@pairlog.invalid';

export type SendOutcome =
  | { readonly what: 'sent' }
  /** The push service knows the address no more. */
  | { readonly what: 'gone' }
  /** It will never take it; or the address leads where the hub does not send. */
  | { readonly what: 'refused' }
  /** Later, and not before so many milliseconds. */
  | { readonly what: 'later'; readonly afterMs: number };

export interface SendOptions {
  /** Whom a push service may write to about this hub: `mailto:` or `https:`; absent: the hub's own https address. */
  readonly contact?: string;
  readonly forTests?: PushServiceForTests;
}

export type Send = (address: WakeUp['address'], key: WakeKey) => Promise<SendOutcome>;

const contactFor = (contact: string | undefined, origin: string): string =>
  contact ?? (origin.startsWith('https://') && isSafeEndpoint(origin) ? origin : NO_CONTACT);

/** `Retry-After` in milliseconds, in seconds or as a date (RFC 9110, section 10.2.3); 0 where it says nothing. */
export const retryAfterMs = (header: string | undefined, nowMs: number): number => {
  if (header === undefined) return 0;
  if (/^\d+$/.test(header)) return Number(header) * 1000;
  const at = Date.parse(header);
  return Number.isNaN(at) ? 0 : Math.max(0, at - nowMs);
};

/** What a status of RFC 8030 and RFC 9110 says of a message. */
export const outcomeOf = (status: number, retryAfter: string | undefined, nowMs: number) => {
  if (status >= 200 && status < 300) return { what: 'sent' } as const;
  if (status === 404 || status === 410) return { what: 'gone' } as const;
  if (status === 429 || status >= 500)
    return { what: 'later', afterMs: retryAfterMs(retryAfter, nowMs) } as const;
  // A redirect as well: it could lead anywhere.
  return { what: 'refused' } as const;
};

interface Answer {
  readonly status: number;
  readonly retryAfter: string | undefined;
}

/** @throws where nothing answers in time */
const post = (
  endpoint: string,
  headers: Readonly<Record<string, string | number>>,
  body: Buffer,
  forTests: PushServiceForTests | undefined,
): Promise<Answer> =>
  new Promise((done, fail) => {
    const sending = request(
      endpoint,
      {
        method: 'POST',
        headers,
        // A connection of its own: one that was kept open would not be looked up again.
        agent: false,
        lookup: publicLookup(forTests),
        signal: AbortSignal.timeout(TIMEOUT_MS),
        ...(forTests && { ca: forTests.authority }),
      },
      (response) => {
        done({
          status: response.statusCode ?? 0,
          retryAfter: response.headers['retry-after'],
        });
        // Nothing of what it says is read.
        response.destroy();
      },
    );
    sending.on('error', fail);
    sending.end(body);
  });

export const createSend =
  ({ contact, forTests }: SendOptions = {}): Send =>
  async ({ endpoint, p256dh, auth, origin }, { publicKey, privateKey }) => {
    if (!isSafeEndpoint(endpoint, forTests)) return { what: 'refused' };
    const { headers, body } = webPush.generateRequestDetails(
      { endpoint, keys: { p256dh, auth } },
      WAKE_PAYLOAD,
      {
        vapidDetails: { subject: contactFor(contact, origin), publicKey, privateKey },
        TTL: TTL_S,
        urgency: 'high',
        topic: TOPIC,
        contentEncoding: 'aes128gcm',
      },
    );
    try {
      const { status, retryAfter } = await post(
        endpoint,
        headers as Record<string, string | number>,
        body as Buffer,
        forTests,
      );
      return outcomeOf(status, retryAfter, Date.now());
    } catch {
      return { what: 'later', afterMs: 0 };
    }
  };
