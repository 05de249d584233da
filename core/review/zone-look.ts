/**
 * Who felt what in one zone, on which pair and after how many kilometres, in which words? One page's worth: counts by
 * round over both feet, a row of runs for each tester, the latest reports, and a pair that made half of them.
 */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { EvidenceWord } from '../complaints/index.ts';
import { mileageBefore, type LoggedRun } from '../mileage/index.ts';
import type { Complaint, Foot, RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import type { Metres, Millimetres } from '../units/index.ts';
import type { Reported } from './callouts.ts';
import type { LoggedPair, ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';
import { mostlyOf, type ShoeComplaint } from './shoe-look.ts';

export interface ZoneQuestion {
  readonly foot: Foot;
  readonly zone: ZoneCode;
  /** Null: whatever was felt there. */
  readonly kind: ComplaintKind | null;
  /** So many testers, those with most reports first. */
  readonly testers: number;
  /** So many reports, the latest first. */
  readonly reports: number;
}

export interface ZoneRound extends Reported {
  readonly round: RecordId;
  readonly left: number;
  readonly right: number;
  /** Over both feet; null: no kind was named, or nobody reported it. */
  readonly word: EvidenceWord | null;
  readonly proved: readonly RecordId[];
  /** Layers of material there; null: not counted. */
  readonly layers: number | null;
}

/** An asked run: was it felt, and on this foot or only on the other? */
export interface ZoneDot {
  readonly run: RecordId;
  readonly pairM: Metres;
  readonly atMs: number;
  readonly felt: 'here' | 'other-foot' | null;
  readonly severity: number | null;
}

export interface ZoneRow {
  readonly tester: RecordId;
  readonly reported: number;
  /** One for each round, in their order. `asked`: runs; 0: the tester did not answer in it. */
  readonly rounds: readonly { readonly asked: number; readonly dots: readonly ZoneDot[] }[];
}

/** One run that reported it. */
export interface ZoneReport {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly atMs: number;
  readonly pairM: Metres;
  readonly complaints: readonly Complaint[];
  /** What the tester wrote of the run as a whole; null: nothing. */
  readonly note: string | null;
}

/** A pair that made half of its round's reports or more, beside the longer foot of whoever made most of them. */
export interface PairShare {
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly runs: number;
  readonly of: number;
  readonly tester: RecordId;
  readonly sizeMm: Millimetres;
  /** Null: not measured. */
  readonly footMm: Millimetres | null;
}

export interface ZoneLook {
  readonly foot: Foot;
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind | null;
  /** What was ever felt there, on either foot, most runs first. */
  readonly kinds: readonly { readonly kind: ComplaintKind; readonly runs: number }[];
  /** By order. */
  readonly rounds: readonly ZoneRound[];
  readonly farthestM: Metres;
  readonly rows: readonly ZoneRow[];
  readonly allTesters: number;
  /** Testers who reported it at all. */
  readonly tellers: number;
  readonly reports: readonly ZoneReport[];
  readonly allReports: number;
  readonly mostly: ShoeComplaint['mostly'];
  readonly pairShare: PairShare | null;
}

/** More silent runs than this in one stretch of a row are not told apart. */
const MOST_SILENT = 60;
/** Fewer reports than this say nothing of a pair. Judgement, no source. */
const LEAST_OF_PAIR = 4;

interface Answered {
  readonly one: LoggedRun;
  readonly pair: LoggedPair;
  readonly here: readonly Complaint[];
}

const answeredIn = (log: ProjectLog, zone: ZoneCode): readonly Answered[] =>
  log.pairs.flatMap((pair) =>
    pair.runs.flatMap((one): Answered[] => {
      const { feet } = one.run;
      if (!feet) return [];
      const all = feet.answer === 'complaints' ? feet.complaints : [];
      return [{ one, pair, here: all.filter((complaint) => complaint.zone === zone) }];
    }),
  );

const greatest = (complaints: readonly Complaint[]): number | null =>
  complaints.reduce<number | null>(
    (most, { severity }) =>
      severity === undefined || (most !== null && most >= severity) ? most : severity,
    null,
  );

const dotOf = ({ one, pair, here }: Answered, foot: Foot): ZoneDot => ({
  run: one.id,
  pairM: mileageBefore(pair.curve, one.startMs),
  atMs: one.startMs,
  felt: here.some((complaint) => complaint.foot === foot)
    ? 'here'
    : here.length > 0
      ? 'other-foot'
      : null,
  severity: greatest(here),
});

/** All that was felt, and of the silent runs as many as can be told apart. */
const thinned = (answers: readonly Answered[], foot: Foot): readonly ZoneDot[] => {
  const silent = answers.filter(({ here }) => here.length === 0);
  const step = Math.max(1, Math.ceil(silent.length / MOST_SILENT));
  const kept = new Set(silent.filter((_, at) => at % step === 0));
  return answers
    .filter((one) => one.here.length > 0 || kept.has(one))
    .map((one) => dotOf(one, foot))
    .sort((a, b) => a.pairM - b.pairM);
};

const kindsOf = (answers: readonly Answered[]): ZoneLook['kinds'] => {
  const counts = new Map<ComplaintKind, number>();
  for (const { here } of answers)
    for (const kind of new Set(here.map((one) => one.kind)))
      counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts]
    .map(([kind, runs]) => ({ kind, runs }))
    .sort((a, b) => b.runs - a.runs || (a.kind < b.kind ? -1 : 1));
};

const countBy = (list: readonly Answered[], of: (one: Answered) => RecordId) =>
  [...groupBy(list, of)].map(([id, own]) => [id, own.length] as const);

/** Of the round with most reports. */
const pairShareOf = (log: ProjectLog, all: readonly Answered[]): PairShare | null => {
  const told = [...groupBy(all, ({ pair }) => pair.round).values()].reduce<readonly Answered[]>(
    (most, own) => (own.length > most.length ? own : most),
    [],
  );
  const byPair = countBy(told, ({ pair }) => pair.id);
  if (told.length < LEAST_OF_PAIR || byPair.length < 2) return null;
  const [id, runs] = byPair.reduce((most, one) => (one[1] > most[1] ? one : most));
  if (runs * 2 < told.length) return null;
  const own = told.filter(({ pair }) => pair.id === id);
  const [first] = countBy(own, ({ one }) => one.tester).sort((a, b) => b[1] - a[1]);
  const pair = own[0]?.pair;
  if (!first || !pair) return null;
  const [tester] = first;
  const feet = log.records.tester.find(({ revision }) => revision.id === tester)?.body.footLengthMm;
  return {
    pair: id,
    round: pair.round,
    runs,
    of: told.length,
    tester,
    sizeMm: pair.record.body.sizeMm,
    footMm: feet ? (feet.left > feet.right ? feet.left : feet.right) : null,
  };
};

const roundsOf = (
  log: ProjectLog,
  review: Review,
  answers: readonly Answered[],
  { zone, kind }: ZoneQuestion,
): readonly ZoneRound[] => {
  const byRound = groupBy(answers, ({ pair }) => pair.round);
  return log.rounds.map(({ body, revision: { id } }) => {
    const own = byRound.get(id) ?? [];
    const told = own.filter(({ here }) => here.length > 0);
    const on = (foot: Foot) => told.filter(({ here }) => here.some((c) => c.foot === foot)).length;
    const cell = review.rounds
      .find((round) => round.id === id)
      ?.complaints.cells.find((one) => one.zone === zone && one.kind === kind);
    return {
      round: id,
      testers: new Set(told.map(({ one }) => one.tester)).size,
      askedTesters: new Set(own.map(({ one }) => one.tester)).size,
      runs: told.length,
      askedRuns: own.length,
      left: on('left'),
      right: on('right'),
      word: cell?.word ?? null,
      proved: cell?.provenTesters.map(({ tester }) => tester) ?? [],
      layers: body.layers?.find((one) => one.zone === zone)?.count ?? null,
    };
  });
};

/** Looks at one zone of a project. @param review of the same log */
export const lookAtZone = (log: ProjectLog, review: Review, asked: ZoneQuestion): ZoneLook => {
  const { foot, zone, kind } = asked;
  const all = answeredIn(log, zone);
  const answers = all.map((one) =>
    kind === null ? one : { ...one, here: one.here.filter((c) => c.kind === kind) },
  );
  const told = answers.filter(({ here }) => here.length > 0);
  const reporters = new Map(countBy(told, ({ one }) => one.tester));
  const byTester = groupBy(answers, ({ one }) => one.tester);
  const codeOf = new Map(log.records.tester.map(({ revision, body }) => [revision.id, body.code]));
  const testers = [...byTester.keys()].sort(
    (a, b) =>
      (reporters.get(b) ?? 0) - (reporters.get(a) ?? 0) ||
      ((codeOf.get(a) ?? a) < (codeOf.get(b) ?? b) ? -1 : 1),
  );
  const rows = testers.slice(0, asked.testers).map((tester): ZoneRow => {
    const byRound = groupBy(byTester.get(tester) ?? [], ({ pair }) => pair.round);
    return {
      tester,
      reported: reporters.get(tester) ?? 0,
      rounds: log.rounds.map(({ revision }) => {
        const own = byRound.get(revision.id) ?? [];
        return { asked: own.length, dots: thinned(own, foot) };
      }),
    };
  });
  const reports = told
    .toSorted((a, b) => b.one.startMs - a.one.startMs || (a.one.id < b.one.id ? 1 : -1))
    .slice(0, asked.reports)
    .map(({ one, pair, here }): ZoneReport => ({
      run: one.id,
      tester: one.tester,
      pair: pair.id,
      round: pair.round,
      atMs: one.startMs,
      pairM: mileageBefore(pair.curve, one.startMs),
      complaints: here,
      note: one.run.words ?? null,
    }));
  return {
    foot,
    zone,
    kind,
    kinds: kindsOf(all),
    rounds: roundsOf(log, review, answers, asked),
    farthestM: rows
      .flatMap(({ rounds }) => rounds.flatMap(({ dots }) => dots))
      .reduce<Metres>((most, { pairM }) => (pairM > most ? pairM : most), 0 as Metres),
    rows,
    allTesters: testers.length,
    tellers: reporters.size,
    reports,
    allReports: told.length,
    mostly: mostlyOf(reporters),
    pairShare: pairShareOf(log, told),
  };
};
