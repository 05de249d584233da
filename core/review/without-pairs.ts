/** What does the log say without the pairs that are out of tolerance? */
import type { RecordId, RecordOf } from '../records/index.ts';
import type { ProjectLog } from './project-log.ts';
import { isOutOfTolerance } from './tolerance.ts';

/**
 * The log without the pairs that are out of tolerance and all that was logged of them. Pairs that were never
 * measured, or of which nothing is decided, stay. What was odd about a run is judged before they are left out.
 */
export const withoutPairsOutOfTolerance = (log: ProjectLog): ProjectLog => {
  const out = log.pairs.filter(({ tolerance }) => isOutOfTolerance(tolerance));
  return {
    ...withoutPairs(log, new Set(out.map(({ id }) => id))),
    without: out.map(({ record }) => record),
  };
};

/** The log without some pairs and all that was logged of them. */
export const withoutPairs = (log: ProjectLog, out: ReadonlySet<RecordId>): ProjectLog => {
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
    standing: {
      waiting: log.standing.waiting.filter((one) => one.about === 'gauge' || stays(one)),
      decided: log.standing.decided.filter(stays),
    },
    spans: log.spans.filter(stays),
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
  out: ReadonlySet<RecordId>,
): RecordOf<'ranking'>[] => {
  const order = ranking.body.order
    .map((place) => place.filter((pair) => !out.has(pair)))
    .filter((place) => place.length > 0);
  return order.length === 0 ? [] : [{ ...ranking, body: { ...ranking.body, order } }];
};
