/** How often may this address try something that can be guessed? */

export interface RateLimit {
  /** Whether one more try is allowed now; counts it if so. */
  allow(key: string, nowMs: number): boolean;
}

/** At most `most` tries per key in any window of `windowMs`. Forgets keys that went quiet. */
export const rateLimit = (most: number, windowMs: number): RateLimit => {
  const tries = new Map<string, number[]>();
  return {
    allow(key, nowMs) {
      if (tries.size > 10_000)
        for (const [old, times] of tries)
          if ((times.at(-1) ?? 0) < nowMs - windowMs) tries.delete(old);
      const recent = (tries.get(key) ?? []).filter((at) => at > nowMs - windowMs);
      const allowed = recent.length < most;
      if (allowed) recent.push(nowMs);
      tries.set(key, recent);
      return allowed;
    },
  };
};
