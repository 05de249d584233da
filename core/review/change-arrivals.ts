/**
 * Did each change of a round arrive in its samples? A round is held against the one
 * before it, whichever two are compared: that is what its changes change. Read are pairs that were new when they were
 * measured; readings that contradict each other say nothing.
 */
import { mileageAt } from '../mileage/index.ts';
import type { Change, Finding, RecordId, RecordOf, StructuredChange } from '../records/index.ts';
import {
  amountIn,
  arrivalWord,
  measuredAt,
  nominalFor,
  pairsToTell,
  sampleDifference,
  turned,
  usualGaugeError,
  usualScatter,
  type ArrivalWord,
  type MeasuredAt,
  type SampleDifference,
  type SampleReading,
} from '../rounds/index.ts';
import { placeKey } from '../wear/index.ts';
import { arrivalReadings } from './arrival-readings.ts';
import { distanceOf, NEW_UP_TO_M } from './check-distance.ts';
import { withdrawnPairs, type LoggedPair, type ProjectLog } from './project-log.ts';

/** A change at one place of the samples. */
export interface PlaceArrival extends Pick<MeasuredAt, 'measure' | 'site' | 'unit'> {
  readonly word: ArrivalWord;
  /** What was asked for, with its sign, in the unit; null: no amount was said, or it cannot be told in it. */
  readonly wanted: number | null;
  /** Null: nothing alike was read in both rounds, or drawn for the one before. */
  readonly measured: SampleDifference | null;
  /** New pairs that it was not read on yet, of the round and of the one before; those of a size that can be compared. */
  readonly unread: readonly RecordId[];
  /** How many pairs of each round would tell; null: more than anybody makes, or nothing says how much they scatter. */
  readonly needed: number | null;
}

/** A structured change of a round, and whether it is in the shoe. */
export interface ChangeArrival {
  readonly word: ArrivalWord;
  readonly change: StructuredChange;
  /** The least arrived first, those that were not measured last; empty: nothing that is read on the bench tells. */
  readonly places: readonly PlaceArrival[];
}

type Round = RecordOf<'round'>;

/** The readings of a round's new pairs, those of one place and foot put together. */
export const sampleReadings = (log: ProjectLog, round: RecordId): SampleReading[] =>
  log.pairs.flatMap((pair) => (pair.round === round ? readingsOfPair(log, pair) : []));

const readingsOfPair = ({ gauges }: ProjectLog, pair: LoggedPair): SampleReading[] => {
  const [first] = pair.checks;
  if (!first || distanceOf(first.body, pair.curve).distanceM > NEW_UP_TO_M) return [];
  return arrivalReadings(pair, gauges).flatMap(({ reading, together }): SampleReading[] => {
    if (together.disagree) return [];
    const { measure, site, unit, foot } = reading;
    return [
      {
        pair: pair.id,
        sizeMm: pair.record.body.sizeMm,
        ...{ measure, site, unit, foot },
        value: together.value,
        gauges: together.gauges,
        uncertainty: together.uncertainty,
      },
    ];
  });
};

/** The round before; undefined for the first. */
const before = ({ rounds }: ProjectLog, { body: { order } }: Round): Round | undefined =>
  rounds.findLast((one) => one.body.order < order);

/** The size that a round is drawn for: that of its last, else the only one of its pairs; null: not known. */
const sampleSize = (log: ProjectLog, { body, revision }: Round): number | null => {
  if (body.last) return body.last.sizeMm;
  const sizes = new Set(
    log.pairs.flatMap(({ round, record }) => (round === revision.id ? [record.body.sizeMm] : [])),
  );
  const [only] = sizes;
  return sizes.size === 1 && only !== undefined ? only : null;
};

/** What the round before was drawn as at one place, by size. */
export const nominalAt =
  (log: ProjectLog, earlier: Round, at: Pick<MeasuredAt, 'measure' | 'site' | 'unit'>) =>
  (sizeMm: number): number | null => {
    const drawn = earlier.body.blueprint.find((one) => placeKey(one) === placeKey(at));
    return drawn ? nominalFor(drawn, sizeMm, sampleSize(log, earlier)) : null;
  };

interface BothRounds {
  readonly log: ProjectLog;
  readonly earlier: Round;
  readonly later: Round;
  readonly readings: {
    readonly earlier: readonly SampleReading[];
    readonly later: readonly SampleReading[];
  };
}

/** Pairs that can still be read as new ones. */
const newPairs = (log: ProjectLog, round: RecordId): readonly LoggedPair[] => {
  const withdrawn = withdrawnPairs(log);
  return log.pairs.filter(
    (pair) =>
      pair.round === round &&
      !withdrawn.has(pair.id) &&
      mileageAt(pair.curve, log.nowMs) <= NEW_UP_TO_M,
  );
};

