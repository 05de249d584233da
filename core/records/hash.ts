/** Are these bytes, or is this JSON value, the same as that? */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Sha256 } from './id.ts';

/** SHA-256 (FIPS 180-4) of bytes, in hex. Synchronous: it may run inside an IndexedDB transaction. */
export const sha256OfBytes = (bytes: Uint8Array): Sha256 => bytesToHex(sha256(bytes)) as Sha256;

/** SHA-256 of a text in UTF-8, in hex. */
export const sha256OfText = (text: string): Sha256 => sha256OfBytes(utf8ToBytes(text));

/** The canonical JSON of a value by RFC 8785. Throws on NaN, infinities and lone surrogates. */
export const canonicalJson = (value: unknown): string => {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('canonicalJson: undefined is not a JSON value');
  return text;
};

/** SHA-256 over the canonical JSON of a value. */
export const sha256OfJson = (value: unknown): Sha256 => sha256OfText(canonicalJson(value));
