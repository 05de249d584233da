/** The search over everything, on the desk's side: what is typed as a day, and which places are meant. */
import { describe, expect, it } from 'vitest';
import { placesFound } from '../../../../app/desk/search/places-found.ts';
import { spanTyped } from '../../../../app/desk/search/typed-day.ts';

const now = new Date(2026, 10, 30, 12).getTime();
const days = (typed: string) => {
  const span = spanTyped(typed, now);
  const day = (ms: number) => {
    const at = new Date(ms);
    return `${at.getFullYear()}-${at.getMonth() + 1}-${at.getDate()}`;
  };
  return span && `${day(span.fromMs)} ${day(span.untilMs)}`;
};

describe('a day that is typed', () => {
  it('is read however it is written', () => {
    for (const typed of [
      '17 Nov 2026',
      '2026-11-17',
      '17.11.2026',
      '2026年11月17日',
      'Nov 17, 2026',
    ])
      expect(days(typed), typed).toBe('2026-11-17 2026-11-18');
  });

  it('without a year is the latest one that is not ahead', () => {
    for (const typed of ['17 Nov', 'Nov 17', '17.11.', '17/11', '11月17日'])
      expect(days(typed), typed).toBe('2026-11-17 2026-11-18');
    expect(days('3 Dec')).toBe('2025-12-3 2025-12-4');
  });

  it('may be a whole month', () => {
    for (const typed of ['Nov 2026', 'november 2026', '2026-11', '2026年11月'])
      expect(days(typed), typed).toBe('2026-11-1 2026-12-1');
  });

  it('is none where it is a code or words', () => {
    for (const typed of ['', '637', 'T05', 'tongue', '31 Feb 2026', 'BOX-1', '鞋舌', '42.5'])
      expect(days(typed), typed).toBe(null);
  });
});

describe('places', () => {
  const places = ['Runs', 'Rounds, blueprints and pairs', 'Pairs', 'Report', '跑步记录'].map(
    (name) => ({ name, href: name }),
  );
  const names = (typed: string, most = 4) =>
    placesFound(places, typed, most).map((one) => one.name);
  it('are found by how their name begins, then by a word of it', () => {
    expect(names('pairs')).toEqual(['Pairs', 'Rounds, blueprints and pairs']);
    expect(names('R')).toEqual(['Runs', 'Rounds, blueprints and pairs', 'Report']);
    expect(names('r', 2)).toHaveLength(2);
    expect(names('记录')).toEqual(['跑步记录']);
    expect(names(' ')).toEqual([]);
    expect(names('zone')).toEqual([]);
  });
});
