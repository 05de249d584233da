/** What did the person mean by the number or time they typed? */
import { seconds, type Seconds } from './quantity.ts';

/**
 * A decimal number as people type it: point or comma before the decimals, spaces around it.
 * Null where it is no such number (a thousands separator is not guessed at).
 */
export const parseDecimal = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
};

/**
 * A duration as people type it: `h:mm:ss`, `mm:ss` or whole minutes.
 * Null where it is none of these, or where minutes or seconds after a colon pass 59.
 */
export const parseDuration = (text: string): Seconds | null => {
  const plain = text.trim();
  if (!/^\d{1,3}(:\d{1,2}){0,2}$/.test(plain)) return null;
  const parts = plain.split(':').map(Number);
  if (parts.slice(1).some((part) => part > 59)) return null;
  const [a = 0, b = 0, c = 0] = parts;
  if (parts.length === 3) return seconds(a * 3600 + b * 60 + c);
  return parts.length === 2 ? seconds(a * 60 + b) : seconds(a * 60);
};

/** A duration as `h:mm:ss`, or `m:ss` below one hour; rounded to the second. */
export const formatDuration = (duration: Seconds): string => {
  const whole = Math.round(duration);
  const two = (n: number) => String(n).padStart(2, '0');
  const h = Math.floor(whole / 3600);
  const m = Math.floor((whole % 3600) / 60);
  return h > 0 ? `${h}:${two(m)}:${two(whole % 60)}` : `${m}:${two(whole % 60)}`;
};
