/** The remarks of a project as a list: searched, narrowed and counted; a slice of it at a time. */
import type { ZoneCode } from '../foot/index.ts';
import { quotableKinds, type RecordId, type RecordOf } from '../records/index.ts';
import { ownRecords, type ProjectLog } from '../review/project-log.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { Mention } from './dictionary-types.ts';
import { remarksOf, type Remark, type RemarkPlace } from './remarks.ts';
import { stretchesOf, type Stretches } from './stretches.ts';
import { isPartOf } from './sentences.ts';
import { alsoFound, hitsIn, searchable, wantedIn, type Hit, type Searchable } from './search.ts';

export const remarkSorts = ['newest', 'distance'] as const;
export type RemarkSort = (typeof remarkSorts)[number];

export interface WordsQuery {
  /** Words that must all be there, in any order; empty: not searched. */
  readonly text: string;
  readonly round: RecordId | null;
  /** Tapped on the run, or named in the words. */
  readonly zone: ZoneCode | null;
  readonly on: RemarkPlace | null;
  readonly tester: RecordId | null;
  readonly pair: RecordId | null;
  /** On the pair, from and before; null: no end. */
  readonly fromM: Metres | null;
  readonly toM: Metres | null;
  readonly photo: boolean;
  /** Names a zone or a complaint that was not tapped on the run. */
  readonly untapped: boolean;
  /** Marked or quoted. */
  readonly marked: boolean;
  readonly sort: RemarkSort;
  /** So many rows at most. */
  readonly most: number;
  /** What the reader counts distances in: a mile, or a kilometre where it is absent. */
  readonly unitM?: Metres;
  /** What is not asked about any more, by {@link mentionKey}. */
  readonly left: readonly string[];
}

export const everyRemark: Omit<WordsQuery, 'most' | 'left' | 'unitM'> = {
  text: '',
  round: null,
  zone: null,
  on: null,
  tester: null,
  pair: null,
  fromM: null,
  toM: null,
  photo: false,
  untapped: false,
  marked: false,
  sort: 'newest',
};

export interface MarkOf {
  readonly quote: RecordId;
  /** Null: marked, in no finding. */
  readonly finding: RecordId | null;
}

export interface FoundRemark extends Remark {
  readonly hits: readonly Hit[];
  readonly marks: readonly MarkOf[];
}

/** How many remarks each choice of a filter would find, the other filters and the search as they are. */
export interface WordCounts {
  readonly round: Readonly<Record<string, number>>;
  readonly zone: Readonly<Partial<Record<ZoneCode, number>>>;
  readonly on: Readonly<Partial<Record<RemarkPlace, number>>>;
  readonly tester: Readonly<Record<string, number>>;
  readonly pair: Readonly<Record<string, number>>;
  readonly photo: number;
  readonly untapped: number;
  readonly marked: number;
}

export interface WordsFacts {
  /** Remarks of the project, and testers who wrote any. */
  readonly all: number;
  readonly allTesters: number;
  /** Of all, those that name something nobody tapped. */
  readonly allUntapped: number;
  readonly found: number;
  readonly foundTesters: number;
  readonly foundUntapped: number;
  /** What was searched for; null: nothing. */
  readonly searched: string | null;
  /** Whether a filter narrows the list. */
  readonly narrowed: boolean;
}

export interface WordsSlice extends WordsFacts {
  readonly rows: readonly FoundRemark[];
  readonly counts: WordCounts;
  /** Words of the other language that the search finds too. */
  readonly also: readonly string[];
  /** Remarks by the distance on the pair, the other filters and the search as they are. */
  readonly stretches: Stretches;
}

/** Names one thing that a remark names, so that it can be left alone. */
export const mentionKey = (remark: string, { zone, kind }: Mention): string =>
  `${remark} ${zone ?? '-'} ${kind ?? '-'}`;

interface Line {
  readonly remark: Remark;
  readonly searchable: Searchable;
  readonly zones: ReadonlySet<ZoneCode>;
  readonly marks: readonly MarkOf[];
}

