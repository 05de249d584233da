/**
 * With whom and with what does a complaint go together? Hints where to look; never a cause.
 *
 * What belongs to a tester (size, foot, strike, a pair out of tolerance) is compared between testers who
 * reported it at least twice and those who did not, one vote a tester: exact rank sum or Fisher's test.
 * What changes from run to run (surface, ground, warmth, sock) is compared within testers: exact
 * stratified tests. Left against right: exact flips of the testers' differences. Layers of material over
 * the zone differ between rounds: within testers who wore several. All hints of all cells together are
 * held at a false discovery rate of 10 % (Benjamini Y & Hochberg Y, J R Stat Soc B 1995;57:289-300);
 * sources of the tests in `core/statistics`.
 */
import type { RecordId } from '../records/index.ts';
import {
  benjaminiHochberg,
  fisherExact,
  groupBy,
  rankSumTest,
  signFlip,
  stratifiedRankTest,
  stratifiedTwoByTwo,
  type TwoByTwo,
} from '../statistics/index.ts';
import { reports, reportsOn, type CellName, type ObservedRun } from './observed-runs.ts';

export const associationFactors = [
  'size',
  'foot-length-against-last',
  'foot-width',
  'left-or-right',
  'soft-ground',
  'wet-ground',
  'temperature',
  'sock',
  'forefoot-strike',
  'out-of-tolerance',
  'layers',
] as const;
export type AssociationFactor = (typeof associationFactors)[number];

/** What is known of a tester. Null: not known. */
export interface TesterTraits {
  readonly tester: RecordId;
  /** Size of the pair, mm of foot length. */
  readonly sizeMm: number | null;
  /** Longer foot less the length that the pair is made for, mm. */
  readonly lengthOverMm: number | null;
  /** Wider foot, mm. */
  readonly widthMm: number | null;
  /** Midfoot or forefoot, against rearfoot. */
  readonly forefootStrike: boolean | null;
  /** A reading of the pair was out of tolerance when it arrived. */
  readonly outOfTolerance: boolean | null;
}

export interface AssociationContext {
  readonly traits: readonly TesterTraits[];
  /** Runs of every round, for what changes between rounds only. */
  readonly allRounds: readonly ObservedRun[];
  /** Layers of material over a zone in a round; null where they were not counted. */
  readonly layers: (round: RecordId, zone: CellName['zone']) => number | null;
}

export interface Association {
  readonly cell: CellName;
  readonly factor: AssociationFactor;
  /** The complaint goes with more of it (greater, wetter, left, out of tolerance), or with less. */
  readonly goesWith: 'more' | 'less' | 'neither';
  readonly p: number;
  /** Over all hints of the call, Benjamini and Hochberg. */
  readonly adjustedP: number;
  /** Worth a look: adjusted p up to 10 %. */
  readonly hint: boolean;
  /** Testers behind it; within-tester tests count those who have runs of both kinds. */
  readonly testers: number;
  readonly method: 'exact' | 'normal' | 'chi-squared';
}

type Found = Pick<Association, 'goesWith' | 'p' | 'testers' | 'method'>;

export const HINT_LEVEL = 0.1;

const direction = (chance: number): Found['goesWith'] =>
  chance > 0.5 ? 'more' : chance < 0.5 ? 'less' : 'neither';

/** Testers asked at least twice, and whether each reported the cell at least twice. */
const affectedTesters = (runs: readonly ObservedRun[], cell: CellName): Map<RecordId, boolean> =>
  new Map(
    [...groupBy(runs, ({ tester }) => tester)].flatMap(([tester, own]) =>
      own.length >= 2
        ? [[tester, own.filter((run) => reports(run, cell)).length >= 2] as const]
        : [],
    ),
  );

const betweenTesters = (
  affected: ReadonlyMap<RecordId, boolean>,
  traits: readonly TesterTraits[],
  value: (traits: TesterTraits) => number | null,
): Found | null => {
  const [yes, no]: [number[], number[]] = [[], []];
  for (const own of traits) {
    const is = affected.get(own.tester);
    const v = value(own);
    if (is !== undefined && v !== null) (is ? yes : no).push(v);
  }
  const { p, chanceAbove, method } = rankSumTest(yes, no);
  return chanceAbove === null
    ? null
    : { p, method, goesWith: direction(chanceAbove), testers: yes.length + no.length };
};

