/** Saves what a lead decided, and takes it back. */
import type { Decision, RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, t } from '../../words/index.ts';

/** Saves decisions and offers to undo them. @returns whether all were saved */
export const saveDecisions = async (
  decisions: readonly Decision[],
  done: string | null,
): Promise<boolean> => {
  const saved: RecordId[] = [];
  for (const decision of decisions) {
    const one = await store.save('decision', decision);
    if (!one.ok) {
      showToast({ text: d().trouble });
      return false;
    }
    saved.push(one.value.revision.id);
  }
  const undo = async () => {
    for (const id of saved) await store.erase(id);
  };
  if (done !== null) showToast({ text: done, action: { label: t().undo, run: () => void undo() } });
  return true;
};
