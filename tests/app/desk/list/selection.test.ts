/** Rows of a list are selected one by one, in ranges, and all. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allToggled,
  extended,
  howMany,
  nothingChosen,
  toggled,
  upTo,
  type Selection,
} from '../../../../app/desk/list/selection.ts';

const ids = ['a', 'b', 'c', 'd', 'e'];
const chosen = (selection: Selection<string>) => [...selection.chosen].sort().join('');
const from = (...some: string[]): Selection<string> =>
  some.reduce<Selection<string>>((now, id) => toggled(now, id), nothingChosen);

describe('a selection', () => {
  it('has one row more or less at a press', () => {
    expect(chosen(from('b', 'd'))).toBe('bd');
    expect(chosen(from('b', 'd', 'b'))).toBe('d');
  });

  it('takes all rows from the last press to this one, up or down', () => {
    expect(chosen(upTo(from('b'), ids, 'd'))).toBe('bcd');
    expect(chosen(upTo(from('d'), ids, 'b'))).toBe('bcd');
  });

  it('lets a range go again where the last press did', () => {
    const all = allToggled<string>(nothingChosen, ids);
    expect(chosen(upTo(toggled(all, 'b'), ids, 'd'))).toBe('ae');
  });

  it('counts several ranges from the same press', () => {
    expect(chosen(upTo(upTo(from('c'), ids, 'e'), ids, 'a'))).toBe('abcde');
  });

  it('takes the row alone where the last press is listed no more', () => {
    const rest = ['a', 'c', 'd'];
    expect(chosen(upTo(from('b'), rest, 'd'))).toBe('bd');
    expect(chosen(upTo(nothingChosen, ids, 'd'))).toBe('d');
  });

  it('grows and shrinks while shift is held', () => {
    const down = extended(extended<string>(nothingChosen, ids, 'b', 'c'), ids, 'c', 'd');
    expect(chosen(down)).toBe('bcd');
    const back = extended(down, ids, 'd', 'c');
    expect(chosen(back)).toBe('bc');
    expect(chosen(extended(extended(back, ids, 'c', 'b'), ids, 'b', 'a'))).toBe('ab');
  });

  it('takes all that are listed, or none of them, and leaves the others', () => {
    const two = from('a', 'e');
    expect(chosen(allToggled(two, ['a', 'b']))).toBe('abe');
    expect(chosen(allToggled(two, ['a']))).toBe('e');
    expect(howMany(two, ids)).toBe('some');
    expect(howMany(two, ['a', 'e'])).toBe('all');
    expect(howMany(two, [])).toBe('none');
  });

  it('is the rows between, whatever the order of the list (property)', () => {
    const list = fc.uniqueArray(fc.nat(50), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(list, fc.nat(), fc.nat(), (all, x, y) => {
        const [a, b] = [x % all.length, y % all.length];
        const range = upTo(toggled(nothingChosen, all[a] as number), all, all[b] as number);
        const between = all.filter((_, at) => at >= Math.min(a, b) && at <= Math.max(a, b));
        expect(range.chosen).toEqual(new Set(between));
        // Held shift comes to the same, one step at a time.
        let walked: Selection<number> = nothingChosen;
        const step = a <= b ? 1 : -1;
        for (let at = a; at !== b; at += step)
          walked = extended(walked, all, all[at] as number, all[at + step] as number);
        if (a !== b) expect(walked.chosen).toEqual(new Set(between));
      }),
    );
  });
});
