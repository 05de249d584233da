/** A tester's own runs in one pair, in the order of the day, each with the distance on the pair behind it. */
import type { RecordOf } from '../../../core/records/index.ts';
import { metres, type Metres } from '../../../core/units/index.ts';

export interface OwnRun {
  readonly run: RecordOf<'run'>;
  /** What this tester had run in the pair once this run was over. */
  readonly afterM: Metres;
}

export const courseOf = (runs: readonly RecordOf<'run'>[]): readonly OwnRun[] => {
  let sum = 0;
  return [...runs]
    .sort((a, b) => Date.parse(a.body.startedAt) - Date.parse(b.body.startedAt))
    .map((run) => {
      sum += run.body.distanceM;
      return { run, afterM: metres(sum) };
    });
};

/** Overall comfort of the latest `most` runs that answered it, the oldest first. */
export const lastScores = (course: readonly OwnRun[], most: number): readonly number[] =>
  course.flatMap(({ run }) => run.body.comfort?.overall ?? []).slice(-most);
