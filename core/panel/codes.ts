/**
 * Which codes for pairs tell nothing of the build? Three digits drawn by chance, as in sensory tests (common
 * practice, no source): no order, no letters, none twice, and while there are enough, no two that differ in
 * one digit only, so that a slip of the pen is noticed.
 */
import { seededChance } from '../statistics/index.ts';

const differs = (a: string, b: string): number =>
  Array.from(a).reduce((count, digit, at) => count + (digit === b[at] ? 0 : 1), 0);

/**
 * Draws codes from 100 to 999.
 * @param used codes of the group's pairs so far
 * @param seed a whole number; the same seed and the same used codes draw the same
 * @returns null where fewer than `count` are left
 */
export const drawCodes = (
  count: number,
  used: ReadonlySet<string>,
  seed: number,
): readonly string[] | null => {
  const free = seededChance(seed)
    .shuffled(Array.from({ length: 900 }, (_, at) => String(100 + at)))
    .filter((code) => !used.has(code));
  if (free.length < count) return null;
  const threeDigits = [...used].filter((code) => /^\d{3}$/.test(code));
  const drawn: string[] = [];
  for (const code of free) {
    if (drawn.length === count) return drawn;
    if ([...threeDigits, ...drawn].every((other) => differs(code, other) >= 2)) drawn.push(code);
  }
  return [...drawn, ...free.filter((code) => !drawn.includes(code))].slice(0, count);
};
