/** The demo's log, or another, its review and the report of each of its rounds, as the terminal makes them. */
import { readFileSync } from 'node:fs';
import {
  addRevisions,
  emptyLog,
  readBundle,
  unpackBundle,
  viewOfLog,
  type Records,
  type Revision,
} from '../../../core/records/index.ts';
import {
  checkPanel,
  findingsOf,
  lookAtFeet,
  openProject,
  reportRounds,
  reviewProject,
} from '../../../core/review/index.ts';

const file = new URL('../../../demo-data/wear-test.pairlog', import.meta.url);

/** @param more what is in the log besides */
export const readDemo = (more: (records: Records) => readonly Revision[] = () => []) => {
  const unpacked = unpackBundle(readFileSync(file));
  if (!unpacked.ok) throw new Error(unpacked.why);
  const bundle = readBundle(unpacked.text);
  const demo = addRevisions(
    emptyLog,
    bundle.revisions.map(({ revision }) => revision),
  );
  return reportsOf(
    viewOfLog(addRevisions(demo, more(viewOfLog(demo)))),
    Date.parse(bundle.header?.madeAt ?? ''),
  );
};

/** The same of the first project of any log. */
export const reportsOf = (records: Records, nowMs: number) => {
  const project = records.project[0]?.revision.id;
  const log = project && openProject(records, project, nowMs);
  if (!log) throw new Error('the log has no project');
  const review = reviewProject(log);
  const reports = reportRounds(log, review);
  const [feet, panel] = [lookAtFeet(log), checkPanel(log)];
  return { log, review, reports, findings: findingsOf(log), feet, panel };
};
