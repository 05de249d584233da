/**
 * The query of the address as it is now: a second choice may be made before the screen is drawn with the first, and what
 * that drawing knew would take the first back.
 */
export const queryNow = (): Readonly<Record<string, string>> =>
  Object.fromEntries(new URLSearchParams(location.search));
