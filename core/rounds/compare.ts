/**
 * Did a complaint become rarer from one round to a later one, and may the change be called a success?
 *
 * The tester is the unit. Of a tester who wore both rounds, the first asked runs of each are compared, as
 * many as the shorter of the two has: so that break-in is compared with break-in, and so that a change that
 * does nothing is as likely to show a rise as a fall, however runs hang together and however testers differ. That
 * takes the round to be all that changed: where everybody wore the earlier one first, getting used to a shoe,
 * season or training fall together with it (`core/review/compare-rounds.ts` says so). The testers' differences are tested by flipping their signs (Fisher RA, The Design of Experiments,
 * 1935, section 21), and the interval is what that test does not reject (Hartigan JA, J Am Stat Assoc
 * 1969;64:1303-1317). A change was meant to mend, so a false "better" may come in 1 of 32 comparisons at
 * most, a false "worse" in 1 of 64: 4.7 % in all. Five testers of five can then show a mend, six a harm.
 *
 * Where fewer than five wore both rounds, all testers of the one are set against all of the other as if
 * they were different people, by the interval of `core/statistics/clustered-difference.ts` at the same
 * tails. That leans on both panels being alike, and the screens say so.
 *
 * `mended` asks more than `better`: the share of runs in the later round is shown to be at most what the
 * brief allows, by an upper bound of 95 % whose runs count as many as their testers make them worth.
 * `no-different` must be shown as well: the interval, never narrower than that of as many independent runs,
 * lies within a margin of half the earlier share, at least the allowed share and at most 15 points
 * (judgement, no source). All else is `too-little`. Each change is judged by itself, as it was announced.
 */
import type { ChangeVerdict, RecordId } from '../records/index.ts';
import {
  clusteredDifference,
  clusteredUpper,
  exactMcNemar,
  signFlip,
  signFlipInterval,
  type Interval,
  type UnitCount,
} from '../statistics/index.ts';
import type { RoundAnswers } from './answers.ts';
import {
  asOthers,
  basisOf,
  correlationOf,
  countOf,
  LEAST_RUNS,
  LEAST_SAME_TESTERS,
  pairedFirsts,
  unitOf,
  unitsOf,
  type Basis,
  type BothRounds,
  type RoundCount,
} from './sides.ts';

/** Greatest chances of a false "better" and of a false "worse". */
export const FALSE_BETTER = 1 / 32;
export const FALSE_WORSE = 1 / 64;
/** Chance that the later share is above the bound that "mended" is judged by. */
const MENDED_TAIL = 0.05;
/** A change within so much of the earlier share is none, and never more than so many points. */
const MARGIN_SHARE = 0.5;
const MOST_MARGIN = 0.15;
/** More clean runs than this nobody waits for. */
const MOST_MORE = 60;

const TAILS = { lower: FALSE_WORSE, upper: FALSE_BETTER } as const;

/** A change of the share of runs, later less earlier, with its interval: below 0 is rarer. */
export interface ShareChange extends Interval {
  readonly change: number;
}

/** One tester's asked and reporting runs; null: not asked in that round. */
export interface TesterChange {
  readonly tester: RecordId;
  readonly earlier: UnitCount | null;
  readonly later: UnitCount | null;
  /** The first runs of each round, which are compared; null where there are too few of one. */
  readonly first: { readonly earlier: UnitCount; readonly later: UnitCount } | null;
}

export interface SameTesters extends ShareChange {
  /** Over the compared runs. */
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  /** Testers whose share changed at all. */
  readonly changed: number;
  /** One-sided: the chance of such a fall, or such a rise, if the change did nothing. */
  readonly pBetter: number;
  readonly pWorse: number;
  /** Testers who reported it in the earlier round only, the later only; McNemar's exact p, two-sided. */
  readonly onlyEarlier: number;
  readonly onlyLater: number;
  readonly pTesters: number;
}

/** Different testers in each round; the change is null where one of the rounds has none. */
export interface OtherTesters {
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  readonly change: ShareChange | null;
}

export type TooLittle =
  | 'nobody-asked-earlier'
  | 'nobody-asked-later'
  | 'never-reported'
  | 'too-few-testers'
  | 'too-few-changed'
  | 'not-decided';

