/** Which thank-you a phone shows: one at a time, the oldest first, and of a finding only what was told last. */
import { describe, expect, it } from 'vitest';
import { latestThanks, nextThanks } from '../../../core/talk/index.ts';
import { idOf } from '../records/make.ts';
import { said, view } from './said.ts';

const [TESTER, COLLAR, TOE] = [idOf(201), idOf(701), idOf(702)];
const thanks = (id: number, days: number, finding: string, result: string) =>
  said(idOf(id), 'thanks', days, { tester: TESTER, finding, result, zone: 'U8', kind: 'rubbing' });
const { thanks: all } = view(
  thanks(803, -1, COLLAR, 'mended'),
  thanks(801, -9, COLLAR, 'carried'),
  thanks(802, -5, TOE, 'carried'),
);
const ids = (some: readonly { readonly revision: { readonly id: string } }[]) =>
  some.map(({ revision }) => revision.id);

describe('thanks on a phone', () => {
  it('are the latest of each finding, oldest first', () => {
    expect(ids(latestThanks(all))).toEqual([idOf(802), idOf(803)]);
    expect(latestThanks([])).toEqual([]);
  });

  it('come one after the other as they are read', () => {
    const next = (...read: string[]) => nextThanks(all, new Set(read))?.revision.id ?? null;
    expect(next()).toBe(idOf(802));
    expect(next(idOf(802))).toBe(idOf(803));
    expect(next(idOf(802), idOf(803))).toBeNull();
    // That the first word about it was read does not hide how it ended.
    expect(next(idOf(802), idOf(801))).toBe(idOf(803));
  });
});
