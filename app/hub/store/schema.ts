/**
 * The hub's tables. Every key begins with the group, so a group's rows lie together, and a
 * distributed PostgreSQL can spread groups over machines without a change here.
 * Numbers are numbers in both databases; 0 and 1 stand for no and yes.
 */
import type { Generated } from 'kysely';

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
    /** `*` every member, `+` specialists, a member's id, or empty for leads only. */
    audience: string;
    stamp: string;
    hash: string;
    /** 1 for an erasure: nothing else of this record is kept or taken. */
    erased: number;
    /** SHA-256 of the attachment that this record names; null for other kinds. */
    attachment: string | null;
    /** The record that an attachment belongs to, or that a quote is of; null for other kinds. */
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
    /** Hash of the token that takes the place of the other when it is first used. */
    next_hash: Generated<string | null>;
    /** When the token was made; null: at the join. */
    token_ms: Generated<number | null>;
    /** Hash of the secret with which the device may come back after its browser cleared it. */
    return_hash: Generated<string | null>;
    /** Hash of the secret with which it came back: the answer may be lost. */
    return_before: Generated<string | null>;
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
  };
  /** The bytes of an attachment as they came in: a chunk begins where the one before it ended. */
  chunks: { group_id: string; sha256: string; start: number; bytes: Uint8Array };
  /** What a member sent on a day (UTC), against the quota. */
  usage: {
    group_id: string;
    member_id: string;
    /** Days since 1970. */
    day: number;
    revisions: number;
    attachment_bytes: number;
  };
  /** With which key pair the group's hub signs what it sends to push services (RFC 8292); made once. */
  wake_keys: { group_id: string; public_key: string; private_key: string };
  /** Where a device that wants to be woken is reached, and the keys to write to it (RFC 8291). */
  wake_addresses: {
    group_id: string;
    device: string;
    member_id: string;
    endpoint: string;
    p256dh: string;
    auth: string;
    /** At which origin the device knows the hub. */
    origin: string;
  };
  /** Which record woke which device, or is to: each at most once. */
  wake_ups: {
    group_id: string;
    device: string;
    /** A stop-use notice or a question. */
    record: string;
    member_id: string;
    asked_ms: number;
    /** When it is tried next; null once it was sent or given up. */
    next_ms: number | null;
    tries: number;
    /** When a push service took it; null where none did. */
    sent_ms: number | null;
  };
  audit: {
    group_id: string;
    /** UUIDv7: sorts by time. */
    entry: string;
    at_ms: number;
    member_id: string | null;
    device: string | null;
    what: string;
    subject: string | null;
  };
}
