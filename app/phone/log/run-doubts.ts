/** What of a run is asked about before it is saved? It may be right: nothing is refused. Pure. */
import { handOutSpan, isWithin } from '../../../core/mileage/hand-out-span.ts';
import { whereWas } from '../../../core/mileage/judge-run.ts';
import { isPlausibleRun } from '../../../core/mileage/plausible.ts';
import type { RecordId, RecordOf, Run } from '../../../core/records/index.ts';
import type { RunForm } from './run-form.ts';

export type RunDoubt = 'distance-or-pace' | 'not-handed-out' | 'other-pair';

/** The pairs that the tester had when the run began. */
export const heldThen = (
  { tester, startedAt }: Pick<Run, 'tester' | 'startedAt'>,
  handOuts: readonly RecordOf<'hand-out'>[],
): readonly RecordId[] =>
  handOuts
    .filter(
      (handOut) =>
        handOut.body.tester === tester && isWithin(handOutSpan(handOut), Date.parse(startedAt)),
    )
    .map(({ body }) => body.pair);

/**
 * What is odd about a run; not what was as odd before it was changed. A start that nobody chose is not asked about:
 * the pair is at hand, and its hand-out may be noted a little late; unless the tester had others, and it may be noted in
 * the wrong one.
 */
export const doubtsOf = (
  run: Run,
  form: Pick<RunForm, 'start' | 'startMs'>,
  handOuts: readonly RecordOf<'hand-out'>[],
  before: Run | null,
): readonly RunDoubt[] => {
  const isChosen = form.start !== '' || form.startMs !== null;
  const isOdd =
    !isPlausibleRun(run.distanceM, run.durationS) &&
    (run.distanceM !== before?.distanceM || run.durationS !== before.durationS);
  const startMs = Date.parse(run.startedAt);
  const spans = handOuts.map(handOutSpan).filter(({ pair }) => pair === run.pair);
  const was = run.startedAt === before?.startedAt ? 'here' : whereWas({ ...run, startMs }, spans);
  const isOther = was === 'elsewhere' && heldThen(run, handOuts).length > 0;
  return [
    ...(isOdd ? (['distance-or-pace'] as const) : []),
    ...(isOther ? (['other-pair'] as const) : []),
    ...(was !== 'here' && isChosen && !isOther ? (['not-handed-out'] as const) : []),
  ];
};
