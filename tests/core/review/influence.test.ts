/** Which single tester or pair alone decides a verdict? */
import { describe, expect, it } from 'vitest';
import { influenceLines } from '../../../app/words/say-waiting.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import type { Speaker } from '../../../app/words/say-complaint.ts';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  influences,
  openProject,
  reviewProject,
  verdictOf,
  type RoundInfluence,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const DAYS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const pairId = (n: number) => idOf(10 + n);
const testerId = (n: number) => idOf(30 + n);

const log = (pairs: number, slipping: readonly number[], more: readonly Revision[] = []) => {
  const all = Array.from({ length: pairs }, (_, n) => n);
  const opened = openProject(
    viewOfHeads([
      make.project(),
      make.round(ROUND, 1),
      ...all.flatMap((n) => [
        make.pair(pairId(n), ROUND, `63${n}`),
        record(testerId(n), 'tester', { code: `T0${n}` }),
        make.handOut(
          idOf(100 + n),
          { pair: pairId(n), tester: testerId(n) },
          '2026-05-01T00:00:00Z',
        ),
        ...DAYS.map((day) =>
          make.run(
            idOf(1000 + 20 * n + day),
            { pair: pairId(n), tester: testerId(n) },
            `2026-05-${String(day + 1).padStart(2, '0')}T07:00:00Z`,
            {
              feet: slipping.includes(n)
                ? {
                    answer: 'complaints',
                    complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
                  }
                : { answer: 'nothing' },
            },
          ),
        ),
      ]),
      ...more,
    ]),
    PROJECT,
    Date.UTC(2026, 5, 1),
  );
  if (!opened) throw new Error('no project');
  const review = reviewProject(opened);
  const verdicts = review.rounds.map((one) => verdictOf(opened, one));
  return { word: verdicts[0]?.word, influence: influences(opened, review, verdicts)[0] };
};
const named = (found: RoundInfluence | undefined) =>
  found?.decisive?.map(({ who, id, word }) => [who, id, word]);

describe('who alone decides a verdict', () => {
  it('is the pair of a stop-use notice', () => {
    const stop = own(idOf(90), 'stop-use', {
      pairs: [pairId(1)],
      reason: 'plate',
      from: '2026-05-20T00:00:00Z',
    });
    const { word, influence } = log(3, [], [stop]);
    expect(word).toBe('does-not-hold');
    expect(named(influence)).toEqual([['pair', pairId(1), 'not-known-yet']]);
  });

  it('is each of the two testers who prove a complaint, with the pair that only they wore', () => {
    const { word, influence } = log(6, [0, 1]);
    expect(word).toBe('does-not-hold');
    expect(named(influence)).toEqual([
      ['tester', testerId(0), 'not-known-yet'],
      ['tester', testerId(1), 'not-known-yet'],
      ['pair', pairId(0), 'not-known-yet'],
      ['pair', pairId(1), 'not-known-yet'],
    ]);
  });

  it('is nobody where many prove it, and where nothing is known', () => {
    expect(named(log(6, [0, 1, 2, 3]).influence)).toEqual([]);
    expect(named(log(6, []).influence)).toEqual([]);
  });

  it('is not tried for many testers and pairs together', () => {
    expect(log(41, []).influence).toEqual({ round: ROUND, decisive: null });
  });

  it('is said in English and Chinese', () => {
    const speaker = (language: string): Speaker => ({
      ...languageFile(language),
      number: String,
      distance: String,
      tester: () => 'T01',
      pair: () => '637',
      round: String,
      foot: String,
      language: String,
    });
    const decisive = [
      { who: 'pair', id: pairId(0), word: 'not-known-yet' },
      { who: 'tester', id: testerId(0), word: 'holds' },
    ] as const;
    expect(influenceLines({ round: ROUND, decisive }, speaker('en'))).toEqual([
      'Without pair 637 this would be open.',
      'Without the answers of T01 this would hold.',
    ]);
    expect(influenceLines({ round: ROUND, decisive }, speaker('zh'))).toEqual([
      '如果不算 637 这双鞋，就还没有定论。',
      '如果不算 T01 的回答，就达标。',
    ]);
  });
});
