/** Each kind of reading takes the gauge that read it last, in the round before anywhere else. */
import { describe, expect, it } from 'vitest';
import { gaugesOf, kindsOf, lastGauges } from '../../../app/drafts/check-gauges.ts';
import type { BenchCheck } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const height = { measure: 'stack-height', site: 'heel-centre', foot: 'left', unit: 'mm' } as const;
const hard = { ...height, measure: 'hardness', unit: 'asker-c' } as const;
const shore = { ...hard, unit: 'shore-a' } as const;
const by = (author: number, body: Pick<BenchCheck, 'pair' | 'at' | 'readings'>) => ({
  body,
  revision: { author: idOf(author) },
});
const check = (
  pair: number,
  day: number,
  ...readings: readonly (Pick<BenchCheck['readings'][number], 'measure' | 'unit'> & {
    readonly gauge?: string;
  })[]
) =>
  by(9, {
    pair: idOf(pair),
    at: `2026-09-0${day}T10:00:00Z`,
    readings: readings.map((one) => ({ ...height, value: 30, ...one })),
  });

describe('the gauge of a kind of reading', () => {
  const log = [
    check(1, 3, { ...height, gauge: 'calliper C1' }, { ...hard, gauge: 'durometer A1' }),
    check(1, 2, { ...height, gauge: 'calliper C0' }),
    check(2, 5, { ...height, gauge: 'calliper C2' }, { ...shore, gauge: 'durometer S1' }),
    check(2, 6, height),
  ];

  it('is the last one of the round, else the last of the project', () => {
    expect(lastGauges(log, new Set([idOf(1)]))).toEqual({
      'stack-height mm': 'calliper C1',
      'hardness asker-c': 'durometer A1',
      'hardness shore-a': 'durometer S1',
    });
    expect(lastGauges(log, new Set())['stack-height mm']).toBe('calliper C2');
    expect(lastGauges([], new Set())).toEqual({});
  });

  it('is the one that the same person took, whatever others took since', () => {
    const mine = by(8, {
      pair: idOf(2),
      at: '2026-09-01T10:00:00Z',
      readings: [{ ...height, value: 30, gauge: 'my own' }],
    });
    const ofRound = new Set([idOf(1)]);
    expect(lastGauges([mine, ...log], ofRound, idOf(8))).toMatchObject({
      'stack-height mm': 'my own',
      'hardness asker-c': 'durometer A1',
    });
    expect(lastGauges([mine, ...log], ofRound, idOf(7))['stack-height mm']).toBe('calliper C1');
    expect(lastGauges([mine, ...log], ofRound)['stack-height mm']).toBe('calliper C1');
  });

  it('is what all readings of the kind in one check share', () => {
    expect(
      gaugesOf([
        { ...height, gauge: 'C1' },
        { ...height, gauge: 'C1' },
        { ...hard, gauge: 'A1' },
        { ...hard, gauge: 'A2' },
        { ...hard, gauge: 'A1' },
        shore,
      ]),
    ).toEqual({ 'stack-height mm': 'C1', 'hardness asker-c': '', 'hardness shore-a': '' });
  });

  it('is asked once for each kind in the form', () => {
    expect(kindsOf([height, hard, height, shore])).toEqual([
      { measure: 'stack-height', unit: 'mm' },
      { measure: 'hardness', unit: 'asker-c' },
      { measure: 'hardness', unit: 'shore-a' },
    ]);
  });
});
