/**
 * The figures of a review as tables for a spreadsheet: one CSV file a subject, RFC 4180 (CRLF, quotes doubled).
 * Ids of the records and words of the code, so that a program reads them the same in every language; SI
 * distances in kilometres as on the screens. Numbers stay numbers; a text that a spreadsheet would run as a
 * formula begins with an apostrophe.
 */
import Papa from 'papaparse';
import { tradeOf } from '../../core/foot/index.ts';
import type { ReportedFinding, Review, RoundReport } from '../../core/review/index.ts';

type Cell = string | number | boolean | null | undefined;

export interface Table {
  /** Without an ending. */
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/**
 * The table as the text of a CSV file, its columns named in the first line. It begins with a byte order mark,
 * without which a spreadsheet takes Chinese for something else.
 */
export const csvOf = ({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string =>
  `\ufeff${Papa.unparse(
    { fields: [...columns], data: rows.map((row) => row.map((cell) => cell ?? '')) },
    { escapeFormulae: true, newline: '\r\n' },
  )}\r\n`;

const km = (metres: number): number => Number((metres / 1000).toFixed(3));

const pairs = ({ pairs: list }: Review, round: (id: string) => string): Table => ({
  name: 'pairs',
  columns: [
    'pair',
    'round',
    'size_mm',
    'total_km',
    'carried_in_km',
    'runs',
    'share_of_brief',
    'steps_per_shoe',
    'withdrawn',
    'dimensions_judged',
    'dimensions_proved_out',
    'dimensions_read_out',
    'dimensions_undecided',
  ],
  rows: list.map((pair) => [
    pair.code,
    round(pair.round),
    pair.sizeMm,
    km(pair.totalM),
    km(pair.carriedInM),
    pair.runs,
    pair.shareOfBrief,
    pair.course.at(-1)?.stepsPerShoe,
    pair.stopUse !== null,
    pair.outOfTolerance.judged,
    pair.outOfTolerance.proved,
    pair.outOfTolerance.outside,
    pair.outOfTolerance.undecided,
  ]),
});

const complaints = ({ rounds }: Review): Table => ({
  name: 'complaints',
  columns: [
    'round',
    'zone',
    'kind',
    'evidence',
    'testers_asked',
    'testers_once',
    'testers_twice',
    'share_twice_lower',
    'share_twice_upper',
    'runs_asked',
    'runs',
    'left',
    'right',
    'severity_mean',
    'severity_most',
    'allowed_rate',
    'e_value',
    'e_value_needed',
  ],
  rows: rounds.flatMap(({ name, complaints: { asked, cells } }) =>
    cells.map((cell) => [
      name,
      cell.zone,
      cell.kind,
      cell.word,
      asked.testers,
      cell.testersOnce,
      cell.testersTwice,
      cell.shareTwice.lower,
      cell.shareTwice.upper,
      asked.runs,
      cell.runs,
      cell.byFoot.left,
      cell.byFoot.right,
      cell.severity?.mean,
      cell.severity?.most,
      cell.allowedRate,
      cell.eValue,
      cell.needed,
    ]),
  ),
});

const asked = ({ rounds }: Review): Table => ({
  name: 'rounds',
  columns: [
    'round',
    'order',
    'stage',
    'pairs',
    'testers',
    'runs',
    'km',
    'runs_asked',
    'testers_asked',
  ],
  rows: rounds.map(({ name, order, stage, size, complaints: { asked: of } }) => [
    name,
    order,
    stage,
    size.pairs,
    size.testers,
    size.runs,
    km(size.distanceM),
    of.runs,
    of.testers,
  ]),
});

const comfort = ({ rounds }: Review): Table => ({
  name: 'comfort',
  columns: ['round', 'attribute', 'part', 'mean', 'lower', 'upper', 'testers', 'scores'],
  rows: rounds.flatMap((round) =>
    round.comfort.flatMap((one) =>
      (['wear', 'firstImpression'] as const).flatMap((part) => {
        const score = one[part];
        return score
          ? [
              [
                round.name,
                one.attribute,
                part === 'wear' ? 'wear' : 'first-impression',
                score.mean,
                score.interval?.lower,
                score.interval?.upper,
                score.n,
                score.runs,
              ],
            ]
          : [];
      }),
    ),
  ),
});

const bench = (
  { bench: series }: Review,
  round: (id: string) => string,
  pair: (id: string) => string,
): Table => ({
  name: 'bench-readings',
  columns: [
    'round',
    'pair',
    'measured_at',
    'km',
    'km_from',
    'measure',
    'site',
    'foot',
    'value',
    'unit',
  ],
  rows: series.flatMap((one) =>
    one.points.map((point) => [
      round(one.round),
      pair(one.pair),
      new Date(point.atMs).toISOString(),
      km(point.distanceM),
      point.distanceFrom,
      one.measure,
      one.site,
      one.foot,
      point.value,
      one.unit,
    ]),
  ),
});

const deviations = (
  { deviations: list }: Review,
  round: (id: string) => string,
  pair: (id: string) => string,
): Table => ({
  name: 'deviations',
  columns: [
    'round',
    'pair',
    'measure',
    'site',
    'foot',
    'unit',
    'nominal',
    'lower',
    'upper',
    'value',
    'deviation',
    'inside',
    'decision',
  ],
  rows: list.map((one) => [
    round(one.round),
    pair(one.pair),
    one.measure,
    one.site,
    one.foot,
    one.unit,
    one.nominal,
    one.lower,
    one.upper,
    one.value,
    Number(one.deviation.toPrecision(12)),
    one.inside,
    one.word,
  ]),
});

const verdicts = (reports: readonly RoundReport[]): Table => ({
  name: 'verdicts',
  columns: ['round', 'round_verdict', 'item', 'measure_and_unit', 'site', 'verdict'],
  rows: reports.flatMap(({ round, verdict }) =>
    verdict.items.map((item) => [
      round.name,
      verdict.word,
      item.what,
      item.what === 'wear' ? item.kind : item.what === 'not-measured' ? item.limit.measure : '',
      item.what === 'wear' ? item.site : item.what === 'not-measured' ? item.limit.site : '',
      item.word,
    ]),
  ),
});

const findings = (list: readonly ReportedFinding[], round: (id: string) => string): Table => ({
  name: 'findings',
  columns: [
    'round',
    'title',
    'part',
    'trade',
    'zone',
    'kind',
    'source',
    'priority',
    'state',
    'wanted',
    'wanted_mm',
    'carried_by',
    'evidence_until',
    'evidence',
    'outcome_round',
    'outcome',
    'outcome_until',
    'photos',
  ],
  rows: list.map(({ body }) => [
    round(body.round),
    body.title,
    body.part,
    tradeOf[body.part],
    body.zone,
    body.kind,
    body.source,
    body.priority,
    body.state,
    body.wanted,
    body.wantedMm,
    body.carriedBy === undefined ? '' : round(body.carriedBy),
    body.evidence?.until,
    body.evidence?.lines.join('\n'),
    body.outcome === undefined ? '' : round(body.outcome.round),
    body.outcome?.verdict,
    body.outcome?.until,
    body.photos?.length ?? 0,
  ]),
});

/** What is written down of a project beside its review. */
export interface Written {
  readonly review: Review;
  /** One for each round, in their order. */
  readonly reports: readonly RoundReport[];
  readonly findings: readonly ReportedFinding[];
  /** What else was looked at, for the JSON: one for each round, in their order, and of the whole project. */
  readonly rounds?: readonly object[];
  readonly feet?: unknown;
}

/** Every table of a project. */
export const tablesOf = ({ review, reports, findings: list }: Written): readonly Table[] => {
  const names = new Map(review.rounds.map(({ id, name }) => [id as string, name]));
  const codes = new Map(review.pairs.map(({ id, code }) => [id as string, code]));
  const round = (id: string) => names.get(id) ?? '';
  const pair = (id: string) => codes.get(id) ?? '';
  return [
    asked(review),
    pairs(review, round),
    complaints(review),
    comfort(review),
    bench(review, round, pair),
    deviations(review, round, pair),
    verdicts(reports),
    findings(list, round),
  ];
};

/** Version of the JSON below; grows when a field changes its meaning. */
const DATA_VERSION = 1;

/**
 * The whole review as JSON, with what each round was looked at for and the findings.
 * `{ format: "pairlog-review", v, asOf, …review, rounds: [{ …round, cells, wear, verdict }], findings }`
 */
export const jsonOf = ({ review, reports, findings: list, rounds, feet }: Written): string =>
  JSON.stringify(
    {
      format: 'pairlog-review',
      v: DATA_VERSION,
      asOf: new Date(review.nowMs).toISOString(),
      ...review,
      rounds: review.rounds.map((round, at) => ({
        ...round,
        ...rounds?.[at],
        cells: reports[at]?.looks,
        wear: reports[at]?.wear,
        verdict: reports[at]?.verdict,
      })),
      ...(feet !== undefined && { feet }),
      findings: list.map(({ id, body }) => ({ id, ...body })),
    },
    null,
    2,
  );
