import { describe, expect, it } from 'vitest';
import type { HeldPair } from '../../../app/phone/own-mileage.ts';
import { DAYS_BETWEEN, rankingDue } from '../../../app/phone/ranking-due.ts';
import type { RecordOf } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 20);
const PROJECT = idOf(1);

const held = (code: string, runs: number, lastRunMs: number | null, project = PROJECT): HeldPair =>
  ({
    pair: { body: { code, project }, revision: { id: idOf(Number(code)) } },
    runs,
    lastRunMs,
  }) as HeldPair;

const ranking = (daysAgo: number, project = PROJECT): RecordOf<'ranking'> =>
  ({
    body: { project, at: new Date(NOW - daysAgo * DAY_MS).toISOString() },
  }) as RecordOf<'ranking'>;

const yesterday = NOW - DAY_MS;

describe('the question which pair is more comfortable', () => {
  it('is asked of who has worn two pairs of a project twice each, in the order of their codes', () => {
    const due = rankingDue([held('20', 2, yesterday), held('10', 3, yesterday)], [], NOW);
    expect(due?.pairs.map(({ pair }) => pair.body.code)).toEqual(['10', '20']);
  });

  it('is not asked of one pair, of pairs worn once, or of pairs of two projects', () => {
    expect(rankingDue([held('10', 9, yesterday)], [], NOW)).toBeNull();
    expect(rankingDue([held('10', 9, yesterday), held('20', 1, yesterday)], [], NOW)).toBeNull();
    expect(
      rankingDue([held('10', 9, yesterday), held('20', 9, yesterday, idOf(2))], [], NOW),
    ).toBeNull();
  });

  it('comes again after a fortnight, and only if both were worn since', () => {
    const worn = [held('10', 9, yesterday), held('20', 9, yesterday)];
    expect(rankingDue(worn, [ranking(DAYS_BETWEEN - 1)], NOW)).toBeNull();
    expect(rankingDue(worn, [ranking(DAYS_BETWEEN)], NOW)).not.toBeNull();
    const oneRested = [held('10', 9, yesterday), held('20', 9, NOW - 30 * DAY_MS)];
    expect(rankingDue(oneRested, [ranking(20)], NOW)).toBeNull();
    expect(rankingDue(worn, [ranking(1, idOf(2))], NOW)).not.toBeNull();
  });
});
