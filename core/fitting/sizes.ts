/** Who fits which size? What hand-outs go by before anybody ran. */
import type { RecordId, RecordOf } from '../records/index.ts';
import type { Millimetres } from '../units/index.ts';
import { answerOf, type Fitter, type TrialRecord } from './fitters.ts';

type PairRecord = Pick<RecordOf<'pair'>, 'body' | 'revision'>;

export interface SizeFit {
  readonly sizeMm: Millimetres;
  /** Keys of the people, by what they say of the length; both feet, the one that is further from right. */
  readonly short: readonly string[];
  readonly right: readonly string[];
  readonly long: readonly string[];
}

const sizesById = (pairs: readonly PairRecord[]): ReadonlyMap<RecordId, Millimetres> =>
  new Map(pairs.map(({ body, revision }) => [revision.id, body.sizeMm]));

/** For each size that was tried on, for whom it is too short, right, too long; the smallest first. */
export const sizesTried = (
  fitters: readonly Fitter[],
  pairs: readonly PairRecord[],
): readonly SizeFit[] => {
  const sizes = sizesById(pairs);
  const said = fitters.flatMap(({ key, trials }) =>
    trials.flatMap(({ body }) => {
      const sizeMm = sizes.get(body.pair);
      const answer = answerOf(body, 'length', 'both');
      return sizeMm === undefined || answer === null ? [] : [{ key, sizeMm, fit: answer.fit }];
    }),
  );
  return [...new Set(said.map(({ sizeMm }) => sizeMm))]
    .sort((a, b) => a - b)
    .map((sizeMm): SizeFit => {
      const of = (fit: (typeof said)[number]['fit']) => [
        ...new Set(
          said.filter((one) => one.sizeMm === sizeMm && one.fit === fit).map((o) => o.key),
        ),
      ];
      return { sizeMm, short: of('little'), right: of('right'), long: of('much') };
    });
};

/**
 * The size that fitted each tester: of the latest trial in which they said that the length is right. A foot that was
 * measured says how long it is; a trial says what fits it.
 */
export const fittedSizes = (
  trials: readonly TrialRecord[],
  pairs: readonly PairRecord[],
): ReadonlyMap<RecordId, Millimetres> => {
  const sizes = sizesById(pairs);
  const fitted = new Map<RecordId, Millimetres>();
  const inTime = [...trials].sort((a, b) => (a.revision.stamp < b.revision.stamp ? -1 : 1));
  for (const { body } of inTime) {
    const sizeMm = sizes.get(body.pair);
    if (body.tester === undefined || body.fitter !== undefined || sizeMm === undefined) continue;
    const answer = answerOf(body, 'length', 'both');
    if (answer?.fit === 'right') fitted.set(body.tester, sizeMm);
    // What they said last of a size stands: right once and short later is not right.
    else if (answer && fitted.get(body.tester) === sizeMm) fitted.delete(body.tester);
  }
  return fitted;
};
