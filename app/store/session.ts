/** Who is this device, and through which hub, if any, does it reach its group? */
import * as z from 'zod/mini';
import { recordIdSchema, roles } from '../../core/records/index.ts';

export const sessionSchema = z.looseObject({
  /** A tester's member id is the id of their `tester` record. */
  member: recordIdSchema,
  role: z.enum(roles),
  group: recordIdSchema,
  groupName: z.string(),
  /** Null: the group works by files only. */
  hub: z.nullable(z.looseObject({ url: z.string() })),
  /** The hub no longer knows this device; logging and export go on. */
  revoked: z.optional(z.literal(true)),
});

export type Session = Readonly<z.infer<typeof sessionSchema>>;
