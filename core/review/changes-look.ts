/**
 * Two rounds as one story: did the change arrive on the samples, did it mend what it was meant to mend, did anything
 * else move? Made of the comparison of the rounds, of the findings that the later one carries, and of what was measured.
 *
 * A complaint is asked about by itself if it was named before the later round was worn: by the list of changes, by a
 * finding whose change is carried, or because the earlier round proves it. Each of those has its own verdict
 * (`core/rounds/compare.ts`). Any other complaint is called worse only where its rise is proved over all of them
 * (`core/rounds/new-complaints.ts`), and is never called better: nobody asked.
 */
import type { ComfortChange } from '../complaints/index.ts';
import type { ComfortAttributeId, ComplaintKind, ZoneCode } from '../foot/index.ts';
import type {
  ChangeVerdict,
  Dimension,
  Measure,
  MeasureUnit,
  RecordId,
  RecordOf,
} from '../records/index.ts';
import {
  benchChanges,
  type BenchChange,
  type CellRise,
  type Felt,
  type FirstReading,
  type RoundCount,
} from '../rounds/index.ts';
import {
  compareComplaint,
  compareRounds,
  type Hands,
  type RoundComparison,
} from './compare-rounds.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import { proposeOutcome } from './propose-outcome.ts';
import type { Review, RoundReview } from './review-types.ts';

/** What is known of a line from the earlier to the later round; `look`: not proved, for the lead to ask about. */
export type MoveWord = ChangeVerdict | 'look';

/** One complaint in both rounds, over all who were asked. */
export interface FeltMove {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  readonly earlier: RoundCount;
  readonly later: RoundCount;
  readonly word: MoveWord;
  /** Whether it was named before the later round was worn. */
  readonly asked: boolean;
}

/** The mean score of one comfort question in both rounds, 0 to 100. */
export interface ComfortMove {
  readonly attribute: ComfortAttributeId;
  readonly earlier: number;
  readonly later: number;
  readonly word: ComfortChange['word'];
}

/** One place on the samples that was measured in both rounds, or that the blueprint changed. */
export interface Arrival {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  /** Later nominal less earlier; null where both blueprints do not name it. */
  readonly wanted: number | null;
  /** Null: not measured in both rounds. */
  readonly measured: BenchChange | null;
  /** `arrived`: differs the way that was wanted. `moved`: differs and nobody wanted it to. */
  readonly word: 'arrived' | 'not-arrived' | 'not-measured' | 'moved' | 'same';
}

/** A finding whose change one of the rounds up to the later one carries. */
export interface CarriedFinding {
  readonly id: RecordId;
  readonly title: string;
  readonly carriedBy: RecordId;
  /** What the lead wrote down. */
  readonly written: ChangeVerdict | null;
  /** What the comparison of the two rounds says; null where it names neither a complaint nor a two-sided question. */
  readonly found: ChangeVerdict | null;
}

export interface ChangesLook {
  readonly comparison: RoundComparison;
  /** Asked about first, then what moved, then the most frequent. */
  readonly felt: readonly FeltMove[];
  readonly comfort: readonly ComfortMove[];
  /** What was wanted first. */
  readonly arrivals: readonly Arrival[];
  readonly findings: readonly CarriedFinding[];
}

const keyOf = ({ zone, kind }: { readonly zone: ZoneCode | null; readonly kind: ComplaintKind }) =>
  `${zone} ${kind}`;

/** The findings whose change came after the earlier round, up to the later one. */
const carriedBetween = (
  log: ProjectLog,
  earlier: RoundReview,
  later: RoundReview,
): readonly RecordOf<'finding'>[] => {
  const between = new Set(
    log.rounds
      .filter(({ body: { order } }) => order > earlier.order && order <= later.order)
      .map(({ revision }) => revision.id),
  );
  return ownRecords(log.records.finding, log.id).filter(
    ({ body }) => body.carriedBy !== undefined && between.has(body.carriedBy),
  );
};

const shareOf = ({ reported, runs }: RoundCount): number => (runs > 0 ? reported / runs : 0);

const wordRank: Readonly<Record<MoveWord, number>> = {
  worse: 0,
  mended: 1,
  better: 1,
  'no-different': 2,
  look: 3,
  'too-little': 4,
};

const feltMoves = (
  log: ProjectLog,
  comparison: RoundComparison,
  named: readonly Felt[],
  earlier: RoundReview,
): FeltMove[] => {
  const asked = new Set([
    ...named.map(keyOf),
    ...earlier.complaints.cells.filter(({ word }) => word === 'recurs-across-testers').map(keyOf),
  ]);
  const { hands } = comparison;
  const wordOf = ({ zone, kind, word }: CellRise): MoveWord =>
    asked.has(`${zone} ${kind}`)
      ? compareComplaint(log, comparison.earlier, comparison.later, { zone, kind }, hands).verdict
      : word === 'proved'
        ? 'worse'
        : (word ?? 'too-little');
  return comparison.cells
    .map((cell): FeltMove => {
      const { zone, kind, earlier: before, later: after } = cell;
      const isAsked = asked.has(keyOf(cell));
      return { zone, kind, earlier: before, later: after, word: wordOf(cell), asked: isAsked };
    })
    .sort(
      (a, b) =>
        Number(b.asked) - Number(a.asked) ||
        wordRank[a.word] - wordRank[b.word] ||
        Math.max(shareOf(b.earlier), shareOf(b.later)) -
          Math.max(shareOf(a.earlier), shareOf(a.later)),
    );
};

