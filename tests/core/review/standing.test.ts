/** What counts, what waits for the lead, what a decision does, and that nothing left out is in any figure. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  sealRevision,
  viewOfHeads,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import {
  checkPanel,
  decisionOn,
  findingsOf,
  lookAtFeet,
  newlyWaiting,
  openProject,
  overviewOf,
  reportRounds,
  reviewProject,
  type ProjectLog,
  type Subject,
} from '../../../core/review/index.ts';
import { csvOf } from '../../../app/report/tables/csv.ts';
import { figureTables } from '../../../app/report/tables/index.ts';
import { idOf, stampAt } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const NOW = Date.UTC(2026, 5, 1);
const [PAIR, OTHER, T1, T2] = [idOf(10), idOf(11), idOf(20), idOf(21)];
const SITE = { measure: 'stack-height', site: 'heel', unit: 'mm' } as const;

const base: readonly Revision[] = [
  make.project({
    limits: [{ ...SITE, bound: 'at-least', value: 20, basis: 'reading' }],
    distanceM: 100_000,
  }),
  make.round(ROUND, 1, { foam: 'eva' }),
  make.pair(PAIR, ROUND, '637'),
  make.pair(OTHER, ROUND, '640'),
  record(T1, 'tester', { code: 'T01' }),
  record(T2, 'tester', { code: 'T02' }),
  make.handOut(idOf(30), { pair: PAIR, tester: T1 }, '2026-05-01T08:00:00Z'),
  make.handOut(idOf(31), { pair: OTHER, tester: T2 }, '2026-05-01T08:00:00Z'),
];

const run = (n: number, more: Record<string, unknown> = {}, of = { pair: PAIR, tester: T1 }) =>
  make.run(idOf(100 + n), of, `2026-05-${String(1 + n).padStart(2, '0')}T18:00:00Z`, {
    durationS: 3000,
    ...more,
  });

const check = (n: number, values: readonly number[], pair: RecordId = PAIR, gauge?: string) =>
  own(idOf(200 + n), 'bench-check', {
    pair,
    at: `2026-05-${String(1 + n).padStart(2, '0')}T12:00:00Z`,
    readings: values.map((value, at) => ({
      ...SITE,
      foot: at === 0 ? 'left' : 'right',
      value,
      ...(gauge !== undefined && { gauge }),
    })),
  });

const decide = (
  n: number,
  subject: Partial<Subject> & Pick<Subject, 'record'>,
  ruling: 'counted' | 'set-aside',
  stampMs = n,
) =>
  sealRevision(
    {
      id: idOf(300 + n),
      kind: 'decision',
      author: idOf(9),
      sv: 1,
      body: {
        ...decisionOn(
          { recordKind: 'run', judged: stampAt(1), reading: null, ...subject },
          { project: PROJECT, ruling, why: `because ${n}`, at: '2026-05-30T00:00:00Z' },
        ),
      },
    },
    stampAt(stampMs),
    null,
  );

const open = (...more: readonly Revision[]): ProjectLog => {
  const log = openProject(viewOfHeads([...base, ...more]), PROJECT, NOW);
  if (!log) throw new Error('no project');
  return log;
};
const waits = (...more: readonly Revision[]) => open(...more).standing.waiting;
const counted = (...more: readonly Revision[]) => open(...more).counted.map(({ id }) => id);

describe('a run', () => {
  it.each([
    ['distance', { distanceM: 500_000, durationS: 180_000 }],
    ['pace', { durationS: 600 }],
  ] as const)(
    'of an implausible %s waits, whoever confirmed it, and counts nowhere',
    (why, more) => {
      const log = open(run(1), run(2, more));
      expect(log.counted.map(({ id }) => id)).toEqual([idOf(101)]);
      expect(log.standing.waiting).toMatchObject([
        { about: 'run', counts: false, whys: [{ why }], subject: { record: idOf(102) } },
      ]);
      expect(reviewProject(log).pairs.find(({ id }) => id === PAIR)?.totalM).toBe(10_000);
      expect(log.records.run.map(({ revision }) => revision.id)).toEqual([idOf(101)]);
    },
  );

  it('in a pair that was not with that tester waits, and says which pair was', () => {
    const odd = run(2, {}, { pair: OTHER, tester: T1 });
    expect(counted(run(1), odd)).toEqual([idOf(101)]);
    expect(waits(odd)).toMatchObject([
      { whys: [{ why: 'not-handed-out' }], heldThen: [PAIR], pair: OTHER, tester: T1 },
    ]);
  });

  it('of the future, or in a pair that is not in the log, waits', () => {
    const later = run(1, { startedAt: '2026-06-03T08:00:00Z' });
    const unknown = run(2, {}, { pair: idOf(77), tester: T1 });
    expect(counted(later, unknown)).toEqual([]);
    expect(waits(later, unknown).map((one) => one.about === 'run' && one.whys[0]?.why)).toEqual([
      'unknown-pair',
      'in-the-future',
    ]);
  });

  it('up to three days before a hand-out, or one after it, counts and is asked about', () => {
    const early = (startedAt: string) => run(1, { startedAt });
    const of = (log: ProjectLog) => [
      log.counted.length,
      log.standing.waiting.length,
      log.oddities[0]?.why,
    ];
    expect(of(open(early('2026-04-28T09:00:00Z')))).toEqual([1, 0, 'not-handed-out']);
    expect(of(open(early('2026-04-28T07:00:00Z')))).toEqual([0, 1, undefined]);
    const back = make.handOut(idOf(30), { pair: PAIR, tester: T1 }, '2026-05-01T08:00:00Z', {
      until: '2026-05-10T08:00:00Z',
    });
    const rest = base.filter(({ id }) => id !== idOf(30));
    const after = (startedAt: string, more: readonly Revision[] = []) =>
      of(
        openProject(
          viewOfHeads([...rest, back, early(startedAt), ...more]),
          PROJECT,
          NOW,
        ) as ProjectLog,
      );
    expect(after('2026-05-11T07:00:00Z')).toEqual([1, 0, 'not-handed-out']);
    expect(after('2026-05-11T09:00:00Z')).toEqual([0, 1, undefined]);
    // Somebody else had it by then.
    const next = make.handOut(idOf(33), { pair: PAIR, tester: T2 }, '2026-05-10T09:00:00Z');
    expect(after('2026-05-11T07:00:00Z', [next])).toEqual([0, 1, undefined]);
  });

  it('counts where a group notes no hand-outs at all: nothing tells whose the pair was', () => {
    const log = openProject(
      viewOfHeads([...base.filter(({ kind }) => kind !== 'hand-out'), run(1)]),
      PROJECT,
      NOW,
    );
    expect(log?.counted).toHaveLength(1);
    expect(log?.standing.waiting).toEqual([]);
  });
});

describe('a reading', () => {
  it('that cannot be, or whose decimal point slipped, waits with what was to be expected', () => {
    const log = open(check(1, [28.5, 28.4]), check(4, [285, 28.2]), check(8, [28.0, 2.81]));
    expect(log.standing.waiting).toMatchObject([
      { about: 'reading', counts: false, doubt: { why: 'impossible', instead: 28.5 } },
      { about: 'reading', counts: false, doubt: { why: 'decimal-point', instead: 28.1 } },
    ]);
    expect(
      reviewProject(log).bench.flatMap(({ points }) => points.map(({ value }) => value)),
    ).toEqual([28.5, 28.0, 28.4, 28.2]);
  });

  it('that is only unlike the others counts until the lead decides', () => {
    const log = open(check(1, [28.5, 28.4]), check(4, [12, 28.2]));
    expect(log.standing.waiting).toMatchObject([{ counts: true, doubt: { why: 'unlike-others' } }]);
    expect(log.pairs[0]?.checks[1]?.body.readings).toHaveLength(2);
  });

  it('is not doubted for a wrong one beside it', () => {
    const items = waits(check(1, [285, 28.4]), check(4, [28.3, 28.2]));
    expect(items).toHaveLength(1);
    expect(items).toMatchObject([{ reading: { value: 285 } }]);
  });

  it('leaves its check out where no other is in it', () => {
    expect(open(check(1, [285])).pairs[0]?.checks).toEqual([]);
  });

  it('of a second gauge that sits apart is named and counts meanwhile', () => {
    const checks = [0, 1].flatMap((p) => {
      const pair = p === 0 ? PAIR : OTHER;
      const at = (n: number, by: number, gauge: string) =>
        check(
          20 * p + n,
          [28.5 - 0.1 * n, 28.3 - 0.1 * n].map((v) => v * by),
          pair,
          gauge,
        );
      return [at(1, 1, 'A'), at(3, 1, 'A'), at(5, 1.05, 'B'), at(7, 1.05, ' b')];
    });
    expect(waits(...checks)).toMatchObject([
      { about: 'gauge', counts: true, gauge: 'B', than: 'A', places: 4, measure: 'stack-height' },
    ]);
    const [item] = waits(...checks);
    expect(item?.about === 'gauge' && [item.share, item.subjects.length]).toEqual([
      expect.closeTo(0.05, 2),
      8,
    ]);
    // The same steps by one gauge are wear.
    const wear = [1, 3, 5, 7].map((n) => check(n, [28.5 - 0.1 * n, 28.3 - 0.1 * n], PAIR, 'A'));
    expect(waits(...wear)).toEqual([]);
  });
});

describe('a decision', () => {
  const odd = run(2, { distanceM: 150_000, durationS: 60_000 });
  const subject = { record: idOf(102) };

  it('lets a run count, with its reason listed and nothing asked any more', () => {
    const log = open(odd, decide(1, subject, 'counted'));
    expect(log.counted).toHaveLength(1);
    expect(log.oddities).toEqual([]);
    expect(log.standing).toMatchObject({
      waiting: [],
      decided: [{ about: 'run', ruling: 'counted', why: 'because 1', subject }],
    });
  });

  it('sets a run aside, odd or not', () => {
    expect(counted(run(1), odd, decide(1, subject, 'set-aside'))).toEqual([idOf(101)]);
    expect(counted(run(1), decide(1, { record: idOf(101) }, 'set-aside'))).toEqual([]);
  });

  it('is reversed by a later one, whichever comes first in the log', () => {
    const both = [decide(1, subject, 'counted'), decide(2, subject, 'set-aside')];
    expect(counted(odd, ...both)).toEqual([]);
    expect(counted(odd, ...both.toReversed())).toEqual([]);
    expect(counted(odd, ...both, decide(3, subject, 'counted'))).toEqual([idOf(102)]);
  });

  it('says nothing of a later correction of the record', () => {
    const corrected = sealRevision(
      {
        id: odd.id,
        kind: 'run',
        author: odd.author,
        sv: 1,
        body: { ...odd.body, distanceM: 160_000 },
      },
      stampAt(5),
      stampAt(1),
    );
    for (const ruling of ['counted', 'set-aside'] as const) {
      const log = open(corrected, decide(9, subject, ruling));
      expect(log.standing).toMatchObject({ waiting: [{ distanceM: 160_000 }], decided: [] });
    }
    expect(counted(corrected, decide(9, { ...subject, judged: stampAt(5) }, 'counted'))).toEqual([
      idOf(102),
    ]);
  });

  it('about a run logged twice lets both count', () => {
    const again = run(3, { startedAt: '2026-05-02T18:02:00Z' });
    expect(counted(run(1), again)).toEqual([idOf(101)]);
    expect(counted(run(1), again, decide(1, { record: idOf(103) }, 'counted'))).toHaveLength(2);
  });

  it('about one reading leaves the others; about the whole check it takes all', () => {
    const checks = [check(1, [28.5, 28.4]), check(4, [285, 28.2])];
    const one = {
      record: idOf(204),
      recordKind: 'bench-check',
      reading: { ...SITE, foot: 'left' },
    } as const;
    const readings = (...more: readonly Revision[]) =>
      open(...checks, ...more).pairs[0]?.checks.map(({ body }) =>
        body.readings.map(({ value }) => value),
      );
    expect(readings()).toEqual([[28.5, 28.4], [28.2]]);
    expect(readings(decide(1, one, 'counted'))).toEqual([
      [28.5, 28.4],
      [285, 28.2],
    ]);
    const whole = { ...one, reading: null };
    expect(readings(decide(1, one, 'counted'), decide(2, whole, 'set-aside'))).toEqual([
      [28.5, 28.4],
    ]);
    expect(readings(decide(1, whole, 'set-aside'), decide(2, one, 'counted'))).toEqual([
      [28.5, 28.4],
      [285],
    ]);
  });
});

/** The figures of a log that need no fit; what waits and what was decided is no figure. */
const countedFigures = (log: ProjectLog): unknown => {
  // Pain is told of every run, also of one that counts in no figure.
  const { waiting: _waiting, decided: _decided, pains: _pains, ...review } = reviewProject(log);
  return plainFigures({ review, panel: checkPanel(log), feet: lookAtFeet(log) });
};

