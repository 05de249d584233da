import { sha256OfJson } from '../core/records/hash.ts';

/** The hash that a revision must carry: over the canonical JSON (RFC 8785) of all of it but `hash`. */
export const hashOfRevision = (revision: Readonly<Record<string, unknown>>) => {
  const { hash: _, ...rest } = revision;
  return sha256OfJson(rest);
};
