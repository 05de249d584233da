/** The desk's places, in English; one file a place. */
import { ask } from './ask.ts';
import { changes } from './changes.ts';
import { fitting } from './fitting.ts';
import { frame } from './frame.ts';
import { lists } from './lists.ts';
import { pairs } from './pairs.ts';
import { plan } from './plan.ts';
import { brief, report, rounds } from './rounds.ts';
import { runs } from './runs.ts';
import { search } from './search.ts';
import { sheet } from './sheet.ts';
import { shoe } from './shoe.ts';
import { shoes } from './shoes.ts';
import { start } from './start.ts';
import { tables } from './tables.ts';
import { tooMuch } from './too-much.ts';
import { testers } from './testers.ts';
import { thanks } from './thanks.ts';
import { verdict } from './verdict.ts';
import { wear } from './wear.ts';
import { words } from './words.ts';

export const places = {
  ask,
  brief,
  changes,
  fitting,
  frame,
  lists,
  pairs,
  plan,
  report,
  rounds,
  runs,
  search,
  sheet,
  shoe,
  shoes,
  start,
  tables,
  testers,
  thanks,
  tooMuch,
  verdict,
  wear,
  words,
};

/** As screens show them. */
export const shown = { ...places };
