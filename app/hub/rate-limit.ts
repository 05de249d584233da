/** How often may something be tried that can be guessed, or that costs? */

export interface RateLimit {
  /** Takes a try for this key; false where none is left. */
  take(key: string, nowMs: number): boolean;
  /** Gives back a try that was none. */
  forgive(key: string): void;
}

interface WhatIsRemembered {
  /** Keys at most. */
  readonly keys: number;
  /** One more than that: forgets the one that went quiet longest ago, or has no try for the new one. */
  readonly whenFull: 'forget' | 'refuse';
}

/** At most `most` tries per key in each window of `windowMs`, counted from the first of them. */
export const rateLimit = (
  most: number,
  windowMs: number,
  { keys, whenFull }: WhatIsRemembered = { keys: 10_000, whenFull: 'forget' },
): RateLimit => {
  interface Window {
    readonly from: number;
    tries: number;
  }
  // The first of the map went quiet longest ago or, where none is forgotten, began longest ago.
  const windows = new Map<string, Window>();
  const isOver = ({ from }: Window, nowMs: number) => nowMs >= from + windowMs;
  const makesRoom = (nowMs: number): boolean => {
    if (windows.size < keys) return true;
    const [key, window] = windows.entries().next().value as [string, Window];
    return (whenFull === 'forget' || isOver(window, nowMs)) && windows.delete(key);
  };
  return {
    take(key, nowMs) {
      const last = windows.get(key);
      const window = last && !isOver(last, nowMs) ? last : { from: nowMs, tries: 0 };
      if (window.tries >= most) return false;
      if (window !== last || whenFull === 'forget') {
        windows.delete(key);
        if (!makesRoom(nowMs)) return false;
        windows.set(key, window);
      }
      window.tries++;
      return true;
    },
    forgive(key) {
      const window = windows.get(key);
      if (window) window.tries--;
    },
  };
};

/** So many 16-bit groups from the front of an IPv6 address, or bytes from the front of an IPv4 address. */
const prefixOf = (address: string, groups: number, bytes: number): string => {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  const plain = mapped ?? address;
  if (!plain.includes(':')) return plain.split('.').slice(0, bytes).join('.');
  const [head = '', tail] = plain.split('%')[0]?.split('::') ?? [];
  const left = head === '' ? [] : head.split(':');
  const right = tail === undefined || tail === '' ? [] : tail.split(':');
  const zeros = tail === undefined ? 0 : Math.max(0, 8 - left.length - right.length);
  return [...left, ...Array<string>(zeros).fill('0'), ...right]
    .slice(0, groups)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(':');
};

/** The key of an address: of IPv6 the first 64 bits, because one household has all of the rest. */
export const addressKey = (address: string): string => prefixOf(address, 4, 4);

/** The key of its network: what one subscriber is commonly given at most, IPv4 /24 and IPv6 /48. */
export const networkKey = (address: string): string => prefixOf(address, 3, 3);
