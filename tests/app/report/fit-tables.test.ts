/** Fit trials stand in tables of their own; no kilometre, complaint, verdict or other figure changes by them. */
import { describe, expect, it } from 'vitest';
import { figureTables, jsonOf, tablesOf } from '../../../app/report/tables/index.ts';
import { sealRevision, type Records, type Revision } from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { readDemo } from './demo-report.ts';

const at = '2026-11-18T10:00:00+01:00';
const SESSION = idOf(6000);

/** A session with every pair, and of each tester a trial in which everything is off, hurts and rubs. */
const fitOf = ({ project, round, pair, tester }: Records): readonly Revision[] => {
  let last = 0;
  const of = (id: Revision['id'], kind: string, body: Record<string, unknown>): Revision =>
    sealRevision(
      { id, kind, author: idOf(1), sv: 1, body: { project: project[0]?.revision.id, at, ...body } },
      stampAt(Date.UTC(2026, 10, 18) + ++last),
      null,
    );
  const pairs = pair.map(({ revision }) => revision.id);
  const trial = (n: number, who: Record<string, unknown>) =>
    of(idOf(6001 + n), 'fit-trial', {
      ...{ session: SESSION, pair: pairs[n % pairs.length], walked: 'stair', ...who },
      standing: [
        { place: 'length', fit: 'right' },
        { place: 'heel', fit: 'much', mm: 3, foot: 'left' },
      ],
      heel: [{ slip: 'slips-out' }],
      spots: [{ foot: 'left', zone: 'U10', what: 'rubs' }],
      pain: ['pain', 'numbness'],
      wanted: [
        {
          ...{ part: 'upper-pattern', line: 'back-curve', direction: 'inward' },
          by: { amount: 2, unit: 'mm' },
        },
      ],
      words: 'Heel slip and pain in the heel.',
    });
  return [
    of(SESSION, 'fit-session', {
      round: round[0]?.revision.id,
      name: 'Lab',
      pairs: pairs.slice(0, 60),
    }),
    ...tester.map(({ revision }, n) => trial(n, { tester: revision.id })),
    trial(200, { fitter: 'T01-1' }),
  ];
};

describe('a log with fit trials', () => {
  const [without, beside] = [readDemo(), readDemo(fitOf)];
  const ours = ['fit-sessions', 'fit-trials', 'fit-answers', 'fit-wanted'];

  it('has the kilometres, complaints and all other figures of the log without them', () => {
    expect(beside.log.records['fit-trial'].length).toBeGreaterThan(5);
    expect(beside.review.leftOut).toEqual(without.review.leftOut);
    expect(figureTables(beside)).toEqual(figureTables(without));
    expect(beside.review).toEqual(without.review);
    expect(beside.reports).toEqual(without.reports);
    expect(jsonOf(beside)).toBe(jsonOf(without));
    const others = (written: typeof beside) =>
      tablesOf(written).filter(({ name }) => !ours.includes(name));
    expect(others(beside)).toEqual(others(without));
  });

  it('has each of them in its table', () => {
    const rowsOf = (name: string) => tablesOf(beside).find((one) => one.name === name);
    const trials = beside.log.records['fit-trial'].length;
    for (const [name, rows] of [
      ['fit-sessions', 1],
      ['fit-trials', trials],
      ['fit-answers', 2 * trials],
      ['fit-wanted', trials],
    ] as const) {
      expect(rowsOf(name)?.rows, name).toHaveLength(rows);
      expect(tablesOf(without).find((one) => one.name === name)?.rows).toEqual([]);
    }
    const { columns = [], rows = [] } = rowsOf('fit-trials') ?? {};
    const all = rows.map((row) => Object.fromEntries(columns.map((c, n) => [c, row[n]])));
    expect(all.filter(({ fitter }) => fitter === 'T01-1')).toHaveLength(1);
    expect(all[0]).toMatchObject({ walked: 'stair', heel: 'slips-out', spots: 'left U10 rubs' });
  });
});
