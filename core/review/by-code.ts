/** How do codes sort? As people count: T2 before T10. */

/** One for all: `localeCompare` makes one at each call. */
const collator = new Intl.Collator('en', { numeric: true });

/** Compares two codes. */
export const byCode = (a: { code: string }, b: { code: string }): number =>
  collator.compare(a.code, b.code);
