/** Who can be a member of a group, and by which code does one join? */
import * as z from 'zod/mini';

export const roles = ['lead', 'tester', 'specialist'] as const;
export type Role = (typeof roles)[number];

/** Crockford base 32 without hyphens, upper case. */
export const inviteCodeSchema = z.string().check(z.regex(/^[0-9A-HJKMNP-TV-Z]{10}$/));

/** For how long the code of an invite is good. */
export const INVITE_HOURS = 72;