export interface CellComparison {
  readonly verdict: ChangeVerdict;
  /** Why no more is said; null with every other verdict. */
  readonly why: TooLittle | null;
  readonly basis: Basis;
  /** The change that the verdict is read from; null without a basis. */
  readonly change: ShareChange | null;
  /** All asked runs of each round. */
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  /** Those who wore both rounds; null where nobody did, in enough runs. */
  readonly same: SameTesters | null;
  /** Those who wore one of them only. */
  readonly onlyOne: OtherTesters;
  /** Half-width within which a change is none. */
  readonly margin: number;
  readonly allowed: number;
  /** Upper bound, 95 %, of the later round's share of runs; 1 where nobody was asked. */
  readonly laterUpTo: number;
  /**
   * What would show that it is mended, if nobody reports it any more: so many more runs of each tester, or so
   * many more testers with as many runs; null where that is not enough. Only beside `better`.
   */
  readonly settle: { readonly runs: number | null; readonly testers: number | null } | null;
  /** Highest earlier share first, then those asked in one round only. */
  readonly byTester: readonly TesterChange[];
}

const differenceOf = (
  earlier: readonly UnitCount[],
  later: readonly UnitCount[],
): ShareChange | null => {
  const found = clusteredDifference(earlier, later, correlationOf([earlier, later]), TAILS);
  return found && { change: found.difference, lower: found.lower, upper: found.upper };
};

const withZero = (interval: Interval | null, mean: number): Interval => ({
  lower: Math.min(interval?.lower ?? -1, mean, 0),
  upper: Math.max(interval?.upper ?? 1, mean, 0),
});

/**
 * The flips' interval, but never narrower than that of as many runs if each were a witness of its own: equal
 * changes of a handful of testers are not exact. Zero stays out where the flips have ruled it out.
 */
const widened = (flipped: Interval, least: Interval | null): Interval => {
  const lower = Math.min(flipped.lower, least?.lower ?? flipped.lower);
  const upper = Math.max(flipped.upper, least?.upper ?? flipped.upper);
  return {
    lower: flipped.lower > 0 && lower <= 0 ? flipped.lower : lower,
    upper: flipped.upper < 0 && upper >= 0 ? flipped.upper : upper,
  };
};

/** @returns null where nobody wore both rounds often enough */
const sameTestersOf = (both: BothRounds): SameTesters | null => {
  const pairs = pairedFirsts(both);
  if (pairs.length === 0) return null;
  const changes = pairs.map(({ change }) => change);
  const mean = changes.reduce((a, b) => a + b, 0) / changes.length;
  const changed = changes.filter((d) => d !== 0).length;
  const rise = signFlip(changes);
  const fall = signFlip(changes.map((d) => -d));
  const [earlier, later] = [pairs.map((p) => p.earlier), pairs.map((p) => p.later)];
  const flipped = signFlipInterval(changes, TAILS);
  const interval =
    changed < LEAST_SAME_TESTERS
      ? // So few cannot prove anything; then their signs must not make a narrow interval either.
        withZero(differenceOf(earlier, later), mean)
      : widened(
          { lower: flipped.lower ?? -1, upper: flipped.upper ?? 1 },
          clusteredDifference(earlier, later, 0, TAILS),
        );
  const onlyEarlier = pairs.filter((p) => p.earlier.x > 0 && p.later.x === 0).length;
  const onlyLater = pairs.filter((p) => p.later.x > 0 && p.earlier.x === 0).length;
  return {
    change: mean,
    ...interval,
    earlier: countOf(earlier),
    later: countOf(later),
    changed,
    pBetter: fall.pGreater,
    pWorse: rise.pGreater,
    onlyEarlier,
    onlyLater,
    pTesters: exactMcNemar(onlyEarlier, onlyLater),
  };
};

const onlyOneOf = ({ earlier, later }: BothRounds): OtherTesters => {
  const without = (own: BothRounds['earlier'], other: RoundAnswers) =>
    [...own.answers.asked.keys()]
      .filter((tester) => !other.asked.has(tester))
      .flatMap((tester) => unitOf(own, tester) ?? []);
  const [first, second] = [without(earlier, later.answers), without(later, earlier.answers)];
  return {
    earlier: countOf(first),
    later: countOf(second),
    change: first.length >= 2 && second.length >= 2 ? differenceOf(first, second) : null,
  };
};

const within = ({ lower, upper }: Interval, margin: number): boolean =>
  lower > -margin && upper < margin;

