/**
 * What do a device and the hub say to each other? Protocol version 1, JSON over HTTP.
 * The endpoints are described in DEVELOPERS.md; both sides parse with the schemas here.
 */
import * as z from 'zod/mini';
import { wholeIn } from './bodies/number-in.ts';
import * as ranges from './bodies/field-ranges.ts';
import { recordIdSchema, sha256Schema, stampSchema } from './revision.ts';
import { inviteCodeSchema, roles } from './role.ts';
import { DEVICE_PATTERN } from './stamp.ts';

export const PROTOCOL = 1;
export const MAX_PUSH_REVISIONS = 500;
export const MAX_PUSH_BYTES = 1_048_576;
export const MAX_ATTACHMENT_BYTES = 4_194_304;

const tokenSchema = z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/));
const deviceSchema = z.string().check(z.regex(DEVICE_PATTERN)).brand<'DeviceId'>();
const epochMs = wholeIn(ranges.epochMs);
const howMany = wholeIn(ranges.count);

/** Where map tiles come from: an address with {z}, {x} and {y}, and whom to name for them. */
export const tilesSchema = z.looseObject({
  url: z
    .string()
    .check(
      z.regex(
        /^https?:\/\/[^\s{}]+\/.*\{z\}.*\{x\}.*\{y\}|^https?:\/\/[^\s{}]+\/.*\{z\}.*\{y\}.*\{x\}/,
      ),
    ),
  attribution: z.string().check(z.minLength(1), z.maxLength(200)),
});
export type Tiles = z.infer<typeof tilesSchema>;