/** Which new pairs would tell, of those that were not read at a place. */
const unreadAt = (
  { log, earlier, later }: BothRounds,
  read: BothRounds['readings'],
  nominal: (sizeMm: number) => number | null,
): readonly RecordId[] => {
  const sizeOf = ({ record }: LoggedPair) => record.body.sizeMm;
  const [before, after] = [newPairs(log, earlier.revision.id), newPairs(log, later.revision.id)];
  const isRead = (set: readonly SampleReading[]) => (pair: LoggedPair) =>
    set.some((one) => one.pair === pair.id);
  const sizes = (set: readonly SampleReading[], pairs: readonly LoggedPair[]) =>
    new Set([...set.map(({ sizeMm }) => sizeMm), ...pairs.map(sizeOf)]);
  const [old, young] = [sizes(read.earlier, before), sizes(read.later, after)];
  const ofLater = after.filter(
    (pair) =>
      !isRead(read.later)(pair) && (old.has(sizeOf(pair)) || nominal(sizeOf(pair)) !== null),
  );
  const ofEarlier = before.filter(
    (pair) =>
      !isRead(read.earlier)(pair) && young.has(sizeOf(pair)) && nominal(sizeOf(pair)) === null,
  );
  return [...ofLater, ...ofEarlier].map(({ id }) => id);
};

const placeArrival = (
  rounds: BothRounds,
  change: StructuredChange,
  at: MeasuredAt,
): PlaceArrival => {
  const { measure, site, unit, sign } = at;
  const isHere = (one: SampleReading) =>
    placeKey(one) === placeKey(at) && (change.foot === undefined || one.foot === change.foot);
  const read = {
    earlier: rounds.readings.earlier.filter(isHere),
    later: rounds.readings.later.filter(isHere),
  };
  const nominal = nominalAt(rounds.log, rounds.earlier, at);
  const gauge = usualGaugeError(measure, site, read.earlier[0]?.value ?? null);
  const measured = sampleDifference(read.earlier, read.later, nominal, gauge);
  const from = measured?.earlier.mean ?? null;
  const amount = amountIn(change.by, unit, from);
  const interval = measured?.interval ?? null;
  const scatter = measured?.scatter ?? usualScatter(measure, site, from);
  return {
    ...{ measure, site, unit, measured },
    word: arrivalWord(amount, interval && turned(interval, sign)),
    wanted: amount === null ? null : sign * amount,
    unread: unreadAt(rounds, read, nominal),
    needed:
      amount === null || scatter === null || scatter === 0
        ? null
        : pairsToTell(amount, scatter, measured?.against ?? 'round'),
  };
};

/** What stands for a change that is read at several places: the least arrived. */
export const arrivalRank: readonly ArrivalWord[] = [
  'not',
  'partly',
  'open',
  'arrived',
  'beyond',
  'not-measured',
];

const arrivalOf = (rounds: BothRounds, change: StructuredChange): ChangeArrival => {
  const read = [...rounds.readings.earlier, ...rounds.readings.later];
  const places = measuredAt(change, read)
    .map((at) => placeArrival(rounds, change, at))
    .sort((a, b) => arrivalRank.indexOf(a.word) - arrivalRank.indexOf(b.word));
  return { word: places[0]?.word ?? 'not-measured', change, places };
};

const roundsOf = (log: ProjectLog, round: RecordId): BothRounds | null => {
  const later = log.rounds.find(({ revision }) => revision.id === round);
  const earlier = later && before(log, later);
  return later && earlier
    ? {
        ...{ log, earlier, later },
        readings: {
          earlier: sampleReadings(log, earlier.revision.id),
          later: sampleReadings(log, round),
        },
      }
    : null;
};

/**
 * One for each change of a round, in the order of its list.
 * @returns null for a change in words alone; of the first round, which nothing is before, all are
 */
export const changeArrivals = (
  log: ProjectLog,
  round: RecordId,
): readonly (ChangeArrival | null)[] => {
  const changes: readonly Change[] =
    log.rounds.find(({ revision }) => revision.id === round)?.body.changes ?? [];
  const rounds = changes.some(({ structured }) => structured) ? roundsOf(log, round) : null;
  return changes.map(({ structured }) =>
    structured && rounds ? arrivalOf(rounds, structured) : null,
  );
};

/** Whether nothing may be said of what a change did: it is not in the shoe. */
export const isAbsent = (arrival: Pick<ChangeArrival, 'word'> | null): boolean =>
  arrival?.word === 'not';

/**
 * Whether the change that a finding asked for is in the shoe: of the round that carries it, the change that was made from the
 * finding, else those that name the same complaint, the least arrived.
 * @returns null where none of them is said in figures
 */
export const arrivalForFinding = (
  log: ProjectLog,
  finding: RecordId | null,
  { carriedBy, kind, zone }: Pick<Finding, 'carriedBy' | 'kind' | 'zone'>,
): ChangeArrival | null => {
  if (carriedBy === undefined) return null;
  const changes = log.rounds.find(({ revision }) => revision.id === carriedBy)?.body.changes ?? [];
  const arrivals = changeArrivals(log, carriedBy);
  const own = changes.flatMap((one, at) =>
    finding !== null && one.finding === finding ? (arrivals[at] ?? []) : [],
  );
  const meant = changes.flatMap(({ mends }, at) =>
    mends && mends.kind === kind && (mends.zone ?? zone) === zone ? (arrivals[at] ?? []) : [],
  );
  const [least] = (own.length > 0 ? own : meant).toSorted(
    (a, b) => arrivalRank.indexOf(a.word) - arrivalRank.indexOf(b.word),
  );
  return least ?? null;
};
