/** Whom a lead owes a word of what came of their complaint, when it must wait, and whose turn a finding is in a log. */
import { describe, expect, it } from 'vitest';
import {
  readBody,
  viewOfHeads,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import {
  findingTurns,
  lookAtThanks,
  openProject,
  overviewOf,
  reviewProject,
  thanksDue,
  thanksOf,
} from '../../../core/review/index.ts';
import { idOf, stampAt } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [FIRST, SECOND, FINDING] = [idOf(2), idOf(3), idOf(700)];
const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 30);
const daysAgo = (days: number) => new Date(NOW - days * DAY_MS).toISOString();
const [ADA, BEN, CY] = [idOf(201), idOf(202), idOf(203)];
const rub = {
  feet: { answer: 'complaints', complaints: [{ foot: 'left', zone: 'U8', kind: 'rubbing' }] },
};
const collar = { part: 'upper-pattern', line: 'collar', direction: 'lower' };
const testers = [ADA, BEN, CY].map((id, at) => record(id, 'tester', { code: `T0${at + 1}` }));
const pairs = [
  make.pair(idOf(101), FIRST, '101'),
  make.pair(idOf(102), FIRST, '102'),
  make.pair(idOf(111), SECOND, '111'),
];
/** Ada felt it twice and Ben once, in round 1; Cy felt something else. */
const runs = [
  make.run(idOf(1001), { pair: idOf(101), tester: ADA }, daysAgo(50), rub),
  make.run(idOf(1002), { pair: idOf(101), tester: ADA }, daysAgo(49), rub),
  make.run(idOf(1003), { pair: idOf(102), tester: BEN }, daysAgo(48), rub),
  make.run(idOf(1004), { pair: idOf(102), tester: CY }, daysAgo(20), {
    feet: { answer: 'complaints', complaints: [{ foot: 'left', zone: 'U3', kind: 'rubbing' }] },
  }),
];
const hands = [
  make.handOut(idOf(301), { pair: idOf(101), tester: ADA }, daysAgo(60), { until: daysAgo(40) }),
  make.handOut(idOf(302), { pair: idOf(102), tester: BEN }, daysAgo(60), { until: daysAgo(40) }),
  make.handOut(idOf(303), { pair: idOf(102), tester: CY }, daysAgo(30), { until: daysAgo(10) }),
];
const finding = (more: Record<string, unknown> = {}) =>
  own(FINDING, 'finding', {
    ...{ round: FIRST, title: 'The collar rubs', part: 'upper-pattern', priority: 'high' },
    ...{ kind: 'rubbing', zone: 'U8', state: 'asked-for', carriedBy: SECOND, ...more },
  });
const outcome = (verdict: string) => ({
  outcome: { round: SECOND, verdict, until: daysAgo(1), lines: [] },
});
const base = [
  make.project(),
  make.round(FIRST, 1),
  make.round(SECOND, 2),
  ...testers,
  ...pairs,
  ...runs,
];
const opened = (...revisions: readonly Revision[]) => {
  const records = viewOfHeads(revisions);
  expect(records.leftOut).toEqual([]);
  const log = openProject(records, PROJECT, NOW);
  if (!log) throw new Error('no project');
  return log;
};
const due = (...more: readonly Revision[]) => thanksDue(opened(...base, ...more));

