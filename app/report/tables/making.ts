/** What the makers noted, record by record: the brief, blueprints, checks, gauges, notices, answers, decisions. */
import { quotableKinds } from '../../../core/records/index.ts';
import {
  ownRecords,
  type ProjectLog,
  type ReportedFinding,
  type Review,
} from '../../../core/review/index.ts';
import { km, tableOf, type Table } from './table.ts';
import { changeColumns } from './talking.ts';
import type { Names } from './written.ts';

/** The brief in one row; its limits stand in the verdicts. */
export const briefTable = ({ project: { name, brief, archived } }: ProjectLog): Table =>
  tableOf('brief', [brief], {
    project: () => name,
    runner: ({ runner }) => runner,
    use: ({ use }) => use,
    surfaces: ({ surfaces }) => surfaces.join(' '),
    brief_km: ({ distanceM }) => km(distanceM),
    allowed_complaint_rate: ({ allowedRate }) => allowedRate.complaint,
    allowed_pain_rate: ({ allowedRate }) => allowedRate.pain,
    attributes: ({ attributes, alsoAsked = [] }) => [...attributes, ...alsoAsked].join(' '),
    foot_length_least_mm: ({ feet }) => feet?.lengthMm?.[0],
    foot_length_most_mm: ({ feet }) => feet?.lengthMm?.[1],
    foot_width_least_mm: ({ feet }) => feet?.widthMm?.[0],
    foot_width_most_mm: ({ feet }) => feet?.widthMm?.[1],
    words: ({ words }) => words,
    archived_at: () => archived,
  });

export const roundChangesTable = ({ rounds }: ProjectLog): Table =>
  tableOf(
    'round-changes',
    rounds.flatMap(({ body }) => body.changes.map((change) => ({ name: body.name, change }))),
    {
      round: ({ name }) => name,
      part: ({ change }) => change.part,
      what: ({ change }) => change.what,
      zone: ({ change }) => change.mends?.zone,
      kind: ({ change }) => change.mends?.kind,
      ...changeColumns(({ change }) => change.structured),
    },
  );

export const blueprintTable = ({ rounds }: ProjectLog): Table =>
  tableOf(
    'blueprint',
    rounds.flatMap(({ body }) => body.blueprint.map((one) => ({ name: body.name, one }))),
    {
      round: ({ name }) => name,
      measure: ({ one }) => one.measure,
      site: ({ one }) => one.site,
      foot: ({ one }) => one.foot,
      unit: ({ one }) => one.unit,
      nominal: ({ one }) => one.nominal,
      lower_deviation_allowed: ({ one }) => one.lower,
      upper_deviation_allowed: ({ one }) => one.upper,
      left_right_allowed: ({ one }) => one.leftRight,
    },
  );

export const lastsTable = ({ rounds }: ProjectLog): Table =>
  tableOf('rounds-build', rounds, {
    round: ({ body }) => body.name,
    foam: ({ body }) => body.foam,
    midsole_compound: ({ body }) => body.midsole?.name,
    midsole_hardness: ({ body }) => body.midsole?.hardness?.value,
    midsole_hardness_unit: ({ body }) => body.midsole?.hardness?.unit,
    outsole_compound: ({ body }) => body.outsole?.name,
    outsole_hardness: ({ body }) => body.outsole?.hardness?.value,
    outsole_hardness_unit: ({ body }) => body.outsole?.hardness?.unit,
    last: ({ body }) => body.last?.name,
    last_size_mm: ({ body }) => body.last?.sizeMm,
    last_length_mm: ({ body }) => body.last?.lengthMm,
    ball_width_mm: ({ body }) => body.last?.ballWidthMm,
    ball_girth_mm: ({ body }) => body.last?.ballGirthMm,
    width_per_step_mm: ({ body }) => body.last?.widthPerStepMm,
    girth_per_step_mm: ({ body }) => body.last?.girthPerStepMm,
    layers: ({ body }) => body.layers?.map(({ zone, count }) => `${zone} ${count}`).join(' '),
    words: ({ body }) => body.words,
  });

/** Every reading on record with its check, whether or not it counts. */
export const checksTable = (log: ProjectLog, { pair }: Names): Table => {
  const counted = new Set<object>(
    log.pairs.flatMap(({ checks }) => checks.flatMap(({ body }) => body.readings)),
  );
  return tableOf(
    'checks',
    log.everyCheck.flatMap(({ revision, body }) =>
      body.readings.map((reading) => ({ check: revision.id, body, reading })),
    ),
    {
      check: ({ check }) => check,
      pair: ({ body }) => pair(body.pair),
      measured_at: ({ body }) => body.at,
      distance_km: ({ body }) => (body.distanceM === undefined ? undefined : km(body.distanceM)),
      measure: ({ reading }) => reading.measure,
      site: ({ reading }) => reading.site,
      foot: ({ reading }) => reading.foot,
      value: ({ reading }) => reading.value,
      unit: ({ reading }) => reading.unit,
      counts: ({ reading }) => counted.has(reading),
      rested_h: ({ body }) => body.restedH,
      temperature_c: ({ body }) => body.temperatureC,
      operator: ({ body }) => body.operator,
      gauge: ({ reading }) => reading.gauge,
      uncertainty: ({ reading }) => reading.uncertainty,
      load_n: ({ reading }) => reading.loadN,
      method: ({ reading }) => reading.method,
      words: ({ body }) => body.words,
      photos: ({ body }) => body.photos?.length ?? 0,
      corrected_at: ({ body }) => body.correctedBy?.at,
      corrected_why: ({ body }) => body.correctedBy?.why,
    },
  );
};

