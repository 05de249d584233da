/** Runs: which of them ask something of the lead, and all of them as a list; or one run. */
import type { RecordId } from '../../../core/records/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { RunPage } from './run-page.tsx';
import { RunsList } from './runs-list.tsx';
import './to-ask.css';
import './runs.css';
import './run.css';
import './correct.css';

export const RunsPlace = (props: PlaceProps) => {
  const [run] = props.rest;
  return run === undefined ? (
    <RunsList {...props} />
  ) : (
    <RunPage key={run} {...props} id={run as RecordId} />
  );
};
