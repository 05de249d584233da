/**
 * A push service on this machine, and phones that it reaches. It takes a message as one does (RFC 8030), checks who
 * signed it (RFC 8292) and reads it with the phone's own keys (RFC 8291): by Node's own cryptography, and with nothing of
 * what the hub encrypts by.
 */
import {
  createDecipheriv,
  createECDH,
  createPublicKey,
  hkdfSync,
  randomBytes,
  verify,
  type ECDH,
} from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:https';
import type { IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { lanCertificate } from '../../../app/hub/certificate.ts';
import type { WakeAddress } from '../../../core/records/index.ts';

const bytesOf = (base64url: string) => Buffer.from(base64url, 'base64url');

export interface PhoneKeys {
  readonly ecdh: ECDH;
  readonly auth: Buffer;
}

/** Key and nonce of a message (RFC 8291, section 3.4; RFC 8188, section 2.2 and 2.3). */
const secretsOf = ({ ecdh, auth }: PhoneKeys, salt: Buffer, sender: Buffer) => {
  const info = Buffer.concat([Buffer.from('WebPush: info\0'), ecdh.getPublicKey(), sender]);
  const ikm = Buffer.from(hkdfSync('sha256', ecdh.computeSecret(sender), auth, info, 32));
  const derived = (name: string, length: number) =>
    Buffer.from(hkdfSync('sha256', ikm, salt, Buffer.from(`Content-Encoding: ${name}\0`), length));
  return { key: derived('aes128gcm', 16), nonce: derived('nonce', 12) };
};

/** What a message says to the phone with these keys. @throws where it was not written for them, or was changed */
export const readMessage = (message: Buffer, keys: PhoneKeys): string => {
  const salt = message.subarray(0, 16);
  const recordSize = message.readUInt32BE(16);
  const sender = message.subarray(21, 21 + message.readUInt8(20));
  const sealed = message.subarray(21 + sender.length);
  if (sender.length !== 65) throw new Error('the sender’s key has 65 bytes');
  if (sealed.length > recordSize) throw new Error('a push message is one record');
  const { key, nonce } = secretsOf(keys, salt, sender);
  const opening = createDecipheriv('aes-128-gcm', key, nonce);
  opening.setAuthTag(sealed.subarray(-16));
  const padded = Buffer.concat([opening.update(sealed.subarray(0, -16)), opening.final()]);
  const end = padded.lastIndexOf(2);
  if (end === -1 || padded.subarray(end + 1).some((byte) => byte !== 0))
    throw new Error('the last record ends with 2 and zeros');
  return padded.subarray(0, end).toString('utf8');
};

export interface Signed {
  readonly key: string;
  readonly claims: { readonly aud: string; readonly exp: number; readonly sub: string };
}

/** Who signed, and what, by an `Authorization` of RFC 8292. @throws where the signature is not of the key beside it */
export const readSignature = (authorization: string): Signed => {
  const [, token, key] = /^vapid t=([^,\s]+), ?k=([\w-]{87})$/.exec(authorization) ?? [];
  const [header, claims, signature] = token?.split('.') ?? [];
  if (!header || !claims || !signature || !key) throw new Error('no signature of RFC 8292');
  const { alg } = JSON.parse(bytesOf(header).toString()) as { alg?: string };
  if (alg !== 'ES256') throw new Error(`signed by ${alg}`);
  const point = bytesOf(key);
  const jwk = {
    ...{ kty: 'EC', crv: 'P-256' },
    x: point.subarray(1, 33).toString('base64url'),
    y: point.subarray(33).toString('base64url'),
  };
  const signer = {
    key: createPublicKey({ key: jwk, format: 'jwk' }),
    dsaEncoding: 'ieee-p1363' as const,
  };
  if (!verify('sha256', Buffer.from(`${header}.${claims}`), signer, bytesOf(signature)))
    throw new Error('the signature is not of this key');
  return { key, claims: JSON.parse(bytesOf(claims).toString()) as Signed['claims'] };
};

export interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
  readonly atMs: number;
}

/** How the service answers: a status, headers, and how long it takes. */
export interface PushAnswer {
  readonly status: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly afterMs?: number;
}

export interface Phone {
  readonly path: string;
  readonly address: WakeAddress;
  readonly keys: PhoneKeys;
}

export interface PushService {
  readonly origin: string;
  /** The certificate of its authority. */
  readonly authority: string;
  readonly received: Received[];
  /** The most requests that were under way at once. */
  readonly mostAtOnce: () => number;
  /** Answers by path, the next one first; `201` where nothing is said. */
  readonly answers: Map<string, PushAnswer[]>;
  phone(): Phone;
  /** What this phone was told, in clear. */
  told(phone: Phone): readonly string[];
  stop(): Promise<void>;
}

let phones = 0;

export const startPushService = async (): Promise<PushService> => {
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-push-'));
  const { key, cert, authority } = await lanCertificate(folder, ['127.0.0.1'], Date.now());
  rmSync(folder, { recursive: true });
  const received: Received[] = [];
  const answers = new Map<string, PushAnswer[]>();
  let underWay = 0;
  let most = 0;
  const server = createServer({ key, cert }, (request, response) => {
    const parts: Buffer[] = [];
    most = Math.max(most, ++underWay);
    request.on('data', (part: Buffer) => parts.push(part));
    request.on('end', () => {
      const path = request.url ?? '';
      received.push({
        ...{ path, headers: request.headers, body: Buffer.concat(parts) },
        atMs: Date.now(),
      });
      const answer = answers.get(path)?.shift() ?? { status: 201 };
      setTimeout(() => {
        underWay--;
        response.writeHead(answer.status, answer.headers).end();
      }, answer.afterMs ?? 0);
    });
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const origin = `https://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return {
    origin,
    authority,
    received,
    answers,
    mostAtOnce: () => most,
    phone() {
      const path = `/phone/${++phones}`;
      const ecdh = createECDH('prime256v1');
      ecdh.generateKeys();
      const auth = randomBytes(16);
      const keys = { p256dh: ecdh.getPublicKey('base64url'), auth: auth.toString('base64url') };
      return { path, address: { endpoint: `${origin}${path}`, keys }, keys: { ecdh, auth } };
    },
    told: ({ path, keys }) =>
      received.filter((one) => one.path === path).map(({ body }) => readMessage(body, keys)),
    stop: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
};
