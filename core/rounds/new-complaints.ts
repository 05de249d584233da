/**
 * Which complaints came with a round?
 *
 * Every zone and kind whose share of runs rose is tested for the rise, on the same footing as a change that
 * was meant to mend (`compare.ts`). Over all of them the false discovery rate is held at 10 % (Benjamini Y
 * & Hochberg Y, J R Stat Soc B 1995;57:289-300). Cells that could not have been called whatever their signs
 * (four changed testers are the least that can), or whose rise could not have come to ten points, do not
 * count among them: that looks at how many changed and how much, not which way, so that it tells nothing of
 * the test's answer (Tarone RE, Biometrics 1990;46:515-522; Gilbert PB, J R Stat Soc C 2005;54:143-158;
 * Bourgon R, Gentleman R & Huber W, Proc Natl Acad Sci 2010;107:9546-9551).
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import { benjaminiHochberg, pOfClusteredRise, signFlip } from '../statistics/index.ts';
import { reportsByCell, type RoundAnswers } from './answers.ts';
import { changeOf, type ShareChange } from './compare.ts';
import {
  asOthers,
  basisOf,
  correlationOf,
  countOf,
  pairedFirsts,
  unitsOf,
  type BothRounds,
  type RoundCount,
} from './sides.ts';

/** Share of proved rises that may be false, on average. */
export const FALSE_RISES = 0.1;
/** Below this, by itself, a rise is worth a look. */
const LOOK_P = 0.05;
/** So many testers with it twice now, and nobody with it before, is worth a look. Judgement, no source. */
const LOOK_TESTERS = 2;
/** So many changed testers, or reporters of both rounds together, can be called at all. */
const LEAST_CALLABLE = 4;

/** Rises of the share of runs that could not come to so much are not looked for. Judgement, no source. */
const LEAST_RISE = 0.1;

/** A zone and kind in both rounds. */
export interface CellRise {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  /** All asked runs. */
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  /** Over the testers that a verdict would be read from; its interval holds for this cell alone. */
  readonly change: ShareChange | null;
  /** One-sided, against "not more frequent than before"; null where no test could call it. */
  readonly p: number | null;
  /** Over all cells that a test could call; null as above. */
  readonly adjustedP: number | null;
  /** `look`: not proved, and for the lead to ask about. */
  readonly word: 'proved' | 'look' | null;
}

const shareOf = ({ runs, reported }: RoundCount): number => (runs > 0 ? reported / runs : 0);

/** Null where the cell could not be called whatever its signs. */
const pOfRise = (both: BothRounds): number | null => {
  const basis = basisOf(both);
  if (basis === 'none') return null;
  if (basis === 'same-testers') {
    const changes = pairedFirsts(both).map(({ change }) => change);
    const most = changes.reduce((sum, d) => sum + Math.abs(d), 0) / changes.length;
    return changes.filter((d) => d !== 0).length < LEAST_CALLABLE || most < LEAST_RISE
      ? null
      : signFlip(changes).pGreater;
  }
  const { earlier, later } = asOthers(both);
  const all = [...earlier, ...later];
  const reporters = all.filter(({ x }) => x > 0).length;
  const share = all.reduce((sum, { x }) => sum + x, 0) / all.reduce((sum, { n }) => sum + n, 0);
  // Half of the runs lie in each round, about: a rise of ten points from nothing.
  return reporters < LEAST_CALLABLE || share < LEAST_RISE / 2
    ? null
    : pOfClusteredRise(earlier, later, correlationOf([earlier, later]));
};

/**
 * All cells that either round reported, those whose rise is proved first, then those worth a look, then by
 * how much the share of runs rose.
 * @param recurs whether a cell is proved to recur in the earlier, and in the later round
 */
export const compareCells = (
  earlier: RoundAnswers,
  later: RoundAnswers,
  recurs: (zone: ZoneCode, kind: ComplaintKind) => { earlier: boolean; later: boolean },
): CellRise[] => {
  const [before, after] = [reportsByCell(earlier), reportsByCell(later)];
  const nobody = new Map<never, never>();
  const cells = [...new Map([...before, ...after])].map(([key, { zone, kind }]) => {
    const both: BothRounds = {
      earlier: { answers: earlier, reports: before.get(key)?.reports ?? nobody },
      later: { answers: later, reports: after.get(key)?.reports ?? nobody },
    };
    return {
      zone,
      kind,
      earlier: countOf(unitsOf(both.earlier)),
      later: countOf(unitsOf(both.later)),
      change: changeOf(both),
      p: pOfRise(both),
      twice: [...both.later.reports.values()].filter((own) => own.length >= 2).length,
    };
  });
  const callable = cells.flatMap(({ p }) => (p === null ? [] : [p]));
  const adjusted = benjaminiHochberg(callable).values();
  return cells
    .map(({ twice, ...cell }): CellRise => {
      const adjustedP = cell.p === null ? null : (adjusted.next().value ?? null);
      const rose = shareOf(cell.later) > shareOf(cell.earlier);
      const known = recurs(cell.zone, cell.kind);
      const isNew = cell.earlier.reported === 0 && cell.earlier.runs > 0 && twice >= LOOK_TESTERS;
      const look =
        rose && ((cell.p !== null && cell.p <= LOOK_P) || (known.later && !known.earlier) || isNew);
      const proved = rose && adjustedP !== null && adjustedP <= FALSE_RISES;
      return { ...cell, adjustedP, word: proved ? 'proved' : look ? 'look' : null };
    })
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        shareOf(b.later) - shareOf(b.earlier) - (shareOf(a.later) - shareOf(a.earlier)) ||
        (a.zone === b.zone ? (a.kind < b.kind ? -1 : 1) : a.zone < b.zone ? -1 : 1),
    );
};

const rank = ({ word }: CellRise): number => (word === 'proved' ? 0 : word === 'look' ? 1 : 2);
