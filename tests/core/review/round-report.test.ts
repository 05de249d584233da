/** The report of a round on the demo: its own figures, the findings in their order, and nothing of other rounds. */
import { describe, expect, it } from 'vitest';
import { mileageAt } from '../../../core/mileage/index.ts';
import {
  expectedAt,
  isProven,
  reportRound,
  wearCards,
  type ProjectLog,
  type ReportedFinding,
  type RoundReport,
} from '../../../core/review/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { saidOfRuns } from '../../../core/review/report-parts.ts';
import { settleOf } from '../../../core/review/settle.ts';
import { idOf } from '../records/make.ts';
import { readDemo } from '../../app/report/demo-report.ts';

const { log, review, reports } = readDemo();
const [first, second] = reports as [RoundReport, RoundReport];

/** The demo's log with findings of our own in place of its. */
const withFindings = (bodies: readonly Partial<RecordOf<'finding'>['body']>[]): ProjectLog => ({
  ...log,
  records: {
    ...log.records,
    finding: bodies.map((body, at) => ({
      kind: 'finding',
      revision: { id: idOf(at) } as RecordOf<'finding'>['revision'],
      body: {
        project: log.id,
        round: first.round.id,
        title: `finding ${at}`,
        part: 'last',
        priority: 'low',
        state: 'open',
        ...body,
      },
    })),
  },
});

describe('the report of a round', () => {
  it('is null for a round that the project has not', () => {
    expect(reportRound(log, review, idOf(5))).toBeNull();
  });

  it('holds the figures of the review of that round, and knows the one before', () => {
    for (const [at, report] of reports.entries()) {
      const round = review.rounds[at];
      expect(report.round.size).toEqual(round?.size);
      expect(report.round.complaints.asked).toEqual(round?.complaints.asked);
      expect(report.verdict.round).toBe(round?.id);
      expect(report.before?.id).toBe(review.rounds[at - 1]?.id);
    }
  });

  it('looks at what recurs, and at nothing else', () => {
    expect(first.looks.map(({ cell }) => cell)).toEqual(
      first.round.complaints.cells.filter(isProven).map(({ zone, kind }) => ({ zone, kind })),
    );
  });

  it('holds deviations and damages of its own pairs only', () => {
    for (const report of reports) {
      expect(report.deviations.every(({ round }) => round === report.round.id)).toBe(true);
      const own = new Set(
        review.pairs.filter(({ round }) => round === report.round.id).map(({ id }) => id),
      );
      expect(report.damages.every(({ pair }) => own.has(pair))).toBe(true);
    }
    const all = reports.flatMap(({ deviations }) => deviations);
    expect(all).toHaveLength(review.deviations.length);
  });

  it('names beside what became better the changes that were made for it, with the round that brought them', () => {
    const last = reports.at(-1) as RoundReport;
    const changes = last.callouts.flatMap((one) => (one.what === 'better' ? [one] : []));
    expect(
      changes.map((one) => [one.kind, one.earlier, one.changes.map(({ round }) => round)]),
    ).toEqual([
      ['pressure', second.round.id, [last.round.id]],
      ['heel-slip', first.round.id, [second.round.id]],
    ]);
    expect(changes.flatMap((one) => one.changes.map(({ part }) => part))).toEqual([
      'upper-material',
      'upper-pattern',
    ]);
  });

  it('says of every pair of a visit when it is expected there', () => {
    const visits = reports.flatMap(({ settles }) =>
      settles.flatMap((one) => (one?.by === 'measure' ? [one] : [])),
    );
    expect(visits.some(({ also }) => also.length === 2)).toBe(true);
    for (const { pair, also, atM, expected, expectedOfAlso } of visits)
      expect([expected, ...expectedOfAlso]).toEqual(
        [pair, ...also].map((one) => expectedAt(log, one, atM)),
      );
  });

  it('counts zones of one kind no higher than zones of all kinds', () => {
    for (const [kind, zones] of Object.entries(first.zonesByKind))
      for (const foot of ['left', 'right'] as const)
        for (const one of zones[foot]) {
          const any = first.zones[foot].find(({ zone }) => zone === one.zone);
          expect(one.testers, kind).toBeLessThanOrEqual(any?.testers ?? 0);
        }
    expect(first.zonesByKind['heel-slip']).toBeDefined();
  });

  it('shows every place that a limit of the brief speaks of', () => {
    const limits = first.verdict.items.flatMap((item) =>
      item.what === 'wear' ? [`${item.kind} ${item.site}`] : [],
    );
    expect(first.wear.map(({ kind, site }) => `${kind} ${site}`)).toEqual(
      expect.arrayContaining(limits),
    );
    expect(limits.length).toBeGreaterThan(0);
  });

  it('shows the place that a finding names beside them', () => {
    const place = { measure: 'hardness', site: 'heel-centre', unit: 'asker-c' } as const;
    const evidence = { until: '2026-05-01T10:00:00Z', lines: [], place };
    const named = reportRound(withFindings([{ evidence }]), review, first.round.id);
    const has = (report: RoundReport | null) =>
      report?.wear.some(({ kind, site }) => kind === 'hardness asker-c' && site === place.site);
    expect(has(named)).toBe(true);
    expect(has(first)).toBe(false);
  });

  it('tells its findings from those it only carries', () => {
    const other = second.round.id;
    const report = (round: RecordId) =>
      reportRound(
        withFindings([
          {},
          { carriedBy: other },
          { round: other },
          { round: other, carriedBy: other },
        ]),
        review,
        round,
      );
    const titles = (list: readonly ReportedFinding[] | undefined) =>
      list?.map(({ body }) => body.title);
    expect(titles(report(first.round.id)?.findings)).toEqual(['finding 0', 'finding 1']);
    expect(titles(report(first.round.id)?.carried)).toEqual([]);
    expect(titles(report(other)?.findings)).toEqual(['finding 2', 'finding 3']);
    expect(titles(report(other)?.carried)).toEqual(['finding 1']);
  });

  it('puts the most urgent finding first, whatever order they were written in', () => {
    const bodies = [
      { priority: 'low' },
      { priority: 'high', part: 'outsole' },
      { priority: 'medium' },
      { priority: 'high', part: 'lacing' },
    ] as const;
    const order = (list: typeof bodies | readonly (typeof bodies)[number][]) =>
      reportRound(withFindings(list), review, first.round.id)?.findings.map(
        ({ body }) => `${body.priority} ${body.part}`,
      );
    const expected = ['high lacing', 'high outsole', 'medium last', 'low last'];
    expect(order(bodies)).toEqual(expected);
    expect(order(bodies.toReversed())).toEqual(expected);
  });
});

