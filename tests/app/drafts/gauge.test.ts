/** A gauge study as typed into its grid, or read from a table: what is taken, and what is told. */
import { describe, expect, it } from 'vitest';
import {
  gridKey,
  newGaugeDraft,
  typedStudy,
  withBlock,
  type GaugeDraft,
} from '../../../app/drafts/gauge.ts';
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

  it('says each thing that is wrong, cell by cell', () => {
    const range = rangeOf('dimension', 'mm');
    const key = gridKey(0, 0, 0);
    const far = String(range.most + 1);
    const cases: readonly [Partial<GaugeDraft>, readonly object[]][] = [
      [{ gauge: ' ' }, [{ what: 'no-gauge' }]],
      [{ toleranceWidth: 'wide' }, [{ what: 'tolerance-width', value: null }]],
      [{ toleranceWidth: '-1' }, [{ what: 'tolerance-width', value: -1 }]],
      [{ names: { 0: 'Lab', 1: 'Lab' } }, [{ what: 'same-name', operator: 1 }]],
      [{ cells: { ...draft.cells, [key]: 'x' } }, [{ what: 'cell', key, value: null, range }]],
      [
        { gauge: '', cells: { ...draft.cells, [key]: 'x', [gridKey(1, 0, 0)]: far } },
        [
          { what: 'no-gauge' },
          { what: 'cell', key, value: null },
          { what: 'cell', key: gridKey(1, 0, 0), value: range.most + 1 },
        ],
      ],
      [{ cells: {} }, [{ what: 'too-few' }]],
      [
        {
          table: [58, 58, 58, range.most + 1].map((value) => ({ part: 'S', operator: 'A', value })),
        },
        [{ what: 'table', at: 3, range }],
      ],
    ];
    for (const [change, troubles] of cases) {
      const read = studyOf({ ...draft, ...change });
      expect('troubles' in read && read.troubles).toMatchObject(troubles);
      expect('troubles' in read && read.troubles).toHaveLength(troubles.length);
    }
  });

  it('takes a block into its grid, as far as the grid goes', () => {
    const { cells } = withBlock({ ...draft, cells: {} }, { row: 1, part: 0 }, [
      ['1', '2', '3'],
      ['4', '5'],
    ]);
    expect(cells).toEqual({ [gridKey(1, 0, 0)]: '1', [gridKey(1, 0, 1)]: '2' });
    const two = { ...draft, size: { ...size, trials: 2 }, cells: {} };
    expect(withBlock(two, { row: 1, part: 1 }, [['1'], ['2']]).cells).toEqual({
      [gridKey(0, 1, 1)]: '1',
      [gridKey(1, 0, 1)]: '2',
    });
  });
});
