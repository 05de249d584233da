/** What every room of the store works with. */
import type { Changes } from './changes.ts';
import type { Connection } from './database.ts';

export interface StoreContext extends Connection {
  /** Milliseconds since 1970 by this device's clock. */
  readonly now: () => number;
  readonly random: (bytes: number) => Uint8Array;
  readonly fetchFrom: typeof fetch;
  readonly changes: Changes;
  /** Whether photos and tracks may go out by themselves over the network that there is now. */
  readonly maySendAttachments: () => boolean;
}
