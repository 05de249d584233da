/** The desk's places, in English; one file a place. */
import { changes } from './changes.ts';
import { frame } from './frame.ts';
import { brief, report, rounds } from './rounds.ts';
import { sheet } from './sheet.ts';
import { shoes } from './shoes.ts';

export const places = {
  brief,
  changes,
  frame,
  report,
  rounds,
  sheet,
  shoes,
};
