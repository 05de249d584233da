/**
 * The figures of a review as tables for a spreadsheet: one CSV file a subject, RFC 4180 (CRLF, quotes doubled).
 * Ids of the records and words of the code, so that a program reads them the same in every language; SI
 * distances in kilometres as on the screens. Numbers stay numbers; a text that a spreadsheet would run as a
 * formula begins with an apostrophe.
 */
import Papa from 'papaparse';
import { tradeOf } from '../../core/foot/index.ts';
import { unitsOf } from '../../core/records/index.ts';
import {
  placeOf as placeOfWear,
  type FeetLook,
  type PanelCheck,
  type ReportedFinding,
  type Review,
  type RoundReport,
  type VerdictItem,
} from '../../core/review/index.ts';

import { painTable } from './pain-table.ts';

type Cell = string | number | boolean | null | undefined;

export interface Table {
  /** Without an ending. */
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** How a text begins that some spreadsheet runs: also after blanks, and full-width as Chinese keyboards type it. */
const FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/**
 * The table as the text of a CSV file, its columns named in the first line. It begins with a byte order mark,
 * without which a spreadsheet takes Chinese for something else.
 */
export const csvOf = ({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string =>
  `\ufeff${Papa.unparse(
    { fields: [...columns], data: rows.map((row) => row.map((cell) => cell ?? '')) },
    { escapeFormulae: FORMULA, newline: '\r\n' },
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
    'holder_silent_days',
    'withdrawn',
    'dimensions_proved_out',
    'dimensions_read_outside',
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
    pair.holderSilentDays,
    pair.stopUse !== null,
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
    'share_twice_lower_95',
    'share_twice_upper_95',
    'runs_asked',
    'runs',
    'runs_left_foot',
    'runs_right_foot',
    'severity_mean_of_10',
    'severity_most_of_10',
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
  columns: [
    'round',
    'attribute',
    'when',
    'mean_of_100',
    'lower_95',
    'upper_95',
    'testers',
    'scores',
    'change_per_100_km',
    'change_per_100_km_lower_95',
    'change_per_100_km_upper_95',
    'change_per_100_km_testers',
  ],
  rows: rounds.flatMap((round) =>
    round.comfort.flatMap((one) =>
      (['wear', 'firstImpression'] as const).flatMap((when) => {
        const score = one[when];
        const drift = when === 'wear' ? one.drift : null;
        return score
          ? [
              [
                round.name,
                one.attribute,
                when === 'wear' ? 'wear' : 'first-impression',
                score.mean,
                score.interval?.lower,
                score.interval?.upper,
                score.n,
                score.runs,
                drift?.per100Km,
                drift?.interval.lower,
                drift?.interval.upper,
                drift?.testers,
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
    'lower_deviation_allowed',
    'upper_deviation_allowed',
    'value',
    'deviation',
    'inside',
    'standard_uncertainty',
    'decision',
    'chance_to_conform',
    'risk',
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
    one.uncertainty,
    one.word,
    one.chance,
    one.risk,
  ]),
});

/** What of an item is about a measure: for a limit without readings the brief's own. */
const placeOf = (item: VerdictItem): readonly Cell[] => {
  if (item.what !== 'wear' && item.what !== 'not-measured') return ['', '', '', '', '', ''];
  const { limit } = item;
  const own = item.what === 'wear' ? placeOfWear(item) : null;
  return [
    limit.measure,
    own?.unit ?? unitsOf[limit.measure][0],
    own?.site ?? limit.site,
    limit.bound,
    limit.value,
    limit.basis,
  ];
};

const verdicts = (reports: readonly RoundReport[]): Table => ({
  name: 'verdicts',
  columns: [
    'round',
    'round_verdict',
    'item',
    'measure',
    'unit',
    'site',
    'bound',
    'limit',
    'limit_basis',
    'verdict',
  ],
  rows: reports.flatMap(({ round, verdict }) =>
    verdict.items.map((item) => [round.name, verdict.word, item.what, ...placeOf(item), item.word]),
  ),
});

const changes = (reports: readonly RoundReport[], round: (id: string) => string): Table => ({
  name: 'changes',
  columns: ['round', 'against', 'part', 'what', 'zone', 'kind', 'verdict', 'testers_of_both'],
  rows: reports.flatMap(({ against }) =>
    against
      ? against.changes.map(({ round: by, part, what, mends, found }) => [
          round(by),
          round(against.earlier),
          part,
          what,
          mends?.zone,
          mends?.kind,
          found?.verdict,
          against.testers.both,
        ])
      : [],
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
    'evidence_language',
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
    body.evidence?.language,
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
  readonly feet: FeetLook;
  readonly panel: PanelCheck;
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
    painTable(review),
    comfort(review),
    bench(review, round, pair),
    deviations(review, round, pair),
    verdicts(reports),
    changes(reports, round),
    findings(list, round),
  ];
};

/** Version of the JSON below; grows when a field changes its meaning. */
const DATA_VERSION = 1;

/** What the endings of names mean, and the scales that have no ending: for who reads the file without this code. */
const UNITS = {
  '…M': 'metres',
  '…Mm': 'millimetres',
  '…Ms': 'milliseconds since 1970-01-01T00:00:00Z',
  '…KN': 'kilonewtons, summed over all steps of a shoe',
  '…H': 'hours',
  share: '0 to 1',
  'chance, risk, p, adjustedP': 'probability, 0 to 1',
  comfort: 'points, 0 to 100',
  severity: '0 to 10',
  'bench, deviations, sides, gauges': 'in the unit named beside them',
  'wear[].kind': 'measure and unit; values in that unit',
  'wear[].x, distance, at, greatest, reach':
    'metres, or metres of the reference runner of the dose',
  'wear[].change, difference':
    'the unit of the kind; for mass, impact peaks and energies the ratio to the value when new',
};

/**
 * The whole review as JSON, with what each round was looked at for and the findings.
 * `{ format: "pairlog-review", v, asOf, units, …review, rounds: [{ …round, cells, wear, verdict, influence, against, layers }],
 * findings, feet, panel }`
 */
export const jsonOf = ({ review, reports, findings: list, feet, panel }: Written): string =>
  JSON.stringify(
    {
      format: 'pairlog-review',
      v: DATA_VERSION,
      asOf: new Date(review.nowMs).toISOString(),
      units: UNITS,
      ...review,
      // Testers are codes: their names stay in the group.
      testers: review.testers.map(({ name: _name, ...tester }) => tester),
      rounds: review.rounds.map((round, at) => ({
        ...round,
        cells: reports[at]?.looks,
        wear: reports[at]?.wear,
        verdict: reports[at]?.verdict,
        influence: reports[at]?.influence,
        against: reports[at]?.against,
        layers: reports[at]?.layers,
      })),
      findings: list.map(({ id, body }) => ({ id, ...body })),
      feet,
      panel,
    },
    null,
    2,
  );
