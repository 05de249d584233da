/** What the place of changes asks of the log: two rounds as one story. */
import {
  changesHeadline,
  changesStamp,
  type ChangesHeadline,
  type ChangesStamp,
} from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  findingTurns,
  lookAtChanges,
  lookAtThanks,
  openDamage,
  type ChangesLook,
  type DamageFinding,
  type Hands,
  type ThanksLook,
} from '../../../core/review/index.ts';
import type { Opened } from './opened.ts';

export interface ChangesStory {
  readonly headline: ChangesHeadline;
  readonly stamp: ChangesStamp;
  readonly look: ChangesLook;
}

/** Null where one of the rounds is not in the project. */
const changes = (
  { log, review }: Opened,
  earlier: RecordId,
  later: RecordId,
  hands: Hands,
): ChangesStory | null => {
  const [from, to] = [earlier, later].map((id) => review.rounds.find((one) => one.id === id));
  if (!from || !to) return null;
  const look = lookAtChanges(log, from, to, hands);
  return { headline: changesHeadline(look), stamp: changesStamp(look), look };
};

/** Whom a finding's thanks can go to; null within where there is no such finding. */
const thanks = ({ log }: Opened, finding: RecordId): { readonly look: ThanksLook | null } => ({
  look: lookAtThanks(log, finding),
});

/** Whose turn each finding is that is not closed. */
const turns = ({ log }: Opened) => findingTurns(log);

/** Damage that no finding answers yet. */
const openDamages = ({ log }: Opened): readonly DamageFinding[] => openDamage(log);

export const changesQuestions = { changes, thanks, turns, openDamages };
