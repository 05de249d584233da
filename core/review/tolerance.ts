/** Which pairs are out of tolerance, and what does the log say without them? */
import { isOut, type ConformityWord } from '../rounds/index.ts';
import type { RecordId, RecordOf } from '../records/index.ts';
import type { ProjectLog } from './project-log.ts';
import type { Deviation, SideDifference } from './review-types.ts';

/** How many dimensions of a pair on arrival, differences of left and right that the blueprint names among them. */
export interface PairTolerance {
  /** Decided or not; 0: the pair was not measured against a blueprint. */
  readonly judged: number;
  /** Proved out. */
  readonly proved: number;
  /** Read out by a gauge whose uncertainty is not known. */
  readonly outside: number;
  readonly undecided: number;
}

/** Counts what was decided of one pair. */
export const toleranceOf = (
  deviations: readonly Pick<Deviation, 'word'>[],
  sides: readonly Pick<SideDifference, 'word' | 'allowedFrom'>[],
): PairTolerance => {
  const words: readonly ConformityWord[] = [
    ...deviations.map(({ word }) => word),
    // A difference that only practice limits is shown, and marks no pair.
    ...sides.filter(({ allowedFrom }) => allowedFrom === 'blueprint').map(({ word }) => word),
  ];
  const count = (word: ConformityWord) => words.filter((one) => one === word).length;
  return {
    judged: words.length,
    proved: count('not-conforming'),
    outside: count('outside'),
    undecided: count('undecided'),
  };
};

/** A pair is out of tolerance where one dimension is proved or read out; what is undecided does not count. */
export const isOutOfTolerance = ({ proved, outside }: PairTolerance): boolean =>
  proved + outside > 0;

/** Whether a pair was out of tolerance; null where that is not known: not measured, or undecided. */
export const wasOutOfTolerance = (
  deviations: readonly Pick<Deviation, 'word'>[],
): boolean | null => {
  if (deviations.some(({ word }) => isOut(word))) return true;
  return deviations.length === 0 || deviations.some(({ word }) => word === 'undecided')
    ? null
    : false;
};

/**
 * The log without the pairs that are out of tolerance and all that was logged of them. Pairs that were never
 * measured, or of which nothing is decided, stay. What was odd about a run is judged before they are left out.
 */
export const withoutPairsOutOfTolerance = (log: ProjectLog): ProjectLog => {
  const out = new Map(
    log.pairs
      .filter(({ tolerance }) => isOutOfTolerance(tolerance))
      .map((pair) => [pair.id, pair.record] as const),
  );
  const stays = ({ pair }: { readonly pair: RecordId }) => !out.has(pair);
  const of = <T extends { readonly body: { readonly pair: RecordId } }>(list: readonly T[]): T[] =>
    list.filter(({ body }) => stays(body));
  const { records } = log;
  const runs = of(records.run);
  const runIds = new Set(runs.map(({ revision }) => revision.id));
  return {
    ...log,
    pairs: log.pairs.filter(({ id }) => !out.has(id)),
    counted: log.counted.filter(stays),
    oddities: log.oddities.filter(({ run }) => runIds.has(run)),
    spans: log.spans.filter(stays),
    without: [...out.values()],
    records: {
      ...records,
      run: runs,
      pair: records.pair.filter(({ revision }) => !out.has(revision.id)),
      'hand-out': of(records['hand-out']),
      'damage-report': of(records['damage-report']),
      'bench-check': of(records['bench-check']),
      ranking: records.ranking.flatMap((ranking) => rankingWithout(ranking, out)),
      'stop-use': records['stop-use'].flatMap((stop): RecordOf<'stop-use'>[] => {
        const pairs = stop.body.pairs.filter((pair) => !out.has(pair));
        return pairs.length === 0 ? [] : [{ ...stop, body: { ...stop.body, pairs } }];
      }),
    },
  };
};

const rankingWithout = (
  ranking: RecordOf<'ranking'>,
  out: ReadonlyMap<RecordId, unknown>,
): RecordOf<'ranking'>[] => {
  const order = ranking.body.order
    .map((place) => place.filter((pair) => !out.has(pair)))
    .filter((place) => place.length > 0);
  return order.length === 0 ? [] : [{ ...ranking, body: { ...ranking.body, order } }];
};
