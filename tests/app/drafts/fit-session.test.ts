/** A session of fit trials as a lead types it. */
import { describe, expect, it } from 'vitest';
import {
  draftOfFitSession,
  fitSessionDraftSchema,
  fitSessionTroubles,
  newFitSession,
  readFitSession,
} from '../../../app/drafts/fit-session.ts';
import { keptDraft } from '../../../app/drafts/kept.ts';
import { readBody } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const [PROJECT, ROUND, PAIR] = [idOf(1), idOf(2), idOf(60)];
const NOW = Date.UTC(2026, 11, 2, 9);
const draft = { ...newFitSession(NOW, ROUND, [PAIR]), name: '  Lab ' };

describe('a session of fit trials', () => {
  it('is a record of its round and pairs', () => {
    const body = readFitSession(draft, PROJECT, null);
    expect(body).toMatchObject({ project: PROJECT, round: ROUND, name: 'Lab', pairs: [PAIR] });
    expect(Date.parse(body?.at ?? '')).toBe(NOW);
    expect(readBody('fit-session', body).ok).toBe(true);
  });

  it('needs a name, a time and a pair: all said at once', () => {
    const empty = { ...draft, name: ' ', at: '', pairs: [] };
    expect(fitSessionTroubles(empty)).toEqual(['name', 'at', 'pairs']);
    expect(readFitSession(empty, PROJECT, null)).toBeNull();
    expect(fitSessionTroubles(draft)).toEqual([]);
  });

  it('that is changed keeps its instant to the second and what a newer app wrote', () => {
    const before = {
      ...{ project: PROJECT, round: ROUND, name: 'Lab', pairs: [PAIR], newer: 1 },
      ...{ at: '2026-12-02T09:00:42+00:00', closed: '2026-12-03T09:00:00+00:00' },
    };
    const changed = readFitSession(
      { ...draftOfFitSession(before), name: 'Store' },
      PROJECT,
      before,
    );
    expect(changed).toEqual({ ...before, name: 'Store' });
  });

  it('that is half typed comes back as it was left', () => {
    expect(keptDraft({ of: '', draft }, '', fitSessionDraftSchema)).toEqual(draft);
    expect(
      keptDraft({ of: '', draft: { ...draft, pairs: 3 } }, '', fitSessionDraftSchema),
    ).toBeNull();
  });
});