const betweenYesAndNo = (
  affected: ReadonlyMap<RecordId, boolean>,
  traits: readonly TesterTraits[],
  has: (traits: TesterTraits) => boolean | null,
): Found | null => {
  const table: [number, number, number, number] = [0, 0, 0, 0];
  for (const own of traits) {
    const is = affected.get(own.tester);
    const v = has(own);
    if (is === undefined || v === null) continue;
    const at = (v ? 0 : 2) + (is ? 0 : 1);
    table[at] = (table[at] as number) + 1;
  }
  const [a, b, c, d] = table;
  if (a + b === 0 || c + d === 0 || a + c === 0 || b + d === 0) return null;
  const goesWith = a * d > b * c ? 'more' : a * d < b * c ? 'less' : 'neither';
  return { p: fisherExact(table), goesWith, testers: a + b + c + d, method: 'exact' };
};

const withinTesters = (
  runs: readonly ObservedRun[],
  cell: CellName,
  value: (run: ObservedRun) => number | null,
): Found | null => {
  const strata = [...groupBy(runs, ({ tester }) => tester).values()].map((own) => {
    const answered = own.filter((run) => value(run) !== null);
    return {
      values: answered.map((run) => value(run) as number),
      inFirst: answered.map((run) => reports(run, cell)),
    };
  });
  const { p, chanceAbove, method, strata: testers } = stratifiedRankTest(strata);
  return chanceAbove === null ? null : { p, method, goesWith: direction(chanceAbove), testers };
};

const withinYesAndNo = (
  runs: readonly ObservedRun[],
  cell: CellName,
  has: (run: ObservedRun) => boolean | null,
): Found | null => {
  const tables = [...groupBy(runs, ({ tester }) => tester).values()].map((own): TwoByTwo => {
    const table: [number, number, number, number] = [0, 0, 0, 0];
    for (const run of own) {
      const v = has(run);
      if (v === null) continue;
      const at = (v ? 0 : 2) + (reports(run, cell) ? 0 : 1);
      table[at] = (table[at] as number) + 1;
    }
    return table;
  });
  const { p, oddsRatio, strata, method } = stratifiedTwoByTwo(tables);
  if (strata === 0 || oddsRatio === null) return null;
  const goesWith = oddsRatio > 1 ? 'more' : oddsRatio < 1 ? 'less' : 'neither';
  return { p, goesWith, testers: strata, method };
};

const leftOrRight = (runs: readonly ObservedRun[], cell: CellName): Found | null => {
  const differences = [...groupBy(runs, ({ tester }) => tester).values()].map(
    (own) =>
      own.filter((run) => reportsOn(run, cell, 'left')).length -
      own.filter((run) => reportsOn(run, cell, 'right')).length,
  );
  const testers = differences.filter((d) => d !== 0).length;
  if (testers === 0) return null;
  const sum = differences.reduce((a, b) => a + b, 0);
  const { pTwoSided, method } = signFlip(differences);
  return {
    p: pTwoSided,
    method,
    testers,
    goesWith: sum > 0 ? 'more' : sum < 0 ? 'less' : 'neither',
  };
};

const associationsOf = (
  runs: readonly ObservedRun[],
  cell: CellName,
  { traits, allRounds, layers }: AssociationContext,
): [AssociationFactor, Found | null][] => {
  const affected = affectedTesters(runs, cell);
  return [
    ['size', betweenTesters(affected, traits, (own) => own.sizeMm)],
    ['foot-length-against-last', betweenTesters(affected, traits, (own) => own.lengthOverMm)],
    ['foot-width', betweenTesters(affected, traits, (own) => own.widthMm)],
    ['left-or-right', leftOrRight(runs, cell)],
    [
      'soft-ground',
      withinYesAndNo(runs, cell, ({ softShare }) => (softShare === null ? null : softShare > 0.5)),
    ],
    ['wet-ground', withinYesAndNo(runs, cell, ({ wet }) => wet)],
    ['temperature', withinTesters(runs, cell, ({ temperatureC }) => temperatureC)],
    ['sock', withinTesters(runs, cell, ({ sock }) => sock)],
    ['forefoot-strike', betweenYesAndNo(affected, traits, (own) => own.forefootStrike)],
    ['out-of-tolerance', betweenYesAndNo(affected, traits, (own) => own.outOfTolerance)],
    ['layers', withinTesters(allRounds, cell, ({ round }) => layers(round, cell.zone))],
  ];
};

/**
 * The associations of some cells, most convincing first. Factors without anything to compare are absent.
 * `left-or-right`: more is left.
 */
export const associations = (
  runs: readonly ObservedRun[],
  cells: readonly CellName[],
  context: AssociationContext,
): Association[] => {
  const found = cells.flatMap((cell) =>
    associationsOf(runs, cell, context).flatMap(([factor, one]) =>
      one ? [{ cell, factor, ...one }] : [],
    ),
  );
  const adjusted = benjaminiHochberg(found.map(({ p }) => p));
  return found
    .map((one, at) => {
      const adjustedP = adjusted[at] as number;
      return { ...one, adjustedP, hint: adjustedP <= HINT_LEVEL };
    })
    .sort((a, b) => a.p - b.p);
};
