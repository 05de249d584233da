/** Which runs of a project count, which wait for a lead, and which did a lead decide about? */
import {
  checkRuns,
  isWithin,
  loggedRun,
  type CheckedRuns,
  type HandOutSpan,
  type LoggedRun,
  type OwnOddity,
} from '../../mileage/index.ts';
import type { RecordId, RecordOf, Ruling, Run } from '../../records/index.ts';
import type { Decided, Rulings, Subject } from './rulings.ts';

type Said = Pick<Run, 'tester' | 'pair' | 'startedAt' | 'distanceM' | 'durationS'>;

/** A run that stays out of every figure until a lead decides. */
export interface WaitingRunItem extends Said {
  readonly about: 'run';
  readonly subject: Subject;
  readonly counts: false;
  readonly whys: readonly OwnOddity[];
  /** Pairs that were with the tester when the run began: it may be noted in the wrong one. */
  readonly heldThen: readonly RecordId[];
}

export interface DecidedRunItem extends Said, Decided {
  readonly about: 'run';
  readonly subject: Subject;
}

export interface StandingRuns extends CheckedRuns {
  readonly waitingItems: readonly WaitingRunItem[];
  readonly decidedItems: readonly DecidedRunItem[];
  /** Runs that no figure may read. */
  readonly out: ReadonlySet<RecordId>;
}

const saidOf = ({ tester, pair, startedAt, distanceM, durationS }: Run): Said => ({
  tester,
  pair,
  startedAt,
  distanceM,
  ...(durationS !== undefined && { durationS }),
});

/** Sorts out the runs of a project. */
export const standingRuns = (
  records: readonly RecordOf<'run'>[],
  context: {
    readonly pairs: ReadonlySet<RecordId>;
    readonly spans: readonly HandOutSpan[];
    readonly nowMs: number;
  },
  rulings: Rulings,
): StandingRuns => {
  const subjects = new Map<RecordId, Subject>();
  const decided = new Map<RecordId, Ruling>();
  const decidedItems: DecidedRunItem[] = [];
  const out = new Set<RecordId>();
  for (const record of records) {
    const { id, stamp } = record.revision;
    const subject: Subject = { record: id, recordKind: 'run', judged: stamp, reading: null };
    subjects.set(id, subject);
    const ruling = rulings.of(record);
    if (!ruling) continue;
    decided.set(id, ruling.ruling);
    if (ruling.ruling === 'set-aside') out.add(id);
    decidedItems.push({ about: 'run', subject, ...saidOf(record.body), ...ruling });
  }
  const { pairs, spans, nowMs } = context;
  const checked = checkRuns(records.map(loggedRun), {
    pairs,
    handOuts: spans,
    nowMs,
    rulings: decided,
  });
  const heldThen = ({ tester, startMs }: LoggedRun) =>
    spans
      .filter((span) => span.tester === tester && isWithin(span, startMs))
      .map((one) => one.pair);
  return {
    ...checked,
    decidedItems,
    out: new Set([...out, ...checked.waiting.map(({ run }) => run.id)]),
    waitingItems: checked.waiting.map(({ run, whys }) => ({
      about: 'run',
      subject: subjects.get(run.id) as Subject,
      counts: false,
      ...saidOf(run.run),
      whys,
      heldThen: heldThen(run).filter((pair) => pair !== run.pair),
    })),
  };
};
