/** Marks remarks and quotes them in a finding, each with its undo. */
import { editBody, type Quote, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import { isPartOf, type FoundRemark } from '../../../core/words/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';

type Undo = () => Promise<unknown>;

/** A remark that is to be quoted: whole, or one sentence of it. */
export interface ChosenRemark extends FoundRemark {
  readonly sentence?: string;
}

/** The quote of a remark as it is saved. Its words are never anything but what was said. */
export const quoteOf = (
  { source, sourceKind, field, text, tester, sentence }: ChosenRemark,
  project: RecordId,
  finding: RecordId | null,
  at: string,
): Quote => {
  const words = sentence !== undefined && isPartOf(text, sentence) ? sentence.trim() : text;
  return {
    ...{ project, source, sourceKind, field, words, at },
    ...(tester !== null && { tester }),
    ...(finding !== null && { finding }),
  };
};

const trouble = (): null => {
  showToast({ text: d().trouble });
  return null;
};

/** Saves a quote of each remark; one that was only marked becomes the quote. @returns how to undo it; null: not saved */
export const saveQuotes = async (
  remarks: readonly ChosenRemark[],
  project: RecordId,
  finding: RecordId | null,
): Promise<Undo | null> => {
  const undos: Undo[] = [];
  for (const remark of remarks) {
    const mark = remark.marks.find((one) => one.finding === null)?.quote;
    const before = mark && (await store.get('quote', mark));
    const saved = await store.save(
      'quote',
      quoteOf(remark, project, finding, toInstant(Date.now())),
      mark,
    );
    if (!saved.ok) return trouble();
    const { id } = saved.value.revision;
    undos.push(() => (before ? store.save('quote', before.body, id) : store.erase(id)));
  }
  return async () => {
    for (const undo of undos) await undo();
  };
};

/** Marks what is not marked or quoted yet. */
export const markRemarks = async (
  remarks: readonly ChosenRemark[],
  project: RecordId,
): Promise<void> => {
  const fresh = remarks.filter(({ marks }) => marks.length === 0);
  const undo = await saveQuotes(fresh, project, null);
  if (undo)
    showToast({
      text: p().words.markedNow(fresh.length),
      action: { label: t().undo, run: () => void undo() },
    });
};

/** Takes a mark or a quote away. @param said what was done, in words */
export const removeQuote = async (id: RecordId, said: string): Promise<void> => {
  const erased = await store.erase(id);
  if (!erased.ok) return void trouble();
  showToast({ text: said, action: { label: t().undo, run: () => void store.restore(id) } });
};

/**
 * A quote that specialists could read ends for good, so that its words leave their devices, and goes on as one of the
 * leads.
 */
const withdraw = async ({ body, revision }: RecordOf<'quote'>): Promise<RecordId | null> => {
  const kept = await store.save('quote', editBody<'quote'>(body, { sent: undefined }));
  if (!kept.ok) return trouble();
  const gone = await store.eraseForGood(revision.id);
  return gone.ok ? kept.value.revision.id : trouble();
};

const sending = async (id: RecordId): Promise<RecordId | null> => {
  const quote = await store.get('quote', id);
  if (!quote) return trouble();
  const saved = await store.save('quote', { ...quote.body, sent: toInstant(Date.now()) }, id);
  return saved.ok ? id : trouble();
};

const withdrawing = async (id: RecordId): Promise<RecordId | null> => {
  const quote = await store.get('quote', id);
  return quote ? withdraw(quote) : trouble();
};

/** Lets specialists read a quote, or ends that; either can be undone. */
export const changeSent = async (id: RecordId, sent: boolean): Promise<void> => {
  const words = p().words;
  const now = await (sent ? sending(id) : withdrawing(id));
  if (now === null) return;
  const undo = () => void (sent ? withdrawing(now) : sending(now));
  showToast({
    text: sent ? words.sentNow : words.unsentNow,
    action: { label: t().undo, run: undo },
  });
};
