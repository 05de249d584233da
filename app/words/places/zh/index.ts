/** The desk's places, in Chinese; one file a place. */
import type { PlaceWords } from '../../types.ts';
import { frame } from './frame.ts';

export const places: PlaceWords = { frame };
