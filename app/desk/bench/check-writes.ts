/** Saves, erases and brings back a bench check, with what was decided about its readings. */
import {
  readBody,
  type BenchCheck,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import { saveDecisions } from '../waiting/save-decision.ts';
import { beforeCorrection, decisionsKept } from '../../drafts/check-correction.ts';

type Check = RecordOf<'bench-check'>;
type Decisions = readonly RecordOf<'decision'>[];

/** Saves a check over another state of it; what was decided about readings that stay as they were holds on. */
const saveOver = async (
  decisions: Decisions,
  before: Pick<Check, 'body' | 'revision'>,
  body: BenchCheck,
): Promise<Check | null> => {
  const saved = await store.save('bench-check', body, before.revision.id);
  if (!saved.ok) return null;
  const { revision } = saved.value;
  const kept = decisionsKept(decisions, before, { body, stamp: revision.stamp });
  await saveDecisions(kept, null);
  return saved.value;
};

/** @returns the corrected check; null where it could not be saved */
export const saveCorrection = saveOver;

/** Puts a check back as it stood. */
export const restoreCheck = async (decisions: Decisions, before: Check): Promise<void> => {
  if (!(await saveOver(decisions, before, before.body))) showToast({ text: d().trouble });
};

/** Takes the latest correction back: the check is saved as it stood before it. */
export const takeCorrectionBack = async (decisions: Decisions, check: Check): Promise<void> => {
  const words = p().wear.check;
  const history = await store.history(check.revision.id);
  const at = check.body.correctedBy?.at;
  const earlier = history && at !== undefined && beforeCorrection(history.older, at);
  const read = earlier ? readBody('bench-check', earlier) : null;
  if (!read?.ok || !(await saveOver(decisions, check, read.body)))
    return showToast({ text: d().trouble });
  showToast({
    text: words.takenBack,
    action: { label: t().undo, run: () => void restoreCheck(decisions, check) },
  });
};

/** Brings an erased check back, with what was decided about it. */
export const bringCheckBack = async (
  decisions: Decisions,
  id: RecordId,
  erased: Check | null,
): Promise<void> => {
  const done = await store.restore(id);
  if (!done.ok) return showToast({ text: d().trouble });
  const now = await store.get('bench-check', id);
  if (now && erased)
    await saveDecisions(
      decisionsKept(decisions, erased, { body: now.body, stamp: now.revision.stamp }),
      null,
    );
  showToast({ text: p().wear.check.restored });
};

/** Erases a check, and offers to undo that. */
export const eraseCheck = async (decisions: Decisions, check: Check): Promise<void> => {
  const done = await store.erase(check.revision.id);
  if (!done.ok) return showToast({ text: d().trouble });
  showToast({
    text: p().wear.check.erased,
    action: {
      label: t().undo,
      run: () => void bringCheckBack(decisions, check.revision.id, check),
    },
  });
};

/** Takes a decision back: what it was about stands as it did before. */
export const takeDecisionBack = async (decision: RecordId): Promise<void> => {
  const done = await store.erase(decision);
  if (!done.ok) return showToast({ text: d().trouble });
  showToast({
    text: p().wear.check.countedNow,
    action: { label: t().undo, run: () => void store.restore(decision) },
  });
};
