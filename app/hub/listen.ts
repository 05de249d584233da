/** How is a server listened on, and stopped without cutting off what is under way? */
import { once } from 'node:events';
import type { Server } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import type { LanCertificate } from './certificate.ts';

type Fetch = Parameters<typeof createAdaptorServer>[0]['fetch'];

export interface Listening {
  readonly port: number;
  /** Answers what is under way, for as long as `patienceMs`, then stops. */
  close(): Promise<void>;
}

export interface SlowClients {
  /** Longest time for the headers of a request, and for all of it. */
  readonly headersMs: number;
  readonly requestMs: number;
}

const SLOW: SlowClients = { headersMs: 15_000, requestMs: 60_000 };
/** Open connections; more are refused, so that no flood of them takes all of the memory. */
const MOST_CONNECTIONS = 4000;
const PATIENCE_MS = 10_000;

export const listen = async (
  fetch: Fetch,
  port: number,
  host: string,
  certificate: LanCertificate | null = null,
  slow: SlowClients = SLOW,
): Promise<Listening> => {
  const server = createAdaptorServer({
    fetch,
    ...(certificate && { createServer: createSecureServer }),
    serverOptions: {
      ...(certificate && {
        key: certificate.key,
        cert: `${certificate.cert}\n${certificate.authority}`,
      }),
      connectionsCheckingInterval: Math.min(slow.headersMs, 30_000),
    },
  }) as Server;
  // A client that dribbles its request is cut off.
  server.headersTimeout = slow.headersMs;
  server.requestTimeout = slow.requestMs;
  server.keepAliveTimeout = 10_000;
  // Nor does one that never reads its answers hold them for ever.
  server.timeout = slow.requestMs;
  server.maxConnections = MOST_CONNECTIONS;
  server.listen(port, host);
  await once(server, 'listening');
  return {
    port: (server.address() as AddressInfo).port,
    async close() {
      const closed = once(server, 'close');
      server.close();
      server.closeIdleConnections();
      const cut = setTimeout(() => server.closeAllConnections(), PATIENCE_MS);
      await closed;
      clearTimeout(cut);
    },
  };
};
