/** Which of the six steps to the first run are done: from the brief alone to the first run, in any order. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { isReady, nextStep, openProject, startOf, startSteps } from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const NOW = Date.UTC(2026, 5, 30);
const AT = new Date(NOW - 86_400_000).toISOString();
const project = make.project({ distanceM: 300_000, limits: [] });
const round = make.round(idOf(2), 1, { blueprint: [] });
const pair = make.pair(idOf(3), idOf(2), '417');
const tester = record(idOf(4), 'tester', { code: 'T01' });
const plan = own(idOf(5), 'hand-out-plan', {
  at: AT,
  rounds: [idOf(2)],
  periods: 1,
  weeksPerPeriod: 3,
  from: AT,
  seed: 1,
  basis: 'best-found',
  testers: [{ tester: idOf(4) }],
  places: [{ tester: idOf(4), period: 0, pair: idOf(3), round: idOf(2) }],
});
const worn = { pair: idOf(3), tester: idOf(4) };
const handOut = make.handOut(idOf(6), worn, AT, {});
const run = make.run(idOf(7), worn, AT, { durationS: 3600, feet: { answer: 'nothing' } });

const start = (...revisions: readonly Revision[]) => {
  const log = openProject(viewOfHeads(revisions), PROJECT, NOW);
  if (!log) throw new Error('no project');
  return startOf(log);
};
const doneIn = (...revisions: readonly Revision[]) => {
  const found = start(...revisions);
  return found && startSteps.filter((step) => found.done[step]);
};
const nextIn = (...revisions: readonly Revision[]) => {
  const found = start(...revisions);
  return found && nextStep(found);
};

describe('the steps to the first run', () => {
  it('are done one after the other, and the next is the first that is not', () => {
    const kept = [project, round, pair, tester, handOut];
    const steps = ['brief', 'round', 'pairs', 'testers', 'plan'];
    kept.forEach((_, at) => {
      expect(doneIn(...kept.slice(0, at + 1))).toEqual(steps.slice(0, at + 1));
      expect(nextIn(...kept.slice(0, at + 1))).toBe([...steps, 'invites'][at + 1]);
    });
  });

  it('may be done in any order', () => {
    expect(doneIn(project, tester)).toEqual(['brief', 'testers']);
    expect(nextIn(project, tester)).toBe('round');
    expect(nextIn(project, tester, round, pair)).toBe('plan');
  });

  it('tell a plan that is drawn from one that hands out', () => {
    expect(start(project, round, pair, tester)?.drawn).toBe(false);
    expect(start(project, round, pair, tester, plan)).toMatchObject({
      drawn: true,
      done: { plan: false },
    });
    expect(start(project, round, pair, tester, plan, handOut)).toMatchObject({
      drawn: false,
      done: { plan: true, invites: false },
      counts: { rounds: 1, pairs: 1, testers: 1, handOuts: 1, unheard: 1 },
    });
  });

  it('end with invites once something came of every tester who has a pair, from another shoe say', () => {
    const other = record(idOf(8), 'run', { ...run.body, project: idOf(9), pair: idOf(10) });
    const found = start(project, round, pair, tester, handOut, other);
    expect(found).toMatchObject({ done: { invites: true }, counts: { unheard: 0 } });
    expect(found && nextStep(found)).toBeNull();
  });

  it('are over with the first run, whether or not it counts, and where the shoe is put away', () => {
    expect(start(project, round, pair, tester, handOut, run)).toBeNull();
    // In nobody's hands then, so that it waits for the lead.
    expect(start(project, round, pair, tester, run)).toBeNull();
    const away = record(PROJECT, 'project', { ...project.body, archived: AT });
    expect(start(away, round)).toBeNull();
  });

  it('can be done as soon as what they need is there', () => {
    const ready = (...revisions: readonly Revision[]) => {
      const found = start(...revisions);
      return found && startSteps.filter((step) => isReady(found, step));
    };
    expect(ready(project)).toEqual(['brief', 'round', 'testers']);
    expect(ready(project, round)).toEqual(['brief', 'round', 'pairs', 'testers']);
    expect(ready(project, round, pair)).toEqual(['brief', 'round', 'pairs', 'testers']);
    expect(ready(project, round, pair, tester)).toEqual([...startSteps]);
  });

  it('do not ask again for a step that was saved just now', () => {
    const found = start(project);
    expect(found && nextStep(found, 'round')).toBe('pairs');
    expect(found && nextStep(found, 'pairs')).toBe('round');
  });
});
