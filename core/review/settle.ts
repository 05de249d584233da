/** What would settle a limit that is open, or fails? One thing to do for each, with the pair and when it is there. */
import type { AllowedRate, CellName } from '../complaints/index.ts';
import { mileageAt } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import { wilson } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { pairsToHold } from '../wear/index.ts';
import { LEAST_PAIRS_THERE } from './growth.ts';
import { expectedAt, type Expected } from './pace.ts';
import type { ProjectLog } from './project-log.ts';
import type { VerdictItem } from './verdict.ts';
import { nextCheck, type WearRound } from './wear-cards.ts';

/** What of a limit's card is read: its readings, and which checks would narrow it most. */
type OfCard = Pick<WearRound, 'points' | 'next'>;

/** The next check: the pair that tells most, where, and when it is expected to be there. */
export interface NextVisit {
  readonly pair: RecordId;
  readonly atM: Metres;
  readonly expected: Expected;
  /** Pairs that would tell something on the same visit, by code. */
  readonly also: readonly RecordId[];
}

/** What would settle a limit that is open or fails. */
export type Settle =
  | ({
      readonly by: 'measure';
      /** When each of `also` is expected there, in their order. */
      readonly expectedOfAlso: readonly Expected[];
    } & NextVisit)
  | { readonly by: 'measure-first' }
  | { readonly by: 'look-at-pair'; readonly pair: RecordId }
  | {
      readonly by: 'look-at-reading';
      readonly pair: RecordId;
      /** Null: two checks of the pair lie there. */
      readonly check: RecordId | null;
      readonly atM: Metres;
    }
  | { readonly by: 'pairs-differ' }
  | {
      readonly by: 'run-pairs';
      readonly need: number | null;
      readonly have: number;
      readonly atM: Metres;
    }
  | { readonly by: 'ask-testers'; readonly need: number; readonly have: number }
  /** More testers than any panel has would be needed: reports have to do. */
  | { readonly by: 'decide-by-reports'; readonly need: number }
  | { readonly by: 'ask-at'; readonly need: number; readonly have: number; readonly atM: Metres }
  | { readonly by: 'lift-or-keep'; readonly pairs: readonly RecordId[] }
  | { readonly by: 'change'; readonly felt: readonly CellName[] };

const MOST_PAIRS = 3;
/** More testers are never asked for. */
const MOST_TESTERS = 5000;

/** How many testers without one report show that a share is at most so much; 73 for 5 %. */
export const testersToShow = (share: number): number => {
  for (let testers = 1; testers < MOST_TESTERS; testers++)
    if (wilson(0, testers).upper <= share) return testers;
  return MOST_TESTERS;
};

/** A wear test rarely has more testers. Judgement, no source. */
const LARGEST_PANEL = 50;

/** What shows that no complaint and no pain is more frequent than allowed, where none recurs. @param have testers asked */
export const settleRate = ({ complaint, pain }: AllowedRate, have: number): Settle => {
  const need = testersToShow(Math.min(complaint, pain));
  return need <= LARGEST_PANEL
    ? { by: 'ask-testers', need, have }
    : { by: 'decide-by-reports', need };
};

/** Within so much of each other two checks are one visit to the bench. */
const ONE_VISIT_M = 25_000;

const checkAt = (wear: OfCard | undefined, pair: string, atM: Metres): RecordId | null => {
  const own = wear?.points.filter((one) => one.pair === pair && one.x === atM) ?? [];
  return own.length === 1 ? (own[0]?.check ?? null) : null;
};

const settleWear = (
  log: ProjectLog,
  item: Extract<VerdictItem, { what: 'wear' }>,
  wear: OfCard | undefined,
): Settle | null => {
  if (item.word === 'does-not-hold') return { by: 'change', felt: [] };
  const { spread } = item;
  if (spread?.by === 'pair') return { by: 'look-at-pair', pair: spread.pair as RecordId };
  if (spread?.by === 'reading')
    return {
      by: 'look-at-reading',
      pair: spread.pair as RecordId,
      check: checkAt(wear, spread.pair, spread.distance),
      atM: spread.distance,
    };
  if (spread?.by === 'pairs') return { by: 'pairs-differ' };
  const first = wear && nextCheck(wear);
  if (!first) return null;
  const beside = wear.next.filter(
    ({ pair, distance }) =>
      pair !== first.pair && Math.abs(distance - first.distance) <= ONE_VISIT_M,
  );
  const pair = first.pair as RecordId;
  const codes = new Map(log.pairs.map(({ id, record }) => [id, record.body.code]));
  const code = (id: RecordId) => codes.get(id) ?? '';
  const also = [...new Set(beside.map((one) => one.pair as RecordId))]
    .slice(0, MOST_PAIRS - 1)
    .toSorted((a, b) => (code(a) < code(b) ? -1 : 1));
  const expected = (id: RecordId) => expectedAt(log, id, first.distance);
  return {
    by: 'measure',
    ...{ pair, also },
    atM: first.distance,
    expected: expected(pair),
    expectedOfAlso: also.map(expected),
  };
};

/** Pairs that have gone the distance, or broke before it. */
const lastedTo = (log: ProjectLog, round: RecordId, atM: Metres): number =>
  log.pairs.filter((pair) => pair.round === round && mileageAt(pair.curve, log.nowMs) >= atM)
    .length;

/** @param wear the same limit as on its card; absent: it was not measured */
export const settleOf = (
  log: ProjectLog,
  round: RecordId,
  item: VerdictItem,
  wear: OfCard | undefined,
): Settle | null => {
  if (item.word === 'holds') return null;
  const { distanceM, allowedRate } = log.project.brief;
  const fails = item.word === 'does-not-hold';
  switch (item.what) {
    case 'wear':
      return settleWear(log, item, wear);
    case 'not-measured':
      return { by: 'measure-first' };
    case 'structure':
      return fails
        ? { by: 'change', felt: [] }
        : {
            by: 'run-pairs',
            need: pairsToHold(item.failed),
            have: lastedTo(log, round, distanceM),
            atM: distanceM,
          };
    case 'allowed-rate':
      return fails
        ? { by: 'change', felt: item.cells }
        : settleRate(allowedRate, item.askedTesters);
    case 'complaints':
      return fails
        ? { by: 'change', felt: item.growing }
        : { by: 'ask-at', need: LEAST_PAIRS_THERE, have: item.pairsThere, atM: distanceM };
    case 'stop-use':
      return { by: 'lift-or-keep', pairs: item.pairs };
  }
};
