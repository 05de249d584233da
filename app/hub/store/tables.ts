/** Every table with its key, in an order in which they can be filled. */
import type { Tables } from './schema.ts';

export const keysOf = {
  groups: ['group_id'],
  members: ['group_id', 'member_id'],
  devices: ['group_id', 'device'],
  invites: ['group_id', 'code_hash'],
  revisions: ['group_id', 'seq'],
  attachments: ['group_id', 'sha256'],
  chunks: ['group_id', 'sha256', 'start'],
  usage: ['group_id', 'member_id', 'day'],
  audit: ['group_id', 'entry'],
  wake_keys: ['group_id'],
  wake_addresses: ['group_id', 'device'],
  wake_ups: ['group_id', 'device', 'record'],
} as const satisfies { readonly [T in keyof Tables]: readonly (keyof Tables[T] & string)[] };

export type TableName = keyof typeof keysOf;
export const tableNames = Object.keys(keysOf) as TableName[];

/**
 * Left out of backups: an address that ended since must not come back by a restore. Phones send theirs anew when the app
 * is next opened. The key is in a backup, because an address made for one key takes nothing signed by another.
 */
export const notInBackups: ReadonlySet<TableName> = new Set(['wake_addresses', 'wake_ups']);
