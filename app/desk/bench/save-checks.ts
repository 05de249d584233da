/** Saves checks that were read or typed as a table, one after the other, with a way to take them out again. */
import type { BenchCheck, RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, t } from '../../words/index.ts';
import { saveRecord } from '../parts/form-parts.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';
import { confirmedReadings, type DoubtedReading } from './entry-doubts.ts';

/**
 * Saves each check, and what the lead says of its readings.
 * @param right doubted readings that are right
 * @param onSaved called after each: what is saved leaves its list at once, so that nothing is saved twice
 * @throws where one cannot be saved, which was said then
 */
export const saveChecks = async (
  project: RecordId,
  checks: readonly BenchCheck[],
  right: ReadonlySet<DoubtedReading>,
  onSaved: (check: BenchCheck) => void,
): Promise<void> => {
  const taken: RecordId[] = [];
  for (const check of checks) {
    const saved = await saveRecord('bench-check', check);
    if (!saved) throw new Error('not saved');
    onSaved(check);
    const { id: record, stamp: judged } = saved.revision;
    taken.push(record);
    await saveDecisions(
      confirmedReadings(
        [...right].filter((one) => one.check === check),
        { project, record, judged },
        d().waiting.confirmed,
        Date.now(),
      ),
      null,
    );
  }
  const words = d().bench;
  const takeOut = async () => {
    let left = 0;
    for (const id of taken) if (!(await store.erase(id)).ok) left++;
    showToast({ text: left > 0 ? d().trouble : words.takenOut(taken.length) });
  };
  showToast({
    text: words.takenIn(taken.length),
    action: { label: t().undo, run: () => void takeOut() },
  });
};