const linesOf = (log: ProjectLog): readonly Line[] => {
  const quotes = groupBy(
    ownRecords(log.records.quote, log.id),
    ({ body }) => `${body.source}.${body.field}`,
  );
  return remarksOf(log).map((remark) => ({
    remark,
    searchable: searchable(remark.text),
    zones: new Set(
      [...remark.tapped, ...remark.untapped].flatMap(({ zone }) => (zone === null ? [] : [zone])),
    ),
    marks: (quotes.get(remark.id) ?? []).map(({ body, revision }) => ({
      quote: revision.id,
      finding: body.finding ?? null,
    })),
  }));
};

/** Each log is read into lines once; a search or a filter then only passes over them. */
const known = new WeakMap<ProjectLog, readonly Line[]>();
const linesIn = (log: ProjectLog): readonly Line[] => {
  const lines = known.get(log) ?? linesOf(log);
  known.set(log, lines);
  return lines;
};

type Filter =
  'round' | 'zone' | 'on' | 'tester' | 'pair' | 'distance' | 'photo' | 'untapped' | 'marked';

/** Whether a line passes each filter by itself; the one that is left out is being counted. */
const filters: Readonly<Record<Filter, (line: Line, query: WordsQuery) => boolean>> = {
  round: ({ remark }, { round }) => round === null || remark.round === round,
  zone: ({ zones }, { zone }) => zone === null || zones.has(zone),
  on: ({ remark }, { on }) => on === null || remark.on === on,
  tester: ({ remark }, { tester }) => tester === null || remark.tester === tester,
  pair: ({ remark }, { pair }) => pair === null || remark.pairs.includes(pair),
  distance: ({ remark: { pairM } }, { fromM, toM }) =>
    pairM === null
      ? fromM === null && toM === null
      : (fromM === null || pairM >= fromM) && (toM === null || pairM < toM),
  photo: ({ remark }, { photo }) => !photo || remark.photos.length > 0,
  untapped: ({ remark }, { untapped }) => !untapped || remark.untapped.length > 0,
  marked: ({ marks }, { marked }) => !marked || marks.length > 0,
};
const everyFilter = Object.keys(filters) as readonly Filter[];

interface Passing {
  readonly line: Line;
  readonly hits: readonly Hit[];
  /** The one filter that it does not pass; null: it passes all. More than one: it is not here. */
  readonly fails: Filter | null;
}

const passing = (lines: readonly Line[], query: WordsQuery): readonly Passing[] => {
  const wanted = wantedIn(query.text);
  const out: Passing[] = [];
  for (const line of lines) {
    const failed = everyFilter.filter((filter) => !filters[filter](line, query));
    if (failed.length > 1) continue;
    const hits = hitsIn(line.searchable, wanted);
    if (hits) out.push({ line, hits, fails: failed[0] ?? null });
  }
  return out;
};

const tally = <K extends string>(
  list: readonly Passing[],
  filter: Filter,
  keys: (line: Line) => Iterable<K | null>,
): Record<K, number> => {
  const counts = {} as Record<K, number>;
  for (const { line, fails } of list)
    if (fails === null || fails === filter)
      for (const key of keys(line)) if (key !== null) counts[key] = (counts[key] ?? 0) + 1;
  return counts;
};

const countsOf = (list: readonly Passing[]): WordCounts => {
  const count = (filter: Filter, is: (line: Line) => boolean) =>
    list.filter(({ line, fails }) => (fails === null || fails === filter) && is(line)).length;
  return {
    round: tally(list, 'round', ({ remark }) => [remark.round]),
    zone: tally(list, 'zone', ({ zones }) => zones),
    on: tally(list, 'on', ({ remark }) => [remark.on]),
    tester: tally(list, 'tester', ({ remark }) => [remark.tester]),
    pair: tally(list, 'pair', ({ remark }) => remark.pairs),
    photo: count('photo', ({ remark }) => remark.photos.length > 0),
    untapped: count('untapped', ({ remark }) => remark.untapped.length > 0),
    marked: count('marked', ({ marks }) => marks.length > 0),
  };
};

