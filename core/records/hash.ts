/** Are these bytes, or is this JSON value, the same as that? */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Sha256 } from './id.ts';

/** SHA-256 (FIPS 180-4) of bytes, in hex. Synchronous: it may run inside an IndexedDB transaction. */
export const sha256OfBytes = (bytes: Uint8Array): Sha256 => bytesToHex(sha256(bytes)) as Sha256;

/** SHA-256 of a text in UTF-8, in hex. */
export const sha256OfText = (text: string): Sha256 => sha256OfBytes(utf8ToBytes(text));

/** A value that only the general way below writes rightly. */
const UNUSUAL: unique symbol = Symbol('unusual');

const isPlainObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype;

/** Keys that begin with a digit come first in any object; `__proto__` would not become one; `toJSON` writes itself. */
const isUnusualKey = (key: string): boolean => {
  const first = key.charCodeAt(0);
  return (first >= 48 && first <= 57) || key === '__proto__' || key === 'toJSON';
};

/**
 * The value with the keys of its objects in order, so that `JSON.stringify` writes it as RFC 8785 asks: that
 * standard takes over how JavaScript writes numbers and texts, and differs in the order of keys alone. What is
 * in order already is not copied. {@link UNUSUAL} for what JavaScript would write otherwise: numbers that are
 * none, keys that it orders itself, objects that write themselves.
 */
const inOrder = (value: unknown): unknown => {
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : UNUSUAL;
  if (Array.isArray(value)) {
    let copy: unknown[] | null = null;
    for (let at = 0; at < value.length; at++) {
      const one: unknown = value[at];
      const next = inOrder(one);
      if (next === UNUSUAL) return UNUSUAL;
      if (next !== one) (copy ??= value.slice() as unknown[])[at] = next;
    }
    return copy ?? value;
  }
  if (!isPlainObject(value)) return UNUSUAL;
  const keys = Object.keys(value);
  let sorted = true;
  for (let at = 1; at < keys.length; at++)
    if ((keys[at - 1] as string) > (keys[at] as string)) sorted = false;
  if (!sorted) keys.sort();
  let copy: Record<string, unknown> | null = sorted ? null : {};
  for (let at = 0; at < keys.length; at++) {
    const key = keys[at] as string;
    if (isUnusualKey(key)) return UNUSUAL;
    const one = value[key];
    const next = inOrder(one);
    if (next === UNUSUAL) return UNUSUAL;
    if (!copy && next !== one) {
      copy = {};
      for (const before of keys.slice(0, at)) copy[before] = value[before];
    }
    if (copy) copy[key] = next;
  }
  return copy ?? value;
};

/** How `JSON.stringify` writes half of a surrogate pair, which is no text. */
const HALF_A_PAIR = /\\ud[89a-f]/;

/** The canonical JSON of a value by RFC 8785. Throws on NaN, infinities and lone surrogates. */
export const canonicalJson = (value: unknown): string => {
  const ordered = inOrder(value);
  if (ordered !== UNUSUAL) {
    const text = JSON.stringify(ordered);
    if (!text.includes('\\ud') || !HALF_A_PAIR.test(text)) return text;
  }
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('canonicalJson: undefined is not a JSON value');
  return text;
};

/** SHA-256 over the canonical JSON of a value. */
export const sha256OfJson = (value: unknown): Sha256 => sha256OfText(canonicalJson(value));
