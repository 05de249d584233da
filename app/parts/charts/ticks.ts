/** Where do the marks of an axis stand? */

/**
 * Round numbers (1, 2 or 5 times a power of ten apart) that cover `lo` to `hi` in about `count` steps.
 * The first is at most `lo`, the last at least `hi`; an empty range is widened by one on both sides.
 */
export const niceTicks = (lo: number, hi: number, count = 5): readonly number[] => {
  const [from, to] = hi > lo ? [lo, hi] : [lo - 1, hi + 1];
  const raw = (to - from) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= raw) ?? 10) * power;
  const first = Math.floor(from / step + 1e-9);
  const last = Math.ceil(to / step - 1e-9);
  // Multiples of a whole number of steps, so that no rounding error piles up.
  return Array.from({ length: last - first + 1 }, (_, at) =>
    Number(((first + at) * step).toPrecision(12)),
  );
};

/** A linear map from a range of values to a range of pixels. */
export const linear =
  (from: readonly [number, number], to: readonly [number, number]) =>
  (value: number): number =>
    to[0] + ((value - from[0]) / (from[1] - from[0])) * (to[1] - to[0]);
