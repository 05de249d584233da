/** Does a pair of the plan fit its tester, and who of the group would fit in a tester's place? Pure. */
import { couldTakeOver, placeSpan, type Stop } from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { longerFootMm, roomOf, USUAL_TOE_MM, type Room } from '../../../core/rounds/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

type Known = Pick<DeskRecords, 'pair' | 'tester' | 'round'>;

/** The room of a tester in a pair; null: the feet were not measured. */
export type RoomIn = (tester: RecordId, pair: RecordId) => Room | null;

/** @returns a function of tester and pair, over these records */
export const roomsIn = (records: Known): RoomIn => {
  const testers = new Map(records.tester.map(({ body, revision }) => [revision.id, body]));
  const pairs = new Map(records.pair.map(({ body, revision }) => [revision.id, body]));
  const lasts = new Map(records.round.map(({ body, revision }) => [revision.id, body.last]));
  return (tester, pair) => {
    const [who, what] = [testers.get(tester), pairs.get(pair)];
    return who && what ? roomOf(what.sizeMm, lasts.get(what.round), longerFootMm(who)) : null;
  };
};

export interface Reserve {
  readonly tester: RecordId;
  /** In each pair that would be taken over; null: the feet were not measured. */
  readonly rooms: readonly { readonly pair: RecordId; readonly room: Room | null }[];
  /** Good room in every one of them. */
  readonly fits: boolean;
}

const MIDDLE_MM = (USUAL_TOE_MM.least + USUAL_TOE_MM.most) / 2;

/** How far the rooms are from the middle of what is usual, the worst of them; unknown is worst. */
const worst = ({ rooms }: Reserve): number =>
  rooms.reduce(
    (most, { room }) => Math.max(most, room === null ? Infinity : Math.abs(room.mm - MIDDLE_MM)),
    0,
  );

/** Who could take over from a tester who stops, the best fit first; by code where they fit alike. */
export const reservesFor = (
  plan: HandOutPlan,
  stop: Pick<Stop, 'tester' | 'at'>,
  records: Known,
): readonly Reserve[] => {
  const room = roomsIn(records);
  const atMs = Date.parse(stop.at);
  const pairs = plan.places
    .filter((one) => one.tester === stop.tester && placeSpan(plan, one).untilMs > atMs)
    .map(({ pair }) => pair);
  return records.tester
    .toSorted((a, b) => byCode(a.body, b.body))
    .filter(({ revision }) => couldTakeOver(plan, revision.id, stop))
    .map(({ revision: { id } }): Reserve => {
      const rooms = pairs.map((pair) => ({ pair, room: room(id, pair) }));
      return { tester: id, rooms, fits: rooms.every((one) => one.room?.word === 'good') };
    })
    .toSorted((a, b) => (worst(a) === worst(b) ? 0 : worst(a) - worst(b)));
};
