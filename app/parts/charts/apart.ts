/** Which marks of a picture are seen? Of those that would lie over each other, one. */

/**
 * The first of the list in each square of `size` pixels; what lies under it would not be seen.
 * @param at where a mark stands, in pixels
 */
export const apart = <T>(
  list: readonly T[],
  at: (one: T) => readonly [x: number, y: number],
  size: number,
): readonly T[] => {
  const taken = new Set<string>();
  return list.filter((one) => {
    const [x, y] = at(one);
    const square = `${Math.floor(x / size)} ${Math.floor(y / size)}`;
    if (taken.has(square)) return false;
    taken.add(square);
    return true;
  });
};