/** As JSON, without days of silence: who logged a run was heard, whether it counts or not. */
const plainFigures = (figures: unknown): unknown =>
  JSON.parse(
    JSON.stringify(figures, (key, value: unknown) =>
      ['silentDays', 'holderSilentDays', 'quiet'].includes(key) ? undefined : value,
    ),
  );

/** Every figure of a log, as desk, report, tables and terminal say it; what to do next is no figure. */
const allFigures = (log: ProjectLog): unknown => {
  const review = reviewProject(log);
  const reports = reportRounds(log, review);
  const written = {
    log,
    review,
    reports,
    findings: findingsOf(log),
    feet: lookAtFeet(log),
    panel: checkPanel(log),
  };
  const overview = overviewOf(
    log,
    review,
    reports.map(({ verdict }) => verdict),
  );
  return JSON.parse(
    JSON.stringify({
      counted: countedFigures(log),
      reports: reports.map(({ outside: _outside, settles: _settles, ...report }) => report),
      rounds: overview.rounds,
      tables: figureTables(written).map((table) =>
        csvOf({
          ...table,
          rows: table.rows.map((row) =>
            row.filter((_, at) => !/silent_days$/.test(table.columns[at] ?? '')),
          ),
        }),
      ),
    }),
  );
};

interface Plan {
  readonly runs: readonly {
    readonly day: number;
    readonly distanceM: number;
    readonly durationS: number;
    readonly other: boolean;
    readonly second: boolean;
    readonly hurts: boolean;
  }[];
  readonly checks: readonly {
    readonly day: number;
    readonly values: readonly number[];
    readonly other: boolean;
  }[];
  readonly decisions: readonly {
    readonly of: number;
    readonly counts: boolean;
    readonly run: boolean;
  }[];
}

