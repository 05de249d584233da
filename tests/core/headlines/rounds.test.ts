/** Rounds, the brief and the reports say first, in both languages. */
import { describe, expect, it } from 'vitest';
import { briefHeadline, reportHeadline, roundsHeadline } from '../../../core/headlines/index.ts';
import type { PartId } from '../../../core/foot/index.ts';
import type { Brief } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import {
  brief as briefEn,
  report as reportEn,
  rounds as en,
} from '../../../app/words/places/en/rounds.ts';
import {
  brief as briefZh,
  report as reportZh,
  rounds as zh,
} from '../../../app/words/places/zh/rounds.ts';
import type { Say } from '../../../app/words/say-names.ts';
import { idOf } from '../records/make.ts';

const [one, two] = [idOf(1), idOf(2)];
const say = {
  round: (id: unknown) => (id === two ? 'Round 2' : 'Round 1'),
  list: (names: readonly string[]) => names.join(', '),
  distance: (m: number) => `${m / 1000} km`,
  date: (at: string) => at.slice(0, 10),
} as unknown as Say;
const part = (id: PartId) => id;
const changed = (...parts: PartId[]) => parts.map((of) => ({ part: of, what: 'x' }));

describe('the rounds say first', () => {
  it.each([
    [[], [], 'No round yet. Add the first one.', '还没有轮次，请先添加第一轮。'],
    [[{ id: one, changes: [] }], [], 'Round 1 has no pairs yet.', 'Round 1还没有样鞋。'],
    [
      [{ id: one, changes: [] }],
      [one, one],
      'Round 1 is the first: 2 pairs.',
      'Round 1是第一轮：2 双样鞋。',
    ],
    [
      [
        { id: one, changes: [] },
        { id: two, changes: [] },
      ],
      [two],
      'Nothing is noted as changed in Round 2.',
      'Round 2没有记录任何改动。',
    ],
    [
      [
        { id: one, changes: [] },
        { id: two, changes: changed('last', 'last', 'outsole') },
      ],
      [two],
      'Round 2 changes the last, outsole.',
      'Round 2改动了last, outsole。',
    ],
    [
      [{ id: two, changes: changed('last', 'outsole', 'lacing', 'midsole-foam') }],
      [two],
      'Round 2 changes the last, outsole, 2 more.',
      'Round 2改动了last, outsole, 另外 2 个部件。',
    ],
  ])('%#', (rounds, pairs, english, chinese) => {
    const h = roundsHeadline({ rounds, pairs: pairs.map((round) => ({ round })) });
    expect(en.headline(h, say, part)).toBe(english);
    expect(zh.headline(h, say, part)).toBe(chinese);
  });
});

describe('the brief says first', () => {
  it.each([
    [
      0,
      'Each pair must carry 600 km. No limit of wear is set.',
      '每双须跑满 600 km，尚未设定磨损限值。',
    ],
    [1, 'Each pair must carry 600 km and keep 1 limit.', '每双须跑满 600 km，并守住 1 项限值。'],
    [3, 'Each pair must carry 600 km and keep 3 limits.', '每双须跑满 600 km，并守住 3 项限值。'],
  ])('with %i limits', (limits, english, chinese) => {
    const h = briefHeadline({
      distanceM: metres(600_000),
      limits: new Array(limits).fill({}),
    } as unknown as Brief);
    expect(briefEn.headline(h, say)).toBe(english);
    expect(briefZh.headline(h, say)).toBe(chinese);
  });
});

describe('the reports say first', () => {
  const rounds = [
    { id: one, size: { runs: 9 } },
    { id: two, size: { runs: 9 } },
  ] as never;
  const sent = (round: typeof one, at: string) => ({ round, at });
  it.each([
    [[], [], 'Nobody has run yet: nothing to report.', '还没有人跑过，没有可报告的内容。'],
    [rounds, [], 'No report has been sent yet.', '还没有发送过报告。'],
    [
      rounds,
      [sent(one, '2026-10-01T00:00:00Z')],
      'The report of Round 2 has not been sent yet.',
      'Round 2的报告还没有发出。',
    ],
    [
      rounds,
      [sent(two, '2026-10-01T00:00:00Z'), sent(two, '2026-11-01T00:00:00Z')],
      'The report of Round 2 went out on 2026-11-01.',
      'Round 2的报告已于 2026-11-01 发出。',
    ],
  ])('%#', (of, reports, english, chinese) => {
    const h = reportHeadline({ rounds: of }, reports);
    expect(reportEn.headline(h, say)).toBe(english);
    expect(reportZh.headline(h, say)).toBe(chinese);
  });
});
