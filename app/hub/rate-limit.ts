/** How often may something be tried that can be guessed, or that costs? */

export interface RateLimit {
  /** Takes a try for this key; false where none is left. */
  take(key: string, nowMs: number): boolean;
  /** Gives back a try that was none. */
  forgive(key: string): void;
}

/** Keys remembered at most; beyond it the ones that went quiet longest ago are forgotten. */
const MOST_KEYS = 10_000;

/** At most `most` tries per key in each window of `windowMs`, counted from the first of them. */
export const rateLimit = (most: number, windowMs: number): RateLimit => {
  const windows = new Map<string, { from: number; tries: number }>();
  const current = (key: string, nowMs: number) => {
    const window = windows.get(key);
    return window && nowMs < window.from + windowMs ? window : undefined;
  };
  return {
    take(key, nowMs) {
      const window = current(key, nowMs) ?? { from: nowMs, tries: 0 };
      if (window.tries >= most) return false;
      window.tries++;
      // Moved to the end: the first keys of the map are those that went quiet longest ago.
      windows.delete(key);
      windows.set(key, window);
      if (windows.size > MOST_KEYS) windows.delete(windows.keys().next().value as string);
      return true;
    },
    forgive(key) {
      const window = windows.get(key);
      if (window) window.tries--;
    },
  };
};

/** The key of an address: of IPv6 the first 64 bits, because one household has all of the rest. */
export const addressKey = (address: string): string => {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined) return mapped;
  if (!address.includes(':')) return address;
  const [head = '', tail] = address.split('%')[0]?.split('::') ?? [];
  const left = head === '' ? [] : head.split(':');
  const right = tail === undefined || tail === '' ? [] : tail.split(':');
  const zeros = tail === undefined ? 0 : Math.max(0, 8 - left.length - right.length);
  const groups = [...left, ...Array<string>(zeros).fill('0'), ...right];
  return `${groups
    .slice(0, 4)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(':')}::/64`;
};
