/**
 * How does one tester answer a question of comfort beside the others? Means of each, first wearings left out. The two
 * kinds of line are asked for one by one, so that no mean mixes them.
 */
import type { LoggedRun } from '../mileage/index.ts';
import type { RecordId, Run } from '../records/index.ts';

/** One question: this tester's mean and each other's, on the line of the question. */
export interface OwnMean<Question extends string> {
  readonly attribute: Question;
  readonly mean: number;
  readonly runs: number;
  readonly others: readonly { readonly tester: RecordId; readonly mean: number }[];
}

/** More dots than this on one line are not told apart. */
export const MOST_OTHERS = 200;

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * In the order of the questions; what this tester never answered is absent.
 * @param answerOf what a run says to a question; undefined: nothing
 * @param others runs of the same rounds, by tester
 */
export const ownMeans = <Question extends string>(
  questions: readonly Question[],
  answerOf: (run: Run, question: Question) => number | undefined,
  own: readonly LoggedRun[],
  others: ReadonlyMap<RecordId, readonly LoggedRun[]>,
): readonly OwnMean<Question>[] =>
  questions.flatMap((attribute) => {
    const answers = (runs: readonly LoggedRun[]) =>
      runs.flatMap(({ run }) => {
        const answer = answerOf(run, attribute);
        return answer === undefined || run.firstImpression === true ? [] : [answer];
      });
    const mine = answers(own);
    if (mine.length === 0) return [];
    return [
      {
        attribute,
        mean: meanOf(mine),
        runs: mine.length,
        others: [...others]
          .flatMap(([tester, runs]) => {
            const some = answers(runs);
            return some.length === 0 ? [] : [{ tester, mean: meanOf(some) }];
          })
          .slice(0, MOST_OTHERS),
      },
    ];
  });
