/** Saves changes to several records of one kind, says so, and offers to put them back as they were. */
import type { BodyOf, Kind, RecordId, RecordOf } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';

export interface Changed<K extends Kind> {
  readonly id: RecordId;
  readonly body: BodyOf<K>;
}

/** Saves bodies as they are given; how many could not be saved. */
const saveAll = async <K extends Kind>(kind: K, bodies: readonly Changed<K>[]): Promise<number> => {
  let failed = 0;
  for (const { id, body } of bodies) if (!(await store.save(kind, body, id)).ok) failed++;
  return failed;
};

/**
 * @param before the records as they stood
 * @param said what was done, once it is
 * @returns what went wrong, in words; null: nothing
 */
export const saveSeveral = async <K extends Kind>(
  kind: K,
  changed: readonly Changed<K>[],
  before: readonly RecordOf<K>[],
  said: string,
): Promise<string | null> => {
  const failed = await saveAll(kind, changed);
  if (failed > 0) return d().trouble;
  const undo = async () => {
    const left = await saveAll(
      kind,
      before.map(({ revision, body }) => ({ id: revision.id, body })),
    );
    showToast({ text: left > 0 ? d().trouble : p().pairs.undone });
  };
  showToast({ text: said, action: { label: p().pairs.undo, run: () => void undo() } });
  return null;
};
