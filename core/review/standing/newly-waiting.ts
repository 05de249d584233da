/** What would wait for the lead's decision once revisions are taken in, that does not wait now? */
import { addRevisions, emptyLog, viewOfLog, type Revision } from '../../records/index.ts';
import { openProject } from '../project-log.ts';
import type { WaitingItem } from './standing.ts';

const keysOf = (item: WaitingItem): string[] =>
  (item.about === 'gauge' ? item.subjects : [item.subject]).map((subject) =>
    JSON.stringify(subject),
  );

/**
 * Of all projects.
 * @param heads the current revisions here
 * @param fresh what comes to them
 */
export const newlyWaiting = (
  heads: readonly Revision[],
  fresh: readonly Revision[],
  nowMs: number,
): readonly WaitingItem[] => {
  const here = addRevisions(emptyLog, heads);
  const waitingIn = (log: typeof here) => {
    const records = viewOfLog(log);
    return records.project.flatMap(
      ({ revision }) => openProject(records, revision.id, nowMs)?.standing.waiting ?? [],
    );
  };
  const before = new Set(waitingIn(here).flatMap(keysOf));
  return waitingIn(addRevisions(here, fresh)).filter((item) =>
    keysOf(item).some((key) => !before.has(key)),
  );
};
