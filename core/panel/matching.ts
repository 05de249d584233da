/**
 * Who can have which pair, so that as many as possible have one? Augmenting paths (Kuhn HW, Nav Res Logist Q
 * 1955;2:83-97; Berge C, Proc Natl Acad Sci 1957;43:842-844).
 *
 * @param fits of each taker, the things that fit, the better ones first
 * @returns of each taker the thing, or null; the number of nulls is the least possible
 */
export const matchMost = <T>(fits: readonly (readonly T[])[]): (T | null)[] => {
  const takenBy = new Map<T, number>();
  const seek = (taker: number, seen: Set<T>): boolean => {
    for (const thing of fits[taker] ?? []) {
      if (seen.has(thing)) continue;
      seen.add(thing);
      const other = takenBy.get(thing);
      if (other === undefined || seek(other, seen)) {
        takenBy.set(thing, taker);
        return true;
      }
    }
    return false;
  };
  fits.forEach((_, taker) => seek(taker, new Set()));
  const given: (T | null)[] = fits.map(() => null);
  for (const [thing, taker] of takenBy) given[taker] = thing;
  return given;
};