const testersIn = (lines: readonly Line[]): number =>
  new Set(lines.flatMap(({ remark }) => remark.tester ?? [])).size;

/** Without what a lead chose to leave. */
const asAsked = (lines: readonly Line[], left: ReadonlySet<string>): readonly Line[] =>
  left.size === 0
    ? lines
    : lines.map((line) => {
        const { remark } = line;
        const untapped = remark.untapped.filter((one) => !left.has(mentionKey(remark.id, one)));
        return untapped.length === remark.untapped.length
          ? line
          : { ...line, remark: { ...remark, untapped } };
      });

/** What is about several pairs comes last. */
const distanceIn = ({ line }: Passing): number => line.remark.pairM ?? Infinity;

/** The first rows of the remarks that the query finds, in its order, with the counts of every filter. */
export const listWords = (log: ProjectLog, query: WordsQuery): WordsSlice => {
  const lines = asAsked(linesIn(log), new Set(query.left));
  const near = passing(lines, query);
  const found = near.filter(({ fails }) => fails === null);
  // They come latest first; of equal distance the latest stays first.
  const sorted =
    query.sort === 'newest' ? found : found.toSorted((a, b) => distanceIn(a) - distanceIn(b));
  const wanted = wantedIn(query.text);
  return {
    all: lines.length,
    allTesters: testersIn(lines),
    allUntapped: lines.filter(({ remark }) => remark.untapped.length > 0).length,
    found: found.length,
    foundTesters: testersIn(found.map(({ line }) => line)),
    foundUntapped: found.filter(({ line }) => line.remark.untapped.length > 0).length,
    searched: wanted.length === 0 ? null : query.text.trim(),
    narrowed: everyFilter.some((filter) => lines.some((line) => !filters[filter](line, query))),
    rows: sorted
      .slice(0, query.most)
      .map(({ line: { remark, marks }, hits }) => ({ ...remark, hits, marks })),
    counts: countsOf(near),
    also: alsoFound(wanted),
    stretches: stretchesOf(
      lines.flatMap(({ remark }) => remark.pairM ?? []),
      near.flatMap(({ line, fails }) =>
        fails === null || fails === 'distance' ? (line.remark.pairM ?? []) : [],
      ),
      query.unitM ?? metres(1000),
    ),
  };
};

/** Where what a quote says stands now: as it was said, written anew since, or in a record that counts no more. */
export type QuoteState = 'as-said' | 'changed' | 'aside';

export interface QuoteLook {
  readonly id: RecordId;
  readonly quote: RecordOf<'quote'>['body'];
  readonly state: QuoteState;
  /** Where the words are from; null: the record is in no figure. */
  readonly of: Pick<Remark, 'on' | 'pairs' | 'round' | 'pairM' | 'atMs' | 'photos'> | null;
}

/** The quotes of a finding, in the order in which they were said. */
export const quotesOf = (log: ProjectLog, finding: RecordId): readonly QuoteLook[] => {
  const bySource = groupBy(linesIn(log), ({ remark }) => remark.source);
  return ownRecords(log.records.quote, log.id)
    .filter(({ body }) => body.finding === finding)
    .map(({ body, revision }): QuoteLook => {
      const own = (bySource.get(body.source) ?? []).map(({ remark }) => remark);
      const same =
        own.find(({ text }) => text === body.words.trim()) ??
        own.find(({ field, text }) => field === body.field && isPartOf(text, body.words));
      const at = same ?? own.find(({ field }) => field === body.field) ?? own[0];
      return {
        id: revision.id,
        quote: body,
        state: same ? 'as-said' : isHere(log, body.source) ? 'changed' : 'aside',
        of: at ?? null,
      };
    })
    .sort((a, b) => (a.of?.atMs ?? 0) - (b.of?.atMs ?? 0) || (a.id < b.id ? -1 : 1));
};

const isHere = ({ records }: ProjectLog, id: RecordId): boolean =>
  quotableKinds.some((kind) => records[kind].some(({ revision }) => revision.id === id));
