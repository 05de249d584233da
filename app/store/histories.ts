/** What does the device hold of one record? Read inside a transaction. */
import type { IDBPTransaction, StoreNames } from 'idb';
import type { History, RecordId } from '../../core/records/index.ts';
import type { Tables } from './database.ts';

export type Reading = IDBPTransaction<Tables, StoreNames<Tables>[], 'readonly' | 'readwrite'>;

/** Every key that begins with this record id. */
export const rangeOf = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []] as unknown);

export const historyOf = async (tx: Reading, id: RecordId): Promise<History | undefined> => {
  const head = await tx.objectStore('heads').get(id);
  if (!head) return undefined;
  return { head, older: await tx.objectStore('superseded').getAll(rangeOf(id)) };
};
