/** A gauge study as typed into its grid, or read from a table: what is taken, and what is told. */
import { describe, expect, it } from 'vitest';
import { gridKey, newGaugeDraft, typedStudy, type GaugeDraft } from '../../../app/drafts/gauge.ts';
import { rangeOf, readBody } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const grid = { part: (at: number) => `part ${at}`, operator: (at: number) => `operator ${at}` };
const at = '2026-03-02T10:00:00+01:00';
const size = { parts: 2, operators: 2, trials: 1 };
const draft: GaugeDraft = {
  ...newGaugeDraft,
  gauge: ' calliper C2 ',
  size,
  names: { 1: 'Lab' },
  cells: {
    [gridKey(0, 0, 0)]: '58,02',
    [gridKey(0, 0, 1)]: '57.9',
    [gridKey(1, 0, 0)]: '58',
    [gridKey(1, 0, 1)]: '５８',
  },
};
const studyOf = (one: GaugeDraft) => typedStudy(one, idOf(1), at, grid);

describe('a gauge study', () => {
  it('has each cell of the grid that holds a number, by the names of part and operator', () => {
    const read = studyOf(draft);
    expect(read).toEqual({
      study: {
        project: idOf(1),
        at,
        gauge: 'calliper C2',
        measure: 'dimension',
        unit: 'mm',
        readings: [
          { part: 'part 1', operator: 'operator 1', value: 58.02 },
          { part: 'part 2', operator: 'operator 1', value: 57.9 },
          { part: 'part 1', operator: 'Lab', value: 58 },
          { part: 'part 2', operator: 'Lab', value: 58 },
        ],
      },
    });
    expect('study' in read && readBody('gauge-study', read.study).ok).toBe(true);
  });

  it('takes the readings of a table instead of the grid', () => {
    const table = [1, 2, 3, 4].map((value) => ({ part: `S${value}`, operator: 'A', value }));
    const names = { 0: 'same', 1: 'same' };
    expect(studyOf({ ...draft, names, table })).toMatchObject({ study: { readings: table } });
  });

  it('says the first thing that is wrong', () => {
    const possible = rangeOf('dimension', 'mm');
    const cases: readonly [Partial<GaugeDraft>, unknown][] = [
      [{ gauge: ' ' }, { what: 'no-gauge' }],
      [{ toleranceWidth: 'wide' }, { what: 'tolerance-width', value: null }],
      [{ toleranceWidth: '-1' }, { what: 'tolerance-width', value: -1 }],
      [{ names: { 0: 'Lab', 1: 'Lab' } }, { what: 'same-name' }],
      [{ cells: { ...draft.cells, [gridKey(0, 0, 0)]: 'x' } }, { what: 'no-number' }],
      [
        { cells: { ...draft.cells, [gridKey(1, 0, 0)]: String(possible.most + 1) } },
        { what: 'reading', reading: { part: 'part 1', operator: 'Lab' }, range: possible },
      ],
      [{ cells: {} }, { what: 'too-few' }],
    ];
    for (const [change, trouble] of cases)
      expect(studyOf({ ...draft, ...change })).toMatchObject({ trouble });
  });
});
