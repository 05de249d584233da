/**
 * Which guesses of a code or a secret are looked at? DEVELOPERS.md says what that makes of guessing.
 *
 * A limit over all alone would let anybody close the door for everybody, so the first guesses of each
 * network are looked at whatever the others do, and only what comes after them shares one limit.
 */
import { addressKey, networkKey, rateLimit, type RateLimit } from './rate-limit.ts';

const HOUR_MS = 3_600_000;

const PER_ADDRESS = { most: 20, windowMs: HOUR_MS / 6 };
/** Enough for a person who mistypes. */
const FIRST_OF_NETWORK = { most: 3, windowMs: 24 * HOUR_MS };
/** Who has more networks than that gets no more first guesses: it bounds what all of them can try. */
const MOST_NETWORKS = 20_000;
const IN_ALL = { most: 300, windowMs: HOUR_MS };

/** Gives a guess back that was none. */
type Forgive = () => void;

export interface Guesses {
  /** Takes a guess of a code; null where it is not to be looked at. */
  takeCode(address: string, nowMs: number): Forgive | null;
  /** Takes a guess of a secret, which is too long to need a limit over all. */
  takeSecret(address: string, nowMs: number): Forgive | null;
}

export const createGuesses = (): Guesses => {
  const ofAddress = rateLimit(PER_ADDRESS.most, PER_ADDRESS.windowMs);
  const ofNetwork = rateLimit(FIRST_OF_NETWORK.most, FIRST_OF_NETWORK.windowMs, {
    keys: MOST_NETWORKS,
    whenFull: 'refuse',
  });
  const inAll = rateLimit(IN_ALL.most, IN_ALL.windowMs);
  const taken = (limit: RateLimit, key: string, nowMs: number): Forgive | null =>
    limit.take(key, nowMs) ? () => limit.forgive(key) : null;
  const takeSecret = (address: string, nowMs: number) =>
    taken(ofAddress, addressKey(address), nowMs);
  return {
    takeSecret,
    takeCode(address, nowMs) {
      const forgive = takeSecret(address, nowMs);
      if (!forgive) return null;
      const forgiveToo = taken(ofNetwork, networkKey(address), nowMs) ?? taken(inAll, 'all', nowMs);
      if (!forgiveToo) {
        forgive();
        return null;
      }
      return () => {
        forgive();
        forgiveToo();
      };
    },
  };
};