describe('thanks', () => {
  it('are due to who reported it in the finding’s round, who felt it most first', () => {
    expect(due(...hands, finding())).toEqual([
      {
        ...{ tester: ADA, finding: FINDING, result: 'carried', zone: 'U8', kind: 'rubbing' },
        ...{ runs: 2, change: null, withheld: null },
      },
      expect.objectContaining({ tester: BEN, runs: 1, withheld: null }),
    ]);
  });

  it('are due once a round carries it, and again when it is judged; not before, and not for "too little"', () => {
    const results = (more: Record<string, unknown>) =>
      due(...hands, finding(more)).map(({ result }) => result);
    expect(results({ carriedBy: undefined })).toEqual([]);
    expect(results({})).toEqual(['carried', 'carried']);
    expect(results(outcome('mended'))).toEqual(['mended', 'mended']);
    expect(results(outcome('worse'))).toEqual(['worse', 'worse']);
    expect(results(outcome('too-little'))).toEqual(['carried', 'carried']);
    // No complaint, nobody to thank.
    expect(results({ kind: undefined })).toEqual([]);
  });

  it('are sent once for each step', () => {
    const sent = (result: string) =>
      own(idOf(800), 'thanks', { tester: ADA, finding: FINDING, at: daysAgo(1), result });
    const to = (...more: readonly Revision[]) => due(...hands, ...more).map(({ tester }) => tester);
    expect(to(finding(), sent('carried'))).toEqual([BEN]);
    expect(to(finding(outcome('mended')), sent('carried'))).toEqual([ADA, BEN]);
    expect(to(finding(outcome('mended')), sent('mended'))).toEqual([BEN]);
  });

  it('wait while a blind hand-out of the project is open or noted ahead for that tester', () => {
    const hold = (from: number, until: number | null, more: Record<string, unknown> = {}) =>
      make.handOut(idOf(310), { pair: idOf(111), tester: ADA }, daysAgo(from), {
        ...(until !== null && { until: daysAgo(until) }),
        ...more,
      });
    const withheld = (...more: readonly Revision[]) =>
      due(...hands, finding(), ...more).map((one) => one.withheld);
    expect(withheld(hold(5, null))).toEqual([{ why: 'blind-open', untilMs: null }, null]);
    expect(withheld(hold(5, -5))).toEqual([{ why: 'blind-open', untilMs: NOW + 5 * DAY_MS }, null]);
    expect(withheld(hold(-2, null))).toEqual([{ why: 'blind-planned', untilMs: null }, null]);
    expect(withheld(hold(5, null, { blind: false }))).toEqual([null, null]);
    expect(withheld(hold(9, 2))).toEqual([null, null]);
    // Of another shoe: it tells nothing of this one.
    const elsewhere = record(idOf(310), 'hand-out', {
      ...{ project: idOf(77), pair: idOf(78), tester: ADA, from: daysAgo(5), blind: true },
    });
    expect(withheld(elsewhere)).toEqual([null, null]);
  });

  it('wait while the plan that holds has a pair for that tester', () => {
    const plan = (id: number, at: number, from: number, more: Record<string, unknown> = {}) =>
      own(idOf(id), 'hand-out-plan', {
        ...{ at: daysAgo(at), seed: 1, rounds: [SECOND], basis: 'best-found', periods: 1 },
        ...{ from: daysAgo(from), weeksPerPeriod: 1, testers: [{ tester: ADA }] },
        places: [{ tester: ADA, period: 0, pair: idOf(111), round: SECOND }],
        ...more,
      });
    const withheld = (...more: readonly Revision[]) =>
      due(...hands, finding(), ...more).map((one) => one.withheld);
    expect(withheld(plan(900, 9, -3))).toEqual([
      { why: 'blind-planned', untilMs: NOW + 10 * DAY_MS },
      null,
    ]);
    expect(withheld(plan(900, 60, 30))).toEqual([null, null]);
    expect(withheld(plan(900, 9, -3), plan(901, 2, -3, { places: [] }))).toEqual([null, null]);
    const out = { testers: [{ tester: ADA, droppedOutAt: 0 }] };
    expect(withheld(plan(900, 9, -3, out))).toEqual([null, null]);
  });

  it('say what the round carries where that is structured, if the lead tells it', () => {
    const carrying = make.round(SECOND, 2, {
      changes: [{ part: 'upper-pattern', what: 'Collar', structured: collar, finding: FINDING }],
    });
    const [one] = thanksDue(
      opened(...base.filter(({ id }) => id !== SECOND), carrying, ...hands, finding()),
    );
    if (!one) throw new Error('none due');
    expect(one.change).toEqual(collar);
    const at = daysAgo(0);
    const told = thanksOf(one, { project: PROJECT, at, tellChange: true });
    expect(told).toMatchObject({ tester: ADA, result: 'carried', change: collar });
    expect(readBody('thanks', told)).toMatchObject({ ok: true });
    const plain = thanksOf(one, { project: PROJECT, at, tellChange: false });
    expect(plain).not.toHaveProperty('change');
    expect(plain.runs).toBe(2);
    // Neither another tester nor a maker is in it, whoever they are.
    for (const other of [BEN, CY, idOf(9)]) expect(JSON.stringify(told)).not.toContain(other);
  });
});

