import { describe, expect, it } from 'vitest';
import { cautionIn, painOfForm, withCaution } from '../../../app/drafts/run-pain.ts';
import { emptyRunForm, formOfRun, type RunForm } from '../../../app/drafts/run.ts';
import type { Run } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const NOW = Date.UTC(2026, 5, 1, 8);
const form = (part: Partial<RunForm> = {}): RunForm => ({
  ...emptyRunForm(idOf(3), null),
  ...part,
});
const pain = (more: Record<string, unknown> = {}) =>
  ({ score: 5, isNew: true, ...more }) as NonNullable<Run['pain']>;
const answers = { pain: 5, painIsNew: true };

describe('the caution of the form', () => {
  it('is to be read where the answers call for it, and is read once', () => {
    expect(cautionIn(form())).toBe('none');
    expect(cautionIn(form({ pain: 2 }))).toBe('none');
    expect(cautionIn(form({ pain: 3 }))).toBe('unread');
    expect(cautionIn(form({ pain: 1, painSigns: ['limp'] }))).toBe('unread');
    expect(cautionIn(form({ pain: 3, cautionRead: true }))).toBe('read');
  });

  it('is read anew where it applies anew', () => {
    const read = withCaution(form({ ...answers, cautionRead: true }));
    expect(cautionIn(withCaution({ ...read, pain: 8 }))).toBe('read');
    const gone = withCaution({ ...read, painIsNew: false });
    expect(cautionIn(gone)).toBe('none');
    expect(cautionIn(withCaution({ ...gone, painIsNew: true }))).toBe('unread');
  });

  it('was read for a run that is saved, and not for one that never called for it', () => {
    const units = { distance: 'km', temperature: 'C' } as const;
    const saved = (told: NonNullable<Run['pain']>) =>
      formOfRun(
        { pair: idOf(3), distanceM: 5000, startedAt: '2026-05-01T07:00:00Z', pain: told } as Run,
        units,
      );
    expect(cautionIn(saved(pain()))).toBe('read');
    expect(cautionIn({ ...saved(pain({ score: 2 })), pain: 6 })).toBe('unread');
  });
});

describe('the pain of a run that is corrected', () => {
  const over = { over: '2026-05-20T08:00:00Z', toldAt: '2026-05-19T08:00:00Z', later: 'kept' };

  it('stays over where its answers stay, in whatever order the signs were ticked', () => {
    const before = pain({ signs: ['limp', 'swelling'], ...over });
    const same = form({ ...answers, painSigns: ['swelling', 'limp'] });
    expect(painOfForm(same, before, NOW)).toMatchObject(over);
  });

  it('told anew it is over no longer, and what is not shown stays', () => {
    const told = painOfForm(form({ ...answers, pain: 8 }), pain(over), NOW);
    expect(told).not.toHaveProperty('over');
    expect(told).toMatchObject({ score: 8, isNew: true, later: 'kept' });
    expect(Date.parse(told?.toldAt ?? '')).toBe(NOW);
  });

  it('told for the first time it has no time of its own', () => {
    expect(painOfForm(form(answers), undefined, NOW)).toEqual({ score: 5, isNew: true });
  });

  it('loses the signs that were taken away', () => {
    const told = painOfForm(form(answers), pain({ signs: ['limp'] }), NOW);
    expect(told).not.toHaveProperty('signs');
  });
});
