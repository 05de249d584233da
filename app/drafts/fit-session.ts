/** A session of fit trials as a lead types it: name, when, which round, which pairs. Pure. */
import * as z from 'zod/mini';
import { editBody, type FitSession, type RecordId } from '../../core/records/index.ts';
import { toInstant, toLocalMinute } from '../parts/instant.ts';
import type { KeptSchema } from './kept-schema.ts';

export interface FitSessionDraft {
  readonly name: string;
  /** As the browser's date-and-time control gives it. */
  readonly at: string;
  readonly round: string;
  readonly pairs: readonly string[];
}

export const fitSessionDraftSchema: KeptSchema<FitSessionDraft> = z.object({
  name: z.string(),
  at: z.string(),
  round: z.string(),
  pairs: z.array(z.string()),
});

/** @param pairs of the round, chosen from the start: most sessions try all of them on */
export const newFitSession = (
  nowMs: number,
  round: string,
  pairs: readonly string[],
): FitSessionDraft => ({ name: '', at: toLocalMinute(nowMs), round, pairs });

export const draftOfFitSession = ({ name, at, round, pairs }: FitSession): FitSessionDraft => ({
  ...{ name, round, pairs },
  at: toLocalMinute(at),
});

export type FitSessionTrouble = 'name' | 'at' | 'pairs';

export const fitSessionTroubles = (draft: FitSessionDraft): readonly FitSessionTrouble[] => [
  ...(draft.name.trim() === '' ? (['name'] as const) : []),
  ...(Number.isNaN(new Date(draft.at).getTime()) ? (['at'] as const) : []),
  ...(draft.pairs.length === 0 ? (['pairs'] as const) : []),
];

/** As long as one line of a record may be. */
const LINE = 200;

/** Null: something is wrong. @param before the one that is changed */
export const readFitSession = (
  draft: FitSessionDraft,
  project: RecordId,
  before: FitSession | null,
): FitSession | null => {
  if (fitSessionTroubles(draft).length > 0) return null;
  // The field has no seconds: what still stands as it was shown is the stored instant.
  const isSameAt = before !== null && toLocalMinute(before.at) === draft.at;
  const said = {
    project,
    round: draft.round as RecordId,
    name: draft.name.trim().slice(0, LINE),
    at: isSameAt ? before.at : toInstant(new Date(draft.at).getTime()),
    pairs: draft.pairs as RecordId[],
  };
  return editBody<'fit-session'>(before ?? said, said);
};
