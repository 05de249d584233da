/**
 * How do feet fit the last, which size is a foot, and whose feet are in the panel at all?
 *
 * A last is measured at one size and graded: its length grows by 5 mm for every 5 mm of foot length, width and
 * girth by the steps that the round names. Sizes are Mondopoint, ISO 9407:2019 (foot length in steps of 5 mm, or of
 * 7.5 mm, both counted from nought). The longer foot decides the size (common practice, no source). Toe allowance is
 * last length less foot length; 10 to 15 mm is usual in running shoes (common practice, no source).
 */
import type { Last, Tester } from '../records/index.ts';
import { millimetres, type Millimetres } from '../units/index.ts';

const STEP = 5;

/** A last at one size; null: not measured, or no step is named to grade it by. */
export interface GradedLast {
  readonly lengthMm: Millimetres | null;
  readonly widthMm: Millimetres | null;
  readonly girthMm: Millimetres | null;
}

/** The last at a size, mm of foot length. */
export const lastAt = (last: Last, sizeMm: Millimetres): GradedLast => {
  const steps = (sizeMm - last.sizeMm) / STEP;
  const graded = (measured: number | undefined, perStep: number | undefined) =>
    measured === undefined || (perStep === undefined && steps !== 0)
      ? null
      : millimetres(measured + steps * (perStep ?? 0));
  return {
    lengthMm: graded(last.lengthMm, STEP),
    widthMm: graded(last.ballWidthMm, last.widthPerStepMm),
    girthMm: graded(last.ballGirthMm, last.girthPerStepMm),
  };
};

/** Usual toe allowance in running shoes, mm (common practice, no source). */
export const USUAL_TOE_MM = { least: 10, most: 15 } as const;

export interface FootFit {
  /** Last length less foot length, mm; null where either is not known. */
  readonly toeMm: number | null;
  readonly toe: 'short' | 'usual' | 'long' | null;
  /** Last less foot at the ball, mm. */
  readonly widthMm: number | null;
  readonly girthMm: number | null;
}

type Feet = Pick<Tester, 'footLengthMm' | 'footWidthMm' | 'ballGirthMm'>;

const less = (last: number | null, foot: number | undefined): number | null =>
  last === null || foot === undefined ? null : last - foot;

/** One foot against the last. */
export const fitOf = (tester: Feet, foot: 'left' | 'right', last: GradedLast): FootFit => {
  const toeMm = less(last.lengthMm, tester.footLengthMm?.[foot]);
  return {
    toeMm,
    toe:
      toeMm === null
        ? null
        : toeMm < USUAL_TOE_MM.least
          ? 'short'
          : toeMm > USUAL_TOE_MM.most
            ? 'long'
            : 'usual',
    widthMm: less(last.widthMm, tester.footWidthMm?.[foot]),
    girthMm: less(last.girthMm, tester.ballGirthMm?.[foot]),
  };
};

/** The two ranges of ISO 9407, by their step in mm. */
export const sizeSteps = [5, 7.5] as const;
export type SizeStep = (typeof sizeSteps)[number];

export interface MondopointSize {
  /** The nearest size of the range. */
  readonly sizeMm: Millimetres;
  /** Foot length less size, mm. */
  readonly offMm: number;
  /** Nearer to the middle between two sizes than to either (judgement, no source). */
  readonly between: boolean;
}

/** The size of a foot length in one of the ranges. */
export const mondopointOf = (lengthMm: number, step: SizeStep): MondopointSize => {
  const sizeMm = millimetres(Math.round(lengthMm / step) * step);
  const offMm = lengthMm - sizeMm;
  return { sizeMm, offMm, between: Math.abs(offMm) > step / 4 };
};

export interface Asymmetry {
  /** Left less right, mm; null: not measured. */
  readonly lengthMm: number | null;
  readonly widthMm: number | null;
  readonly girthMm: number | null;
}

/** By how much the left foot is greater than the right. */
export const asymmetryOf = ({ footLengthMm, footWidthMm, ballGirthMm }: Feet): Asymmetry => {
  const of = (both: { readonly left: number; readonly right: number } | undefined) =>
    both === undefined ? null : both.left - both.right;
  return { lengthMm: of(footLengthMm), widthMm: of(footWidthMm), girthMm: of(ballGirthMm) };
};

/** A stretch of the range that a brief is for, mm, and how many of the panel's feet lie in it. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
  readonly testers: number;
}

export interface Coverage {
  readonly fromMm: number;
  readonly toMm: number;
  /** Width of one step, mm. */
  readonly stepMm: number;
  readonly measured: number;
  /** Testers whose foot was not measured: they tell nothing of coverage. */
  readonly notMeasured: number;
  /** Measured, but outside of what the brief is for. */
  readonly outside: number;
  readonly steps: readonly Stretch[];
  /** Steps without a tester, neighbours put together. */
  readonly empty: readonly Stretch[];
}

/**
 * Do the testers' feet cover a range? It is cut into steps centred on the sizes of 5 mm (ISO 9407), its two ends
 * cut off where they are.
 * @param values of each tester, mm; null where it was not measured
 * @returns null where the range is none
 */
export const coverageOf = (
  [fromMm, toMm]: readonly [number, number],
  values: readonly (number | null)[],
  stepMm: number = STEP,
): Coverage | null => {
  if (!(toMm > fromMm) || !(stepMm > 0)) return null;
  const known = values.filter((value) => value !== null);
  const inRange = known.filter((value) => value >= fromMm && value <= toMm);
  const cuts = [fromMm];
  for (let at = Math.floor(fromMm / stepMm) + 0.5; at * stepMm < toMm; at++)
    if (at * stepMm > fromMm) cuts.push(at * stepMm);
  const steps = cuts.map((from, at): Stretch => {
    const to = cuts[at + 1] ?? toMm;
    const last = at === cuts.length - 1;
    return {
      fromMm: from,
      toMm: to,
      testers: inRange.filter((value) => value >= from && (value < to || last)).length,
    };
  });
  const empty: Stretch[] = [];
  for (const step of steps.filter(({ testers }) => testers === 0)) {
    const before = empty.at(-1);
    if (before?.toMm === step.fromMm) empty[empty.length - 1] = { ...before, toMm: step.toMm };
    else empty.push(step);
  }
  return {
    fromMm,
    toMm,
    stepMm,
    measured: known.length,
    notMeasured: values.length - known.length,
    outside: known.length - inRange.length,
    steps,
    empty,
  };
};
