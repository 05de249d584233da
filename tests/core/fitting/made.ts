/** Fit trials for tests. */
import {
  readBody,
  sealRevision,
  type FitAnswer,
  type FitTrial,
  type RecordOf,
  type StructuredChange,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../records/make.ts';

export const SESSION = idOf(90);
const at = '2026-12-02T10:00:00+01:00';
let last = 0;

/** A trial of a tester by number, or of somebody by a code; each is later than the one before. */
export const trial = (
  who: number | string,
  standing: readonly FitAnswer[],
  more: Partial<FitTrial> = {},
): RecordOf<'fit-trial'> => {
  const n = ++last;
  const body = {
    ...{ project: idOf(1), session: SESSION, pair: idOf(60), at, standing },
    ...(typeof who === 'number' ? { tester: idOf(who) } : { fitter: who }),
    ...more,
  };
  const read = readBody('fit-trial', body);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const revision = sealRevision(
    { id: idOf(100 + (n % 150)), kind: 'fit-trial', author: idOf(9), sv: 1, body },
    stampAt(1_800_000_000_000 + n),
    null,
  );
  return { kind: 'fit-trial', body: read.body, revision };
};

export const says = (
  place: FitAnswer['place'],
  fit: FitAnswer['fit'],
  mm?: number,
  foot?: FitAnswer['foot'],
): FitAnswer => ({ place, fit, ...(mm !== undefined && { mm }), ...(foot && { foot }) });

/** A move of the heel curve, in mm. */
export const heelCurve = (
  direction: StructuredChange['direction'],
  amount?: number,
  foot?: StructuredChange['foot'],
): StructuredChange => ({
  ...{ part: 'upper-pattern', line: 'back-curve', direction },
  ...(amount !== undefined && { by: { amount, unit: 'mm' as const } }),
  ...(foot && { foot }),
});
