/** The desk's places, in English; one file a place. */
import { frame } from './frame.ts';
import { runs } from './runs.ts';
import { sheet } from './sheet.ts';
import { shoes } from './shoes.ts';

export const places = { frame, runs, sheet, shoes };
