/** Lists of pairs and testers in the order that was asked for, narrowed to what is sought. */
import { describe, expect, it } from 'vitest';
import {
  everyPair,
  filteredPairs,
  pairColumns,
  pairKey,
  type PairColumn,
} from '../../../../app/desk/pairs/pair-order.ts';
import { holdsText, pressed, sortedBy } from '../../../../app/desk/list/sorting.ts';
import {
  everyTester,
  filteredTesters,
  testerColumns,
  testerKey,
} from '../../../../app/desk/testers/tester-order.ts';
import type { PairRow, TesterRow } from '../../../../core/review/index.ts';
import { idOf } from '../../../core/records/make.ts';

const row = (n: number, more: Partial<PairRow> = {}): PairRow =>
  ({
    ...{ pair: idOf(n), code: String(n), round: idOf(1), roundAt: 0, sizeMm: 270 },
    ...{ holder: null, handOut: null, sinceMs: null, holderSilentDays: null },
    ...{ totalM: 1000 * n, shareOfBrief: 0, runs: n, lastRunMs: null, asked: 0, complained: 0 },
    ...{ checks: 0, stopped: false, damage: null, outOfTolerance: false },
    ...more,
  }) as PairRow;

const codes = (rows: readonly { readonly code: string }[]) => rows.map(({ code }) => code);
const by = (rows: readonly PairRow[], column: PairColumn, direction: 'ascending' | 'descending') =>
  codes(sortedBy(rows, { by: column, direction }, (one, of) => pairKey(one, of, () => 'T1')));

describe('a list of pairs', () => {
  it('counts codes as people do, either way', () => {
    const rows = [row(10), row(9), row(100)];
    expect(by(rows, 'pair', 'ascending')).toEqual(['9', '10', '100']);
    expect(by(rows, 'pair', 'descending')).toEqual(['100', '10', '9']);
  });

  it('puts what is not known last in both directions', () => {
    const rows = [row(1), row(2, { lastRunMs: 5 }), row(3, { lastRunMs: 9 })];
    expect(by(rows, 'lastRun', 'ascending')).toEqual(['2', '3', '1']);
    expect(by(rows, 'lastRun', 'descending')).toEqual(['3', '2', '1']);
  });

  it('puts what must not be run first, then out of tolerance, then silent; alike ones stay', () => {
    const rows = [
      row(1),
      row(2, { holderSilentDays: 8 }),
      row(3, { outOfTolerance: true }),
      row(4, { damage: idOf(9) }),
      row(5, { stopped: true }),
    ];
    expect(by(rows, 'state', 'ascending')).toEqual(['4', '5', '3', '2', '1']);
  });

  it('sorts by the share of asked runs with a complaint, not by their number', () => {
    const rows = [row(1, { asked: 30, complained: 3 }), row(2, { asked: 4, complained: 2 })];
    expect(by(rows, 'complaints', 'descending')).toEqual(['2', '1']);
  });

  it('has a key for every column', () => {
    const full = row(1, { holder: idOf(3), lastRunMs: 1, asked: 2 });
    for (const column of pairColumns) expect(pairKey(full, column, () => 'T1')).not.toBe(null);
  });

  it('is narrowed by round, state and text together', () => {
    const rows = [
      row(1, { holder: idOf(3) }),
      row(2, { holder: idOf(3), round: idOf(2) }),
      row(3, { stopped: true }),
      row(4, { damage: idOf(9), runs: 0 }),
    ];
    const texts = (one: PairRow) => [one.code, one.holder === null ? '' : 'T07'];
    const found = (filter: Partial<typeof everyPair>) =>
      codes(filteredPairs(rows, { ...everyPair, ...filter }, texts));
    expect(found({})).toEqual(['1', '2', '3', '4']);
    expect(found({ state: 'out' })).toEqual(['1', '2']);
    expect(found({ state: 'in' })).toEqual(['3', '4']);
    expect(found({ state: 'do-not-run' })).toEqual(['3', '4']);
    expect(found({ state: 'never-run' })).toEqual(['4']);
    expect(found({ text: 't07', round: idOf(2) })).toEqual(['2']);
    expect(found({ text: '3', state: 'out' })).toEqual([]);
  });
});

describe('a press on the head of a column', () => {
  it('turns the same column round, and begins another the way it is wanted first', () => {
    const order = { by: 'pair', direction: 'ascending' } as const;
    expect(pressed<'pair' | 'runs'>(order, 'pair', 'ascending').direction).toBe('descending');
    expect(pressed<'pair' | 'runs'>(order, 'runs', 'descending')).toEqual({
      by: 'runs',
      direction: 'descending',
    });
  });
});

describe('a list of testers', () => {
  const tester = (code: string, more: Partial<TesterRow> = {}): TesterRow =>
    ({
      ...{ tester: idOf(Number(code.slice(1))), code, name: null, pairs: [], runs: 0 },
      ...{ distanceM: 0, lastRunMs: null, silentDays: null, asked: 0, complained: 0 },
      ...{ most: null, pain: null },
      ...more,
    }) as TesterRow;

  it('puts the longest silent first and those who are not silent last', () => {
    const rows = [tester('T1'), tester('T2', { silentDays: 8 }), tester('T3', { silentDays: 19 })];
    const sorted = sortedBy(rows, { by: 'silent', direction: 'descending' }, testerKey);
    expect(codes(sorted)).toEqual(['T3', 'T2', 'T1']);
  });

  it('has a key for every column', () => {
    const full = tester('T1', {
      ...{ lastRunMs: 1, silentDays: 8, asked: 2 },
      most: { zone: 'U10', kind: 'heel-slip', runs: 3 },
      pain: { run: idOf(8), score: 3, stands: false },
    });
    for (const column of testerColumns) expect(testerKey(full, column)).not.toBe(null);
  });

  it('is narrowed by state and text', () => {
    const rows = [
      tester('T1', { pairs: [idOf(9)], runs: 3 }),
      tester('T2', { silentDays: 8 }),
      tester('T3', { pain: { run: idOf(8), score: 3, stands: false } }),
    ];
    const found = (filter: Partial<typeof everyTester>) =>
      codes(filteredTesters(rows, { ...everyTester, ...filter }, ({ code }) => [code, 'Ada Kim']));
    expect(found({ state: 'holds' })).toEqual(['T1']);
    expect(found({ state: 'silent' })).toEqual(['T2']);
    expect(found({ state: 'pain' })).toEqual(['T3']);
    expect(found({ state: 'never-ran' })).toEqual(['T2', 'T3']);
    expect(found({ text: ' ada ' })).toEqual(['T1', 'T2', 'T3']);
    expect(found({ text: 't2' })).toEqual(['T2']);
  });
});

describe('what was typed to find a row', () => {
  it('is held by any of its texts, whatever the case; nothing typed finds all', () => {
    expect(holdsText(['T07', 'Ada'], 'ADA')).toBe(true);
    expect(holdsText(['T07', 'Ada'], 'x')).toBe(false);
    expect(holdsText([], '  ')).toBe(true);
  });
});
