/**
 * The hub's tables. Every key begins with the group, so a group's rows lie together, and a
 * distributed PostgreSQL can spread groups over machines without a change here.
 */
import { sql, type Generated, type Kysely, type Migration } from 'kysely';

export interface Tables {
  groups: {
    group_id: string;
    name: string;
    /** Number and chain of the last revision taken. */
    last_seq: number;
    last_chain: string;
    created_ms: number;
  };
  revisions: {
    group_id: string;
    seq: number;
    id: string;
    kind: string;
    author: string;
    /** `*` every member, a member's id, or empty for leads only. */
    audience: string;
    stamp: string;
    hash: string;
    /** 1 for an erasure: nothing else of this record is kept or taken. */
    erased: number;
    /** SHA-256 of the attachment that this record names; null for other kinds. */
    attachment: string | null;
    /** The record that an attachment belongs to; null for other kinds. */
    about: string | null;
    /** Null once the record was taken back. */
    json: string | null;
    chain: string;
  };
  members: { group_id: string; member_id: string; role: string; joined_ms: number };
  devices: {
    group_id: string;
    device: string;
    member_id: string;
    token_hash: string;
    /** Hash of the secret with which the device may come back after its browser cleared it. */
    return_hash: Generated<string | null>;
    name: string;
    joined_ms: number;
    seen_ms: number;
    revoked: number;
  };
  invites: {
    group_id: string;
    code_hash: string;
    role: string;
    member_id: string | null;
    expires_ms: number;
    /** Device and token that used it, so that a join whose answer was lost can be repeated. */
    used_by: string | null;
  };
  attachments: {
    group_id: string;
    sha256: string;
    media_type: string;
    length: number;
    /** Bytes received so far; all of them once `complete` is 1. */
    received: number;
    complete: number;
    bytes: Uint8Array;
  };
  audit: {
    entry: Generated<number>;
    group_id: string;
    at_ms: number;
    member_id: string | null;
    device: string | null;
    what: string;
    subject: string | null;
  };
}

const first: Migration = {
  async up(db: Kysely<unknown>) {
    const bytes = sql`blob`;
    await db.schema
      .createTable('groups')
      .addColumn('group_id', 'text', (c) => c.primaryKey())
      .addColumn('name', 'text', (c) => c.notNull())
      .addColumn('last_seq', 'bigint', (c) => c.notNull())
      .addColumn('last_chain', 'text', (c) => c.notNull())
      .addColumn('created_ms', 'bigint', (c) => c.notNull())
      .execute();
    await db.schema
      .createTable('revisions')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('seq', 'bigint', (c) => c.notNull())
      .addColumn('id', 'text', (c) => c.notNull())
      .addColumn('kind', 'text', (c) => c.notNull())
      .addColumn('author', 'text', (c) => c.notNull())
      .addColumn('audience', 'text', (c) => c.notNull())
      .addColumn('stamp', 'text', (c) => c.notNull())
      .addColumn('hash', 'text', (c) => c.notNull())
      .addColumn('erased', 'integer', (c) => c.notNull())
      .addColumn('attachment', 'text')
      .addColumn('about', 'text')
      .addColumn('json', 'text')
      .addColumn('chain', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('revisions_key', ['group_id', 'seq'])
      .execute();
    const index = (name: string, columns: string[], unique = false) => {
      const made = db.schema.createIndex(name).on('revisions').columns(columns);
      return (unique ? made.unique() : made).execute();
    };
    await index('revisions_once', ['group_id', 'id', 'stamp', 'hash'], true);
    await index('revisions_by_author', ['group_id', 'author', 'seq']);
    await index('revisions_by_audience', ['group_id', 'audience', 'seq']);
    await db.schema
      .createTable('members')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('role', 'text', (c) => c.notNull())
      .addColumn('joined_ms', 'bigint', (c) => c.notNull())
      .addPrimaryKeyConstraint('members_key', ['group_id', 'member_id'])
      .execute();
    await db.schema
      .createTable('devices')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('device', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('token_hash', 'text', (c) => c.notNull())
      .addColumn('name', 'text', (c) => c.notNull())
      .addColumn('joined_ms', 'bigint', (c) => c.notNull())
      .addColumn('seen_ms', 'bigint', (c) => c.notNull())
      .addColumn('revoked', 'integer', (c) => c.notNull())
      .addPrimaryKeyConstraint('devices_key', ['group_id', 'device'])
      .execute();
    await db.schema.createIndex('devices_by_token').on('devices').column('token_hash').execute();
    await db.schema
      .createTable('invites')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('code_hash', 'text', (c) => c.notNull())
      .addColumn('role', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text')
      .addColumn('expires_ms', 'bigint', (c) => c.notNull())
      .addColumn('used_by', 'text')
      .addPrimaryKeyConstraint('invites_key', ['group_id', 'code_hash'])
      .execute();
    await db.schema.createIndex('invites_by_code').on('invites').column('code_hash').execute();
    await db.schema
      .createTable('attachments')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('sha256', 'text', (c) => c.notNull())
      .addColumn('media_type', 'text', (c) => c.notNull())
      .addColumn('length', 'bigint', (c) => c.notNull())
      .addColumn('received', 'bigint', (c) => c.notNull())
      .addColumn('complete', 'integer', (c) => c.notNull())
      .addColumn('bytes', bytes, (c) => c.notNull())
      .addPrimaryKeyConstraint('attachments_key', ['group_id', 'sha256'])
      .execute();
    await db.schema
      .createTable('audit')
      .addColumn('entry', 'integer', (c) => c.primaryKey().autoIncrement())
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('at_ms', 'bigint', (c) => c.notNull())
      .addColumn('member_id', 'text')
      .addColumn('device', 'text')
      .addColumn('what', 'text', (c) => c.notNull())
      .addColumn('subject', 'text')
      .execute();
  },
};

const returning: Migration = {
  async up(db: Kysely<unknown>) {
    await db.schema.alterTable('devices').addColumn('return_hash', 'text').execute();
    await db.schema.createIndex('devices_by_return').on('devices').column('return_hash').execute();
  },
};

/** Every step from an empty database to today's, by name; steps are only ever added. */
export const migrations: Readonly<Record<string, Migration>> = {
  '0001-first': first,
  '0002-returning': returning,
};
