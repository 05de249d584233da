/**
 * A finding as it stands in its form: everything as typed, read back into a record, or which field is wrong. One draft
 * for a new finding, whatever shows it, and for one that is changed.
 */
import type { PartId } from '../../core/foot/index.ts';
import {
  editBody,
  isIn,
  ranges,
  type ChangeVerdict,
  type Finding,
  type Range,
  type RecordId,
} from '../../core/records/index.ts';
import { millimetres } from '../../core/units/index.ts';
import { typedNumber } from './typed.ts';

export interface FindingDraft {
  readonly title: string;
  readonly part: PartId;
  readonly priority: Finding['priority'];
  readonly state: Finding['state'];
  readonly wanted: string;
  /** As typed; empty: it has no size. */
  readonly mm: string;
  /** Empty: not decided. */
  readonly carriedBy: RecordId | '';
  /** SHA-256 of each. */
  readonly photos: readonly string[];
}

/** What every new finding begins with. */
export const newFinding = (title: string, part: PartId): FindingDraft => ({
  title,
  part,
  priority: 'medium',
  state: 'open',
  wanted: '',
  mm: '',
  carriedBy: '',
  photos: [],
});

/** @param write a number as the reader types it */
export const draftOfFinding = (
  finding: Finding,
  write: (value: number) => string,
): FindingDraft => ({
  title: finding.title,
  part: finding.part,
  priority: finding.priority,
  state: finding.state,
  wanted: finding.wanted ?? '',
  mm: finding.wantedMm === undefined ? '' : write(finding.wantedMm),
  carriedBy: finding.carriedBy ?? '',
  photos: finding.photos ?? [],
});

/** What is wrong: the title is missing, or the size cannot be read or lies outside of its range. */
export type FindingTrouble =
  { readonly field: 'title' } | { readonly field: 'mm'; readonly range: Range };

/** What the lead cannot type: where a new finding comes from. */
export type FindingOrigin = Pick<Finding, 'project' | 'round'> &
  Partial<Pick<Finding, 'source' | 'kind' | 'zone' | 'evidence'>>;

export type ReadFinding =
  | { readonly ok: true; readonly body: Finding }
  | { readonly ok: false; readonly trouble: FindingTrouble };

/** As long as one line of a record may be. */
const LINE = 200;

/**
 * Reads a draft.
 * @param from the finding that is changed, whose other fields stay as they are; or where a new one comes from
 */
export const readFinding = (draft: FindingDraft, from: Finding | FindingOrigin): ReadFinding => {
  const title = draft.title.trim().slice(0, LINE);
  if (title === '') return { ok: false, trouble: { field: 'title' } };
  const mm = typedNumber(draft.mm);
  if (mm === null || (mm !== undefined && !isIn(mm, ranges.wantedMm)))
    return { ok: false, trouble: { field: 'mm', range: ranges.wantedMm } };
  const wanted = draft.wanted.trim();
  return {
    ok: true,
    body: editBody<'finding'>(from as Finding, {
      title,
      part: draft.part,
      priority: draft.priority,
      state: draft.state,
      wanted: wanted === '' ? undefined : wanted,
      wantedMm: mm === undefined ? undefined : millimetres(mm),
      carriedBy: draft.carriedBy === '' ? undefined : draft.carriedBy,
      photos: draft.photos.length > 0 ? [...draft.photos] : undefined,
    }),
  };
};

/** The lines of a text, trimmed, without empty ones. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

export interface OutcomeDraft {
  /** The round that was compared; empty: not chosen. */
  readonly round: RecordId | '';
  readonly verdict: ChangeVerdict;
  /** A statement a line. */
  readonly lines: string;
}

type Outcome = NonNullable<Finding['outcome']>;

/** Begins with what was written before or is proposed; else with the round that carries the change. */
export const draftOfOutcome = (
  begin: Outcome | null,
  round: RecordId | undefined,
): OutcomeDraft => ({
  round: begin?.round ?? round ?? '',
  verdict: begin?.verdict ?? 'too-little',
  lines: (begin?.lines ?? []).join('\n'),
});

export type ReadOutcome =
  | { readonly ok: true; readonly body: Finding }
  | { readonly ok: false; readonly field: 'round' | 'lines' };

/**
 * The finding with its outcome.
 * @param written the instant, and the language of lines that were begun with nothing
 * @param begin what the draft began with: its words stay in the language they were written in, known or not
 */
export const readOutcome = (
  draft: OutcomeDraft,
  finding: Finding,
  begin: Outcome | null,
  written: { readonly until: string; readonly language: string },
): ReadOutcome => {
  if (draft.round === '') return { ok: false, field: 'round' };
  const lines = linesOf(draft.lines);
  if (lines.length === 0) return { ok: false, field: 'lines' };
  const language = begin ? begin.language : written.language;
  const outcome: Outcome = {
    ...finding.outcome,
    round: draft.round,
    verdict: draft.verdict,
    until: written.until,
    lines,
  };
  delete outcome.language;
  return {
    ok: true,
    body: editBody<'finding'>(finding, {
      outcome: language === undefined ? outcome : { ...outcome, language },
    }),
  };
};

/** The rounds that can carry a finding's change: later ones, and the one that was chosen already. */
export const carriersOf = <R extends { readonly id: RecordId; readonly order: number }>(
  rounds: readonly R[],
  shownBy: RecordId,
  chosen: RecordId | '' = '',
): readonly R[] => {
  const order = rounds.find(({ id }) => id === shownBy)?.order ?? 0;
  return rounds.filter((one) => one.id === chosen || one.order > order);
};
