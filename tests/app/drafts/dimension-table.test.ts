/** Dimensions pasted from a spreadsheet: with tabs or commas, in words or as they are kept, each mistake at its cell. */
import { describe, expect, it } from 'vitest';
import { readDimensionTable, type DimensionNames } from '../../../app/drafts/dimension-table.ts';
import { languageFile } from '../../../app/terminal/languages.ts';

const namesIn = (language: 'en' | 'zh'): DimensionNames => {
  const { glossary, desk } = languageFile(language);
  return {
    measures: glossary.measures,
    units: glossary.units,
    sites: desk.blueprint.sites,
    feet: { both: desk.blueprint.both, left: 'left', right: 'right' },
  };
};
const read = (lines: readonly string[], language: 'en' | 'zh' = 'en') =>
  readDimensionTable(lines.join('\n'), namesIn(language));

describe('pasted dimensions', () => {
  it('are read without a head, with tabs, with minus and plus as a drawing writes them', () => {
    const { dimensions, troubles } = read([
      'stack-height\theel-centre\t36\t1\t+1,5\tmm',
      'Mass\tOne Shoe\t250\t±5%\t',
      '',
      'hardness\tmidsole-heel\t45\t-2\t2\tshore-a\tleft\t1',
    ]);
    expect(troubles).toEqual([]);
    expect(dimensions).toMatchObject([
      { measure: 'stack-height', site: 'heel-centre', unit: 'mm', lower: '-1', upper: '1,5' },
      { measure: 'mass', site: 'shoe', unit: 'g', lower: '-5%', upper: '5%', foot: 'both' },
      { measure: 'hardness', unit: 'shore-a', foot: 'left', lower: '-2', leftRight: '1' },
    ]);
  });

  it('are read under a head in any order, with commas', () => {
    const { dimensions, troubles } = read([
      'Measure,unit,plus,minus,nominal,site',
      'tread-depth,mm,0.3,0.2,3,forefoot',
    ]);
    expect(troubles).toEqual([]);
    expect(dimensions).toMatchObject([{ nominal: '3', lower: '-0.2', upper: '0.3' }]);
  });

  it('are read by the names of the reader’s language', () => {
    const { measures, sites } = namesIn('zh');
    const { dimensions } = read(
      [`${measures.dimension}\t${sites['back-height'] ?? ''}\t70\t2\t2`],
      'zh',
    );
    expect(dimensions).toMatchObject([{ measure: 'dimension', site: 'back-height', unit: 'mm' }]);
  });

  it('keep what is right, and tell each mistake by line and column', () => {
    const { dimensions, troubles } = read([
      'measure,site,nominal,minus,plus,unit',
      'stack-height,heel-centre,36,1,1,mm',
      'height,heel-centre,36,1,1,mm',
      'stack-height,heel-centre,360,1,,mm',
      'stack-height,heel-centre,,x,1,g',
      'mass,鞋,250,1,1,g',
    ]);
    expect(dimensions).toHaveLength(1);
    expect(troubles.map(({ line, column, why }) => `${line} ${column} ${why}`)).toEqual([
      '3 measure unknown',
      '4 nominal number',
      '4 plus missing',
      '5 unit unknown',
      '6 site site',
    ]);
    expect(troubles[1]?.range).toMatchObject({ most: 100, unit: 'mm' });
  });
});
