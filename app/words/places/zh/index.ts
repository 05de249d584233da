/** The desk's places, in Chinese; one file a place. */
import type { PlaceWords } from '../../types.ts';
import { frame } from './frame.ts';
import { pairs } from './pairs.ts';
import { sheet } from './sheet.ts';
import { shoes } from './shoes.ts';
import { testers } from './testers.ts';

export const places: PlaceWords = { frame, pairs, sheet, shoes, testers };
