/** Who tests, with which pairs, how much came of them, and who has gone silent? One row a tester of the group. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import type { LoggedRun } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { metres, type Metres } from '../units/index.ts';
import { byCode } from './by-code.ts';
import { feltInRuns } from './felt-in-runs.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';

export interface TesterRow {
  readonly tester: RecordId;
  readonly code: string;
  readonly name: string | null;
  /** The pairs that they hold now, by code. */
  readonly pairs: readonly RecordId[];
  readonly runs: number;
  readonly distanceM: Metres;
  readonly lastRunMs: number | null;
  /** For how many days they have been silent although they hold a pair (`silence.ts`); null: they are not. */
  readonly silentDays: number | null;
  /** Runs that asked what they felt, and those of them with a complaint. */
  readonly asked: number;
  readonly complained: number;
  /** Of their complaints the one of most runs; null: none. */
  readonly most: {
    readonly zone: ZoneCode;
    readonly kind: ComplaintKind;
    readonly runs: number;
  } | null;
  /** The greatest pain that they told of, in the run that told it; null: none that calls for the lead. */
  readonly pain: {
    readonly run: RecordId;
    readonly score: number;
    readonly stands: boolean;
  } | null;
}

const NO_RUNS: readonly LoggedRun[] = [];

const mostOf = (runs: readonly LoggedRun[]): TesterRow['most'] => {
  const [first] = feltInRuns(runs);
  return first ? { zone: first.zone, kind: first.kind, runs: first.marks.length } : null;
};

/** The worst first, and what stands before what is settled. */
const painOf = (review: Pick<Review, 'pains'>, tester: RecordId): TesterRow['pain'] => {
  const [worst] = review.pains
    .filter((one) => one.tester === tester)
    .sort((a, b) => Number(b.stands) - Number(a.stands) || b.score - a.score);
  return worst ? { run: worst.run, score: worst.score, stands: worst.stands } : null;
};

/** All testers of the group, by code. */
export const testerRows = (
  log: Pick<ProjectLog, 'counted' | 'records'>,
  review: Pick<Review, 'testers' | 'pairs' | 'pains'>,
): readonly TesterRow[] => {
  const runsOf = groupBy(log.counted, ({ tester }) => tester);
  const known = new Map(review.testers.map((one) => [one.id, one]));
  const held = groupBy(
    review.pairs.filter(({ holder }) => holder !== null),
    ({ holder }) => holder as RecordId,
  );
  return log.records.tester
    .map(({ body, revision }): TesterRow => {
      const runs = runsOf.get(revision.id) ?? NO_RUNS;
      const own = known.get(revision.id);
      const asked = runs.filter(({ run }) => run.feet !== undefined);
      return {
        tester: revision.id,
        code: body.code,
        name: body.name ?? null,
        pairs: (held.get(revision.id) ?? []).toSorted(byCode).map(({ id }) => id),
        runs: runs.length,
        distanceM: own?.distanceM ?? metres(0),
        lastRunMs: own?.lastRunMs ?? null,
        silentDays: own?.silentDays ?? null,
        asked: asked.length,
        complained: asked.filter(({ run }) => run.feet?.answer === 'complaints').length,
        most: mostOf(runs),
        pain: painOf(review, revision.id),
      };
    })
    .sort(byCode);
};
