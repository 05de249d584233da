/** The desk's places, in English; one file a place. */
import { changes } from './changes.ts';
import { frame } from './frame.ts';
import { brief, report, rounds } from './rounds.ts';
import { pairs } from './pairs.ts';
import { runs } from './runs.ts';
import { sheet } from './sheet.ts';
import { shoe } from './shoe.ts';
import { shoes } from './shoes.ts';
import { verdict } from './verdict.ts';
import { wear } from './wear.ts';

export const places = { frame, sheet, shoe, shoes };
export const places = { frame, sheet, shoes, verdict, wear };
export const places = {
  brief,
  changes,
  frame,
  report,
  rounds,
  sheet,
  shoes,
};
import { testers } from './testers.ts';

export const places = { frame, pairs, sheet, shoes, testers };
export const places = { frame, runs, sheet, shoes };
