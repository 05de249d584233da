/** Which readings of a new pair are outside of the blueprint's tolerance? */
import type { RecordId, RecordOf, Round } from '../records/index.ts';
import type { Deviation } from './review-types.ts';

type Check = RecordOf<'bench-check'>;

/** The readings of a pair's first check against its round's blueprint; sites not on it are left out. */
export const deviationsOf = (
  pair: RecordId,
  round: RecordId,
  checks: readonly Check[],
  blueprint: Round['blueprint'],
): Deviation[] => {
  const [first] = checks;
  if (!first) return [];
  return first.body.readings.flatMap(({ measure, site, foot, unit, value }) => {
    const dimension = blueprint.find(
      (d) =>
        d.measure === measure &&
        d.site === site &&
        d.unit === unit &&
        (d.foot === undefined || d.foot === foot),
    );
    if (!dimension) return [];
    const { nominal, lower, upper } = dimension;
    const deviation = value - nominal;
    // A reading that sits on a limit is inside; the slack is for the decimals of the subtraction.
    const inside = deviation >= lower - 1e-9 && deviation <= upper + 1e-9;
    return [
      {
        pair,
        round,
        check: first.revision.id,
        measure,
        site,
        unit,
        nominal,
        lower,
        upper,
        foot,
        value,
        deviation,
        inside,
      },
    ];
  });
};
