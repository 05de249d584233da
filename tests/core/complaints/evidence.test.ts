import { describe, expect, it } from 'vitest';
import { weighComplaints, type FeetAnswer } from '../../../core/complaints/index.ts';
import { countComplaints } from './count-complaints.ts';
import type { Complaint } from '../../../core/records/index.ts';
import { wilson } from '../../../core/statistics/index.ts';
import { idOf } from '../records/make.ts';

const ALLOWED = { complaint: 0.05, pain: 0.01 };
const slip: Complaint = { foot: 'left', zone: 'U10', kind: 'heel-slip' };
const pain: Complaint = { foot: 'left', zone: 'P8', kind: 'pain' };

/** Testers × runs; the tester reports the complaint in so many of the first runs. */
const panel = (reported: readonly number[], runs: number, complaint = slip): FeetAnswer[] =>
  reported.flatMap((count, tester) =>
    Array.from({ length: runs }, (_, run) => ({
      run: idOf(1000 * (tester + 1) + run),
      tester: idOf(100 + tester),
      complaints: run < count ? [complaint] : [],
    })),
  );
const wordOf = (answers: readonly FeetAnswer[]) => weighComplaints(answers, ALLOWED).cells[0]?.word;

describe('the words of the evidence', () => {
  it.each([
    ['recurs-across-testers', [6, 6, 5, 5, 0, 0, 0, 0]],
    ['recurs-for-one-tester', [10, 0, 0, 0, 0, 0, 0, 0]],
    ['recurs-for-one-tester', [12, 1, 1, 0, 0, 0, 0, 0]],
    ['early-sign', [2, 2, 0, 0, 0, 0, 0, 0]],
    ['early-sign', [1, 1, 0, 0, 0, 0, 0, 0]],
    ['seen-once', [1, 0, 0, 0, 0, 0, 0, 0]],
  ] as const)('%s: %j of 12 runs each', (word, reported) => {
    expect(wordOf(panel(reported, 12))).toBe(word);
  });

  it('names who it recurs for, strongest first', () => {
    const { cells } = weighComplaints(panel([9, 11, 0, 0], 12), ALLOWED);
    expect(cells[0]?.provenTesters.map(({ tester }) => tester)).toEqual([idOf(101), idOf(100)]);
  });

  it('holds pain against its own, lower rate', () => {
    const reported = [4, 4, 3, 0, 0, 0, 0, 0];
    expect(wordOf(panel(reported, 12))).toBe('early-sign');
    expect(wordOf(panel(reported, 12, pain))).toBe('recurs-across-testers');
  });

  it('tells "not seen" from "too few runs to say", and from nobody asked', () => {
    const unreported = (answers: readonly FeetAnswer[]) =>
      weighComplaints(answers, ALLOWED).unreported;
    expect(unreported(panel([0, 0, 0, 0], 12)).complaint).toEqual({
      word: 'not-seen',
      testersUpTo: wilson(0, 4).upper,
      silenceChance: expect.closeTo(0.8 ** 24, 9) as number,
    });
    // With 4 of 8 prone at 20 %, two silent runs of each come in 17 % of tests, four of each in 3 %.
    const two = unreported(panel([0, 0, 0, 0, 0, 0, 0, 0], 2)).complaint;
    expect(two.word).toBe('too-few-runs');
    expect(two.silenceChance).toBeCloseTo(0.168, 3);
    expect(unreported(panel([0, 0, 0, 0, 0, 0, 0, 0], 4)).complaint.word).toBe('not-seen');
    expect(unreported(panel([0, 0], 2)).complaint.word).toBe('too-few-runs');
    expect(unreported([])).toMatchObject({ complaint: { word: 'too-few-runs', testersUpTo: 1 } });
  });

  it('gives the counts of the count, shares with intervals, and the same in any order', () => {
    const answers = panel([6, 6, 5, 5, 1, 0, 0, 0], 12);
    const weighed = weighComplaints(answers, ALLOWED);
    const [cell] = weighed.cells;
    expect(weighed.asked).toEqual({ runs: 96, testers: 8 });
    expect(cell).toMatchObject(countComplaints(answers).cells[0] ?? {});
    expect(weighComplaints([...answers].reverse(), ALLOWED)).toEqual(weighed);
    expect(cell?.shareOnce).toEqual(wilson(5, 8));
    expect(cell?.shareTwice).toEqual(wilson(4, 8));
    const naive = wilson(23, 96);
    expect(cell?.runShare.share).toBeCloseTo(23 / 96, 12);
    expect(cell?.runShare.lower).toBeLessThan(naive.lower);
    expect(cell?.runShare.upper).toBeGreaterThan(naive.upper);
    expect(JSON.stringify(weighed)).not.toContain('null,null');
  });

  it('counts those who have a pair and were not yet asked to the panel', () => {
    const answers = panel([6, 6, 5, 5], 12);
    const alone = weighComplaints(answers, ALLOWED).cells[0]?.eValue ?? 0;
    const waiting = [idOf(100), idOf(200), idOf(201)];
    const wider = weighComplaints(answers, ALLOWED, waiting);
    expect(wider.cells[0]?.eValue).toBeLessThan(alone);
    expect(wider.asked.testers).toBe(4);
  });

  it('asks more of a cell where the kind cannot sensibly be felt', () => {
    const odd: Complaint = { foot: 'left', zone: 'P3', kind: 'lace-bite' };
    const needed = (complaint: Complaint) =>
      weighComplaints(panel([3, 3], 12, complaint), ALLOWED).cells[0]?.needed ?? 0;
    expect(needed(odd)).toBeGreaterThan(5 * needed(slip));
    expect(needed(slip)).toBeCloseTo(2420 / 0.95, 6);
  });
});