const anyPlan: fc.Arbitrary<Plan> = fc.record({
  runs: fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 29 }),
      distanceM: fc.constantFrom(8000, 10_000, 10_050, 21_000, 150_000, 40),
      durationS: fc.constantFrom(3000, 3600, 600, 60_000),
      other: fc.boolean(),
      second: fc.boolean(),
      hurts: fc.boolean(),
    }),
    { maxLength: 14 },
  ),
  checks: fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 29 }),
      values: fc.array(fc.constantFrom(28.5, 28.1, 27.6, 285, 2.84, 19, 290, -3), {
        minLength: 1,
        maxLength: 2,
      }),
      other: fc.boolean(),
    }),
    { maxLength: 8 },
  ),
  decisions: fc.array(fc.record({ of: fc.nat(20), counts: fc.boolean(), run: fc.boolean() }), {
    maxLength: 6,
  }),
});

const revisionsOf = ({ runs, checks, decisions }: Plan): Revision[] => {
  const made = [
    ...runs.map((one, n) =>
      make.run(
        idOf(100 + n),
        { pair: one.other ? OTHER : PAIR, tester: one.second ? T2 : T1 },
        `2026-05-${String(1 + one.day).padStart(2, '0')}T18:00:00Z`,
        {
          distanceM: one.distanceM,
          durationS: one.durationS,
          comfort: { overall: 50 + one.day },
          feet: one.hurts
            ? {
                answer: 'complaints',
                complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
              }
            : { answer: 'nothing' },
        },
      ),
    ),
    ...checks.map((one, n) =>
      own(idOf(200 + n), 'bench-check', {
        pair: one.other ? OTHER : PAIR,
        at: `2026-05-${String(1 + one.day).padStart(2, '0')}T12:00:00Z`,
        readings: one.values.map((value, at) => ({
          ...SITE,
          foot: at === 0 ? 'left' : 'right',
          value,
        })),
      }),
    ),
  ];
  return [
    ...made,
    ...decisions.flatMap(({ of, counts, run: isRun }, n) => {
      const own = made.filter(({ kind }) => (kind === 'run') === isRun);
      const about = own[of % Math.max(1, own.length)];
      return about
        ? [
            decide(
              n,
              {
                record: about.id,
                recordKind: isRun ? 'run' : 'bench-check',
                reading: isRun || of % 2 === 0 ? null : { ...SITE, foot: 'left' },
              },
              counts ? 'counted' : 'set-aside',
            ),
          ]
        : [];
    }),
  ];
};

