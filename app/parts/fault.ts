/** How the app calls up the fault screen that stands in index.html (`app/fault/fault.ts`). */

/** `store`: the database cannot be read; `code`: a part was not fetched; `broken`: anything else. */
export type FaultKind = 'store' | 'code' | 'broken';

export interface Fault {
  /** Puts the fault screen in the place of the app; `detail` helps whoever is asked about it. */
  readonly show: (kind: FaultKind, detail?: string) => void;
  /** Says that the app has begun: from now on it takes care of its own faults. */
  readonly stands: () => void;
}

declare global {
  interface Window {
    pairlogFault?: Fault;
  }
}

const detailOf = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

export const showFault = (kind: FaultKind, error: unknown): void => {
  console.error(error);
  window.pairlogFault?.show(kind, detailOf(error));
};

/** What a browser says where it refuses a database; an error that came from a worker has only its name left. */
const REFUSED = /^(Version|InvalidState|Unknown|Security|NotFound|QuotaExceeded|Abort)Error$/;

/** The fault screen for a read that failed: what the browser itself refuses is said so. */
export const showFailedRead = (error: unknown): void =>
  showFault(REFUSED.test(detailOf(error)) ? 'store' : 'broken', error);
