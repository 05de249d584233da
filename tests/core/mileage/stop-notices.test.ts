/** Whom does a stop-use notice reach, and what have they still to read? */
import { describe, expect, it } from 'vitest';
import { holdersOf, noticesOf, standingStop, unreadOf } from '../../../core/mileage/index.ts';
import {
  sealRevision,
  type BodyOf,
  type Kind,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../records/make.ts';

let count = 100;
const record = <K extends Kind>(kind: K, body: BodyOf<K>): RecordOf<K> => ({
  ...{ kind, body },
  revision: sealRevision(
    { id: idOf(++count), kind, author: idOf(1), sv: 1, body: { ...body } },
    stampAt(count),
    null,
  ),
});
const [me, other, pair, spare] = [idOf(2), idOf(3), idOf(4), idOf(5)];
const nowMs = Date.parse('2026-05-10T12:00:00Z');
const project = idOf(9);
const handOut = (tester: RecordId, of: RecordId, until?: string) =>
  record('hand-out', {
    ...{ project, pair: of, tester, from: '2026-05-01T00:00:00Z', blind: true },
    ...(until !== undefined && { until }),
  });
const stop = (pairs: RecordId[], from = '2026-05-10T10:00:00Z', until?: string) =>
  record('stop-use', {
    ...{ project, pairs, reason: 'Plate cracked.', from },
    ...(until !== undefined && { until }),
  });

describe('a stop-use notice', () => {
  it('is for those who hold one of its pairs now', () => {
    const handOuts = [
      handOut(me, pair),
      handOut(other, pair, '2026-05-09T00:00:00Z'),
      handOut(other, spare),
    ];
    expect([...holdersOf([pair], handOuts, nowMs)]).toEqual([me]);
    expect([...holdersOf([pair, spare], handOuts, nowMs)].sort()).toEqual([me, other].sort());
    expect([...holdersOf([], handOuts, nowMs)]).toEqual([]);
  });

  it('stands from its beginning until it is lifted', () => {
    expect(standingStop([stop([pair])], pair, nowMs)).not.toBeNull();
    expect(standingStop([stop([spare])], pair, nowMs)).toBeNull();
    expect(standingStop([stop([pair], '2026-05-11T00:00:00Z')], pair, nowMs)).toBeNull();
    const lifted = stop([pair], '2026-05-10T10:00:00Z', '2026-05-10T11:00:00Z');
    expect(standingStop([lifted], pair, nowMs)).toBeNull();
  });

  it('is unread once, on however many pairs, until it was acknowledged', () => {
    const both = stop([pair, spare]);
    const own = noticesOf(me, [both], [handOut(me, pair), handOut(me, spare)], nowMs);
    expect(own.map((one) => one.pair)).toEqual([pair, spare]);
    expect(unreadOf(own, [])).toBe(1);
    const at = '2026-05-10T11:00:00Z';
    const read = (stopUse: RecordId) =>
      record('acknowledgement', { project, tester: me, stopUse, at });
    expect(unreadOf(own, [read(idOf(77))])).toBe(1);
    expect(unreadOf(own, [read(both.revision.id)])).toBe(0);
    expect(noticesOf(other, [both], [handOut(me, pair)], nowMs)).toEqual([]);
  });
});
