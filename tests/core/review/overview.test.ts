/** How a project stands, and what its lead is told to do next, from an empty project to a pair that hurts. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type RecordId, type Revision } from '../../../core/records/index.ts';
import {
  openProject,
  overviewOf,
  reviewProject,
  verdictOf,
  type Overview,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [FIRST, SECOND] = [idOf(2), idOf(3)];
const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 30);
const daysAgo = (days: number) => new Date(NOW - days * DAY_MS).toISOString();

const project = (limits: readonly unknown[] = []) => make.project({ distanceM: 300_000, limits });
const height = {
  measure: 'stack-height',
  site: 'heel-centre',
  unit: 'mm',
  nominal: 36,
  lower: -1,
  upper: 1,
};
const round = (id: RecordId, order: number, blueprint: readonly unknown[] = [height]) =>
  make.round(id, order, { blueprint });
const pair = (n: number, of: RecordId = FIRST) => make.pair(idOf(100 + n), of, String(100 + n));
const worn = (n: number) => ({ pair: idOf(100 + n), tester: idOf(200 + n) });
const tester = (n: number) => record(idOf(200 + n), 'tester', { code: `T0${n}` });
const handOut = (n: number, days: number, until?: number) =>
  make.handOut(
    idOf(300 + n),
    worn(n),
    daysAgo(days),
    until === undefined ? {} : { until: daysAgo(until) },
  );
const run = (id: number, n: number, days: number, more: Record<string, unknown> = {}) =>
  make.run(idOf(1000 + id), worn(n), daysAgo(days), {
    durationS: 3600,
    feet: { answer: 'nothing' },
    ...more,
  });
const slip = {
  feet: {
    answer: 'complaints',
    complaints: [{ foot: 'left', zone: 'U9', kind: 'heel-slip' }],
  },
};

const overview = (...revisions: readonly Revision[]): Overview => {
  const log = openProject(viewOfHeads(revisions), PROJECT, NOW);
  if (!log) throw new Error('no project');
  const review = reviewProject(log);
  return overviewOf(
    log,
    review,
    review.rounds.map((one) => verdictOf(log, one)),
  );
};
const steps = ({ next }: Overview) => next.map(({ step, count }) => [step, count]);

describe('what to do next', () => {
  it('leads from an empty project to the first hand-out', () => {
    expect(steps(overview(project()))).toEqual([
      ['add-round', 1],
      ['add-testers', 1],
      ['set-limits', 1],
    ]);
    expect(steps(overview(project(), round(FIRST, 1), tester(1)))).toEqual([
      ['add-pairs', 1],
      ['set-up-phones', 1],
      ['set-limits', 1],
    ]);
    expect(steps(overview(project(), round(FIRST, 1), tester(1), pair(1), pair(2)))).toEqual([
      ['measure-on-arrival', 2],
      ['hand-out', 2],
      ['set-up-phones', 1],
      ['set-limits', 1],
    ]);
  });

  it('asks for no measures where nothing says what is right', () => {
    const found = overview(project(), round(FIRST, 1, []), tester(1), pair(1));
    expect(steps(found).map(([step]) => step)).not.toContain('measure-on-arrival');
  });

  it('asks for the first check of each round until it is there, whether or not somebody ran', () => {
    const base = [project(), round(FIRST, 1), round(SECOND, 2), tester(1), tester(2)];
    const pairs = [pair(1), pair(2), pair(3, SECOND), pair(4, SECOND)];
    const worn = [handOut(1, 20), run(1, 1, 9), handOut(3, 9)];
    const asked = (...more: readonly Revision[]) =>
      overview(...base, ...pairs, ...worn, ...more).next.filter(
        ({ step }) => step === 'measure-on-arrival',
      );
    expect(asked()).toEqual([
      { step: 'measure-on-arrival', round: SECOND, pairs: [idOf(103), idOf(104)], count: 2 },
      { step: 'measure-on-arrival', round: FIRST, pairs: [idOf(101), idOf(102)], count: 2 },
    ]);
    const checked = (n: number) =>
      own(idOf(600 + n), 'bench-check', {
        pair: idOf(100 + n),
        at: daysAgo(3),
        distanceM: 0,
        readings: [
          { measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 36, unit: 'mm' },
        ],
      });
    expect(asked(checked(1), checked(2), checked(4))).toEqual([
      { step: 'measure-on-arrival', round: SECOND, pairs: [idOf(103)], count: 1 },
    ]);
    const withdrawn = own(idOf(401), 'stop-use', {
      pairs: [idOf(103)],
      reason: 'plate',
      from: daysAgo(1),
    });
    expect(asked(checked(1), checked(2), checked(4), withdrawn)).toEqual([]);
  });

  it('asks for hand-outs of the latest round only', () => {
    const found = overview(
      project(),
      round(FIRST, 1),
      round(SECOND, 2),
      tester(1),
      pair(1),
      pair(2, SECOND),
    );
    expect(found.next.find(({ step }) => step === 'hand-out')).toMatchObject({
      pairs: [idOf(102)],
    });
    expect(found.rounds.map(({ name }) => name)).toEqual(['R2', 'R1']);
  });

  it('puts who may be hurt first', () => {
    const found = overview(
      project(),
      round(FIRST, 1),
      tester(1),
      pair(1),
      handOut(1, 20),
      run(1, 1, 2, { pain: { score: 7, isNew: true } }),
      own(idOf(400), 'damage-report', {
        pair: idOf(101),
        tester: idOf(201),
        at: daysAgo(1),
        what: 'sole-peeling',
      }),
    );
    expect(steps(found).slice(0, 3)).toEqual([
      ['ask-about-pain', 1],
      ['look-at-damage', 1],
      ['answer-damage', 1],
    ]);
  });

  const hurt = (days: number, over: Record<string, unknown> = {}) =>
    run(1, 1, days, { pain: { score: 7, isNew: true, ...over } });
  const torn = (days: number) =>
    own(idOf(400), 'damage-report', { ...worn(1), at: daysAgo(days), what: 'sole-peeling' });
  const answered = (about: RecordId, advice: string, days: number) =>
    own(idOf(500), 'reply', { about, tester: idOf(201), at: daysAgo(days), advice });
  const urgent = (...more: readonly Revision[]) =>
    steps(overview(project(), round(FIRST, 1), tester(1), pair(1), ...more)).flatMap(
      ([step, count]) => (/pain|look-at-damage/.test(String(step)) ? [[step, count]] : []),
    );

  it('asks about pain until a lead has answered or the tester said that it is over', () => {
    const log = [handOut(1, 20), hurt(3)];
    expect(urgent(...log)).toEqual([['ask-about-pain', 1]]);
    expect(urgent(...log, answered(idOf(1001), 'stay-out', 2))).toEqual([]);
    expect(urgent(...log, answered(idOf(1001), 'go-on', 2))).toEqual([]);
    expect(urgent(handOut(1, 20), hurt(3, { over: daysAgo(1) }))).toEqual([]);
    expect(
      urgent(handOut(1, 20), hurt(3, { toldAt: daysAgo(1) }), answered(idOf(1001), 'go-on', 2)),
    ).toEqual([['ask-about-pain', 1]]);
  });

  it('looks at damage until a lead has answered', () => {
    expect(urgent(handOut(1, 20), torn(3))).toEqual([['look-at-damage', 1]]);
    expect(urgent(handOut(1, 20), torn(3), answered(idOf(400), 'stay-out', 2))).toEqual([]);
  });

  it('forgets neither while the tester still has the pair, and both when it came back long ago', () => {
    const both = [
      ['ask-about-pain', 1],
      ['look-at-damage', 1],
    ];
    expect(urgent(handOut(1, 60), hurt(40), torn(40))).toEqual(both);
    expect(urgent(handOut(1, 60, 30), hurt(40), torn(40))).toEqual([]);
    expect(urgent(handOut(1, 60, 3), hurt(9), torn(9))).toEqual(both);
  });

  it('names who holds a withdrawn pair and has not read of it, until they have', () => {
    const log = [
      project(),
      round(FIRST, 1),
      tester(1),
      pair(1),
      handOut(1, 3),
      own(idOf(401), 'stop-use', { pairs: [idOf(101)], reason: 'plate', from: daysAgo(1) }),
    ];
    expect(overview(...log).next[0]).toEqual({
      step: 'reach-about-stop-use',
      testers: [idOf(201)],
      count: 1,
    });
    const read = own(idOf(402), 'acknowledgement', {
      tester: idOf(201),
      stopUse: idOf(401),
      at: daysAgo(0.5),
    });
    expect(steps(overview(...log, read)).map(([step]) => step)).not.toContain(
      'reach-about-stop-use',
    );
  });

  it('names testers of whom nothing came, with or without a pair, until something comes', () => {
    const log = [project(), round(FIRST, 1), ...[1, 2, 3].map(tester), pair(1), handOut(1, 30)];
    const elsewhere = record(idOf(303), 'hand-out', {
      project: idOf(8),
      pair: idOf(108),
      tester: idOf(203),
      from: daysAgo(3),
      blind: true,
    });
    const found = overview(...log, elsewhere);
    expect(found.next.find(({ step }) => step === 'set-up-phones')).toEqual({
      step: 'set-up-phones',
      testers: [idOf(201), idOf(202)],
      count: 2,
    });
    expect(found.silent).toHaveLength(1);
    expect(steps(found).map(([step]) => step)).not.toContain('ask-the-silent');
    const heard = steps(overview(...log, elsewhere, run(1, 1, 12)));
    expect(heard).toContainEqual(['set-up-phones', 1]);
    expect(heard).toContainEqual(['ask-the-silent', 1]);
  });

  it('counts what nobody asked about yet, and whom', () => {
    const log = [project(), round(FIRST, 1), tester(1), pair(1), handOut(1, 21)];
    // Without a word about the feet.
    const unsaid = run(1, 1, 2, { comfort: { overall: 60 }, feet: undefined });
    const asked = record(idOf(700), 'question', {
      ...{ project: PROJECT, tester: idOf(201), at: daysAgo(1), ask: 'feet-unanswered' },
      about: { record: { id: unsaid.id, kind: 'run' } },
    });
    const stepOf = (...more: readonly Revision[]) =>
      overview(...log, unsaid, ...more).next.find(({ step }) => step === 'ask-testers');
    expect(stepOf()).toEqual({ step: 'ask-testers', testers: [idOf(201)], count: 1 });
    expect(stepOf(asked)).toBeUndefined();
  });

  it('counts odd runs of the last two weeks once each', () => {
    const base = [project(), round(FIRST, 1), tester(1), pair(1), handOut(1, 21)];
    // Two days before their hand-out was noted, and two that overlap.
    const early = run(3, 1, 22);
    const clash = [
      run(1, 1, 3, { durationS: 3600 }),
      run(2, 1, 3, { durationS: 3500, distanceM: 9000 }),
    ];
    expect(overview(...base, early, ...clash).next.at(-1)).toEqual({
      step: 'ask-about-odd-runs',
      testers: [idOf(201)],
      count: 1,
    });
    expect(steps(overview(...base, run(4, 1, 2))).map(([step]) => step)).not.toContain(
      'ask-about-odd-runs',
    );
  });

  it('puts what waits for a decision high up, and calls nobody silent whose run waits', () => {
    const base = [project(), round(FIRST, 1), tester(1), pair(1), handOut(1, 30)];
    const found = overview(...base, run(1, 1, 1, { distanceM: 300_000 }));
    expect(steps(found)[0]).toEqual(['decide-what-counts', 1]);
    expect(found.silent).toEqual([]);
    expect(steps(found).map(([step]) => step)).not.toContain('set-up-phones');
  });

  it('follows a complaint from its finding to its outcome', () => {
    const runs = [1, 2, 3, 4].flatMap((n) =>
      Array.from({ length: 10 }, (_, at) => run(100 * n + at, n, 60 - at, slip)),
    );
    const base = [
      project(),
      round(FIRST, 1),
      ...[1, 2, 3, 4].flatMap((n) => [tester(n), pair(n), handOut(n, 90, 30)]),
      ...runs,
    ];
    const first = overview(...base);
    expect(first.rounds[0]?.recurs).toEqual([{ zone: 'U9', kind: 'heel-slip' }]);
    expect(steps(first)).toContainEqual(['write-findings', 1]);
    const finding = (more: Record<string, unknown>) =>
      own(idOf(500), 'finding', {
        round: FIRST,
        title: 'Heel slips',
        part: 'upper-pattern',
        zone: 'U9',
        kind: 'heel-slip',
        priority: 'high',
        state: 'open',
        ...more,
      });
    const written = steps(overview(...base, finding({})));
    expect(written).not.toContainEqual(['write-findings', 1]);
    expect(written).toContainEqual(['assign-findings', 1]);
    // A specialist's answer waits for the lead; once it is accepted the finding waits for a round.
    const asked = finding({ state: 'asked-for' });
    const answer = own(idOf(600), 'proposal', {
      ...{ finding: idOf(500), at: daysAgo(1), answer: 'can' },
    });
    const reply = own(idOf(601), 'proposal-reply', {
      ...{ finding: idOf(500), proposal: idOf(600), judged: answer.stamp },
      ...{ at: daysAgo(0), answer: 'accepted' },
    });
    const waiting = steps(overview(...base, asked, answer));
    expect(waiting).toContainEqual(['answer-proposals', 1]);
    expect(waiting).not.toContainEqual(['assign-findings', 1]);
    const taken = steps(overview(...base, asked, answer, reply));
    expect(taken).toContainEqual(['assign-findings', 1]);
    expect(taken.map(([step]) => step)).not.toContain('answer-proposals');
    const later = [
      round(SECOND, 2),
      pair(5, SECOND),
      tester(5),
      handOut(5, 20),
      ...Array.from({ length: 8 }, (_, at) => run(900 + at, 5, 19 - at)),
    ];
    expect(steps(overview(...base, ...later, finding({ carriedBy: SECOND })))).toContainEqual([
      'judge-findings',
      1,
    ]);
    const outcome = { round: SECOND, verdict: 'better', until: daysAgo(0), lines: [] };
    expect(
      steps(overview(...base, ...later, finding({ carriedBy: SECOND, outcome }))).map(
        ([step]) => step,
      ),
    ).not.toContain('judge-findings');
  });
});

describe('who is silent', () => {
  it('is counted from the last run in the pair, or from the hand-out, and only while it is out', () => {
    const base = [project(), round(FIRST, 1)];
    const of = (n: number) => [tester(n), pair(n)];
    const found = overview(
      ...base,
      ...of(1),
      handOut(1, 30),
      run(1, 1, 12),
      ...of(2),
      handOut(2, 9),
      ...of(3),
      handOut(3, 30),
      run(2, 3, 3),
      ...of(4),
      handOut(4, 60, 30),
    );
    expect(found.silent.map(({ tester: who, days }) => [who, days])).toEqual([
      [idOf(201), 11],
      [idOf(202), 9],
    ]);
    expect(found.rounds[0]).toMatchObject({ pairs: 4, out: 3, runs: 2 });
  });
});
