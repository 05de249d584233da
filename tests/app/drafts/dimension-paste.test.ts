/** A block pasted into the table of dimensions: in words or as records keep it, anywhere, each mistake at its cell. */
import { describe, expect, it } from 'vitest';
import { pasteInto } from '../../../app/drafts/dimension-paste.ts';
import { readDimensions } from '../../../app/drafts/dimension-reading.ts';
import {
  dimensionColumns,
  withMeasure,
  type DimensionColumn,
  type DimensionNames,
} from '../../../app/drafts/dimension-rows.ts';
import { emptyDimension, type DimensionDraft } from '../../../app/drafts/round.ts';
import { languageFile } from '../../../app/terminal/languages.ts';

const namesIn = (language: 'en' | 'zh'): DimensionNames => {
  const { glossary, desk } = languageFile(language);
  return {
    measures: glossary.measures,
    units: glossary.units,
    sites: desk.blueprint.sites,
    feet: { both: desk.blueprint.both, left: 'left', right: 'right' },
    columns: desk.blueprint.table.columns,
  };
};
const paste = (
  lines: readonly string[],
  column: DimensionColumn = 'measure',
  rows: readonly DimensionDraft[] = [emptyDimension],
  row = 0,
  language: 'en' | 'zh' = 'en',
) =>
  pasteInto(
    rows,
    { row, column: dimensionColumns.indexOf(column) },
    lines.join('\n'),
    namesIn(language),
  );
const heel: DimensionDraft = {
  ...withMeasure(emptyDimension, 'stack-height'),
  site: 'heel-centre',
  nominal: '36',
  lower: '1',
  upper: '1',
};

describe('a block of cells', () => {
  it('fills rows without a head, with minus and plus as a drawing writes them', () => {
    const { rows, left } = paste([
      'stack-height\theel-centre\t36\t1\t+1,5\tmm',
      'Mass\tOne Shoe\t250\t±5%\t',
      '',
      'hardness\tmidsole-heel\t45\t-2\t2\tshore-a\tleft\t1',
    ]);
    expect(left).toBe(0);
    const { dimensions, troubles } = readDimensions(rows);
    expect(troubles).toEqual([]);
    expect(dimensions).toEqual([
      {
        measure: 'stack-height',
        site: 'heel-centre',
        unit: 'mm',
        nominal: 36,
        lower: -1,
        upper: 1.5,
      },
      { measure: 'mass', site: 'shoe', unit: 'g', nominal: 250, lower: -12.5, upper: 12.5 },
      {
        measure: 'hardness',
        site: 'midsole-heel',
        unit: 'shore-a',
        nominal: 45,
        lower: -2,
        upper: 2,
        foot: 'left',
        leftRight: 1,
      },
    ]);
  });

  it.each([
    ['tabs', '\t'],
    ['commas', ','],
    ['semicolons', ';'],
  ])('finds its columns under a head in any order, parted by %s', (_, mark) => {
    const { rows } = paste(
      [
        ['Measure', 'unit', 'plus', 'minus', 'Nominal', 'site'],
        ['tread-depth', 'mm', '0.3', '0.2', '3', 'forefoot'],
      ].map((cells) => cells.join(mark)),
      'nominal',
    );
    expect(rows).toMatchObject([
      { measure: 'tread-depth', nominal: '3', lower: '0.2', upper: '0.3' },
    ]);
  });

  it('is read by the names of the reader’s language, head and cells', () => {
    const { measures, sites, columns } = namesIn('zh');
    const { rows } = paste(
      [
        `${columns.measure}\t${columns.site}\t${columns.nominal}`,
        `${measures.dimension}\t${sites['back-height'] ?? ''}\t70`,
      ],
      'measure',
      [emptyDimension],
      0,
      'zh',
    );
    expect(rows).toMatchObject([
      { measure: 'dimension', site: 'back-height', unit: 'mm', nominal: '70' },
    ]);
  });

  it('of one column fills that column down, decimal commas and all, and leaves the rest of each row', () => {
    const { rows } = paste(['36,5', '28,0', '11'], 'nominal', [heel, { ...heel, site: 'toe' }]);
    expect(rows).toEqual([
      { ...heel, nominal: '36,5' },
      { ...heel, site: 'toe', nominal: '28,0' },
      { ...emptyDimension, nominal: '11' },
    ]);
  });

  it('goes in from the cell on, and tells how many cells found no place', () => {
    const { rows, left } = paste(['g\tright\t2\textra\t', 'mm\tleft\t1'], 'unit', [heel, heel], 1);
    expect(left).toBe(1);
    expect(rows[0]).toEqual(heel);
    expect(rows[1]).toEqual({ ...heel, unit: 'g', foot: 'right', leftRight: '2' });
    expect(rows[2]).toMatchObject({ unit: 'mm', foot: 'left' });
    // Grams are no unit of a height.
    expect(readDimensions(rows.slice(0, 2)).troubles).toMatchObject([
      { at: 1, field: 'unit', why: 'missing' },
    ]);
  });

  it('keeps a word that is not known at its cell, until something else stands there', () => {
    const { rows } = paste(['height\theel-centre\t36\t1\t1\tinch\tboth feet']);
    const { troubles } = readDimensions(rows);
    expect(troubles).toMatchObject([
      { field: 'measure', why: 'unknown', word: 'height' },
      { field: 'unit', why: 'unknown', word: 'inch' },
      { field: 'foot', why: 'unknown', word: 'both feet' },
    ]);
    const [row] = paste(['mass', ''], 'measure', rows).rows;
    expect(row).toMatchObject({ measure: 'mass', notKnown: { unit: 'inch', foot: 'both feet' } });
  });
});

describe('the rows', () => {
  it('tell every cell that is wrong, and which other row is the same', () => {
    const { dimensions, troubles } = readDimensions([
      heel,
      emptyDimension,
      { ...heel, nominal: '360', lower: '', upper: 'x' },
      { ...heel, site: '鞋', lower: '+2', leftRight: '-1' },
      { ...heel, nominal: '37' },
      { ...emptyDimension, nominal: '5' },
    ]);
    expect(dimensions).toHaveLength(2);
    expect(troubles).toMatchObject([
      { at: 2, field: 'nominal', why: 'range', range: { least: 1, most: 100, unit: 'mm' } },
      { at: 2, field: 'lower', why: 'missing' },
      { at: 2, field: 'upper', why: 'number' },
      { at: 3, field: 'site', why: 'site' },
      { at: 3, field: 'upper', why: 'below-minus' },
      { at: 3, field: 'leftRight', why: 'range' },
      { at: 4, field: 'site', why: 'twice', first: 0 },
      { at: 5, field: 'measure', why: 'missing' },
      { at: 5, field: 'site', why: 'missing' },
      { at: 5, field: 'lower', why: 'missing' },
      { at: 5, field: 'upper', why: 'missing' },
    ]);
  });
});
