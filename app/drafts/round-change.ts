/**
 * The change that a round carries, made from an accepted answer and edited before it is saved: its line in words, its
 * structure, and the finding that the round is then said to carry. Pure.
 */
import {
  editBody,
  type Change,
  type Finding,
  type RecordId,
  type Round,
} from '../../core/records/index.ts';
import {
  changeTroubles,
  draftOfChange,
  emptyChangeForm,
  readChange,
  saysChange,
  type ChangeFormDraft,
  type ChangeTrouble,
} from './change.ts';

export interface RoundChangeDraft {
  /** Empty: not chosen. */
  readonly round: RecordId | '';
  /** What is changed, in one line. */
  readonly line: string;
  readonly change: ChangeFormDraft;
}

export type RoundChangeTrouble = ChangeTrouble | { readonly field: 'round' | 'line' };

/** As long as the line of a change may be. */
const LINE = 200;

/**
 * @param change as `changeForRound` makes it
 * @param write a number as the reader types it
 */
export const draftOfRoundChange = (
  change: Change,
  round: RecordId | '',
  write: (value: number) => string,
): RoundChangeDraft => ({
  round,
  line: change.what,
  change: change.structured
    ? draftOfChange(change.structured, write)
    : emptyChangeForm(change.part),
});

/** Everything that is wrong with a draft. */
export const roundChangeTroubles = (draft: RoundChangeDraft): readonly RoundChangeTrouble[] => [
  ...(draft.round === '' ? [{ field: 'round' } as const] : []),
  ...(draft.line.trim() === '' ? [{ field: 'line' } as const] : []),
  ...(saysChange(draft.change) ? changeTroubles(draft.change) : []),
];

export type ReadRoundChange =
  | { readonly ok: true; readonly round: Round; readonly finding: Finding }
  | { readonly ok: false; readonly troubles: readonly RoundChangeTrouble[] };

/**
 * The round with the change, and the finding that it carries. A change of the same finding is replaced, so that a
 * second press corrects what the first one wrote.
 * @param made the change that the draft was begun from
 */
export const readRoundChange = (
  draft: RoundChangeDraft,
  made: Change,
  round: Round,
  finding: Finding,
): ReadRoundChange => {
  const troubles = roundChangeTroubles(draft);
  const { round: carrier } = draft;
  if (troubles.length > 0 || carrier === '') return { ok: false, troubles };
  const { structured: before, ...rest } = made;
  const structured = saysChange(draft.change) ? readChange(draft.change, before ?? null) : null;
  const change: Change = {
    ...rest,
    part: draft.change.part,
    what: draft.line.trim().slice(0, LINE),
    ...(structured && { structured }),
  };
  const at = round.changes.findIndex(
    (one) => one.finding !== undefined && one.finding === made.finding,
  );
  return {
    ok: true,
    round: editBody<'round'>(round, {
      changes:
        at === -1
          ? [...round.changes, change]
          : round.changes.map((one, other) => (other === at ? change : one)),
    }),
    finding: editBody<'finding'>(finding, { carriedBy: carrier }),
  };
};
