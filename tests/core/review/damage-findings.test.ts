/** Damage opens a corrective finding by itself, until a lead writes the finding that answers it. */
import { describe, expect, it } from 'vitest';
import { decisionRows } from '../../../core/headlines/index.ts';
import { readBody, viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  openDamage,
  openProject,
  overviewOf,
  reportRound,
  reviewProject,
  verdictOf,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [ROUND, PAIR, OTHER, TESTER] = [idOf(2), idOf(3), idOf(4), idOf(5)];
const NOW = Date.UTC(2026, 5, 1);

const damage = (n: number, day: number, more: object = {}) =>
  own(idOf(100 + n), 'damage-report', {
    pair: PAIR,
    tester: TESTER,
    at: `2026-05-${String(day).padStart(2, '0')}T07:00:00Z`,
    what: 'sole-peeling',
    foot: 'left',
    ...more,
  });
const finding = (of: number | null) =>
  own(idOf(200), 'finding', {
    round: ROUND,
    title: 'Sole peels off: pair 417 at 10 km',
    part: 'outsole',
    priority: 'high',
    state: 'open',
    source: 'other',
    ...(of !== null && { damage: idOf(100 + of) }),
  });

const open = (...more: readonly Revision[]) => {
  const log = openProject(
    viewOfHeads([
      make.project(),
      make.round(ROUND, 1),
      make.pair(PAIR, ROUND, '417'),
      make.pair(OTHER, ROUND, '418'),
      record(TESTER, 'tester', { code: 'T01' }),
      make.handOut(idOf(6), { pair: PAIR, tester: TESTER }, '2026-04-01T00:00:00Z'),
      make.run(idOf(7), { pair: PAIR, tester: TESTER }, '2026-05-01T07:00:00Z'),
      make.run(idOf(8), { pair: PAIR, tester: TESTER }, '2026-05-20T07:00:00Z'),
      ...more,
    ]),
    PROJECT,
    NOW,
  );
  if (!log) throw new Error('no project');
  return log;
};

describe('damage', () => {
  it('opens a finding at its first report, whatever else the log says', () => {
    expect(openDamage(open(damage(1, 10)))).toEqual([
      {
        id: idOf(101),
        reports: [idOf(101)],
        pair: PAIR,
        code: '417',
        round: ROUND,
        what: 'sole-peeling',
        foot: 'left',
        at: '2026-05-10T07:00:00Z',
        pairM: 10_000,
        part: 'outsole',
        zone: 'P9',
        photos: [],
      },
    ]);
    expect(openDamage(open())).toEqual([]);
  });

  it('of one sort and pair is one, however often it is reported; of another pair or sort it is its own', () => {
    const found = openDamage(
      open(
        damage(3, 12, { foot: 'right' }),
        damage(2, 10),
        damage(4, 11, { what: 'upper-torn' }),
        damage(5, 13, { pair: OTHER }),
      ),
    );
    expect(found.map(({ id, code, what, foot }) => [id, code, what, foot])).toEqual([
      [idOf(102), '417', 'sole-peeling', null],
      [idOf(104), '417', 'upper-torn', 'left'],
      [idOf(105), '418', 'sole-peeling', 'left'],
    ]);
    expect(found[0]?.reports).toEqual([idOf(102), idOf(103)]);
  });

  it('is answered by a finding that names any of its reports, and by no other', () => {
    const twice = [damage(1, 10), damage(2, 12)];
    expect(openDamage(open(...twice, finding(2)))).toEqual([]);
    expect(openDamage(open(...twice, finding(null)))).toHaveLength(1);
    expect(readBody('finding', finding(1).body).ok).toBe(true);
  });

  it('stands among the first things to do until then, though the pair is stopped and the tester answered', () => {
    const stop = own(idOf(300), 'stop-use', {
      pairs: [PAIR],
      reason: 'x',
      from: '2026-05-11T00:00:00Z',
    });
    const steps = (...more: readonly Revision[]) => {
      const log = open(damage(1, 10), stop, ...more);
      const review = reviewProject(log);
      return overviewOf(
        log,
        review,
        review.rounds.map((round) => verdictOf(log, round)),
      ).next;
    };
    expect(steps()[0]).toEqual({ step: 'answer-damage', damages: [idOf(101)], count: 1 });
    expect(steps(finding(1)).some(({ step }) => step === 'answer-damage')).toBe(false);
  });

  it('and the finding that answers it are one row of the report', () => {
    const log = open(damage(1, 10), finding(1));
    const report = reportRound(log, reviewProject(log), ROUND);
    if (!report) throw new Error('no report');
    const rows = decisionRows(report);
    expect(rows.map(({ callout, finding: own }) => [callout?.what, own?.id])).toEqual([
      ['damage', idOf(200)],
    ]);
  });
});
