/** What a tester is asked before an odd run is saved. */
import { describe, expect, it } from 'vitest';
import { doubtsOf, heldThen } from '../../../app/phone/log/run-doubts.ts';
import type { RecordOf, Run } from '../../../core/records/index.ts';
import { metres, seconds } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';

const [PAIR, OTHER_PAIR, TESTER, OTHER_TESTER] = [idOf(1), idOf(2), idOf(3), idOf(4)];
const handOut = (from: string, until?: string, pair = PAIR, tester = TESTER) =>
  ({
    revision: { id: idOf(9) },
    body: { project: idOf(8), pair, tester, from, blind: true, ...(until && { until }) },
  }) as RecordOf<'hand-out'>;
const run = (startedAt: string, more: Partial<Run> = {}): Run => ({
  project: idOf(8),
  pair: PAIR,
  tester: TESTER,
  startedAt,
  distanceM: metres(10_000),
  distanceFrom: 'typed',
  durationS: seconds(3000),
  ...more,
});
const chosen = { start: '2026-05-03T07:00', startMs: null };
const handOuts = [
  handOut('2026-05-04T08:00:00Z', '2026-05-20T08:00:00Z'),
  handOut('2026-04-01T08:00:00Z', undefined, OTHER_PAIR, OTHER_TESTER),
  handOut('2026-04-01T08:00:00Z', '2026-05-04T07:00:00Z', PAIR, OTHER_TESTER),
];

describe('what is asked before a run is saved', () => {
  it('is whether the day is right, where the pair was not with the tester', () => {
    for (const odd of ['2026-05-03T07:00:00Z', '2026-05-21T07:00:00Z'])
      expect(doubtsOf(run(odd), chosen, handOuts, null)).toEqual(['not-handed-out']);
    expect(doubtsOf(run('2026-05-05T07:00:00Z'), chosen, handOuts, null)).toEqual([]);
  });

  it('is nothing of the day where nobody chose one; the start of a track is chosen', () => {
    const odd = run('2026-05-03T07:00:00Z');
    expect(doubtsOf(odd, { start: '', startMs: null }, handOuts, null)).toEqual([]);
    expect(doubtsOf(odd, { start: '', startMs: 1 }, handOuts, null)).toEqual(['not-handed-out']);
  });

  it('is both where distance or pace is odd too', () => {
    const odd = run('2026-05-03T07:00:00Z', { distanceM: metres(100_000) });
    expect(doubtsOf(odd, chosen, handOuts, null)).toEqual(['distance-or-pace', 'not-handed-out']);
  });

  it('is not asked again of what was as odd before the change', () => {
    const odd = run('2026-05-03T07:00:00Z', { distanceM: metres(100_000) });
    expect(doubtsOf({ ...odd, words: 'wet' }, chosen, handOuts, odd)).toEqual([]);
    expect(doubtsOf({ ...odd, startedAt: '2026-05-02T07:00:00Z' }, chosen, handOuts, odd)).toEqual([
      'not-handed-out',
    ]);
  });

  it('is whether it is the right pair, where the tester had others and not this one, whoever chose the start', () => {
    const others = [handOut('2026-04-01T08:00:00Z', undefined, OTHER_PAIR)];
    const now = { start: '', startMs: null };
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, others, null)).toEqual(['other-pair']);
    expect(heldThen(run('2026-05-03T07:00:00Z'), others)).toEqual([OTHER_PAIR]);
    // A hand-out that is noted a little late is no wrong pair.
    const late = [...others, handOut('2026-05-03T09:00:00Z')];
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, late, null)).toEqual([]);
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), chosen, late, null)).toEqual(['not-handed-out']);
    // Long after it went back it is.
    const back = [...others, handOut('2026-04-02T08:00:00Z', '2026-04-20T08:00:00Z')];
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, back, null)).toEqual(['other-pair']);
  });
});