/** What clean runs would show that it is mended; see {@link CellComparison.settle}. */
const settleOf = (
  units: readonly UnitCount[],
  correlation: number,
  allowed: number,
): NonNullable<CellComparison['settle']> => {
  const typical = Math.max(
    LEAST_RUNS,
    Math.round(units.reduce((sum, { n }) => sum + n, 0) / units.length),
  );
  // More clean runs never raise the bound, so the least number is found by halving.
  const least = (more: (count: number) => readonly UnitCount[]): number | null => {
    const isEnough = (count: number) =>
      clusteredUpper(more(count), correlation, MENDED_TAIL) <= allowed;
    let [no, yes] = [0, MOST_MORE];
    if (!isEnough(yes)) return null;
    while (yes - no > 1) {
      const middle = (no + yes) >> 1;
      if (isEnough(middle)) yes = middle;
      else no = middle;
    }
    return yes;
  };
  return {
    runs: least((count) => units.map(({ x, n }) => ({ x, n: n + count }))),
    testers: least((count) => [
      ...units,
      ...Array.from({ length: count }, () => ({ x: 0, n: typical })),
    ]),
  };
};

const byTesterOf = (both: BothRounds): TesterChange[] => {
  const paired = new Map(pairedFirsts(both).map((one) => [one.tester, one]));
  const testers = new Set([
    ...both.earlier.answers.asked.keys(),
    ...both.later.answers.asked.keys(),
  ]);
  const share = (unit: UnitCount | null) => (unit ? unit.x / unit.n : -1);
  return [...testers]
    .map((tester): TesterChange => {
      const pair = paired.get(tester);
      return {
        tester,
        earlier: unitOf(both.earlier, tester),
        later: unitOf(both.later, tester),
        first: pair ? { earlier: pair.earlier, later: pair.later } : null,
      };
    })
    .sort(
      (a, b) =>
        Number(b.first !== null) - Number(a.first !== null) ||
        share(b.earlier) - share(a.earlier) ||
        share(b.later) - share(a.later) ||
        (a.tester < b.tester ? -1 : 1),
    );
};

const changeOn = (basis: Basis, both: BothRounds, same: SameTesters | null): ShareChange | null => {
  switch (basis) {
    case 'none':
      return null;
    case 'same-testers':
      return same && { change: same.change, lower: same.lower, upper: same.upper };
    case 'all-testers': {
      const { earlier, later } = asOthers(both);
      return differenceOf(earlier, later);
    }
  }
};

/** The change of one complaint's share of runs, as {@link compareCell} would read it; null without a basis. */
export const changeOf = (both: BothRounds): ShareChange | null =>
  changeOn(basisOf(both), both, sameTestersOf(both));

/**
 * Compares one complaint between two rounds; the rule stands at the head of this file.
 * @param allowed share of asked runs in which the brief still accepts it, 0 to 1
 */
export const compareCell = (both: BothRounds, allowed: number): CellComparison => {
  const [first, second] = [unitsOf(both.earlier), unitsOf(both.later)];
  const [earlier, later] = [countOf(first), countOf(second)];
  const basis = basisOf(both);
  const same = sameTestersOf(both);
  const change = changeOn(basis, both, same);
  const correlation = correlationOf([first, second]);
  const laterUpTo = clusteredUpper(second, correlation, MENDED_TAIL);
  const share = earlier.runs > 0 ? earlier.reported / earlier.runs : 0;
  const margin = Math.min(MOST_MARGIN, Math.max(allowed, MARGIN_SHARE * share));
  const { verdict, why } = wordOf({
    earlier,
    later,
    change,
    isNone: change !== null && within(change, margin),
    isWithinBrief: laterUpTo <= allowed,
    fewChanged: basis === 'same-testers' && (same?.changed ?? 0) < LEAST_SAME_TESTERS,
  });
  return {
    verdict,
    why,
    basis,
    change,
    earlier,
    later,
    same,
    onlyOne: onlyOneOf(both),
    margin,
    allowed,
    laterUpTo,
    settle: verdict === 'better' ? settleOf(second, correlation, allowed) : null,
    byTester: byTesterOf(both),
  };
};

const wordOf = (seen: {
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  readonly change: ShareChange | null;
  readonly isNone: boolean;
  readonly isWithinBrief: boolean;
  readonly fewChanged: boolean;
}): Pick<CellComparison, 'verdict' | 'why'> => {
  const { earlier, later, change, isNone, isWithinBrief, fewChanged } = seen;
  const little = (why: TooLittle) => ({ verdict: 'too-little', why }) as const;
  if (earlier.runs === 0) return little('nobody-asked-earlier');
  if (later.runs === 0) return little('nobody-asked-later');
  if (change === null) return little('too-few-testers');
  if (change.upper < 0) return { verdict: isWithinBrief ? 'mended' : 'better', why: null };
  if (change.lower > 0) return { verdict: 'worse', why: null };
  if (earlier.reported === 0) return little('never-reported');
  if (isNone) return { verdict: 'no-different', why: null };
  return little(fewChanged ? 'too-few-changed' : 'not-decided');
};
