/** What of a run is asked about before it is saved? It may be right: nothing is refused. Pure. */
import { handOutSpan, isWithin } from '../../../core/mileage/hand-out-span.ts';
import { isPlausibleRun } from '../../../core/mileage/plausible.ts';
import type { RecordOf, Run } from '../../../core/records/index.ts';
import type { RunForm } from './run-form.ts';

export type RunDoubt = 'distance-or-pace' | 'not-handed-out';

/** Whether the tester had the pair when the run began. */
const wasHandedOut = (
  { pair, tester, startedAt }: Run,
  handOuts: readonly RecordOf<'hand-out'>[],
) =>
  handOuts.some(
    (handOut) =>
      handOut.body.pair === pair &&
      handOut.body.tester === tester &&
      isWithin(handOutSpan(handOut), Date.parse(startedAt)),
  );

/**
 * What is odd about a run; not what was as odd before it was changed. A start that nobody chose is not asked about:
 * the pair is at hand, and its hand-out may be noted a little late.
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
  const isOut = isChosen && run.startedAt !== before?.startedAt && !wasHandedOut(run, handOuts);
  return [
    ...(isOdd ? (['distance-or-pace'] as const) : []),
    ...(isOut ? (['not-handed-out'] as const) : []),
  ];
};
