/** Which screen stands at which place of a project? */
import type { FunctionComponent } from 'preact';
import { AskPlace } from './ask/ask-place.tsx';
import { BriefPlace } from './rounds/brief-place.tsx';
import { ChangesPlace } from './changes/changes-place.tsx';
import { PairsPlace } from './pairs/pairs-place.tsx';
import { PlanPlace } from './plan/plan-place.tsx';
import { ReportPlace } from './report/report-place.tsx';
import { RoundsPlace } from './rounds/rounds-place.tsx';
import { RunsPlace } from './runs/runs-place.tsx';
import { SheetPlace } from './sheet/sheet-place.tsx';
import { ShoePlace } from './shoe/shoe-place.tsx';
import { TestersPlace } from './testers/testers-place.tsx';
import { VerdictPlace } from './verdict/verdict-place.tsx';
import { WaitingPlace } from './runs/waiting-place.tsx';
import { WearPlace } from './wear/wear-place.tsx';
import { WordsPlace } from './words/words-place.tsx';
import type { Place } from './frame/route.ts';
import type { PlaceProps } from './desk-state.ts';
import { latePart } from '../parts/late.tsx';

// The reader of tables is fetched with the first table.
const TablesPlace = latePart<PlaceProps>(
  async () => (await import('./tables/tables-place.tsx')).TablesPlace,
);

const FittingPlace = latePart<PlaceProps>(
  async () => (await import('./fitting/fitting-place.tsx')).FittingPlace,
);

export const screens: Readonly<Record<Place, FunctionComponent<PlaceProps>>> = {
  sheet: SheetPlace,
  shoe: ShoePlace,
  wear: WearPlace,
  changes: ChangesPlace,
  verdict: VerdictPlace,
  pairs: PairsPlace,
  testers: TestersPlace,
  runs: RunsPlace,
  rounds: RoundsPlace,
  brief: BriefPlace,
  report: ReportPlace,
  plan: PlanPlace,
  waiting: WaitingPlace,
  ask: AskPlace,
  words: WordsPlace,
  tables: TablesPlace,
  fitting: FittingPlace,
};
