/** Are these bytes, or is this JSON value, the same as that? */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Sha256 } from './id.ts';

/** SHA-256 (FIPS 180-4) of bytes, in hex. Synchronous: it may run inside an IndexedDB transaction. */
export const sha256OfBytes = (bytes: Uint8Array): Sha256 => bytesToHex(sha256(bytes)) as Sha256;

/** SHA-256 of a text in UTF-8, in hex. */
export const sha256OfText = (text: string): Sha256 => sha256OfBytes(utf8ToBytes(text));

const isPlainObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** A key that begins with a digit has a place of its own in any object; these two are more than keys. */
const isUnusualKey = (key: string): boolean => {
  const first = key.charCodeAt(0);
  return (first >= 48 && first <= 57) || key === '__proto__' || key === 'toJSON';
};

/**
 * How many objects and lists may lie in each other. Browsers keep fewer levels than a parser reads: what a device
 * could not keep must be refused by everybody.
 */
const MOST_LEVELS = 64;

/**
 * Whether `JSON.stringify` writes a value as RFC 8785 asks: that standard takes over how JavaScript writes numbers
 * and texts, and differs in the order of keys alone. No for what JavaScript would write otherwise: numbers that
 * are none, keys that it orders itself, objects that write themselves. No as well for what has more levels.
 */
const isInOrder = (value: unknown, levels = MOST_LEVELS): boolean => {
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return true;
  if (typeof value === 'number') return Number.isFinite(value);
  if (levels === 0) return false;
  if (Array.isArray(value)) {
    for (let at = 0; at < value.length; at++) if (!isInOrder(value[at], levels - 1)) return false;
    return true;
  }
  if (!isPlainObject(value)) return false;
  let last = '';
  // Nothing is inherited in a plain object; its keys are not put into a list only to be looked at.
  for (const key in value) {
    if (key < last || isUnusualKey(key) || !isInOrder(value[key], levels - 1)) return false;
    last = key;
  }
  return true;
};

/** A value that only the general way below writes rightly. */
const UNUSUAL: unique symbol = Symbol('unusual');

/** A copy of which {@link isInOrder} is true; {@link UNUSUAL} where there is none. */
const inOrder = (value: unknown, levels = MOST_LEVELS): unknown => {
  if (levels === 0 && typeof value === 'object' && value !== null) return UNUSUAL;
  if (Array.isArray(value)) {
    const copy: unknown[] = [];
    for (let at = 0; at < value.length; at++) {
      const item = inOrder(value[at], levels - 1);
      if (item === UNUSUAL) return UNUSUAL;
      copy.push(item);
    }
    return copy;
  }
  if (!isPlainObject(value)) return isInOrder(value) ? value : UNUSUAL;
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(value).sort()) {
    const field = isUnusualKey(key) ? UNUSUAL : inOrder(value[key], levels - 1);
    if (field === UNUSUAL) return UNUSUAL;
    copy[key] = field;
  }
  return copy;
};

/**
 * The same value with the keys of its objects in the order of RFC 8785, so that its canonical JSON is written
 * without a copy; as it is where JavaScript keeps an order of its own.
 */
export const withKeysInOrder = <T>(value: T): T => {
  const ordered = isInOrder(value) ? value : inOrder(value);
  return ordered === UNUSUAL ? value : (ordered as T);
};

const isWithin = (value: unknown, levels: number): boolean =>
  typeof value !== 'object' ||
  value === null ||
  (levels > 0 && Object.values(value).every((one) => isWithin(one, levels - 1)));

/** How `JSON.stringify` writes half of a surrogate pair, which is no text. */
const HALF_A_PAIR = /\\ud[89a-f]/;

/**
 * The canonical JSON of a value by RFC 8785. Throws on NaN, infinities and lone surrogates, and on more than
 * {@link MOST_LEVELS}.
 */
export const canonicalJson = (value: unknown): string => {
  const ordered = isInOrder(value) ? value : inOrder(value);
  if (ordered !== UNUSUAL) {
    const text = JSON.stringify(ordered);
    if (!text.includes('\\ud') || !HALF_A_PAIR.test(text)) return text;
  }
  if (!isWithin(value, MOST_LEVELS))
    throw new RangeError(`canonicalJson: more than ${MOST_LEVELS} levels`);
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('canonicalJson: undefined is not a JSON value');
  return text;
};

/** SHA-256 over the canonical JSON of a value. */
export const sha256OfJson = (value: unknown): Sha256 => sha256OfText(canonicalJson(value));
