/** What the place Shoe asks of the log: complaints, one zone, comfort. */
import {
  comfortHeadline,
  shoeHeadline,
  zoneHeadline,
  type ComfortHeadline,
  type ShoeHeadline,
  type ZoneHeadline,
} from '../../../core/headlines/index.ts';
import type { CellName } from '../../../core/complaints/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  lookAtComfort,
  lookAtShoe,
  lookAtTwoSided,
  lookAtZone,
  lookCloser,
  recurring,
  type AttributeLook,
  type CloserLook,
  type ShoeLook,
  type TwoSidedLook,
  type ZoneLook,
  type ZoneQuestion,
} from '../../../core/review/index.ts';
import type { Opened } from './opened.ts';

export interface ShoeAnswer {
  readonly headline: ShoeHeadline;
  readonly look: ShoeLook;
}

const shoe = ({ log, review }: Opened): ShoeAnswer => {
  const look = lookAtShoe(log, review);
  return { headline: shoeHeadline(look, review), look };
};

export interface ZoneAnswer {
  readonly headline: ZoneHeadline;
  readonly look: ZoneLook;
}

const zone = ({ log, review }: Opened, asked: ZoneQuestion): ZoneAnswer => {
  const look = lookAtZone(log, review, asked);
  return { headline: zoneHeadline(look), look };
};

/** A complaint of a round looked at closer, held together with all that recurs in the round. */
const zoneProof = ({ log, review }: Opened, round: RecordId, cell: CellName): CloserLook | null => {
  const reviewed = review.rounds.find(({ id }) => id === round);
  if (!reviewed) return null;
  const isIt = (one: CellName) => one.zone === cell.zone && one.kind === cell.kind;
  const proved = recurring(reviewed);
  const asked = proved.some(isIt) ? proved : [...proved, cell];
  return lookCloser(log, round, asked).find((one) => isIt(one.cell)) ?? null;
};

export interface ComfortAnswerOf {
  readonly headline: ComfortHeadline;
  readonly look: readonly AttributeLook[];
  readonly twoSided: readonly TwoSidedLook[];
}

const comfort = ({ log, review }: Opened): ComfortAnswerOf => {
  const [look, twoSided] = [lookAtComfort(log, review), lookAtTwoSided(review)];
  const order = review.rounds.map(({ id }) => id);
  return { headline: comfortHeadline(look, twoSided, order), look, twoSided };
};

export const shoeQuestions = { shoe, zone, zoneProof, comfort };
