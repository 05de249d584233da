/** What a tester hears of their own reports: which runs told it, which test is over, and what was read on this device. */
import { describe, expect, it } from 'vitest';
import { noteHeard, readHeard } from '../../../app/phone/heard/heard-read.ts';
import { ownTests } from '../../../app/phone/heard/own-test.ts';
import { feetTold, thanksFor } from '../../../app/phone/heard/told.ts';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';
import * as make from '../../core/review/log-for-tests.ts';
import { own, PROJECT, record } from '../../core/review/log-for-tests.ts';

const [ADA, BEN, PAIR, OTHER] = [idOf(201), idOf(202), idOf(101), idOf(77)];
const day = (n: number) => `2026-06-${String(n).padStart(2, '0')}T07:00:00+00:00`;
const NOW = Date.parse(day(30));
const felt = (foot: string, zone: string, kind = 'rubbing') => ({
  feet: { answer: 'complaints', complaints: [{ foot, zone, kind }] },
});
const run = (id: number, tester: typeof ADA, at: number, more: object = {}) =>
  make.run(idOf(id), { pair: PAIR, tester }, day(at), { ...more });
const runs = [
  run(1001, ADA, 1, felt('right', 'U8')),
  run(1002, ADA, 3, felt('right', 'U8')),
  run(1003, ADA, 5),
  run(1004, BEN, 2, felt('left', 'U8')),
];
const thanks = (id: number, more: object = {}) =>
  own(idOf(id), 'thanks', {
    ...{ tester: ADA, finding: idOf(700), at: day(20), zone: 'U8', kind: 'rubbing' },
    ...{ result: 'mended', ...more },
  });
const recordsOf = (...revisions: readonly Revision[]) => {
  const records = viewOfHeads(revisions);
  expect(records.leftOut).toEqual([]);
  return records;
};
const hand = (id: number, until: number | null, tester = ADA) =>
  make.handOut(idOf(id), { pair: PAIR, tester }, day(1), until ? { until: day(until) } : {});

describe('what a thank-you is about', () => {
  const records = recordsOf(...runs, thanks(801));
  const [one] = records.thanks;
  if (!one) throw new Error('no thanks');

  it('is found on the tester’s own runs and feet, never on another’s', () => {
    const of = (n: number) => records.run.filter(({ revision }) => revision.id === idOf(n));
    const found = (n: number) => thanksFor(records.thanks, of(n), ADA).length;
    expect([found(1001), found(1003), found(1004)]).toEqual([1, 0, 0]);
    expect(thanksFor(records.thanks, records.run, BEN)).toEqual([]);
    expect(feetTold(records.run, one.body)).toEqual(['right']);
  });

  it('is drawn on both feet where no run here says which', () => {
    expect(feetTold([], one.body)).toEqual(['left', 'right']);
    expect(feetTold(records.run, { ...one.body, zone: 'U1' })).toEqual(['left', 'right']);
  });
});

describe('a tester’s tests', () => {
  const tests = (...more: readonly Revision[]) => {
    const {
      project,
      'hand-out': handOuts,
      run: own_,
      thanks: told,
    } = recordsOf(make.project(), ...runs, ...more);
    return ownTests(ADA, { projects: project, handOuts, runs: own_, thanks: told }, NOW);
  };

  it('hold what this tester ran and found, and what came of it', () => {
    const [test] = tests(thanks(801), thanks(802, { tester: BEN, result: 'worse' }));
    expect(test?.summary).toMatchObject({ runs: 3, distanceM: 30_000 });
    expect(test?.summary.found).toEqual([
      { zone: 'U8', kind: 'rubbing', runs: 2, result: 'mended' },
    ]);
  });

  it('are over once every pair went back, whoever else still runs', () => {
    const over = (...more: readonly Revision[]) => tests(...more).map(({ isOver }) => isOver);
    expect(over(hand(301, 10))).toEqual([true]);
    expect(over(hand(301, 10), hand(302, null, BEN))).toEqual([true]);
    expect(over(hand(301, 10), hand(302, null))).toEqual([false]);
    expect(over()).toEqual([false]);
  });

  it('leave out those in which they never ran', () => {
    const other = record(OTHER, 'project', {
      ...(make.project().body as object),
      name: 'Another',
    });
    expect(tests(other).map(({ project }) => project.revision.id)).toEqual([PROJECT]);
  });
});

describe('what was read', () => {
  const device = (kept: unknown) => {
    const settings = new Map<string, unknown>([['heard', kept]]);
    return {
      setting: (key: string) => Promise.resolve(settings.get(key)),
      saveSetting: (key: string, value: unknown) => {
        settings.set(key, value);
        return Promise.resolve();
      },
    };
  };

  it('is noted once, beside what was noted before', async () => {
    const on = device(undefined);
    await noteHeard(on, 'thanks', 'a');
    await noteHeard(on, 'thanks', 'a');
    await noteHeard(on, 'tests', 'b');
    expect(await readHeard(on)).toEqual({ thanks: ['a'], tests: ['b'] });
  });

  it('begins anew where the device kept something else', async () => {
    expect(await readHeard(device({ thanks: 3 }))).toEqual({ thanks: [], tests: [] });
  });
});