describe('what the sheets of the trades are made of', () => {
  it('says from where on each complaint was felt, as the runs of its pairs tell', () => {
    for (const report of reports) {
      const pairs = log.pairs.filter(({ round }) => round === report.round.id);
      expect(report.from.map(({ zone, kind }) => `${zone} ${kind}`)).toEqual(
        report.round.complaints.cells.map(({ zone, kind }) => `${zone} ${kind}`),
      );
      for (const { zone, kind, pairM, onset } of report.from) {
        const own = pairs.flatMap(({ runs, curve }) =>
          runs.flatMap(({ startMs, run: { feet } }) => {
            const felt = (feet?.answer === 'complaints' ? feet.complaints : []).filter(
              (one) => one.zone === zone && one.kind === kind,
            );
            return felt.length === 0
              ? []
              : [{ m: mileageAt(curve, startMs), from: felt.map(({ fromM }) => fromM) }];
          }),
        );
        expect(pairM).toBe(Math.min(...own.map(({ m }) => m)));
        const told = own.flatMap(({ from }) => from.filter((m) => m !== undefined));
        if (told.length === 0) expect(onset).toBeNull();
        else {
          expect(onset?.medianM).toBeGreaterThanOrEqual(Math.min(...told));
          expect(onset?.medianM).toBeLessThanOrEqual(Math.max(...told));
        }
      }
    }
  });

  it('adds up the surfaces to all that was run in the round', () => {
    for (const { surfaces, round } of reports) {
      const sum = Object.values(surfaces).reduce((all, m) => all + m, 0);
      expect(sum).toBeCloseTo(round.size.distanceM, 3);
    }
  });

  it('would settle a limit by what the desk says as well', () => {
    const cards = wearCards(log);
    for (const { verdict, settles } of reports)
      for (const [at, item] of verdict.items.entries()) {
        const card =
          item.what === 'wear'
            ? cards
                .find(
                  (one) =>
                    one.limit === item.limit && one.kind === item.kind && one.site === item.site,
                )
                ?.rounds.find(({ round }) => round === verdict.round)
            : undefined;
        expect(settles[at]).toEqual(settleOf(log, verdict.round, item, card));
      }
    expect(reports[2]?.settles.some((one) => one?.by === 'measure')).toBe(true);
  });

  it('holds what was written of a complaint with that complaint alone', () => {
    const [pair] = log.pairs;
    const run = pair?.runs.find(({ run: { feet } }) => feet?.answer === 'complaints');
    if (!pair || !run || run.run.feet?.answer !== 'complaints') throw new Error('no complaint');
    const [one] = run.run.feet.complaints;
    if (!one) throw new Error('no complaint');
    const other = { ...one, zone: 'U1' as const, kind: 'toe-bang' as const };
    const feet = { ...run.run.feet, complaints: [{ ...one, words: ' here ' }, other] };
    const said = saidOfRuns([
      { ...pair, runs: [{ ...run, run: { ...run.run, words: 'all', feet } }] },
    ]);
    expect(said.map(({ text, felt }) => [text, felt.length])).toEqual([
      ['all', 2],
      ['here', 1],
    ]);
    expect(said[1]?.felt[0]?.kind).toBe(one.kind);
  });
});
