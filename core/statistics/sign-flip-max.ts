/**
 * Which of several means of the same units are not zero? The signs of whole units are flipped, so that what goes
 * together stays together, and each mean is held against the greatest of all those that are still in question
 * (step-down maxT; Westfall PH & Young SS, Resampling-Based Multiple Testing, 1993, algorithm 4.1).
 *
 * Exact where a unit's answers are as likely with either sign: any word on a mean that is zero comes with at most the
 * probability of the level, over all means together. Up to 12 units every flip is tried; beyond, so many by chance with
 * the same seed, the answers as they are among them (Phipson B & Smyth GK, Stat Appl Genet Mol Biol 2010;9:39).
 */
import { seededChance } from './random.ts';

export interface FlippedMean {
  /** Two-sided, by itself. */
  readonly p: number;
  /** Two-sided, over all means. */
  readonly adjustedP: number;
}

/** Beyond so many units not every flip is tried. */
const MOST_EXACT = 12;
const FLIPS = 1999;
const SEED = 20_090_311;

/** One sign a unit. The first keeps its own, because a flip and its mirror have the same size. */
const signsOf = (units: number): readonly Float64Array[] => {
  if (units <= MOST_EXACT)
    return Array.from({ length: 2 ** Math.max(0, units - 1) }, (_, flip) =>
      Float64Array.from({ length: units }, (_sign, at) =>
        at > 0 && (flip >> (at - 1)) & 1 ? -1 : 1,
      ),
    );
  const chance = seededChance(SEED);
  return [
    new Float64Array(units).fill(1),
    ...Array.from({ length: FLIPS }, () =>
      Float64Array.from({ length: units }, () => (chance.share() < 0.5 ? -1 : 1)),
    ),
  ];
};

/** @param means for each mean the value of every unit, in the same order; null: that unit has none */
export const signFlipMax = (
  means: readonly (readonly (number | null)[])[],
): readonly FlippedMean[] => {
  const units = means[0]?.length ?? 0;
  const values = means.map((own) => Float64Array.from(own, (value) => value ?? 0));
  // The flips leave the squares as they are, so that this orders as the t statistic does.
  const scales = values.map((own) => Math.sqrt(own.reduce((sum, value) => sum + value * value, 0)));
  const sizeOf = (at: number, signs: Float64Array): number => {
    const [own, scale] = [values[at] as Float64Array, scales[at] as number];
    if (scale === 0) return 0;
    let sum = 0;
    for (let unit = 0; unit < units; unit++) sum += (own[unit] as number) * (signs[unit] as number);
    return Math.abs(sum) / scale;
  };
  const all = signsOf(units);
  const seen = means.map((_, at) => sizeOf(at, all[0] ?? new Float64Array()));
  const smallestFirst = [...seen.keys()].sort((a, b) => (seen[a] as number) - (seen[b] as number));
  const [alone, together] = [seen.map(() => 0), seen.map(() => 0)];
  for (const signs of all) {
    let greatest = 0;
    for (const at of smallestFirst) {
      const size = sizeOf(at, signs);
      greatest = Math.max(greatest, size);
      const needed = (seen[at] as number) - 1e-9;
      if (size >= needed) alone[at] = (alone[at] as number) + 1;
      if (greatest >= needed) together[at] = (together[at] as number) + 1;
    }
  }
  const adjusted = seen.map(() => 1);
  let most = 0;
  for (const at of smallestFirst.toReversed()) {
    most = Math.max(most, (together[at] as number) / all.length);
    adjusted[at] = most;
  }
  return seen.map((_, at) => ({
    p: (alone[at] as number) / all.length,
    adjustedP: adjusted[at] as number,
  }));
};
