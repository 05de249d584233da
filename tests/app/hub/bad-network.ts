/** A network between a phone and a hub that does what networks do to requests, by a seed. */
import { once } from 'node:events';
import {
  createServer,
  request,
  type IncomingMessage,
  type OutgoingHttpHeaders,
  type ServerResponse,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import { seeded } from '../../seeded.ts';

const mischiefs = [
  'drop request',
  'drop answer',
  'twice',
  'again later',
  'late',
  'page',
  'redirect',
  'other json',
  'empty',
  'half request',
  'half answer',
] as const;
type Mischief = (typeof mischiefs)[number];

export interface BadNetwork {
  readonly url: string;
  /** Share of requests to which something happens; 0: a good network. */
  badness: number;
  /** How often each thing happened. */
  readonly done: ReadonlyMap<string, number>;
  /** Waits for what is still under way by itself, then ends. */
  close(): Promise<void>;
}

interface Answer {
  readonly status: number;
  readonly headers: OutgoingHttpHeaders;
  readonly body: Buffer;
}

const bytesOf = async (stream: AsyncIterable<Buffer>): Promise<Buffer> => {
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part);
  return Buffer.concat(parts);
};

const PAGE = '<!doctype html><title>Welcome</title><form>Room and name</form>';

export const badNetwork = async (hubUrl: string, seed: number): Promise<BadNetwork> => {
  const random = seeded(seed);
  const done = new Map<string, number>();
  const later = new Set<Promise<unknown>>();
  const pause = (ms: number) => new Promise((soon) => setTimeout(soon, ms));

  const forward = async (asked: IncomingMessage, body: Buffer): Promise<Answer> => {
    const { connection: _, 'transfer-encoding': __, ...headers } = asked.headers;
    const sent = request(`${hubUrl}${asked.url}`, {
      method: asked.method,
      headers: { ...headers, ...(body.length > 0 && { 'content-length': body.length }) },
    });
    sent.end(body);
    const [answer] = (await once(sent, 'response')) as [IncomingMessage];
    return {
      status: answer.statusCode ?? 0,
      headers: answer.headers,
      body: await bytesOf(answer),
    };
  };

  const give = (to: ServerResponse, { status, headers, body }: Answer) => {
    const { connection: _, 'keep-alive': __, 'transfer-encoding': ___, ...rest } = headers;
    to.writeHead(status, rest);
    to.end(body);
  };

  const handle = async (asked: IncomingMessage, to: ServerResponse, what: Mischief | null) => {
    const body = await bytesOf(asked);
    switch (what) {
      case null:
        return give(to, await forward(asked, body));
      case 'drop request':
        return void asked.socket.destroy();
      case 'drop answer':
        await forward(asked, body);
        return void asked.socket.destroy();
      case 'twice': {
        const [first, second] = await Promise.all([forward(asked, body), forward(asked, body)]);
        return give(to, random() < 0.5 ? first : second);
      }
      case 'again later': {
        const again = pause(random() * 60).then(() => forward(asked, body));
        later.add(again);
        void again.finally(() => later.delete(again));
        return give(to, await forward(asked, body));
      }
      case 'late':
        await pause(random() * 40);
        return give(to, await forward(asked, body));
      case 'page':
        to.writeHead(200, { 'content-type': 'text/html' });
        return void to.end(PAGE);
      case 'redirect':
        to.writeHead(302, { location: '/sign-in-page' });
        return void to.end();
      case 'other json':
        to.writeHead(200, { 'content-type': 'application/json' });
        return void to.end('{"status":"ok","error":null,"data":[]}');
      case 'empty':
        to.writeHead(204);
        return void to.end();
      case 'half request':
        return give(to, await forward(asked, body.subarray(0, body.length >> 1)));
      case 'half answer': {
        const answer = await forward(asked, body);
        const { connection: _, 'transfer-encoding': __, ...headers } = answer.headers;
        to.writeHead(answer.status, { ...headers, 'content-length': answer.body.length });
        to.write(answer.body.subarray(0, answer.body.length >> 1));
        await pause(5);
        return void asked.socket.destroy();
      }
    }
  };

  const network: { badness: number } = { badness: 0 };
  const server = createServer((asked, to) => {
    if (asked.url === '/sign-in-page') {
      to.writeHead(200, { 'content-type': 'text/html' });
      to.end(PAGE);
      return;
    }
    const isBad = random() < network.badness;
    const what = isBad ? (mischiefs[Math.floor(random() * mischiefs.length)] as Mischief) : null;
    if (what !== null) done.set(what, (done.get(what) ?? 0) + 1);
    handle(asked, to, what).catch(() => asked.socket.destroy());
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    get badness() {
      return network.badness;
    },
    set badness(share) {
      network.badness = share;
    },
    done,
    async close() {
      await Promise.allSettled(later);
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await closed;
    },
  };
};
