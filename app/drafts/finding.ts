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
import { toInstant, toLocalDay } from '../parts/instant.ts';
import {
  changeTroubles,
  draftOfChange,
  emptyChangeForm,
  readChange,
  saysChange,
  type ChangeFormDraft,
  type ChangeTrouble,
} from './change.ts';
import { typedNumber } from './typed.ts';

export interface FindingDraft {
  readonly title: string;
  readonly part: PartId;
  readonly priority: Finding['priority'];
  readonly state: Finding['state'];
  readonly wanted: string;
  /** As typed; empty: it has no size. */
  readonly mm: string;
  /** The same in figures; nothing said: in words alone. Its part is that of the finding. */
  readonly change: ChangeFormDraft;
  /** By when, as the browser's date control gives it; empty: nobody said. */
  readonly due: string;
  /** Empty: not decided. */
  readonly carriedBy: RecordId | '';
  /** Title and wish in another language; its tag is empty where it is not known which one the finding is in. */
  readonly other: { readonly language: string; readonly title: string; readonly wanted: string };
  /** SHA-256 of each. */
  readonly photos: readonly string[];
}

/** A new finding that is not made where a complaint is shown: what shows it is asked too. */
export interface NewFindingDraft {
  readonly finding: FindingDraft;
  readonly round: RecordId;
  readonly source: Exclude<NonNullable<Finding['source']>, 'complaint'>;
  /** Of what was chosen among what the source shows; empty: the first. */
  readonly key: string;
  /** The lead's own, a statement a line. */
  readonly lines: string;
  /** What was typed; the rest is as what was chosen has it. */
  readonly typed: { readonly title: boolean; readonly part: boolean };
}

/** The language that a finding is not written in, of the two of the desk; empty where its own is not known. */
const otherThan = (own: string | undefined): string =>
  own === undefined ? '' : /^en\b/.test(own) ? 'zh' : 'en';

/**
 * What every new finding begins with.
 * @param language it is written in; absent: nothing is asked in another one
 */
export const newFinding = (title: string, part: PartId, language?: string): FindingDraft => ({
  title,
  part,
  priority: 'medium',
  state: 'open',
  wanted: '',
  mm: '',
  change: emptyChangeForm(part),
  due: '',
  carriedBy: '',
  other: { language: otherThan(language), title: '', wanted: '' },
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
  change: finding.change ? draftOfChange(finding.change, write) : emptyChangeForm(finding.part),
  due: finding.due === undefined ? '' : toLocalDay(finding.due),
  carriedBy: finding.carriedBy ?? '',
  other: {
    language: finding.otherWords?.language ?? otherThan(finding.evidence?.language),
    title: finding.otherWords?.title ?? '',
    wanted: finding.otherWords?.wanted ?? '',
  },
  photos: finding.photos ?? [],
});

/** What is wrong: the title is missing, the day is none, or the size cannot be read or lies outside of its range. */
export type FindingTrouble =
  | { readonly field: 'title' | 'due' }
  | { readonly field: 'mm'; readonly range: Range }
  | ChangeTrouble;

/** What the lead cannot type: where a new finding comes from. */
export type FindingOrigin = Pick<Finding, 'project' | 'round'> &
  Partial<Pick<Finding, 'source' | 'kind' | 'zone' | 'evidence' | 'fitSession' | 'damage'>>;

export type ReadFinding =
  | { readonly ok: true; readonly body: Finding }
  | { readonly ok: false; readonly troubles: readonly FindingTrouble[] };

/** As long as one line of a record may be. */
const LINE = 200;

/** Noon, so that the day is the same one a few time zones away. */
const instantOfDay = (day: string): number => new Date(`${day}T12:00`).getTime();

/** Everything that is wrong with a draft. */
export const findingTroubles = (draft: FindingDraft): readonly FindingTrouble[] => {
  const mm = typedNumber(draft.mm);
  return [
    ...(draft.title.trim() === '' ? [{ field: 'title' } as const] : []),
    ...(mm === null || (mm !== undefined && !isIn(mm, ranges.wantedMm))
      ? [{ field: 'mm', range: ranges.wantedMm } as const]
      : []),
    ...(saysChange(draft.change) ? changeTroubles(draft.change) : []),
    ...(draft.due !== '' && Number.isNaN(instantOfDay(draft.due))
      ? [{ field: 'due' } as const]
      : []),
  ];
};

/** Undefined: nothing is said in the other language. */
const readOther = (
  { language, title, wanted }: FindingDraft['other'],
  before: Finding['otherWords'],
): Finding['otherWords'] => {
  const typed = [title.trim().slice(0, LINE), wanted.trim()] as const;
  if (language === '' || typed.every((one) => one === '')) return undefined;
  const { title: _title, wanted: _wanted, ...kept } = before ?? {};
  return {
    ...kept,
    language,
    ...(typed[0] !== '' && { title: typed[0] }),
    ...(typed[1] !== '' && { wanted: typed[1] }),
  };
};

/** The day as it was saved where it was not touched. */
const readDue = (due: string, before: string | undefined): string | undefined => {
  if (due === '') return undefined;
  return before !== undefined && toLocalDay(before) === due ? before : toInstant(instantOfDay(due));
};

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param from the finding that is changed, whose other fields stay as they are; or where a new one comes from
 */
export const readFinding = (draft: FindingDraft, from: Finding | FindingOrigin): ReadFinding => {
  const troubles = findingTroubles(draft);
  if (troubles.length > 0) return { ok: false, troubles };
  const before: Partial<Finding> = from;
  const mm = typedNumber(draft.mm) ?? undefined;
  const wanted = draft.wanted.trim();
  return {
    ok: true,
    body: editBody<'finding'>(from as Finding, {
      title: draft.title.trim().slice(0, LINE),
      part: draft.part,
      priority: draft.priority,
      state: draft.state,
      wanted: wanted === '' ? undefined : wanted,
      wantedMm: mm === undefined ? undefined : millimetres(mm),
      change: saysChange(draft.change)
        ? (readChange({ ...draft.change, part: draft.part }, before.change ?? null) ?? undefined)
        : undefined,
      otherWords: readOther(draft.other, before.otherWords),
      due: readDue(draft.due, before.due),
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
  | { readonly ok: false; readonly missing: readonly ('round' | 'lines')[] };

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
  const lines = linesOf(draft.lines);
  if (draft.round === '' || lines.length === 0)
    return {
      ok: false,
      missing: [
        ...(draft.round === '' ? (['round'] as const) : []),
        ...(lines.length === 0 ? (['lines'] as const) : []),
      ],
    };
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
