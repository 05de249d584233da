/** Whether a change arrived, in sentences of both languages: the one line, what stands behind it, what would settle it. */
import { describe, expect, it } from 'vitest';
import { spokenIn } from '../../../app/report/spoken.tsx';
import { languageFile, languages } from '../../../app/terminal/languages.ts';
import {
  absentLine,
  arrivalDetails,
  arrivalLine,
  arrivalLines,
  foundLine,
  measureLine,
} from '../../../app/words/say-arrival.ts';
import type { ChangeArrival, FoundDifference, PlaceArrival } from '../../../core/review/index.ts';
import {
  arrivalWords,
  type ArrivalWord,
  type SampleDifference,
} from '../../../core/rounds/index.ts';
import { idOf } from '../../core/records/make.ts';

const measured: SampleDifference = {
  difference: 0.686,
  interval: { lower: 0.46, upper: 0.91 },
  p: 0.001,
  differs: true,
  earlier: { n: 8, mean: 61.5 },
  later: { n: 7, mean: 62.2 },
  against: 'round',
  sizes: [255, 260, 290],
  scatter: 0.2,
  gaugesUnknown: false,
};
const place = (word: ArrivalWord, more: Partial<PlaceArrival> = {}): PlaceArrival => ({
  measure: 'dimension',
  site: 'collar-height-lateral',
  unit: 'mm',
  word,
  wanted: 3,
  measured,
  unread: [],
  needed: 3,
  ...more,
});
const arrival = (word: ArrivalWord, more: Partial<PlaceArrival> = {}): ChangeArrival => ({
  word,
  change: { part: 'upper-pattern', line: 'collar', direction: 'higher' },
  places: [place(word, more)],
});
const speakerOf = (language: string) =>
  spokenIn(languageFile(language), { rounds: {}, pairs: {}, testers: {} }, 'km', 'UTC').speaker;
const en = speakerOf('en');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the line of a change', () => {
  it('says what was measured of what was asked for', () => {
    expect(plain(arrivalLine(arrival('partly'), en))).toBe('Arrived: 0.7 of 3 mm: partly');
    expect(plain(arrivalLine(arrival('partly'), speakerOf('zh')))).toBe(
      '要求 3 mm，实测 0.7：部分到位',
    );
    // Down by 3: what went down counts, what went up bears a minus.
    const down = { ...measured, difference: -2.9 };
    expect(plain(arrivalLine(arrival('arrived', { wanted: -3, measured: down }), en))).toBe(
      'Arrived: 2.9 of 3 mm: all of it',
    );
    expect(plain(arrivalLine(arrival('not', { wanted: -3 }), en))).toBe(
      'Arrived: −0.7 of 3 mm: not in the shoe',
    );
    expect(plain(arrivalLine(arrival('partly', { wanted: 0.75 }), en))).toBe(
      'Arrived: 0.69 of 0.75 mm: partly',
    );
  });

  it('says where nothing was measured, one pair alone, no amount is known, or nothing can be', () => {
    expect(arrivalLine(arrival('not-measured', { measured: null }), en)).toBe(
      'Arrived: not measured yet',
    );
    const single = { ...measured, interval: null };
    expect(plain(arrivalLine(arrival('not-measured', { measured: single }), en))).toBe(
      'Arrived: 0.7 of 3 mm on one pair: too few to say',
    );
    expect(plain(arrivalLine(arrival('arrived', { wanted: null }), en))).toBe(
      'Arrived: +0.69 mm: all of it',
    );
    expect(arrivalLine({ ...arrival('not-measured'), places: [] }, en)).toMatch(
      /cannot be measured/,
    );
  });

  it.each(languages)('has a word of its own for each case in %s', (language) => {
    const speaker = speakerOf(language);
    const lines = arrivalWords.map((word) => arrivalLine(arrival(word), speaker));
    expect(new Set(lines).size).toBe(arrivalWords.length);
    for (const line of lines) expect(line).not.toMatch(/undefined|null|NaN/);
  });
});

describe('what stands behind it', () => {
  it('is the interval, the pairs, their sizes, and gauges that are not the same', () => {
    const unknown = { ...measured, gaugesUnknown: true };
    expect(arrivalDetails(arrival('partly', { measured: unknown }), en).map(plain)).toEqual([
      'Collar height, lateral: between +0.5 mm and +0.9 mm.',
      '7 pairs against 8 of the round before, in sizes 255 to 290 mm, each against its own.',
      'Read with other gauges than the round before: part of it may be the gauge.',
    ]);
    const drawn = { ...measured, against: 'nominal' as const, sizes: [270], interval: null };
    expect(arrivalDetails(arrival('partly', { measured: drawn }), en)).toEqual([
      '7 pairs in size 270 mm, against the drawing of the round before.',
    ]);
    expect(arrivalDetails(arrival('not-measured', { measured: null }), en)).toEqual([]);
  });

  it('is what would settle it, while it is not', () => {
    const codes = (ids: readonly string[]) => `${ids.length} pairs`;
    const open = { unread: [idOf(1), idOf(2)] };
    expect(measureLine(arrival('open', open), en, codes)).toBe(
      'Measure the collar height, lateral on 2 pairs. 3 pairs of each round, both shoes, should settle it.',
    );
    expect(measureLine(arrival('not-measured', { ...open, needed: null }), en, codes)).toBe(
      'Measure the collar height, lateral on 2 pairs.',
    );
    expect(measureLine(arrival('open'), en, codes)).toMatch(/^No new pair is left/);
    expect(measureLine(arrival('partly', open), en, codes)).toBeNull();
  });

  it('withholds the verdict of a change that is not in the shoe', () => {
    const of = (word: ArrivalWord, verdict: string) =>
      absentLine({ arrival: arrival(word), found: { verdict } as never }, en);
    expect(of('not', 'better')).toBe('It is better, but the change was not in the shoe.');
    expect(of('not', 'worse')).toBe('It is worse, but the change was not in the shoe.');
    expect(of('not', 'no-different')).toBe(en.desk.arrival.absent);
    expect(of('partly', 'better')).toBeNull();
    expect(arrivalLines({ arrival: null, found: null }, en)).toEqual([]);
    expect(arrivalLines({ arrival: arrival('not'), found: null }, en).at(-1)).toBe(
      en.desk.arrival.absent,
    );
  });
});

describe.each(languages)('differences that nobody listed in %s', (language) => {
  const speaker = speakerOf(language);
  const found: readonly FoundDifference[] = [
    { of: 'last', earlier: 'L07', later: 'L08' },
    { of: 'last-size', field: 'ballWidthMm', earlier: 97, later: 98 },
    { of: 'layers', zone: 'U3', earlier: 2, later: 3 },
    {
      of: 'reading',
      measure: 'mass',
      site: 'shoe',
      unit: 'g',
      measured: { ...measured, difference: 9 },
    },
  ];
  it('are each a line with both figures', () => {
    const lines = found.map((one) => foundLine(one, speaker));
    expect(new Set(lines).size).toBe(4);
    expect(lines[0]).toMatch(/L07.*L08/);
    expect(lines[1]).toMatch(/97.*98/);
    expect(lines[2]).toMatch(/2.*3/);
    expect(lines[3]).toContain('+9');
  });
});
