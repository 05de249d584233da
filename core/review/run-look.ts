/** One run, looked at beside the others of its tester in the same pair, whether or not it counts. */
import { callsForCaution } from '../complaints/index.ts';
import type { ComfortAttributeId } from '../foot/index.ts';
import { loggedRun, mileageBefore, type LoggedRun, type RunOddity } from '../mileage/index.ts';
import type { RecordId, Run } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import type { ProjectLog } from './project-log.ts';
import { runStates, type RunState } from './run-states.ts';
import type { Decided } from './standing/rulings.ts';

/** A run that one can go on to. */
export interface Neighbour {
  readonly id: RecordId;
  readonly startMs: number;
}

export interface RunLook {
  readonly id: RecordId;
  readonly run: Run;
  readonly state: RunState;
  /** What is odd about it, each once. */
  readonly odd: readonly RunOddity['why'][];
  /** What a lead decided about it, as far as that holds. */
  readonly decided: Decided | null;
  /** Null: the pair is not in the log. */
  readonly round: RecordId | null;
  /** On the pair before the run. */
  readonly pairM: Metres;
  /** Which of the counted runs in the pair, from 1, and of how many; null where it counts nowhere. */
  readonly nth: number | null;
  readonly of: number;
  /** The counted runs before and after it in the same pair. */
  readonly before: Neighbour | null;
  readonly after: Neighbour | null;
  /** By attribute in the brief's order: this run's score, and those of the tester's other runs in the pair. */
  readonly comfort: readonly {
    readonly attribute: ComfortAttributeId;
    readonly score: number | null;
    readonly others: readonly number[];
  }[];
  /** The caution that pain calls for is due. */
  readonly caution: boolean;
}

/** More dots than this beside each other are not told apart. */
const MOST_OTHERS = 60;

const isBefore = (a: LoggedRun, b: LoggedRun): boolean =>
  a.startMs < b.startMs || (a.startMs === b.startMs && a.id < b.id);

const neighbour = (run: LoggedRun | undefined): Neighbour | null =>
  run ? { id: run.id, startMs: run.startMs } : null;

/** @returns null where the run is not in the project, or was taken back */
export const lookAtRun = (log: ProjectLog, id: RecordId): RunLook | null => {
  const record = log.everyRun.find(({ revision }) => revision.id === id);
  if (!record) return null;
  const own = loggedRun(record);
  const pair = log.pairs.find((one) => one.id === own.pair);
  const runs = pair?.runs ?? [];
  const others = runs.filter((one) => one.id !== id);
  const same = others.filter(({ tester }) => tester === own.tester);
  const at = runs.findIndex((one) => one.id === id);
  const { state, odd, decided } = runStates(log).of(id);
  return {
    id,
    run: own.run,
    state,
    odd,
    decided,
    round: pair?.round ?? null,
    // A run without a time ends as it begins, and is not before itself.
    pairM: pair ? mileageBefore(pair.curve, own.startMs) : (0 as Metres),
    nth: at < 0 ? null : at + 1,
    of: runs.length,
    before: neighbour(others.findLast((one) => isBefore(one, own))),
    after: neighbour(others.find((one) => isBefore(own, one))),
    comfort: log.project.brief.attributes.map((attribute) => ({
      attribute,
      score: own.run.comfort?.[attribute] ?? null,
      others: same.flatMap(({ run }) => run.comfort?.[attribute] ?? []).slice(-MOST_OTHERS),
    })),
    caution: callsForCaution(own.run.pain),
  };
};
