/** The desk's places, in Chinese; one file a place. */
import type { PlaceWords } from '../../types.ts';
import { withSpaces } from './apart.ts';
import { changes } from './changes.ts';
import { frame } from './frame.ts';
import { pairs } from './pairs.ts';
import { plan } from './plan.ts';
import { brief, report, rounds } from './rounds.ts';
import { runs } from './runs.ts';
import { sheet } from './sheet.ts';
import { shoe } from './shoe.ts';
import { shoes } from './shoes.ts';
import { tables } from './tables.ts';
import { tooMuch } from './too-much.ts';
import { testers } from './testers.ts';
import { verdict } from './verdict.ts';
import { wear } from './wear.ts';
import { words } from './words.ts';

export const places: PlaceWords = withSpaces({
  brief,
  changes,
  frame,
  pairs,
  plan,
  report,
  rounds,
  runs,
  sheet,
  shoe,
  shoes,
  tables,
  testers,
  tooMuch,
  verdict,
  wear,
  words,
});
