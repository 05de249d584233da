/**
 * May the hub send to this address? Whoever is a tester can name one, so it must lead to a push service on the open
 * internet and never to what only the hub's own machine or network reaches: https on its usual port, a name instead of a
 * number, and only public addresses behind that name, checked at the moment of connecting (a name may mean another
 * address the next time it is asked for).
 */
import { lookup, type LookupAddress, type LookupOptions } from 'node:dns';
import { isIP } from 'node:net';
import ipaddr from 'ipaddr.js';

/** Only for tests: a push service on this machine, on any port, with a certificate of this authority. */
export interface PushServiceForTests {
  readonly authority: string;
}

const LOCAL_NAMES = /(^|\.)(localhost|local|internal|home\.arpa|lan)\.?$/i;

/** Whether an address is one of the open internet (IANA's registries of special addresses, as `ipaddr.js` has them). */
export const isPublic = (address: string): boolean =>
  ipaddr.isValid(address) && ipaddr.process(address).range() === 'unicast';

const isLoopback = (address: string): boolean =>
  ipaddr.isValid(address) && ipaddr.process(address).range() === 'loopback';

/** Whether a text can be the address of a push service at all. */
export const isSafeEndpoint = (text: string, forTests?: PushServiceForTests): boolean => {
  if (!URL.canParse(text)) return false;
  const { protocol, username, password, hash, port, hostname } = new URL(text);
  if (protocol !== 'https:' || username !== '' || password !== '' || hash !== '') return false;
  if (forTests && (isLoopback(hostname) || hostname === 'localhost')) return true;
  const isNumber = isIP(hostname.replace(/^\[|\]$/g, '')) !== 0;
  return port === '' && !isNumber && hostname.includes('.') && !LOCAL_NAMES.test(hostname);
};

type Answered = (error: Error | null, address: string | LookupAddress[], family?: number) => void;

/** As `dns.lookup`, but a name behind which any address is not public is not found. */
export const publicLookup =
  (forTests?: PushServiceForTests) =>
  (hostname: string, options: LookupOptions, answer: Answered): void => {
    lookup(hostname, { ...options, all: true }, (error, addresses) => {
      if (error) return answer(error, []);
      const may = (address: string) =>
        isPublic(address) || (forTests !== undefined && isLoopback(address));
      const [first] = addresses;
      if (!first || !addresses.every(({ address }) => may(address)))
        return answer(new Error(`${hostname} does not lead to the open internet`), []);
      if (options.all) return answer(null, addresses);
      return answer(null, first.address, first.family);
    });
  };
