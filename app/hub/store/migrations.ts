/** How did the tables come to be what they are? One step after the other, in both databases. */
import { sql, type Kysely, type Migration } from 'kysely';

export type Dialect = 'sqlite' | 'postgres';

const first = (dialect: Dialect): Migration => ({
  async up(db: Kysely<unknown>) {
    const bytes = dialect === 'postgres' ? sql`bytea` : sql`blob`;
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
      .addColumn('entry', dialect === 'postgres' ? 'serial' : 'integer', (c) =>
        dialect === 'postgres' ? c.primaryKey() : c.primaryKey().autoIncrement(),
      )
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('at_ms', 'bigint', (c) => c.notNull())
      .addColumn('member_id', 'text')
      .addColumn('device', 'text')
      .addColumn('what', 'text', (c) => c.notNull())
      .addColumn('subject', 'text')
      .execute();
  },
});

const returning: Migration = {
  async up(db: Kysely<unknown>) {
    await db.schema.alterTable('devices').addColumn('return_hash', 'text').execute();
    await db.schema.createIndex('devices_by_return').on('devices').column('return_hash').execute();
  },
};

/** Attachments in chunks, so that one more chunk does not write the others anew. */
const chunked = (dialect: Dialect): Migration => ({
  async up(db: Kysely<unknown>) {
    await db.schema
      .createTable('chunks')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('sha256', 'text', (c) => c.notNull())
      .addColumn('start', 'bigint', (c) => c.notNull())
      .addColumn('bytes', dialect === 'postgres' ? sql`bytea` : sql`blob`, (c) => c.notNull())
      .addPrimaryKeyConstraint('chunks_key', ['group_id', 'sha256', 'start'])
      .execute();
    await sql`insert into chunks (group_id, sha256, start, bytes)
      select group_id, sha256, 0, bytes from attachments where received > 0`.execute(db);
    await db.schema.alterTable('attachments').dropColumn('bytes').execute();
    await db.schema
      .createIndex('revisions_by_attachment')
      .on('revisions')
      .columns(['group_id', 'attachment'])
      .where(sql.ref('attachment'), 'is not', null)
      .execute();
    await db.schema
      .createIndex('revisions_about')
      .on('revisions')
      .columns(['group_id', 'about'])
      .where(sql.ref('about'), 'is not', null)
      .execute();
  },
});

/** An audit keyed by its group, tokens that can be renewed, and what each member sent on a day. */
const trusted: Migration = {
  async up(db: Kysely<unknown>) {
    await db.schema.alterTable('audit').renameTo('audit_before').execute();
    await db.schema
      .createTable('audit')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('entry', 'text', (c) => c.notNull())
      .addColumn('at_ms', 'bigint', (c) => c.notNull())
      .addColumn('member_id', 'text')
      .addColumn('device', 'text')
      .addColumn('what', 'text', (c) => c.notNull())
      .addColumn('subject', 'text')
      .addPrimaryKeyConstraint('audit_by_group', ['group_id', 'entry'])
      .execute();
    // The number of an old entry in the form of the new ones, before all of them; filled up to twelve digits.
    await sql`insert into audit (group_id, entry, at_ms, member_id, device, what, subject)
      select group_id, '00000000-0000-7000-8000-'
               || substr('000000000000', 1 + length(cast(entry as text))) || cast(entry as text),
             at_ms, member_id, device, what, subject
        from audit_before`.execute(db);
    await db.schema.dropTable('audit_before').execute();
    await db.schema.alterTable('devices').addColumn('next_hash', 'text').execute();
    await db.schema.alterTable('devices').addColumn('token_ms', 'bigint').execute();
    await db.schema.createIndex('devices_by_next').on('devices').column('next_hash').execute();
    await db.schema
      .createTable('usage')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('day', 'integer', (c) => c.notNull())
      .addColumn('revisions', 'bigint', (c) => c.notNull())
      .addColumn('attachment_bytes', 'bigint', (c) => c.notNull())
      .addPrimaryKeyConstraint('usage_key', ['group_id', 'member_id', 'day'])
      .execute();
  },
};

/** Findings go to specialists too. */
const specialists: Migration = {
  async up(db: Kysely<unknown>) {
    await sql`update revisions set audience = '+' where kind = 'finding'`.execute(db);
  },
};

/** A return whose answer was lost may be asked again. */
const returningAgain: Migration = {
  async up(db: Kysely<unknown>) {
    await db.schema.alterTable('devices').addColumn('return_before', 'text').execute();
    await db.schema
      .createIndex('devices_by_return_before')
      .on('devices')
      .column('return_before')
      .execute();
  },
};

/** Quotes that came from a newer app before this hub knew the kind: they name their source, and go with it. */
const quotes = (dialect: Dialect): Migration => ({
  async up(db: Kysely<unknown>) {
    const field = (name: string) =>
      dialect === 'postgres'
        ? sql`json::json #>> ${sql.lit(`{body,${name}}`)}`
        : sql`json_extract(json, ${sql.lit(`$.body.${name}`)})`;
    await sql`update revisions set about = ${field('source')}
      where kind = 'quote' and json is not null`.execute(db);
    await sql`update revisions set audience = '+'
      where kind = 'quote' and json is not null and ${field('sent')} is not null`.execute(db);
    await sql`update revisions set json = null
      where kind = 'quote' and erased = 0 and exists (
        select 1 from revisions as source
         where source.group_id = revisions.group_id and source.id = revisions.about
           and source.erased = 1)`.execute(db);
  },
});

/** Who wants to be woken, where, and by what. */
const waking: Migration = {
  async up(db: Kysely<unknown>) {
    await db.schema
      .createTable('wake_keys')
      .addColumn('group_id', 'text', (c) => c.primaryKey())
      .addColumn('public_key', 'text', (c) => c.notNull())
      .addColumn('private_key', 'text', (c) => c.notNull())
      .execute();
    await db.schema
      .createTable('wake_addresses')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('device', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('endpoint', 'text', (c) => c.notNull())
      .addColumn('p256dh', 'text', (c) => c.notNull())
      .addColumn('auth', 'text', (c) => c.notNull())
      .addColumn('origin', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('wake_addresses_key', ['group_id', 'device'])
      .execute();
    await db.schema
      .createTable('wake_ups')
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('device', 'text', (c) => c.notNull())
      .addColumn('record', 'text', (c) => c.notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('asked_ms', 'bigint', (c) => c.notNull())
      .addColumn('next_ms', 'bigint')
      .addColumn('tries', 'integer', (c) => c.notNull())
      .addColumn('sent_ms', 'bigint')
      .addPrimaryKeyConstraint('wake_ups_key', ['group_id', 'device', 'record'])
      .execute();
    await db.schema
      .createIndex('wake_ups_due')
      .on('wake_ups')
      .column('next_ms')
      .where(sql.ref('next_ms'), 'is not', null)
      .execute();
  },
};

/** Every step from an empty database to today's, by name; steps are only ever added. */
export const migrationsFor = (dialect: Dialect): Readonly<Record<string, Migration>> => ({
  '0001-first': first(dialect),
  '0002-returning': returning,
  '0003-chunked': chunked(dialect),
  '0004-trusted': trusted,
  '0005-specialists': specialists,
  '0006-returning-again': returningAgain,
  '0007-quotes': quotes(dialect),
  '0008-waking': waking,
});

const steps = Object.keys(migrationsFor('sqlite')).sort();

/** Whether this hub knows a step by that name. */
export const isStep = (name: string): boolean => steps.includes(name);

/** The step that makes the tables what this hub works with. */
export const LAST_STEP = steps.at(-1) as string;
