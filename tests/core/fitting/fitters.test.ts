/** Who tried what on, which trial speaks for a person, and what most agree on. */
import { describe, expect, it } from 'vitest';
import {
  agreementOf,
  answerOf,
  fittedSizes,
  fittersIn,
  heelCounts,
  nextFitterCode,
  sizesTried,
  slipOf,
  usualMove,
} from '../../../core/fitting/index.ts';
import { fitPlaces } from '../../../core/foot/index.ts';
import { changeRangeOf, readBody, type RecordOf } from '../../../core/records/index.ts';
import { fitSteps } from '../../../core/fitting/index.ts';
import { idOf } from '../records/make.ts';
import { heelCurve, says, trial } from './made.ts';

const pair = (n: number, sizeMm: number) =>
  ({ revision: { id: idOf(n) }, body: { code: String(n), sizeMm } }) as RecordOf<'pair'>;
const pairs = [pair(60, 265), pair(61, 270), pair(62, 275)];

describe('an answer of a person', () => {
  const apart = trial(11, [says('heel', 'much', 2), says('heel', 'much', 4, 'left')]).body;

  it('is of one foot what was said of both, unless that foot was set apart', () => {
    expect(answerOf(apart, 'heel', 'left')).toEqual({ fit: 'much', mm: 4 });
    expect(answerOf(apart, 'heel', 'right')).toEqual({ fit: 'much', mm: 2 });
    expect(answerOf(apart, 'ball', 'left')).toBeNull();
  });

  it('is of both feet the one that is further from right', () => {
    expect(answerOf(apart, 'heel', 'both')).toEqual({ fit: 'much', mm: 4 });
    const one = trial(11, [
      says('heel', 'right', undefined, 'left'),
      says('heel', 'much', 1, 'right'),
    ]);
    expect(answerOf(one.body, 'heel', 'both')).toEqual({ fit: 'much', mm: 1 });
  });

  it('of what is right holds no millimetres', () => {
    expect(answerOf(trial(11, [says('ball', 'right', 3)]).body, 'ball', 'both')).toEqual({
      fit: 'right',
      mm: null,
    });
  });

  it('of the heel is the foot that held less, or the one that is looked at', () => {
    const body = trial(11, [], {
      heel: [{ slip: 'stays' }, { slip: 'slips-out', foot: 'right' }],
    }).body;
    expect(slipOf(body, 'both')).toBe('slips-out');
    expect(slipOf(body, 'right')).toBe('slips-out');
    expect(slipOf(body, 'left')).toBe('stays');
    expect(slipOf(trial(11, []).body, 'both')).toBeNull();
  });
});

describe('a person with several trials', () => {
  it('speaks by the pair whose length is right, then by the one with the fewest places off', () => {
    const short = trial(11, [says('length', 'little', 8)], { pair: idOf(60) });
    const right = trial(11, [says('length', 'right'), says('heel', 'much', 2)], { pair: idOf(61) });
    const [one] = fittersIn([right, short]);
    expect(one?.best).toBe(right);
    expect(one?.trials).toHaveLength(2);
  });

  it('counts once in a pair, by what they said last', () => {
    const first = trial(11, [says('heel', 'much', 5)]);
    const again = trial(11, [says('heel', 'right')]);
    const people = fittersIn([again, first]);
    expect(people).toHaveLength(1);
    expect(people[0]?.trials).toEqual([again]);
  });

  it('is one by their code, apart from members and from other codes; codes come last', () => {
    const people = fittersIn([
      trial('T01-2', []),
      trial('T01-1', []),
      trial(11, []),
      trial(12, []),
    ]);
    expect(people.map(({ code }) => code)).toEqual([null, null, 'T01-1', 'T01-2']);
    expect(people.map(({ tester }) => tester)).toEqual([idOf(11), idOf(12), null, null]);
  });
});

describe('codes of people without a membership', () => {
  it('begin with the phone they are written on, so that two phones without a network differ', () => {
    expect(nextFitterCode([], 'T01')).toBe('T01-1');
    expect(nextFitterCode([trial('T01-1', []), trial('T02-1', [])], 'T01')).toBe('T01-2');
    expect(nextFitterCode([], 'LONG-CODE-12')).toBe('LONG-CODE-1');
  });
});

