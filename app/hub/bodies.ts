/**
 * What is wrong with the body of a revision, if anything? As `readBody` of core tells it, which the hub asks only
 * where its schemas, compiled to code, say no: a browser's policy forbids such code, a hub has none and reads a
 * body with it in a seventh of the time.
 */
import * as z from 'zod/mini';
import { bodySchemas, kinds, readBody, type Body, type Kind } from '../../core/records/index.ts';

const compiled = Object.fromEntries(
  // Strict: a schema that cannot be compiled stops the hub's tests, and is not quietly slow.
  kinds.map((kind) => [kind, z.compile(bodySchemas[kind] as z.ZodMiniType, { strict: true })]),
) as Readonly<Record<Kind, z.ZodMiniType>>;

/** The first field of a body that is not as its kind asks, empty for the body itself; null where all is. */
export const wrongField = (kind: Kind, body: Body): string | null => {
  if (z.validate(compiled[kind], body)) return null;
  const read = readBody(kind, body);
  return read.ok ? null : (read.problems[0]?.field ?? '');
};
