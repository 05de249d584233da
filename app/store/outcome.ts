/** What can come of an attempt to keep something, as a value. */
import type { BodyProblem } from '../../core/records/index.ts';

export type Outcome<T, P> = { readonly ok: true; readonly value: T } | ({ readonly ok: false } & P);

export const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({
  ok: true,
  value,
});

export type SaveProblem =
  /** The device has no room left: nothing was changed, and the draft is kept. */
  | { readonly why: 'storage-full' }
  /** The browser does not let go of its database or lost it: try again, or open the app anew. */
  | { readonly why: 'storage-lost' }
  /** What was to be saved is not valid: a mistake of the screen that let it through. */
  | { readonly why: 'invalid'; readonly problems: readonly BodyProblem[] };

const nameOf = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

/** What a failed transaction means. `tx.error` may be null, so only names are looked at. */
export const saveProblemOf = (error: unknown): SaveProblem =>
  nameOf(error) === 'QuotaExceededError' ? { why: 'storage-full' } : { why: 'storage-lost' };

/** Whether the connection itself is gone, so that a new one may help. */
export const isLostConnection = (error: unknown): boolean =>
  ['InvalidStateError', 'UnknownError', 'TransactionInactiveError'].includes(nameOf(error));
