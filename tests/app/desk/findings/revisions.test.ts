/** The history of a finding: each revision against the one its author had before them. */
import { describe, expect, it } from 'vitest';
import {
  addToHistory,
  sealRevision,
  type Body,
  type History,
  type Revision,
} from '../../../../core/records/index.ts';
import { revisionsOf } from '../../../../app/desk/findings/revisions.ts';
import { idOf, stampAt } from '../../../core/records/make.ts';

const anna = idOf(1);
const bo = idOf(2);
const body: Body = { title: 'Heel slips', part: 'lacing', priority: 'low', state: 'open' };

const saved = (ms: number, of: Body | null, prev: number | null, author = anna): Revision =>
  sealRevision(
    {
      id: idOf(9),
      kind: 'finding',
      author,
      sv: 1,
      body: of,
      ...(of === null && { deleted: true as const }),
    },
    stampAt(ms),
    prev === null ? null : stampAt(prev),
  );

const historyOf = (...revisions: readonly Revision[]): History => {
  let history: History | undefined;
  for (const revision of revisions) history = addToHistory(history, revision);
  return history as History;
};

describe('the revisions of a finding', () => {
  it('come newest first, with who, when and the fields that changed', () => {
    const told = revisionsOf(
      historyOf(
        saved(1000, body, null),
        saved(2000, { ...body, state: 'asked-for', wantedMm: 3 }, 1000, bo),
      ),
    );
    expect(told.map(({ what, author, atMs }) => [what, author, atMs])).toEqual([
      ['changed', bo, 2000],
      ['written', anna, 1000],
    ]);
    expect(told[0]?.changes).toEqual([
      { field: 'state', from: 'open', to: 'asked-for' },
      { field: 'wantedMm', from: undefined, to: 3 },
    ]);
    expect(told[1]?.changes).toEqual([]);
  });

  it('tell of two changes made at once each against what both had seen', () => {
    const told = revisionsOf(
      historyOf(
        saved(1000, body, null),
        saved(2000, { ...body, priority: 'high' }, 1000),
        saved(3000, { ...body, title: 'Heel lifts' }, 1000, bo),
      ),
    );
    expect(told[0]?.changes).toEqual([{ field: 'title', from: 'Heel slips', to: 'Heel lifts' }]);
    expect(told[1]?.changes).toEqual([{ field: 'priority', from: 'low', to: 'high' }]);
  });

  it('tell of an erasure, and of a return by what changed since the last words', () => {
    const told = revisionsOf(
      historyOf(
        saved(1000, body, null),
        saved(2000, null, 1000),
        saved(3000, { ...body, state: 'closed' }, 2000),
      ),
    );
    expect(told.map(({ what }) => what)).toEqual(['restored', 'erased', 'written']);
    expect(told[0]?.changes).toEqual([{ field: 'state', from: 'open', to: 'closed' }]);
  });

  it('hold a revision whose forerunner never came against the one before it', () => {
    const told = revisionsOf(
      historyOf(saved(1000, body, null), saved(3000, { ...body, part: 'last' }, 2000)),
    );
    expect(told[0]?.changes).toEqual([{ field: 'part', from: 'lacing', to: 'last' }]);
  });

  it('are the same whatever order they came in', () => {
    const all = [
      saved(1000, body, null),
      saved(2000, { ...body, priority: 'high' }, 1000),
      saved(3000, { ...body, priority: 'medium' }, 2000),
    ];
    expect(revisionsOf(historyOf(...all.toReversed()))).toEqual(revisionsOf(historyOf(...all)));
  });
});
