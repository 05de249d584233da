/**
 * What is wrong with the body of a revision, if anything? As `readBody` of core tells it, which is asked only
 * where the schemas, compiled to code, say no. The policy of a page forbids such code; the hub reads a body with
 * it in a seventh of the time.
 */
import * as z from 'zod/mini';
import { bodySchemas, kinds, readBody, type Body, type Kind } from '../../core/records/index.ts';

const compiled = Object.fromEntries(
  kinds.map((kind) => [kind, z.compile<z.ZodMiniType>(bodySchemas[kind])]),
) as Readonly<Record<Kind, z.ZodMiniType>>;

/** The first field of a body that is not as its kind asks, empty for the body itself; null where all are. */
export const wrongField = (kind: Kind, body: Body): string | null => {
  if (z.validate(compiled[kind], body)) return null;
  const read = readBody(kind, body);
  return read.ok ? null : (read.problems[0]?.field ?? '');
};
