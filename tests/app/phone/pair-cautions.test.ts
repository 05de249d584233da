import { describe, expect, it } from 'vitest';
import { shownCautions } from '../../../app/phone/pair-cautions.ts';
import { isAnswered, isOff, type PairCautions } from '../../../app/phone/pair-off.ts';
import { standingReplies, viewOfHeads, type Revision } from '../../../core/records/index.ts';
import * as make from '../../core/review/log-for-tests.ts';
import { own } from '../../core/review/log-for-tests.ts';
import { idOf } from '../../core/records/make.ts';

const of = { pair: idOf(3), tester: idOf(4) };
const at = (day: number) => `2026-05-${String(day).padStart(2, '0')}T07:00:00Z`;
const run = (n: number, day: number, score?: number, more: Record<string, unknown> = {}) =>
  make.run(idOf(n), of, at(day), score === undefined ? {} : { pain: { score, ...more } });
const torn = (n: number, day: number) =>
  own(idOf(n), 'damage-report', { ...of, at: at(day), what: 'upper-torn' });
const reply = (n: number, about: number, day: number, advice: string) =>
  own(idOf(n), 'reply', { tester: of.tester, about: idOf(about), at: at(day), advice });

const told = (...heads: Revision[]): PairCautions => {
  const view = viewOfHeads(heads);
  return {
    runs: view.run,
    reports: view['damage-report'],
    replies: standingReplies(view.reply),
  };
};
const shown = (...heads: Revision[]) => {
  const { pains, damages, goOn } = shownCautions(told(...heads));
  const ids = (list: readonly { revision: Revision }[]) => list.map(({ revision }) => revision.id);
  return { pains: ids(pains), damages: ids(damages), goOn: goOn?.body.about ?? null };
};
const nothing = { pains: [], damages: [], goOn: null };

describe('what keeps a tester out of a pair', () => {
  it('is nothing in a pair of which neither pain nor damage was told', () => {
    expect(isOff(told(run(10, 1), run(11, 2, 2)))).toBe(false);
    expect(shown(run(10, 1))).toEqual(nothing);
    expect(shown()).toEqual(nothing);
  });

  it('is pain and damage, the latest first', () => {
    const log = [run(10, 1, 4), run(11, 3, 6), run(12, 2, 5), torn(20, 1), torn(21, 4)];
    expect(isOff(told(...log))).toBe(true);
    expect(shown(...log)).toEqual({
      pains: [idOf(11), idOf(12), idOf(10)],
      damages: [idOf(21), idOf(20)],
      goOn: null,
    });
  });

  it('stays although later runs were without pain', () => {
    expect(isOff(told(run(10, 1, 4), run(11, 2, 0), run(12, 3)))).toBe(true);
  });

  it('ends with the word of the tester or of the lead', () => {
    expect(isOff(told(run(10, 1, 4, { over: at(2) })))).toBe(false);
    expect(isOff(told(run(10, 1, 4), reply(30, 10, 2, 'go-on')))).toBe(false);
    expect(isOff(told(run(10, 1, 4), reply(30, 10, 2, 'stay-out')))).toBe(true);
    expect(isOff(told(torn(20, 1), reply(30, 20, 2, 'go-on')))).toBe(false);
  });
});

describe('a lead’s “go on”', () => {
  it('is shown until a run was begun since', () => {
    const log = [run(10, 1, 4), reply(30, 10, 3, 'go-on')];
    expect(isAnswered(told(...log))).toBe(true);
    expect(shown(...log)).toEqual({ ...nothing, goOn: idOf(10) });
    expect(shown(...log, run(11, 2))).toEqual({ ...nothing, goOn: idOf(10) });
    expect(shown(...log, run(11, 4))).toEqual(nothing);
  });

  it('is not shown while something else keeps the pair from being worn', () => {
    expect(shown(run(10, 1, 4), torn(20, 1), reply(30, 10, 3, 'go-on'))).toEqual({
      pains: [],
      damages: [idOf(20)],
      goOn: null,
    });
  });
});
