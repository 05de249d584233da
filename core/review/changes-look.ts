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
import type { ChangeVerdict, Measure, MeasureUnit, RecordId, RecordOf } from '../records/index.ts';
import {
  arrivalWord,
  sampleDifference,
  turned,
  usualGaugeError,
  type ArrivalWord,
  type CellRise,
  type Felt,
  type FirstReading,
  type RoundCount,
  type SampleDifference,
} from '../rounds/index.ts';
import { placeKey } from '../wear/index.ts';
import {
  arrivalRank,
  nominalAt,
  sampleReadings,
  type ChangeArrival,
  type PlaceArrival,
} from './change-arrivals.ts';
import {
  compareComplaint,
  compareRounds,
  type Hands,
  type RoundComparison,
} from './compare-rounds.ts';
import { foundDifferences, type FoundDifferences } from './found-differences.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import { proposeOutcome } from './propose-outcome.ts';
import type { RoundReview } from './review-types.ts';

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

/** One place on the samples whose drawing the later round changed. */
export interface Arrival {
  readonly measure: Measure;
  readonly site: string;
  readonly unit: MeasureUnit;
  /** Later nominal less earlier. */
  readonly wanted: number;
  /** Null: nothing alike was read in both rounds. */
  readonly measured: SampleDifference | null;
  readonly word: ArrivalWord;
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
  /** Whether its change is in the shoe; null: it is not said in figures. */
  readonly arrival: ChangeArrival | null;
}

export interface ChangesLook {
  readonly comparison: RoundComparison;
  /** Asked about first, then what moved, then the most frequent. */
  readonly felt: readonly FeltMove[];
  readonly comfort: readonly ComfortMove[];
  /** Dimensions that the drawing changed and no structured change names; what did not arrive first. */
  readonly arrivals: readonly Arrival[];
  /** What differs though nobody asked for it. */
  readonly differences: FoundDifferences;
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

/** Places that a structured change names are told with it. */
const arrivalsOf = (
  log: ProjectLog,
  { earlier, later }: Pick<RoundComparison, 'earlier' | 'later'>,
  told: readonly PlaceArrival[],
): Arrival[] => {
  const [before, after] = [sampleReadings(log, earlier), sampleReadings(log, later)];
  const from = log.rounds.find(({ revision }) => revision.id === earlier);
  const rank = ({ word }: Arrival) => arrivalRank.indexOf(word);
  return [...wantedOf(log, earlier, later)]
    .filter(([key]) => !told.some((one) => placeKey(one) === key))
    .map(([key, one]): Arrival => {
      const isHere = (reading: FirstReading) => placeKey(reading) === key;
      const measured =
        from === undefined
          ? null
          : sampleDifference(
              before.filter(isHere),
              after.filter(isHere),
              nominalAt(log, from, one),
              usualGaugeError(one.measure, one.site, before.find(isHere)?.value ?? null),
            );
      const sign = one.wanted < 0 ? -1 : 1;
      const interval = measured?.interval ?? null;
      return {
        ...one,
        measured,
        word: arrivalWord(Math.abs(one.wanted), interval && turned(interval, sign)),
      };
    })
    .sort((a, b) => rank(a) - rank(b));
};

/**
 * Two rounds of a project as one story, the earlier first.
 * @param comparison of the same rounds and hands, where it is made already
 */
export const lookAtChanges = (
  log: ProjectLog,
  earlier: RoundReview,
  later: RoundReview,
  hands: Hands = 'all',
  comparison: RoundComparison = compareRounds(log, earlier, later, hands),
): ChangesLook => {
  const carried = carriedBetween(log, earlier, later);
  const told = comparison.changes.flatMap(({ arrival }) => arrival?.places ?? []);
  const arrivals = arrivalsOf(log, comparison, told);
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
    arrivals,
    differences: foundDifferences(
      log,
      comparison.earlier,
      comparison.later,
      new Set(arrivals.map(placeKey)),
    ),
    findings: carried.map(({ revision: { id }, body }) => {
      const proposed = proposeOutcome(log, body, id);
      return {
        id,
        title: body.title,
        carriedBy: body.carriedBy as RecordId,
        written: body.outcome?.verdict ?? null,
        found: proposed?.verdict ?? null,
        arrival: proposed?.arrival ?? null,
      };
    }),
  };
};

/**
 * Did what was asked for arrive in the samples, in one word? Of structured changes, and of dimensions that the drawing
 * changed: `partly` as well where some of it did and some did not. `not-asked`: nothing was asked for in figures.
 */
export const arrivedAnswer = (
  arrivals: readonly Pick<Arrival, 'word'>[],
): 'yes' | 'partly' | 'no' | 'open' | 'not-asked' | 'not-measured' => {
  const words = arrivals.map(({ word }) => word);
  const has = (...some: readonly ArrivalWord[]) => words.some((word) => some.includes(word));
  if (words.length === 0) return 'not-asked';
  if (!has('arrived', 'beyond', 'partly', 'not', 'open')) return 'not-measured';
  if (!has('partly', 'not', 'open', 'not-measured')) return 'yes';
  if (has('arrived', 'beyond', 'partly')) return 'partly';
  return has('not') ? 'no' : 'open';
};

/** Everything that was asked for in figures. */
export const askedInFigures = ({
  comparison,
  arrivals,
}: Pick<ChangesLook, 'arrivals'> & {
  readonly comparison: Pick<RoundComparison, 'changes'>;
}): readonly Pick<Arrival, 'word'>[] => [
  ...comparison.changes.flatMap(({ arrival }) => arrival ?? []),
  ...arrivals,
];
