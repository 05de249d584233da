/** What the form and the table of bench checks ask about before a check is saved. */
import { describe, expect, it } from 'vitest';
import { confirmedReadings, entryDoubts } from '../../../../app/desk/bench/entry-doubts.ts';
import { readBenchTable } from '../../../../app/drafts/check-table.ts';
import { languageFile } from '../../../../app/terminal/languages.ts';
import { askInWords } from '../../../../app/words/say-waiting.ts';
import { readBody, viewOfHeads, type Revision } from '../../../../core/records/index.ts';
import { openProject, reviewProject } from '../../../../core/review/index.ts';
import { idOf, stampAt } from '../../../core/records/make.ts';
import * as make from '../../../core/review/log-for-tests.ts';
import { own, PROJECT } from '../../../core/review/log-for-tests.ts';

const [ROUND, PAIR, OTHER] = [idOf(2), idOf(10), idOf(11)];
const reading = (value: number, more: Record<string, unknown> = {}) => ({
  measure: 'stack-height' as const,
  site: 'heel',
  foot: 'left' as const,
  unit: 'mm' as const,
  value,
  ...more,
});
const check = (n: number, value: number, more: Record<string, unknown> = {}) =>
  own(idOf(100 + n), 'bench-check', {
    pair: PAIR,
    at: `2026-05-0${n}T12:00:00Z`,
    readings: [reading(value, more)],
  });
const logOf = (...more: readonly Revision[]) => {
  const records = viewOfHeads([
    make.project(),
    make.round(ROUND, 1),
    make.pair(PAIR, ROUND, '637'),
    make.pair(OTHER, ROUND, '640'),
    ...more,
  ]);
  const log = openProject(records, PROJECT, Date.UTC(2026, 5, 1));
  if (!log) throw new Error('no project');
  return { records, review: reviewProject(log) };
};
const typed = (value: number, more: Record<string, unknown> = {}) => ({
  pair: PAIR,
  at: '2026-05-09T12:00:00Z',
  readings: [reading(value, more)],
});

describe('a check that is typed', () => {
  it('is asked about where the point slipped, in the words of its earlier readings', () => {
    const log = logOf(check(1, 28.8), check(4, 27.9));
    const [found] = entryDoubts(log, [typed(285)], 'typed').readings;
    if (!found) throw new Error('nothing is asked');
    const { desk, glossary, phone } = languageFile('en');
    const said = askInWords(found.reading, found.doubt, {
      desk,
      glossary,
      number: (value, most) => String(Number(value.toFixed(most))),
      distance: String,
      tester: String,
      pair: String,
      round: String,
      foot: (foot) => phone.foot[foot],
      language: String,
    });
    expect(said.join(' ')).toBe(
      'You typed 285 mm for Stack height, heel, left. Stack height can only be 1 to 100 mm. Other readings of this shoe here: 27.9 to 28.8 mm. Is it 28.5 mm?',
    );
    expect(entryDoubts(log, [typed(27.6)], 'typed')).toEqual({ readings: [], gauges: [] });
  });

  it('is not held against readings that wait or were set aside', () => {
    const log = logOf(check(1, 28.8), check(4, 2.79));
    expect(log.review.waiting).toHaveLength(2);
    // Of two that contradict each other neither tells anything.
    expect(entryDoubts(log, [typed(27.6)], 'typed').readings).toEqual([]);
  });

  it('is asked about where a second gauge sits apart, until the log shows it', () => {
    const pairs = [PAIR, OTHER];
    const of = (day: number, by: number, gauge: string) =>
      pairs.map((pair, p) =>
        own(idOf(200 + 10 * day + p), 'bench-check', {
          pair,
          at: `2026-05-0${day}T12:00:00Z`,
          readings: ['left', 'right'].map((foot) =>
            reading((28.5 - 0.1 * day) * by, { foot, gauge }),
          ),
        }),
      );
    const first = [...of(1, 1, 'A'), ...of(3, 1, 'A'), ...of(5, 1, 'A')];
    const second = {
      pair: PAIR,
      at: '2026-05-07T12:00:00Z',
      readings: (['left', 'right'] as const).map((foot) =>
        reading(27.8 * 1.08, { foot, gauge: 'B' }),
      ),
    };
    expect(entryDoubts(logOf(...first), [second], 'typed').gauges).toMatchObject([
      { gauge: 'B', than: 'A' },
    ]);
    const shown = logOf(...first, ...of(6, 1.08, 'B'));
    expect(entryDoubts(shown, [second], 'typed').gauges).toEqual([]);
  });

  it('that the lead confirms counts at once', () => {
    const log = logOf(check(1, 28.8), check(4, 27.9), check(5, 2.79));
    expect(log.review.waiting).toMatchObject([{ counts: false, reading: { value: 2.79 } }]);
    const [asked] = entryDoubts(
      logOf(check(1, 28.8), check(4, 27.9)),
      [typed(2.79)],
      'typed',
    ).readings;
    if (!asked) throw new Error('nothing is asked');
    const [decision] = confirmedReadings(
      [asked],
      { project: PROJECT, record: idOf(105), judged: stampAt(1) },
      'Confirmed',
      Date.UTC(2026, 4, 9),
    );
    expect(readBody('decision', decision).ok).toBe(true);
    const after = logOf(
      check(1, 28.8),
      check(4, 27.9),
      check(5, 2.79),
      own(idOf(300), 'decision', { ...decision }),
    );
    expect(after.review.waiting).toEqual([]);
    expect(after.review.bench[0]?.points).toHaveLength(3);
  });
});

describe('a table', () => {
  it('is asked about line by line, and only where everything else contradicts it', () => {
    const table = readBenchTable(
      [
        'pair,measured_at,measure,site,foot,value,unit',
        '637,2026-05-01T10:00Z,stack-height,heel,left,28.5,mm',
        '637,2026-05-01T10:00Z,stack-height,heel,right,28.4,mm',
        '637,2026-05-05T10:00Z,stack-height,heel,left,2.82,mm',
        '637,2026-05-05T10:00Z,stack-height,heel,right,28.1,mm',
        '640,2026-05-05T10:00Z,stack-height,heel,left,28.3,mm',
      ].join('\n'),
      PROJECT,
      new Map([
        ['637', PAIR],
        ['640', OTHER],
      ]),
    );
    const { readings } = entryDoubts(logOf(), table.checks, 'table');
    expect(readings.map(({ check: of, at }) => table.lines.get(of as never)?.[at])).toEqual([4]);
    expect(readings[0]?.doubt).toMatchObject({ why: 'decimal-point', instead: 28.2 });
  });
});
