/** One run, looked at beside the others that the same tester ran in the same pair. */
import { isCautionDue } from '../complaints/index.ts';
import type { ComfortAttributeId } from '../foot/index.ts';
import { mileageAt } from '../mileage/index.ts';
import type { RecordId, Run } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import type { ProjectLog } from './project-log.ts';

export interface RunLook {
  readonly id: RecordId;
  readonly run: Run;
  readonly round: RecordId;
  /** On the pair before the run. */
  readonly pairM: Metres;
  /** Which of the tester's runs in the pair, from 1, and of how many. */
  readonly nth: number;
  readonly of: number;
  /** The tester's run before and after it in the same pair. */
  readonly before: RecordId | null;
  readonly after: RecordId | null;
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

/** @returns null where the run is not in the project, or stands in no figure of it */
export const lookAtRun = (log: ProjectLog, id: RecordId): RunLook | null => {
  const pair = log.pairs.find(({ runs }) => runs.some((one) => one.id === id));
  const own = pair?.runs.find((one) => one.id === id);
  if (!pair || !own) return null;
  const same = pair.runs.filter(({ tester }) => tester === own.tester);
  const at = same.indexOf(own);
  const { pain } = own.run;
  return {
    id,
    run: own.run,
    round: pair.round,
    pairM: mileageAt(pair.curve, own.startMs),
    nth: at + 1,
    of: same.length,
    before: same[at - 1]?.id ?? null,
    after: same[at + 1]?.id ?? null,
    comfort: log.project.brief.attributes.map((attribute) => ({
      attribute,
      score: own.run.comfort?.[attribute] ?? null,
      others: same
        .flatMap(({ id: other, run }) => {
          const score = run.comfort?.[attribute];
          return other === id || score === undefined ? [] : [score];
        })
        .slice(-MOST_OTHERS),
    })),
    caution: pain !== undefined && isCautionDue(pain.score, pain.isNew ?? null, pain.signs ?? []),
  };
};
