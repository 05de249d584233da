/** Saves a run that a lead corrected, and brings the version before it back. */
import { readBody, type RecordId, type Run } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';

const bringBack = async (id: RecordId, body: Run): Promise<void> => {
  const saved = await store.save('run', body, id);
  showToast({ text: saved.ok ? p().runs.undone : d().trouble });
};

/**
 * Saves the corrected run, if nobody has changed it since it was read, and offers to undo it.
 * @returns null where it was saved, else why not, in words
 */
export const saveCorrection = async (
  id: RecordId,
  read: Run,
  corrected: Run,
): Promise<string | null> => {
  const now = await store.get('run', id);
  if (!now || JSON.stringify(now.body) !== JSON.stringify(read)) return p().runs.changedMeanwhile;
  const saved = await store.save('run', corrected, id);
  if (!saved.ok) return d().trouble;
  showToast({
    text: p().runs.corrected,
    action: { label: t().undo, run: () => void bringBack(id, now.body) },
  });
  return null;
};

/** The version that a correction was made of becomes the current one again, as a new version. */
export const undoCorrection = async (id: RecordId): Promise<void> => {
  const history = await store.history(id);
  const before = history?.older.findLast(
    ({ body }) => body !== null && body['correctedBy'] === undefined,
  );
  const read = before ? readBody('run', before.body) : null;
  if (!read?.ok) return showToast({ text: d().trouble });
  await bringBack(id, read.body);
};
