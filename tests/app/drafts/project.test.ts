/** A brief in its form comes back as it was, with what no form knows; what cannot be is told by its field. */
import { describe, expect, it } from 'vitest';
import {
  archived,
  draftOfProject,
  emptyLimit,
  projectLike,
  readProject,
  type ProjectDraft,
} from '../../../app/drafts/project.ts';
import { readBody, type Project } from '../../../core/records/index.ts';
import { metres, millimetres as mm } from '../../../core/units/index.ts';

const project: Project = {
  name: 'K1',
  brief: {
    runner: 'neutral',
    use: 'daily-training',
    surfaces: ['road', 'track'],
    distanceM: metres(600_000),
    allowedRate: { complaint: 0.05, pain: 0.01, swelling: 0.02 },
    limits: [
      {
        measure: 'energy-returned',
        site: 'heel-centre',
        bound: 'at-least',
        value: 0.75,
        basis: 'share-of-new',
        ofANewerApp: 1,
      },
      { measure: 'tread-depth', bound: 'at-least', value: 1, basis: 'reading' },
    ],
    attributes: ['overall', 'toe-room'],
    feet: { lengthMm: [mm(250), mm(290)], instep: 'high' },
    words: 'kept',
  },
  archived: '2026-11-01T00:00:00+01:00',
  colour: 'kept',
};
const draft = draftOfProject(project);
const trouble = (change: Partial<ProjectDraft>) => {
  const read = readProject({ ...draft, ...change }, project);
  return read.ok ? null : read.troubles[0];
};

describe('a brief’s draft', () => {
  it('reads back to the same project, with what no form knows', () => {
    const read = readProject(draft, project);
    expect(read).toEqual({ ok: true, body: project });
    expect(read.ok && readBody('project', read.body).ok).toBe(true);
  });

  it('lets go of what is cleared', () => {
    const feet = { lengthFrom: '', lengthTo: ' ', widthFrom: '', widthTo: '' };
    const [first] = draft.limits;
    const read = readProject(
      { ...draft, feet, limits: first ? [{ ...first, site: ' ' }] : [] },
      project,
    );
    expect(read.ok && read.body.brief.feet).toEqual({ instep: 'high' });
    expect(read.ok && read.body.brief.limits).toEqual([
      {
        measure: 'energy-returned',
        bound: 'at-least',
        value: 0.75,
        basis: 'share-of-new',
        ofANewerApp: 1,
      },
    ]);
  });

  it('says that testers are not told only where that was taken back', () => {
    const told = (before: Project, tellTesters: boolean) => {
      const read = readProject({ ...draftOfProject(before), tellTesters }, before);
      return read.ok ? read.body.brief.tellTesters : null;
    };
    expect(draft.tellTesters).toBe(true);
    expect(told(project, true)).toBeUndefined();
    expect(told(project, false)).toBe(false);
    const quiet = { ...project, brief: { ...project.brief, tellTesters: false } };
    expect(draftOfProject(quiet).tellTesters).toBe(false);
    expect(told(quiet, true)).toBeUndefined();
  });

  it('of a new project asks the usual questions and nothing of the feet', () => {
    const read = readProject({ ...draftOfProject(null), name: ' K2 ', distance: '500' }, null);
    expect(read.ok && read.body.name).toBe('K2');
    expect(read.ok && read.body.brief.attributes).toContain('heel-hold');
    expect(read.ok && 'feet' in read.body.brief).toBe(false);
    expect(read.ok && readBody('project', read.body).ok).toBe(true);
  });

  it('tells which field is wrong', () => {
    expect(trouble({ name: ' ' })).toEqual({ field: 'name' });
    expect(trouble({ distance: '0.2' })).toEqual({ field: 'distance', typed: 0.2 });
    expect(trouble({ distance: '2000' })).toEqual({ field: 'distance', typed: 2000 });
    expect(trouble({ distance: 'far' })).toEqual({ field: 'distance', typed: null });
    expect(trouble({ on: new Set() })).toEqual({ field: 'surfaces' });
    expect(trouble({ allowed: '101' })).toEqual({ field: 'allowed', typed: 101 });
    expect(trouble({ allowedPain: '' })).toEqual({ field: 'allowedPain', typed: null });
    expect(trouble({ feet: { ...draft.feet, lengthTo: '240' } })).toEqual({ field: 'lengthMm' });
    expect(trouble({ feet: { ...draft.feet, widthFrom: '90' } })).toEqual({ field: 'widthMm' });
    expect(trouble({ limits: [...draft.limits, { ...emptyLimit, value: '-1' }] })).toMatchObject({
      field: 'limit',
      at: 2,
      typed: null,
    });
  });
});

describe('a draft with several mistakes', () => {
  it('tells all of them', () => {
    const read = readProject(
      {
        ...draft,
        name: '',
        distance: 'far',
        allowed: '101',
        feet: { ...draft.feet, widthFrom: '90' },
        limits: ['', '80', '-1'].map((value) => ({ ...emptyLimit, value })),
      },
      null,
    );
    expect(!read.ok && read.troubles).toMatchObject([
      { field: 'name' },
      { field: 'distance' },
      { field: 'allowed' },
      { field: 'widthMm' },
      { field: 'limit', at: 0 },
      { field: 'limit', at: 2 },
    ]);
  });
});

describe('a project that is put away', () => {
  it('says since when, and nothing of it when it is brought back', () => {
    const { archived: _archived, ...open } = project;
    expect(archived(project, null)).toEqual(open);
    expect(archived(open, '2026-11-18T00:00:00Z')).toEqual({
      ...open,
      archived: '2026-11-18T00:00:00Z',
    });
    expect(readBody('project', archived(open, '2026-11-18T00:00:00Z')).ok).toBe(true);
    expect(readBody('project', { ...open, archived: 'yesterday' }).ok).toBe(false);
  });
});

describe('a project that begins as another', () => {
  it('has its brief with every limit, and neither its name nor its archive', () => {
    const like = projectLike(project);
    expect(like).toEqual({ name: '', brief: project.brief, colour: 'kept' });
    const read = readProject({ ...draftOfProject(like), name: ' K2 ', distance: '700' }, like);
    expect(read).toEqual({
      ok: true,
      body: {
        name: 'K2',
        brief: { ...project.brief, distanceM: metres(700_000) },
        colour: 'kept',
      },
    });
    expect(read.ok && readBody('project', read.body).ok).toBe(true);
  });

  it('is not saved before it has a name of its own', () => {
    const like = projectLike(project);
    expect(readProject(draftOfProject(like), like)).toEqual({
      ok: false,
      troubles: [{ field: 'name' }],
    });
  });
});
