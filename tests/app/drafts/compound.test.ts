/** Foam and rubber of a round as typed: read back as they were, refused where a hardness cannot be. */
import { describe, expect, it } from 'vitest';
import { draftOfSole, isBlankSole, readSole } from '../../../app/drafts/compound.ts';
import type { Round } from '../../../core/records/index.ts';

const round: Pick<Round, 'midsole' | 'outsole'> = {
  midsole: {
    name: 'E-24 soft',
    hardness: { value: 45, unit: 'asker-c', readAt: 3 },
    density: 0.18,
  },
  outsole: { hardness: { value: 62.5, unit: 'shore-a' } },
};

describe('the sole of a round', () => {
  it('reads back as it was, with what no form knows', () => {
    expect(readSole(draftOfSole(round), round)).toEqual({ sole: round, troubles: [] });
  });

  it('is absent where nothing is said: a scale alone says nothing', () => {
    const empty = draftOfSole(null);
    expect(isBlankSole(empty)).toBe(true);
    expect(readSole(empty, null)).toEqual({ sole: {}, troubles: [] });
    expect(empty.midsole.unit).toBe('asker-c');
    expect(empty.outsole.unit).toBe('shore-a');
  });

  it('lets go of what is cleared', () => {
    const draft = draftOfSole(round);
    const { sole } = readSole(
      {
        ...draft,
        outsole: { ...draft.outsole, hardness: ' ' },
        midsole: { ...draft.midsole, name: '' },
      },
      round,
    );
    expect(sole).toEqual({
      midsole: { hardness: { value: 45, unit: 'asker-c', readAt: 3 }, density: 0.18 },
    });
  });

  it('tells each hardness that cannot be', () => {
    const draft = draftOfSole(round);
    const { troubles } = readSole(
      {
        midsole: { ...draft.midsole, hardness: 'soft' },
        outsole: { ...draft.outsole, hardness: '625' },
      },
      round,
    );
    expect(troubles).toMatchObject([{ of: 'midsole' }, { of: 'outsole', range: { most: 100 } }]);
    expect(troubles[0]).not.toHaveProperty('range');
  });
});
