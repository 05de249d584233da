/** A limit is held at a site that its measure has, chosen from those of the shoe or typed. */
import { describe, expect, it } from 'vitest';
import { sitesFor, withMeasureOfLimit } from '../../../app/drafts/limit-sites.ts';
import { draftOfProject, emptyLimit, readProject } from '../../../app/drafts/project.ts';
import { blueprint as en } from '../../../app/words/languages/en/desk/blueprint.ts';
import { blueprint as zh } from '../../../app/words/languages/zh/desk/blueprint.ts';
import { isSite, measures } from '../../../core/records/index.ts';
import { practiceSites } from '../../../core/rounds/index.ts';

const known = [
  { measure: 'stack-height', site: 'forefoot-centre' },
  { measure: 'stack-height', site: 'arch' },
  { measure: 'stack-height', site: 'arch' },
  { measure: 'mass', site: 'shoe' },
] as const;

describe('the sites of a limit', () => {
  it('are those of the shoe first, then the usual ones, each once', () => {
    expect(sitesFor('stack-height', known, '')).toEqual(['forefoot-centre', 'arch', 'heel-centre']);
    expect(sitesFor('tread-depth', [], '')).toEqual([
      'heel-lateral',
      'heel-medial',
      'forefoot-lateral',
      'forefoot-medial',
    ]);
  });

  it('hold the one that stands in the brief, whatever it is', () => {
    expect(sitesFor('mass', [], 'sock')).toEqual(['shoe', 'sock']);
    expect(sitesFor('mass', [], 'shoe')).toEqual(['shoe']);
  });

  it('have a name in both languages, and are words that a record takes', () => {
    for (const site of measures.flatMap((measure) => practiceSites[measure])) {
      expect(isSite(site)).toBe(true);
      expect(en.sites[site]).toBeTruthy();
      expect(zh.sites[site]).toBeTruthy();
    }
  });

  it('follow the measure: a shoe is not weighed at the centre of its heel', () => {
    const weighed = withMeasureOfLimit(emptyLimit, 'mass', []);
    expect(weighed).toMatchObject({ measure: 'mass', site: 'shoe' });
    expect(withMeasureOfLimit(emptyLimit, 'hardness', []).site).toBe('heel-centre');
    expect(withMeasureOfLimit({ ...emptyLimit, site: '' }, 'mass', []).site).toBe('');
    const typed = { ...emptyLimit, site: 'arch', isTyped: true };
    expect(withMeasureOfLimit(typed, 'mass', []).site).toBe('arch');
  });
});

describe('a site that is typed', () => {
  const read = (site: string, isTyped?: boolean, value = '75') => {
    const limit = { ...emptyLimit, site, value, ...(isTyped && { isTyped }) };
    return readProject(
      { ...draftOfProject(null), name: 'K', distance: '500', limits: [limit] },
      null,
    );
  };

  it('is not left empty: that would be every site', () => {
    expect(read('', true)).toMatchObject({ ok: false, troubles: [{ field: 'site', at: 0 }] });
    const every = read('');
    expect(every.ok && 'site' in (every.body.brief.limits[0] ?? {})).toBe(false);
  });

  it('is a word that a record takes, and says so beside what is wrong with the number', () => {
    const typed = read('arch', true);
    expect(typed.ok && typed.body.brief.limits[0]).toMatchObject({ site: 'arch' });
    expect(read('脚弓', true, 'x')).toMatchObject({
      ok: false,
      troubles: [
        { field: 'site', at: 0 },
        { field: 'limit', at: 0 },
      ],
    });
  });
});
