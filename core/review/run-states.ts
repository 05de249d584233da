/** Where does each run of a project stand: does it count, wait for a lead, come twice, or was it set aside? */
import type { RunOddity } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import type { ProjectLog } from './project-log.ts';
import type { Decided } from './standing/rulings.ts';

/** `twice`: it was logged again, and counts once, as the other. */
export type RunState = 'counts' | 'waits' | 'set-aside' | 'twice';

export interface RunStanding {
  readonly state: RunState;
  /** What is odd about it, each once. */
  readonly odd: readonly RunOddity['why'][];
  readonly decided: Decided | null;
}

export interface RunStates {
  readonly of: (run: RecordId) => RunStanding;
}

const plain: RunStanding = { state: 'counts', odd: [], decided: null };

const stateOf = (odd: readonly RunOddity['why'][], waits: boolean, aside: boolean): RunState =>
  aside ? 'set-aside' : waits ? 'waits' : odd.includes('logged-twice') ? 'twice' : 'counts';

/** Read once for all runs of a log. */
export const runStates = (log: ProjectLog): RunStates => {
  const odd = new Map<RecordId, Set<RunOddity['why']>>();
  const note = (run: RecordId, why: RunOddity['why']) => {
    odd.set(run, (odd.get(run) ?? new Set()).add(why));
  };
  const waits = new Set<RecordId>();
  for (const item of log.standing.waiting) {
    if (item.about !== 'run') continue;
    waits.add(item.subject.record);
    for (const { why } of item.whys) note(item.subject.record, why);
  }
  for (const { run, why } of log.oddities) note(run, why);
  const decided = new Map<RecordId, Decided>();
  for (const item of log.standing.decided)
    if (item.about === 'run') decided.set(item.subject.record, item);
  return {
    of: (run) => {
      const whys = [...(odd.get(run) ?? [])];
      const ruling = decided.get(run) ?? null;
      if (whys.length === 0 && !ruling) return plain;
      return {
        state: stateOf(whys, waits.has(run), ruling?.ruling === 'set-aside'),
        odd: whys,
        decided: ruling && {
          decision: ruling.decision,
          ruling: ruling.ruling,
          why: ruling.why,
          at: ruling.at,
        },
      };
    },
  };
};
