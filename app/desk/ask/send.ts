/** Sends a question, withdraws it and asks it again; each can be undone at once. */
import type { BodyOf, RecordOf } from '../../../core/records/index.ts';
import { withdrawn } from '../../drafts/question.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';

/** @param tester code of who is asked. @returns null, or in words why it could not be saved */
export const sendQuestion = async (
  body: BodyOf<'question'>,
  tester: string,
): Promise<string | null> => {
  const saved = await store.save('question', body);
  if (!saved.ok) return d().trouble;
  const { id } = saved.value.revision;
  showToast({
    text: p().ask.askedNow(tester),
    action: { label: t().undo, run: () => void store.erase(id) },
  });
  return null;
};

const put = async (
  { revision, body }: RecordOf<'question'>,
  at: string | null,
): Promise<boolean> => {
  const saved = await store.save('question', withdrawn(body, at), revision.id);
  if (!saved.ok) showToast({ text: d().trouble });
  return saved.ok;
};

export const askAgain = async (question: RecordOf<'question'>, tester: string): Promise<void> => {
  if (await put(question, null)) showToast({ text: p().ask.askedNow(tester) });
};

export const withdraw = async (question: RecordOf<'question'>): Promise<void> => {
  if (!(await put(question, toInstant(Date.now())))) return;
  showToast({
    text: p().ask.withdrawnNow,
    action: { label: t().undo, run: () => void put(question, null) },
  });
};
