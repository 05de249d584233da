/** The desk's places, in Chinese; one file a place. */
import type { PlaceWords } from '../../types.ts';
import { frame } from './frame.ts';
import { runs } from './runs.ts';
import { sheet } from './sheet.ts';
import { shoes } from './shoes.ts';

export const places: PlaceWords = { frame, runs, sheet, shoes };
