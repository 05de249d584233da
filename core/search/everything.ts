/**
 * What in a project is meant by a few words: a pair or a tester by code or name, a round, a finding, a remark by its
 * words, a run or a bench check by its day? The best few of each kind, and how many there are.
 */
import type { Finding, RecordId } from '../records/index.ts';
import { byCode, ownRecords, type ProjectLog } from '../review/index.ts';
import type { Metres } from '../units/index.ts';
import { everyRemark, fold, listWords, textFinder, type FoundRemark } from '../words/index.ts';

export interface SearchQuery {
  /** As typed. */
  readonly text: string;
  /** What the text means as a day or a month, ms since 1970; null: it means none. */
  readonly span: { readonly fromMs: number; readonly untilMs: number } | null;
  /** So many of each kind at most. */
  readonly most: number;
}

/** The best of one kind, and how many were found in all. */
export interface FoundOf<T> {
  readonly rows: readonly T[];
  readonly found: number;
}

export interface Everything {
  readonly pairs: FoundOf<{ readonly id: RecordId; readonly code: string; readonly round: string }>;
  readonly testers: FoundOf<{
    readonly id: RecordId;
    readonly code: string;
    /** Empty: no name was given. */
    readonly name: string;
  }>;
  readonly rounds: FoundOf<{ readonly id: RecordId; readonly name: string }>;
  readonly findings: FoundOf<{
    readonly id: RecordId;
    readonly title: string;
    readonly state: Finding['state'];
  }>;
  readonly remarks: FoundOf<
    FoundRemark & {
      /** Codes; the tester's is empty where the shop wrote it. */
      readonly testerCode: string;
      readonly pairCodes: readonly string[];
    }
  >;
  readonly runs: FoundOf<{
    readonly id: RecordId;
    readonly startMs: number;
    readonly tester: string;
    readonly pair: string;
    readonly distanceM: Metres;
  }>;
  readonly checks: FoundOf<{ readonly id: RecordId; readonly at: string; readonly pair: string }>;
}

/** How well a text is met, 0 best; null: not at all. */
type Rank = number | null;

/** By the whole of it, by its beginning, or within it; a short text within a code says nothing. */
const rankIn = (of: string, sought: string): Rank => {
  const text = fold(of).text;
  if (text === sought) return 0;
  if (text.startsWith(sought)) return 1;
  return sought.length > 1 && text.includes(sought) ? 2 : null;
};

/** A code is meant by the whole text, or by a word of it: "pair 637". */
const rankOfCode = (code: string, sought: string, words: readonly string[]): Rank =>
  words.includes(fold(code).text) ? 0 : rankIn(code, sought);

const better = (...ranks: readonly Rank[]): Rank =>
  ranks.reduce(
    (best, rank) => (rank !== null && (best === null || rank < best) ? rank : best),
    null,
  );

/** The best first; of equal rank in the order in which they come. */
const bestOf = <T, R>(
  all: readonly T[],
  rankOf: (one: T) => Rank,
  most: number,
  rowOf: (one: T) => R,
): FoundOf<R> => {
  const met = all.flatMap((one) => {
    const rank = rankOf(one);
    return rank === null ? [] : [{ one, rank }];
  });
  return {
    found: met.length,
    rows: met
      .sort((a, b) => a.rank - b.rank)
      .slice(0, most)
      .map(({ one }) => rowOf(one)),
  };
};

const within = (ms: number, span: SearchQuery['span']): Rank =>
  span && span.fromMs <= ms && ms < span.untilMs ? 0 : null;

/** Of many runs few are of a day: only those are put in order, latest first. */
const runsIn = (log: ProjectLog, span: SearchQuery['span']): ProjectLog['everyRun'] =>
  span === null
    ? []
    : log.everyRun
        .filter(({ body }) => within(Date.parse(body.startedAt), span) !== null)
        .toSorted((a, b) => Date.parse(b.body.startedAt) - Date.parse(a.body.startedAt));

/** Nothing is found by an empty text. */
export const searchEverything = (log: ProjectLog, query: SearchQuery): Everything => {
  const sought = fold(query.text.trim()).text;
  const words = sought.split(/[\s,，、]+/).filter((word) => word !== '');
  const { most, span } = query;
  const isEmpty = sought === '';
  const some = <T>(all: readonly T[]): readonly T[] => (isEmpty ? [] : all);
  const pairCodes = new Map(log.records.pair.map(({ revision, body }) => [revision.id, body.code]));
  const testerCodes = new Map(
    log.records.tester.map(({ revision, body }) => [revision.id, body.code]),
  );
  const roundNames = new Map(log.rounds.map(({ revision, body }) => [revision.id, body.name]));
  const codeOf = (pair: RecordId) => pairCodes.get(pair) ?? '';
  const testerOf = (tester: RecordId) => testerCodes.get(tester) ?? '';
  const finds = textFinder(query.text);
  const remarks = listWords(log, { ...everyRemark, text: query.text, most, left: [] });
  const isSearched = !isEmpty && remarks.searched !== null;
  return {
    pairs: bestOf(
      some(log.pairs)
        .map(({ id, round }) => ({ id, code: codeOf(id), round: roundNames.get(round) ?? '' }))
        .sort(byCode),
      ({ code }) => rankOfCode(code, sought, words),
      most,
      (row) => row,
    ),
    testers: bestOf(
      some(log.records.tester).toSorted((a, b) => byCode(a.body, b.body)),
      ({ body }) =>
        better(
          rankOfCode(body.code, sought, words),
          body.name === undefined ? null : rankIn(body.name, sought),
        ),
      most,
      ({ revision, body }) => ({ id: revision.id, code: body.code, name: body.name ?? '' }),
    ),
    rounds: bestOf(
      some(log.rounds),
      ({ body }) => rankIn(body.name, sought),
      most,
      ({ revision, body }) => ({ id: revision.id, name: body.name }),
    ),
    findings: bestOf(
      some(ownRecords(log.records.finding, log.id)),
      ({ body }) =>
        better(
          rankIn(body.title, sought),
          finds([body.title, body.wanted, body.otherWords?.title, body.otherWords?.wanted])
            ? 3
            : null,
        ),
      most,
      ({ revision, body }) => ({ id: revision.id, title: body.title, state: body.state }),
    ),
    remarks: {
      found: isSearched ? remarks.found : 0,
      rows: isSearched
        ? remarks.rows.map((row) => ({
            ...row,
            testerCode: row.tester === null ? '' : testerOf(row.tester),
            pairCodes: row.pairs.map(codeOf),
          }))
        : [],
    },
    runs: bestOf(
      runsIn(log, span),
      () => 0,
      most,
      ({ revision, body }) => ({
        id: revision.id,
        startMs: Date.parse(body.startedAt),
        tester: testerOf(body.tester),
        pair: codeOf(body.pair),
        distanceM: body.distanceM,
      }),
    ),
    checks: bestOf(
      some(log.everyCheck).toSorted((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at)),
      ({ body }) =>
        better(
          within(Date.parse(body.at), span),
          words.includes(fold(codeOf(body.pair)).text) ? 1 : null,
          body.operator === undefined ? null : rankIn(body.operator, sought),
        ),
      most,
      ({ revision, body }) => ({ id: revision.id, at: body.at, pair: codeOf(body.pair) }),
    ),
  };
};
