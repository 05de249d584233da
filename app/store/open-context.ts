/** Opens what every room of the store works with. */
import { listenForChanges } from './changes.ts';
import type { StoreContext } from './context.ts';
import { connect } from './database.ts';

export interface StoreOptions {
  readonly name?: string;
  readonly now?: () => number;
  readonly random?: (bytes: number) => Uint8Array;
  readonly fetch?: typeof fetch;
  readonly maySendAttachments?: () => boolean;
}

export const DEFAULT_NAME = 'pairlog';

const secureRandom = (bytes: number): Uint8Array => crypto.getRandomValues(new Uint8Array(bytes));

export const openContext = (options: StoreOptions): StoreContext => {
  const name = options.name ?? DEFAULT_NAME;
  const connection = connect(name);
  return {
    withDatabase: connection.withDatabase,
    close: connection.close,
    now: options.now ?? Date.now,
    random: options.random ?? secureRandom,
    fetchFrom: options.fetch ?? globalThis.fetch.bind(globalThis),
    changes: listenForChanges(name),
    maySendAttachments: options.maySendAttachments ?? (() => true),
  };
};
