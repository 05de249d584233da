/**
 * A specialist's answer to a finding as it stands in its form, read back into a proposal, or everything that is wrong
 * with it. Pure: the day of today comes with the call.
 */
import type { Finding, Proposal, ProposalAnswer } from '../../core/records/index.ts';
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
import { typedLine } from './typed.ts';

export interface ProposalDraft {
  /** Empty: not chosen. */
  readonly answer: ProposalAnswer | '';
  readonly change: ChangeFormDraft;
  /** The day of the next sample, as the browser's date control gives it; empty: nobody knows yet. */
  readonly sampleDay: string;
  readonly words: string;
  /** SHA-256 of each sketch and photo. */
  readonly photos: readonly string[];
}

export type ProposalTrouble =
  | ChangeTrouble
  | { readonly field: 'answer' }
  /** Why it cannot be done, or what the other way is. */
  | { readonly field: 'words'; readonly why: 'cannot' | 'other' }
  | { readonly field: 'sampleDay'; readonly why: 'none' | 'past' };

/** What a finding says of itself to who answers it. */
type Asked = Pick<Finding, 'part' | 'change' | 'wantedMm'>;

/** The change that is asked for, to begin with: as it was structured, or at least its part and size. */
export const askedChange = (
  { part, change, wantedMm }: Asked,
  write: (value: number) => string,
): ChangeFormDraft =>
  change
    ? draftOfChange(change, write)
    : {
        ...emptyChangeForm(part),
        amount: wantedMm === undefined ? '' : write(Math.abs(wantedMm)),
      };

export const newProposal = (finding: Asked, write: (value: number) => string): ProposalDraft => ({
  answer: '',
  change: askedChange(finding, write),
  sampleDay: '',
  words: '',
  photos: [],
});

/** @param write a number as the reader types it */
export const draftOfProposal = (
  { answer, change, sampleAt, words, photos }: Proposal,
  finding: Asked,
  write: (value: number) => string,
): ProposalDraft => ({
  answer,
  change: change ? draftOfChange(change, write) : askedChange(finding, write),
  sampleDay: sampleAt === undefined ? '' : toLocalDay(sampleAt),
  words: words ?? '',
  photos: photos ?? [],
});

/** Whether the answer says what changes: another way does, and a "can" to what was asked for in words alone. */
export const asksForChange = (
  { answer }: Pick<ProposalDraft, 'answer'>,
  { change }: Pick<Finding, 'change'>,
): boolean => answer === 'other' || (answer === 'can' && change === undefined);

/** Whether something is said of a change that was not begun with: an amount that only repeats the finding's is none. */
const saysOwnChange = (draft: ProposalDraft, finding: Asked): boolean =>
  asksForChange(draft, finding) &&
  (draft.answer === 'other'
    ? saysChange(draft.change)
    : saysChange({ ...draft.change, amount: '' }));

const noonOf = (day: string): number => new Date(`${day}T12:00`).getTime();

/**
 * Everything that is wrong with a draft.
 * @param nowMs milliseconds since 1970; a sample cannot be promised for a day that has passed
 * @param before the proposal that is corrected: a day that it named stays possible
 */
export const proposalTroubles = (
  draft: ProposalDraft,
  finding: Asked,
  nowMs: number,
  before: Proposal | null,
): readonly ProposalTrouble[] => {
  const { answer, sampleDay } = draft;
  const words = typedLine(draft.words);
  const change = saysOwnChange(draft, finding);
  const noon = sampleDay === '' ? null : noonOf(sampleDay);
  const isSame = before?.sampleAt !== undefined && toLocalDay(before.sampleAt) === sampleDay;
  return [
    ...(answer === '' ? [{ field: 'answer' } as const] : []),
    ...(change ? changeTroubles(draft.change) : []),
    ...(words === undefined && (answer === 'cannot' || (answer === 'other' && !change))
      ? [{ field: 'words', why: answer } as const]
      : []),
    ...(noon !== null && answer !== 'cannot'
      ? Number.isNaN(noon)
        ? [{ field: 'sampleDay', why: 'none' } as const]
        : toLocalDay(toInstant(noon)) < toLocalDay(toInstant(nowMs)) && !isSame
          ? [{ field: 'sampleDay', why: 'past' } as const]
          : []
      : []),
  ];
};

export type ReadProposal =
  | { readonly ok: true; readonly body: Proposal }
  | { readonly ok: false; readonly troubles: readonly ProposalTrouble[] };

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param place the finding and its project
 * @param written when, and in which language
 * @param before the proposal that is corrected; null: a new one
 */
export const readProposal = (
  draft: ProposalDraft,
  finding: Asked,
  place: Pick<Proposal, 'project' | 'finding'>,
  written: { readonly nowMs: number; readonly language: string },
  before: Proposal | null,
): ReadProposal => {
  const troubles = proposalTroubles(draft, finding, written.nowMs, before);
  const { answer, sampleDay, photos } = draft;
  if (answer === '' || troubles.length > 0) return { ok: false, troubles };
  const {
    change: _change,
    sampleAt: _sampleAt,
    photos: _photos,
    words: _words,
    language: _language,
    ...kept
  } = before ?? {};
  const words = typedLine(draft.words);
  // Words that were not touched stay in the language that they were written in, known or not.
  const language = words === before?.words ? before?.language : written.language;
  const change = saysOwnChange(draft, finding)
    ? readChange(draft.change, before?.change ?? finding.change ?? null)
    : null;
  const isSame = before?.sampleAt !== undefined && toLocalDay(before.sampleAt) === sampleDay;
  const promised = isSame
    ? before.sampleAt
    : sampleDay === ''
      ? undefined
      : toInstant(noonOf(sampleDay));
  return {
    ok: true,
    body: {
      ...kept,
      ...place,
      at: toInstant(written.nowMs),
      answer,
      ...(change && { change }),
      ...(promised !== undefined && answer !== 'cannot' && { sampleAt: promised }),
      ...(photos.length > 0 && { photos: [...photos] }),
      ...(words !== undefined && { words, ...(language !== undefined && { language }) }),
    },
  };
};
