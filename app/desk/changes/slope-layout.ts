/** Where do lines and their labels stand? Labels keep their distance, so that none is written over another. */

/** Of one line: its ends and its label, in pixels from the top. */
export interface SlopePlace {
  readonly from: number;
  readonly to: number;
  readonly label: number;
}

export interface SlopeLayout {
  readonly height: number;
  /** In the order of the lines. */
  readonly places: readonly SlopePlace[];
  /** Ends of the scale, and marks on it, in the unit of the values. */
  readonly least: number;
  readonly most: number;
  readonly ticks: readonly { readonly value: number; readonly at: number }[];
}

/** From one label to the next: a line of text, or the least that a finger hits. */
export const LABEL_GAP = 24;
const LEAST_HEIGHT = 150;
const PAD = 12;

/**
 * Moves each of the positions as little as needed, in their order, so that they lie `gap` apart and within the ends.
 * Where there is not room for all, they lie closer: the caller makes room.
 */
export const spread = (
  positions: readonly number[],
  gap: number,
  [first, last]: readonly [number, number],
): readonly number[] => {
  const order = positions
    .map((_, at) => at)
    .sort((a, b) => (positions[a] ?? 0) - (positions[b] ?? 0));
  const placed = new Array<number>(positions.length).fill(0);
  let lowest = first;
  for (const at of order) {
    placed[at] = Math.max(positions[at] ?? 0, lowest);
    lowest = (placed[at] ?? 0) + gap;
  }
  let highest = last;
  for (const at of order.toReversed()) {
    placed[at] = Math.min(placed[at] ?? 0, highest);
    highest = (placed[at] ?? 0) - gap;
  }
  return placed;
};

/** A step that gives three to six marks. */
const stepOf = (span: number): number => [1, 2, 5, 10, 20, 25].find((one) => span / one <= 5) ?? 50;

/**
 * @param lines values of the earlier and the later round, 0 to 100
 * @param fromZero whether the scale begins at 0, as a share does
 */
export const layOutSlopes = (
  lines: readonly { readonly from: number; readonly to: number }[],
  fromZero: boolean,
): SlopeLayout => {
  const values = lines.flatMap(({ from, to }) => [from, to]);
  const [low, high] = [Math.min(...values, 100), Math.max(...values, 0)];
  const step = stepOf(Math.max(1, high - (fromZero ? 0 : low)));
  const least = fromZero ? 0 : Math.max(0, Math.floor(low / step) * step);
  const most = Math.max(least + step, Math.min(100, Math.ceil(high / step) * step));
  const height = Math.max(LEAST_HEIGHT, lines.length * LABEL_GAP + 2 * PAD);
  const yOf = (value: number) =>
    height - PAD - ((value - least) / (most - least)) * (height - 2 * PAD);
  const labels = spread(
    lines.map(({ to }) => yOf(to)),
    LABEL_GAP,
    [PAD, height - PAD],
  );
  const ticks = Array.from({ length: Math.floor((most - least) / step + 1e-9) + 1 }, (_, at) => {
    const value = least + at * step;
    return { value, at: yOf(value) };
  });
  return {
    height,
    least,
    most,
    ticks,
    places: lines.map(({ from, to }, at) => ({
      from: yOf(from),
      to: yOf(to),
      label: labels[at] ?? yOf(to),
    })),
  };
};