describe('what most agree on', () => {
  const heel = (who: number | string, fit: 'little' | 'right' | 'much', mm?: number) =>
    trial(who, [says('heel', fit, mm)]);
  const word = (...trials: ReturnType<typeof trial>[]) =>
    agreementOf(fittersIn(trials), 'both').find(({ place }) => place === 'heel');

  it('is more than half of those who answered, with the middle of their estimates', () => {
    const six = [
      ...[heel(11, 'much', 2), heel(12, 'much', 3), heel(13, 'much', 1), heel(14, 'much')],
      ...[heel(15, 'right'), heel('T01-1', 'little', 1)],
    ];
    expect(word(...six)).toMatchObject({
      word: 'much',
      answered: 6,
      mm: { much: { median: 2, least: 1, most: 3, people: 3 }, little: { median: 1 } },
    });
    expect(word(...six)?.said.much).toHaveLength(4);
  });

  it('is nothing with half, and nothing with fewer than three', () => {
    expect(
      word(heel(11, 'much'), heel(12, 'much'), heel(13, 'right'), heel(14, 'right'))?.word,
    ).toBe('divided');
    expect(word(heel(11, 'much'), heel(12, 'much'))?.word).toBe('too-few');
    expect(word()).toMatchObject({ word: 'too-few', answered: 0 });
  });

  it('leaves out who did not answer', () => {
    const answered = [heel(11, 'right'), heel(12, 'right'), heel(13, 'right')];
    expect(word(...answered, trial(14, []))).toMatchObject({ word: 'right', answered: 3 });
  });

  it('counts heels that lift and that slip out', () => {
    const walked = (who: number, slip: 'stays' | 'lifts' | 'slips-out') =>
      trial(who, [], { heel: [{ slip }] });
    const people = fittersIn([walked(11, 'lifts'), walked(12, 'lifts'), walked(13, 'slips-out')]);
    expect(heelCounts(people, 'both')).toEqual({ answered: 3, stays: 0, lifts: 2, slipsOut: 1 });
  });
});

describe('who fits which size', () => {
  const length = (who: number, n: number, fit: 'little' | 'right' | 'much') =>
    trial(who, [says('length', fit)], { pair: idOf(n) });
  const trials = [length(11, 60, 'little'), length(11, 61, 'right'), length(12, 61, 'much')];

  it('is said of each size that was tried on, the smallest first', () => {
    expect(sizesTried(fittersIn(trials), pairs)).toEqual([
      { sizeMm: 265, short: [idOf(11)], right: [], long: [] },
      { sizeMm: 270, short: [], right: [idOf(11)], long: [idOf(12)] },
    ]);
  });

  it('gives hand-outs the size that was right, and forgets it where it is off later', () => {
    expect([...fittedSizes(trials, pairs)]).toEqual([[idOf(11), 270]]);
    expect(fittedSizes([...trials, length(11, 61, 'little')], pairs).size).toBe(0);
    expect([...fittedSizes([...trials, length(11, 62, 'right')], pairs)]).toEqual([
      [idOf(11), 275],
    ]);
  });

  it('knows nothing of people without a membership, and of pairs that are gone', () => {
    expect(fittedSizes([trial('T01-1', [says('length', 'right')])], pairs).size).toBe(0);
    expect(fittedSizes([length(11, 77, 'right')], pairs).size).toBe(0);
  });
});

describe('what is usually moved', () => {
  it('is a change that a record can hold, for each place, side and step', () => {
    for (const place of fitPlaces)
      for (const fit of ['little', 'much'] as const)
        for (const mm of [null, ...fitSteps[place]]) {
          const move = usualMove(place, fit, mm, 'left');
          const body = trial(11, [], { wanted: [move] }).body;
          expect(readBody('fit-trial', body).ok, place).toBe(true);
          expect(mm ?? 1).toBeGreaterThanOrEqual(changeRangeOf('mm').least);
        }
    expect(usualMove('heel', 'much', 2, null)).toEqual(heelCurve('inward', 2));
    const [little, much] = (['little', 'much'] as const).map((fit) =>
      usualMove('ball', fit, 2, null),
    );
    expect([little?.direction, much?.direction]).toEqual(['more', 'less']);
  });
});