describe('what the lead is offered', () => {
  const wears = (tester: RecordId) =>
    make.handOut(idOf(310), { pair: idOf(111), tester }, daysAgo(5));

  it('is nothing where the brief says that testers are not told; the finding’s page still knows whom', () => {
    const quiet = opened(
      ...base.filter(({ id }) => id !== PROJECT),
      make.project({ tellTesters: false }),
      ...hands,
      finding(),
    );
    expect(thanksDue(quiet)).toEqual([]);
    expect(lookAtThanks(quiet, FINDING)).toMatchObject({ allowed: false });
    expect(lookAtThanks(quiet, FINDING)?.due).toHaveLength(2);
    expect(lookAtThanks(quiet, idOf(999))).toBeNull();
  });

  it('says how many still wear the shoe blind, whoever is thanked, and what the later rounds changed', () => {
    const carrying = make.round(SECOND, 2, {
      changes: [{ part: 'upper-pattern', what: 'Collar' }],
    });
    const rest = base.filter(({ id }) => id !== SECOND);
    // Cy reported nothing of it and is owed nothing, but may hear it from Ada.
    const look = lookAtThanks(opened(...rest, carrying, ...hands, finding(), wears(CY)), FINDING);
    expect(look).toMatchObject({ allowed: true, blind: 1 });
    expect(look?.due.map(({ withheld }) => withheld)).toEqual([null, null]);
    expect(look?.changes.map(({ what }) => what)).toEqual(['Collar']);
  });

  it('is a step of the sheet: testers who can be told now, each once', () => {
    const stepOf = (...more: readonly Revision[]) => {
      const log = opened(...base, ...hands, finding(), ...more);
      return overviewOf(log, reviewProject(log), []).next.find(
        ({ step }) => step === 'thank-testers',
      );
    };
    expect(stepOf()).toEqual({ step: 'thank-testers', findings: [FINDING], count: 2 });
    expect(stepOf(wears(ADA))).toMatchObject({ count: 1 });
    const sent = [ADA, BEN].map((tester, at) =>
      own(idOf(800 + at), 'thanks', {
        ...{ tester, finding: FINDING, at: daysAgo(1), result: 'carried' },
      }),
    );
    expect(stepOf(...sent)).toBeUndefined();
  });
});

describe('whose turn a finding is, in a log', () => {
  it('follows proposals, the round that carries it, and the runs in that', () => {
    const turnsOf = (...more: readonly Revision[]) => {
      const turn = findingTurns(opened(...base, ...more)).get(FINDING);
      return turn && [turn.who, turn.for];
    };
    const asked = finding({ carriedBy: undefined, asked: daysAgo(9) });
    expect(turnsOf(asked)).toEqual(['trade', 'answer']);
    const proposal = own(idOf(750), 'proposal', {
      ...{ finding: FINDING, at: daysAgo(5), answer: 'can' },
    });
    expect(turnsOf(asked, proposal)).toEqual(['lead', 'decide']);
    const reply = own(idOf(751), 'proposal-reply', {
      ...{ finding: FINDING, proposal: idOf(750), judged: stampAt(1), at: daysAgo(4) },
      answer: 'accepted',
    });
    expect(turnsOf(asked, proposal, reply)).toEqual(['lead', 'assign']);
    const carried = [finding(), proposal, reply];
    expect(turnsOf(...carried)).toEqual(['trade', 'build']);
    const out = make.handOut(idOf(311), { pair: idOf(111), tester: ADA }, daysAgo(8));
    expect(turnsOf(...carried, out)).toEqual(['tester', 'wear']);
    const asIn = (n: number, feet: boolean) =>
      Array.from({ length: n }, (_, at) =>
        make.run(idOf(1100 + at), { pair: idOf(111), tester: ADA }, daysAgo(7 - at / 2), {
          ...(feet && { feet: { answer: 'nothing' } }),
        }),
      );
    expect(turnsOf(...carried, out, ...asIn(7, true))).toEqual(['tester', 'wear']);
    expect(turnsOf(...carried, out, ...asIn(9, false))).toEqual(['tester', 'wear']);
    expect(turnsOf(...carried, out, ...asIn(8, true))).toEqual(['lead', 'judge']);
    expect(turnsOf(finding({ state: 'closed' }))).toBeUndefined();
  });
});
