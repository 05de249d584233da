/**
 * Up to where has a device read a hub's feed, and is that feed still the same?
 *
 * The hub numbers each revision it takes (`seq`) and chains their hashes. A cursor names both, so a
 * hub restored from a backup, or a copy of it that went its own way, is recognised: the chain at
 * that number differs, and the device starts over and offers all it holds.
 */
import { sha256OfText } from './hash.ts';
import type { Sha256 } from './id.ts';

export interface Cursor {
  readonly seq: number;
  readonly chain: string;
}

/** The chain before the first revision. */
export const FIRST_CHAIN = '0000000000000000';

/**
 * The chain after a revision with this hash: the first 8 bytes, in hex, of SHA-256(chain + hash).
 * @param sha256 SHA-256 of a text in UTF-8, in hex; a platform may have a faster one
 */
export const nextChain = (
  chain: string,
  hash: Sha256,
  sha256: (text: string) => string = sha256OfText,
): string => sha256(chain + hash).slice(0, 16);

export const formatCursor = ({ seq, chain }: Cursor): string => `${seq}.${chain}`;

/** The cursor in a text; null where the text is none. */
export const parseCursor = (text: string): Cursor | null => {
  const match = /^(\d{1,15})\.([0-9a-f]{16})$/.exec(text);
  return match ? { seq: Number(match[1]), chain: match[2] as string } : null;
};
