/**
 * Does a pair leave the longer foot enough room in front?
 *
 * Room is last length less the length of the longer foot. 10 to 15 mm is usual in running shoes (common practice, no
 * source). For comparison: Herbaut et al. 2016, Determination of optimal shoe dimensions for occasional and regular
 * tennis players, found shoes about 10 mm longer than the foot best (34 adults).
 *
 * Where no last is noted the size alone tells it roughly: EU sizes are 0.15 of the last's mm, and 0.15 of the foot's
 * mm + 2 (ISO/TS 19407:2015 by public arithmetic), so a last is 2 / 0.15 mm longer than the foot that it is for.
 */
import type { Last, Tester } from '../records/index.ts';
import { millimetres, type Millimetres } from '../units/index.ts';
import { lastAt, USUAL_TOE_MM } from './last.ts';

/** How much longer than its foot a last is by the arithmetic of EU sizes, mm. */
const LONGER_BY_SIZE_MM = 2 / 0.15;

export type RoomWord = 'short' | 'good' | 'long';

export interface Room {
  /** In front of the longer foot, whole mm. */
  readonly mm: number;
  readonly word: RoomWord;
  /** What the pair's length is known by; by its size alone the room is rough. */
  readonly by: 'last' | 'size';
}

/** Length of the longer foot, mm; null: not measured. */
export const longerFootMm = ({ footLengthMm }: Pick<Tester, 'footLengthMm'>): Millimetres | null =>
  footLengthMm === undefined ? null : millimetres(Math.max(footLengthMm.left, footLengthMm.right));

/** In words what so many mm of room are; judged as they are shown, whole. */
export const roomWord = (mm: number): RoomWord =>
  mm < USUAL_TOE_MM.least ? 'short' : mm > USUAL_TOE_MM.most ? 'long' : 'good';

/**
 * The room of one foot length in a pair.
 * @param sizeMm foot length that the pair is made for
 * @param last of the pair's round; undefined: none is noted
 * @param footMm length of the longer foot; null: not measured, and nothing is known
 */
export const roomOf = (
  sizeMm: Millimetres,
  last: Last | undefined,
  footMm: number | null,
): Room | null => {
  if (footMm === null) return null;
  const lastMm = last === undefined ? null : lastAt(last, sizeMm).lengthMm;
  const mm = Math.round((lastMm ?? sizeMm + LONGER_BY_SIZE_MM) - footMm);
  return { mm, word: roomWord(mm), by: lastMm === null ? 'size' : 'last' };
};
