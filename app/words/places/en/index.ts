/** The desk's places, in English; one file a place. */
import { frame } from './frame.ts';
import { pairs } from './pairs.ts';
import { sheet } from './sheet.ts';
import { shoes } from './shoes.ts';
import { testers } from './testers.ts';

export const places = { frame, pairs, sheet, shoes, testers };