export const helloAnswer = z.looseObject({
  protocols: z.array(wholeIn(ranges.version)),
  hubNow: epochMs,
  limits: z.looseObject({
    pushRevisions: howMany,
    pushBytes: howMany,
    attachmentBytes: howMany,
  }),
  /** In which encodings the hub reads a push; absent: as plain JSON only. */
  encodings: z.optional(z.array(z.string())),
  /** For how many days the hub's backups still hold what was taken back; absent: not said. */
  backupDays: z.optional(howMany),
  /** Where phones of the local network learn to trust the hub's own certificate; absent: they trust it already. */
  trust: z.optional(z.string().check(z.regex(/^http:\/\/[^\s"'<>]{1,200}$/))),
  /** Absent: maps are drawn on plain ground. */
  tiles: z.optional(tilesSchema),
});

/** `mine`: the member's own records and what it needs to log; `all`: everything (leads). */
export const scopes = ['mine', 'all'] as const;
export type Scope = (typeof scopes)[number];

/** A token older than this is renewed at the next sync. */
export const RENEW_TOKEN_AFTER_MS = 30 * 86_400_000;

export const pullAnswer = z.looseObject({
  /** Unchecked revisions: the device checks each by itself. */
  revisions: z.array(z.unknown()),
  /** Revisions of this very device, seen again in the feed; with `own=1` they come whole instead. */
  receipts: z.array(z.looseObject({ id: recordIdSchema, stamp: stampSchema, hash: sha256Schema })),
  /** Cursor after the last scanned revision; null while the feed is empty. */
  next: z.nullable(z.string()),
  more: z.boolean(),
  hubNow: epochMs,
});

export const pushRequest = z.looseObject({
  revisions: z.array(z.unknown()).check(z.maxLength(MAX_PUSH_REVISIONS)),
});

export const refusals = [
  'not-a-revision',
  'newer-envelope',
  'too-large',
  'hash-differs',
  'not-allowed',
  'unreadable',
  'erased',
] as const;
export type Refusal = (typeof refusals)[number];

export const pushAnswer = z.looseObject({
  /** One verdict per revision, in the order they were sent. One bad revision never fails the others. */
  verdicts: z.array(
    z.looseObject({
      verdict: z.enum(['stored', 'known', 'refused']),
      why: z.optional(z.enum(refusals)),
      field: z.optional(z.string()),
      /** Where in the feed a known revision stands: behind the cursor it needs no receipt any more. */
      seq: z.optional(wholeIn(ranges.sequence)),
    }),
  ),
  hubNow: epochMs,
});

/** After a chunk of an attachment: that it is whole now, or how many bytes of it are there. */
export const chunkAnswer = z.union([
  z.looseObject({ complete: z.literal(true) }),
  z.looseObject({ received: howMany }),
]);

/** A device that is new to the hub. */
const newDevice = {
  /** 32 random bytes in base64url, made by the device; the hub keeps only their hash. */
  token: tokenSchema,
  device: deviceSchema,
  /** Without U+0000, which not every database takes. */
  deviceName: z.optional(
    z.string().check(
      z.maxLength(80),
      z.refine((name) => !name.includes('\0')),
    ),
  ),
};

export const joinRequest = z.looseObject({
  code: inviteCodeSchema,
  ...newDevice,
  /** The token of the member that the device was before: with it the new one takes its place. */
  before: z.optional(tokenSchema),
});

/** Comes with the cookie that the hub set when the device joined. */
export const returnRequest = z.looseObject(newDevice);

export const memberSchema = z.looseObject({
  id: recordIdSchema,
  role: z.enum(roles),
  group: recordIdSchema,
  groupName: z.string(),
});

export const joinAnswer = z.looseObject({ member: memberSchema, hubNow: epochMs });

export const inviteRequest = z.looseObject({
  role: z.enum(roles),
  /** The record id of the tester who is invited; absent for a lead or a specialist. */
  tester: z.optional(recordIdSchema),
});

export const inviteAnswer = z.looseObject({ code: inviteCodeSchema, expiresAt: epochMs });

export const devicesAnswer = z.looseObject({
  devices: z.array(
    z.looseObject({
      device: deviceSchema,
      member: recordIdSchema,
      role: z.enum(roles),
      name: z.string(),
      joinedAt: epochMs,
      seenAt: epochMs,
      revoked: z.boolean(),
    }),
  ),
});

/** What a code would make of a device, asked before it joins; the code is not used up. */
export const invitedRequest = z.looseObject({ code: inviteCodeSchema });

export const invitedAnswer = z.looseObject({
  groupName: z.string(),
  role: z.enum(roles),
  /** What the group calls the tester; null for leads and specialists, and where the hub does not know it. */
  tester: z.nullable(z.string()),
});

/** The token that shall take the place of the one that asks. */
export const renewRequest = z.looseObject({ token: tokenSchema });

export const auditAnswer = z.looseObject({
  /** Latest first. */
  entries: z.array(
    z.looseObject({
      entry: z.string(),
      atMs: epochMs,
      member: z.nullable(z.string()),
      device: z.nullable(z.string()),
      what: z.string(),
      subject: z.nullable(z.string()),
    }),
  ),
});

/** 65 bytes of a point on P-256, 16 bytes of a secret, in base64url (RFC 8291). */
const pointSchema = z.string().check(z.regex(/^B[A-Za-z0-9_-]{86}$/));
const authSchema = z.string().check(z.regex(/^[A-Za-z0-9_-]{22}$/));
export const MAX_ENDPOINT = 1000;

/** Where a push service reaches a device, as its browser says it (`PushSubscription.toJSON()`). */
export const wakeRequest = z.looseObject({
  endpoint: z.string().check(z.maxLength(MAX_ENDPOINT), z.regex(/^https:\/\/[\x21-\x7e]+$/)),
  keys: z.looseObject({ p256dh: pointSchema, auth: authSchema }),
});

export const wakeAnswer = z.looseObject({
  /** The hub's public key, for `PushManager.subscribe()`. */
  key: pointSchema,
  /** Whether the hub has an address of the device that asks. */
  on: z.boolean(),
});

/** What the hub knows of whom a record could reach on a closed phone. */
export const reachAnswer = z.looseObject({
  /** Members with a device that can be woken. */
  on: z.array(recordIdSchema),
  /** Who was to be woken by this record, each once: when a push service took it; null: not yet, or none did. */
  woken: z.array(z.looseObject({ member: recordIdSchema, sentAt: z.nullable(epochMs) })),
});

export const revokeRequest = z.looseObject({ device: deviceSchema });

export const errorCodes = [
  'bad-request',
  'no-token',
  'revoked',
  'not-allowed',
  'unknown-code',
  'not-found',
  'too-large',
  'too-many-requests',
  'reset',
  'storage-full',
  'internal',
] as const;
export type ErrorCode = (typeof errorCodes)[number];

export const errorAnswer = z.looseObject({
  error: z.enum(errorCodes),
  /** The field or part that is wrong, where there is one. */
  field: z.optional(z.string()),
});

export type Member = z.infer<typeof memberSchema>;
export type PullAnswer = z.infer<typeof pullAnswer>;
export type PushAnswer = z.infer<typeof pushAnswer>;
export type WakeAddress = z.infer<typeof wakeRequest>;
export type Reach = z.infer<typeof reachAnswer>;
export type Devices = z.infer<typeof devicesAnswer>['devices'];