export const gaugesTable = ({ gauges }: ProjectLog): Table =>
  tableOf('gauge-studies', gauges, {
    gauge: ({ gauge }) => gauge,
    at: ({ at }) => at,
    measure: ({ measure }) => measure,
    site: ({ site }) => site,
    unit: ({ unit }) => unit,
    tolerance_width: ({ toleranceWidth }) => toleranceWidth,
    gauge_decision: ({ result }) => (result.ok ? result.word : result.why),
    repeatability: ({ result }) => (result.ok ? result.anova.repeatability : undefined),
    reproducibility: ({ result }) => (result.ok ? result.anova.reproducibility : undefined),
    gauge_spread: ({ result }) => (result.ok ? result.anova.gauge : undefined),
    share_of_spread: ({ result }) => (result.ok ? result.anova.share : undefined),
    share_of_tolerance: ({ result }) => (result.ok ? result.anova.shareOfTolerance : undefined),
  });

export const gaugeReadingsTable = (log: ProjectLog): Table =>
  tableOf(
    'gauge-readings',
    ownRecords(log.records['gauge-study'], log.id).flatMap(({ body }) =>
      body.readings.map((reading) => ({ body, reading })),
    ),
    {
      gauge: ({ body }) => body.gauge,
      at: ({ body }) => body.at,
      measure: ({ body }) => body.measure,
      sample: ({ reading }) => reading.part,
      operator: ({ reading }) => reading.operator,
      value: ({ reading }) => reading.value,
      unit: ({ body }) => body.unit,
    },
  );

export const stopsTable = (log: ProjectLog, { pair }: Names): Table =>
  tableOf('stop-use-notices', ownRecords(log.records['stop-use'], log.id), {
    pairs: ({ body }) => body.pairs.map(pair).join(' '),
    reason: ({ body }) => body.reason,
    from: ({ body }) => body.from,
    until: ({ body }) => body.until,
    read_by: ({ revision }) =>
      log.records.acknowledgement.filter(({ body }) => body.stopUse === revision.id).length,
  });

export const acknowledgementsTable = (log: ProjectLog, { tester }: Names): Table =>
  tableOf('notices-read', ownRecords(log.records.acknowledgement, log.id), {
    tester: ({ body }) => tester(body.tester),
    at: ({ body }) => body.at,
    reason: ({ body }) =>
      log.records['stop-use'].find(({ revision }) => revision.id === body.stopUse)?.body.reason,
  });

export const repliesTable = (log: ProjectLog, { tester }: Names): Table =>
  tableOf('replies', ownRecords(log.records.reply, log.id), {
    tester: ({ body }) => tester(body.tester),
    record: ({ body }) => body.about,
    at: ({ body }) => body.at,
    advice: ({ body }) => body.advice,
    words: ({ body }) => body.words,
  });

/** What was marked or quoted; not from a source that is erased. */
export const quotesTable = (
  log: ProjectLog,
  { tester }: Names,
  findings: readonly ReportedFinding[],
): Table => {
  const sources = new Set<string>(
    quotableKinds.flatMap((kind) => log.records[kind].map(({ revision }) => revision.id)),
  );
  const titles = new Map<string, string>(findings.map(({ id, body }) => [id, body.title]));
  return tableOf(
    'quotes',
    ownRecords(log.records.quote, log.id).filter(({ body }) => sources.has(body.source)),
    {
      tester: ({ body }) => tester(body.tester),
      record: ({ body }) => body.source,
      record_kind: ({ body }) => body.sourceKind,
      field: ({ body }) => body.field,
      words: ({ body }) => body.words,
      finding: ({ body }) => titles.get(body.finding ?? ''),
      at: ({ body }) => body.at,
      sent_at: ({ body }) => body.sent,
    },
  );
};

export const decisionsTable = (log: ProjectLog, { decided }: Pick<Review, 'decided'>): Table => {
  const holding = new Set<string>(decided.map(({ decision }) => decision));
  return tableOf('decisions', ownRecords(log.records.decision, log.id), {
    record: ({ body }) => body.record,
    record_kind: ({ body }) => body.recordKind,
    measure: ({ body }) => body.reading?.measure,
    site: ({ body }) => body.reading?.site,
    foot: ({ body }) => body.reading?.foot,
    ruling: ({ body }) => body.ruling,
    why: ({ body }) => body.why,
    at: ({ body }) => body.at,
    holds: ({ revision }) => holding.has(revision.id),
  });
};

export const plansTable = (log: ProjectLog, { round, pair, tester }: Names): Table =>
  tableOf(
    'hand-out-plans',
    ownRecords(log.records['hand-out-plan'], log.id).flatMap(({ body }) =>
      body.places.map((place) => ({ body, place })),
    ),
    {
      plan_made_at: ({ body }) => body.at,
      plan_from: ({ body }) => body.from,
      weeks_per_period: ({ body }) => body.weeksPerPeriod,
      period: ({ place }) => place.period + 1,
      tester: ({ place }) => tester(place.tester),
      pair: ({ place }) => pair(place.pair),
      round: ({ place }) => round(place.round),
      seed: ({ body }) => body.seed,
    },
  );

export const reportsTable = (log: ProjectLog, { round }: Names): Table =>
  tableOf('reports-sent', ownRecords(log.records.report, log.id), {
    round: ({ body }) => round(body.round),
    title: ({ body }) => body.title,
    at: ({ body }) => body.at,
    trade: ({ body }) => body.trade,
    languages: ({ body }) => body.languages.join(' '),
  });