/** The log in which what is out of the figures never was. */
const without = (log: ProjectLog, revisions: readonly Revision[]): Revision[] => {
  const { waiting, decided } = log.standing;
  const subjects = [
    ...waiting.flatMap((one) => (one.about === 'gauge' || one.counts ? [] : [one.subject])),
    ...decided.flatMap((one) => (one.ruling === 'set-aside' ? [one.subject] : [])),
  ];
  const gone = new Set(subjects.flatMap((one) => (one.reading === null ? [one.record] : [])));
  const places = new Set(
    subjects.flatMap((one) => (one.reading ? [`${one.record} ${one.reading.foot}`] : [])),
  );
  return revisions.flatMap((one) => {
    if (gone.has(one.id)) return [];
    if (one.kind !== 'bench-check') return [one];
    const readings = (one.body?.['readings'] as { foot: string }[]).filter(
      ({ foot }) => !places.has(`${one.id} ${foot}`),
    );
    if (readings.length === 0) return [];
    const { id, kind, author, sv } = one;
    return [
      sealRevision({ id, kind, author, sv, body: { ...one.body, readings } }, stampAt(1), null),
    ];
  });
};

describe('what waits or was set aside', () => {
  it.each([
    ['that is counted', countedFigures, 150],
    ['that is fitted, judged, reported or written as a table', allFigures, 10],
  ] as const)('changes no figure %s: they are those of a log without it', (_, figures, numRuns) => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const revisions = revisionsOf(plan);
        const log = open(...revisions);
        expect(figures(log)).toEqual(figures(open(...without(log, revisions))));
      }),
      { numRuns, seed: 15 },
    );
  });

  it('is told all the same where it tells of pain', () => {
    const hurts = run(2, { durationS: 600, pain: { score: 5, isNew: true } });
    const review = reviewProject(open(...base, hurts));
    expect(review.waiting).toMatchObject([{ subject: { record: hurts.id } }]);
    expect(review.pains).toMatchObject([{ run: hurts.id, score: 5, stands: true }]);
  });

  it('is listed once a lead takes a file in, and not what waited before', () => {
    const odd = run(2, { durationS: 600 });
    expect(newlyWaiting([...base], [odd], NOW)).toMatchObject([{ subject: { record: odd.id } }]);
    expect(newlyWaiting([...base, odd], [run(1)], NOW)).toEqual([]);
  });
});
