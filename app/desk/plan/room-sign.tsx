/** Room in front of the longer foot: a sign, the figure, and in words what it is. */
import type { Room, RoomWord } from '../../../core/rounds/index.ts';
import { p } from '../../words/index.ts';

export const roomSigns: Readonly<Record<RoomWord, string>> = { short: '▲', good: '●', long: '▼' };

/** The figure alone, "about" where it is known by the size only. */
export const roomFigure = ({ mm, by }: Room): string => p().plan.room(mm, by === 'size');

export const RoomSign = ({ room }: { readonly room: Room | null }) => {
  const words = p().plan;
  if (room === null) return <span class="room-unknown">{words.roomUnknown}</span>;
  return (
    <span class={`room-${room.word}`}>
      <span aria-hidden="true">{roomSigns[room.word]}</span>{' '}
      {words.roomIs(roomFigure(room), words.roomWord[room.word])}
    </span>
  );
};
