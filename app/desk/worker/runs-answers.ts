/** What the list of runs and the page of a run ask of the log. */
import { runHeadline, type RunHeadline } from '../../../core/headlines/index.ts';
import type { RecordId, Stamp } from '../../../core/records/index.ts';
import {
  listRuns,
  lookAtRun,
  type RunLook,
  type RunQuery,
  type RunSlice,
} from '../../../core/review/index.ts';
import type { Opened } from './opened.ts';

export interface RunPageAnswer {
  readonly look: RunLook;
  readonly headline: RunHeadline;
  /** Of the revision that is looked at: what a decision about it names. */
  readonly stamp: Stamp;
}

const runPage = ({ log }: Opened, id: RecordId): { readonly run: RunPageAnswer | null } => {
  const look = lookAtRun(log, id);
  const record = log.everyRun.find(({ revision }) => revision.id === id);
  if (!look || !record) return { run: null };
  return {
    run: { look, headline: runHeadline(look), stamp: record.revision.stamp },
  };
};

const runList = ({ log }: Opened, query: RunQuery): RunSlice => listRuns(log, query);

export const runsQuestions = { runPage, runList };