const comfortMoves = (
  { comfort: { same, onlyOne } }: RoundComparison,
  earlier: RoundReview,
  later: RoundReview,
): ComfortMove[] => {
  const meanOf = (round: RoundReview, attribute: ComfortAttributeId) =>
    round.comfort.find((one) => one.attribute === attribute)?.wear?.mean;
  return later.comfort.flatMap(({ attribute }): ComfortMove[] => {
    const [from, to] = [meanOf(earlier, attribute), meanOf(later, attribute)];
    const own = [...same, ...onlyOne].find((one) => one.attribute === attribute);
    return from === undefined || to === undefined
      ? []
      : [{ attribute, earlier: from, later: to, word: own?.word ?? 'open' }];
  });
};

const placeKey = ({ measure, site, unit }: Pick<Dimension, 'measure' | 'site' | 'unit'>) =>
  `${measure} ${site} ${unit}`;

/** Later nominal less earlier of every dimension that both blueprints name, where it is not the same. */
const wantedOf = (log: ProjectLog, earlier: RecordId, later: RecordId) => {
  const nominals = (round: RecordId) =>
    new Map(
      log.rounds
        .find(({ revision }) => revision.id === round)
        ?.body.blueprint.map((one) => [placeKey(one), one]) ?? [],
    );
  const before = nominals(earlier);
  return new Map(
    [...nominals(later)].flatMap(([key, { nominal, measure, site, unit }]) => {
      const from = before.get(key)?.nominal;
      return from === undefined || from === nominal
        ? []
        : [[key, { measure, site, unit, wanted: nominal - from }] as const];
    }),
  );
};

const arrivalWord = (wanted: number | null, measured: BenchChange | null): Arrival['word'] => {
  if (!measured) return 'not-measured';
  const differs = measured.differs === true;
  if (wanted === null) return differs ? 'moved' : 'same';
  return differs && Math.sign(measured.difference) === Math.sign(wanted)
    ? 'arrived'
    : 'not-arrived';
};

const arrivalsOf = (
  log: ProjectLog,
  review: Pick<Review, 'deviations'>,
  comparison: RoundComparison,
): Arrival[] => {
  const { earlier, later, bench } = comparison;
  const readingsOf = (round: RecordId): FirstReading[] =>
    review.deviations.filter((one) => one.round === round && one.measure === 'dimension');
  const measured = [
    ...benchChanges(readingsOf(earlier), readingsOf(later), ['dimension']),
    ...bench,
  ];
  const wanted = wantedOf(log, earlier, later);
  const unmeasured = [...wanted].filter(([key]) => !measured.some((one) => placeKey(one) === key));
  const rank = ({ word }: Arrival) =>
    ['not-arrived', 'arrived', 'not-measured', 'moved', 'same'].indexOf(word);
  return [
    ...unmeasured.map(([, one]): Arrival => ({
      ...one,
      measured: null,
      word: arrivalWord(one.wanted, null),
    })),
    ...measured.map((one): Arrival => {
      const by = wanted.get(placeKey(one))?.wanted ?? null;
      const { measure, site, unit } = one;
      return { measure, site, unit, wanted: by, measured: one, word: arrivalWord(by, one) };
    }),
  ].sort((a, b) => rank(a) - rank(b));
};

/**
 * Two rounds of a project as one story, the earlier first.
 * @param comparison of the same rounds and hands, where it is made already
 */
export const lookAtChanges = (
  log: ProjectLog,
  review: Review,
  earlier: RoundReview,
  later: RoundReview,
  hands: Hands = 'all',
  comparison: RoundComparison = compareRounds(log, earlier, later, hands),
): ChangesLook => {
  const carried = carriedBetween(log, earlier, later);
  const named: Felt[] = [
    ...comparison.changes.flatMap(({ mends }) => mends ?? []),
    ...carried.flatMap(({ body: { kind, zone } }) =>
      kind === undefined ? [] : [{ kind, zone: zone ?? null }],
    ),
  ];
  return {
    comparison,
    felt: feltMoves(log, comparison, named, earlier),
    comfort: comfortMoves(comparison, earlier, later),
    arrivals: arrivalsOf(log, review, comparison),
    findings: carried.map(({ revision: { id }, body }) => ({
      id,
      title: body.title,
      carriedBy: body.carriedBy as RecordId,
      written: body.outcome?.verdict ?? null,
      found: proposeOutcome(log, body)?.verdict ?? null,
    })),
  };
};

/**
 * Did what the blueprint changed arrive on the samples? Of what is named in both blueprints and not the same; what else
 * differs is no answer to that: `not-asked` where that alone was measured.
 */
export const arrivedAnswer = (
  arrivals: readonly Arrival[],
): 'yes' | 'partly' | 'no' | 'not-asked' | 'not-measured' => {
  const measured = arrivals.filter(({ wanted, measured: is }) => wanted !== null && is !== null);
  const arrived = measured.filter(({ word }) => word === 'arrived').length;
  if (measured.length === 0)
    return arrivals.some(({ measured: is }) => is !== null) ? 'not-asked' : 'not-measured';
  if (arrived === 0) return 'no';
  return arrived === arrivals.filter(({ wanted }) => wanted !== null).length ? 'yes' : 'partly';
};
