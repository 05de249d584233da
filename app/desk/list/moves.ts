/** Where does a key take somebody who reads a list row by row? Pure. */

/**
 * @param key as the browser names it
 * @param from the row that has the focus, from 0
 * @param page how many rows a page holds
 * @returns the row that gets the focus; null: the key moves nothing
 */
export const movedTo = (
  key: string,
  { from, count, page }: { readonly from: number; readonly count: number; readonly page: number },
): number | null => {
  const within = (at: number) => Math.max(0, Math.min(count - 1, at));
  switch (key) {
    case 'ArrowDown':
      return within(from + 1);
    case 'ArrowUp':
      return within(from - 1);
    case 'PageDown':
      return within(from + page);
    case 'PageUp':
      return within(from - page);
    case 'Home':
      return 0;
    case 'End':
      return within(count - 1);
    default:
      return null;
  }
};
