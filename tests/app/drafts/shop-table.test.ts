/** The sheet for the shop: each place once, with what the drawing allows; a page for so many pairs. */
import { describe, expect, it } from 'vitest';
import type { Round } from '../../../core/records/index.ts';
import { askedOf, inSheets, PAIRS_A_SHEET, sheetLines } from '../../../app/drafts/shop-table.ts';

const heel = { measure: 'stack-height', site: 'heel-centre', unit: 'mm' } as const;
const blueprint: Round['blueprint'] = [
  { ...heel, nominal: 36, lower: -1, upper: 1.5 },
  {
    measure: 'dimension',
    site: 'back-height',
    unit: 'mm',
    nominal: 70,
    lower: -2,
    upper: 2,
    foot: 'left',
  },
  {
    measure: 'dimension',
    site: 'back-height',
    unit: 'mm',
    nominal: 71,
    lower: -2,
    upper: 2,
    foot: 'right',
  },
];
const limits = [
  { measure: 'stack-height' },
  { measure: 'tread-depth', site: 'heel-lateral' },
] as const;

describe('the lines of the sheet', () => {
  it('are those of the drawing and of the brief, each place once, with its ends', () => {
    expect(sheetLines(blueprint, limits)).toEqual([
      { ...heel, feet: ['left', 'right'], allowed: { least: 35, most: 37.5 } },
      {
        ...{ measure: 'dimension', site: 'back-height', unit: 'mm' },
        ...{ feet: ['left'], allowed: { least: 68, most: 72 } },
      },
      {
        ...{ measure: 'dimension', site: 'back-height', unit: 'mm' },
        ...{ feet: ['right'], allowed: { least: 69, most: 73 } },
      },
      {
        ...{ measure: 'tread-depth', site: 'heel-lateral', unit: 'mm' },
        ...{ feet: ['left', 'right'], allowed: null },
      },
    ]);
    expect(sheetLines([], [])).toEqual([]);
  });

  it('ask for the same as the CSV', () => {
    const asked = askedOf(blueprint, limits);
    for (const { measure, site } of sheetLines(blueprint, limits))
      expect(asked.some((one) => one.measure === measure && one.site === site)).toBe(true);
  });
});

it('pairs go sheet by sheet, and none is lost', () => {
  const pairs = Array.from({ length: 2 * PAIRS_A_SHEET + 1 }, (_, at) => at);
  const sheets = inSheets(pairs);
  expect(sheets.map((one) => one.length)).toEqual([PAIRS_A_SHEET, PAIRS_A_SHEET, 1]);
  expect(sheets.flat()).toEqual(pairs);
  expect(inSheets([])).toEqual([]);
});
