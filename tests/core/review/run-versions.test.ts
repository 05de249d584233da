import { describe, expect, it } from 'vitest';
import { versionsOf } from '../../../core/review/index.ts';
import {
  sealRevision,
  type Body,
  type History,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../records/make.ts';

const [run, tester, lead] = [idOf(1), idOf(2), idOf(3)];
const body = {
  project: idOf(4),
  pair: idOf(5),
  tester,
  startedAt: '2026-06-01T07:00:00+02:00',
  distanceM: 10_000,
  distanceFrom: 'typed',
  comfort: { overall: 60, 'heel-hold': 40 },
};
const saved = (nth: number, author: typeof run, said: Body | null): Revision =>
  sealRevision({ id: run, kind: 'run', author, sv: 1, body: said }, stampAt(nth), null);
const history = (...all: Revision[]): History => ({
  head: all.at(-1) as Revision,
  older: all.slice(0, -1),
});

describe('the versions of a run', () => {
  it('are told latest first, with what changed, by whom', () => {
    const [second, first] = versionsOf(
      history(saved(1, tester, body), saved(2, lead, { ...body, distanceM: 11_000, words: 'far' })),
    );
    expect(first).toMatchObject({ author: tester, changed: [], previous: null, erased: false });
    expect(second).toMatchObject({ author: lead, changed: ['distanceM', 'words'] });
    expect(second?.previous?.distanceM).toBe(10_000);
    expect(second?.savedMs).toBeGreaterThan(first?.savedMs as number);
  });

  it('do not differ by the order of their fields', () => {
    const turned = { ...body, comfort: { 'heel-hold': 40, overall: 60 } };
    const [second] = versionsOf(history(saved(1, tester, body), saved(2, tester, turned)));
    expect(second?.changed).toEqual([]);
  });

  it('go on from the last one that can be read', () => {
    const [back, erased] = versionsOf(
      history(
        saved(1, tester, body),
        saved(2, tester, null),
        saved(3, tester, { ...body, distanceM: 9_000 }),
      ),
    );
    expect(erased).toMatchObject({ erased: true, run: null, changed: [] });
    expect(back?.changed).toEqual(['distanceM']);
  });
});
