/** What becomes of quotes whose source was taken back? They leave the device with every word of them. */
import { recordShownIn, type RecordId, type Revision } from '../../core/records/index.ts';
import { historyOf, rangeOf } from './histories.ts';
import type { Writing } from './revisions.ts';

/** Of all states of a quote: one that was erased since still holds its words in an earlier one. */
const sourcesOf = async (tx: Writing, id: RecordId): Promise<readonly RecordId[]> => {
  const history = await historyOf(tx, id);
  return history ? [history.head, ...history.older].flatMap((one) => recordShownIn(one) ?? []) : [];
};

/**
 * Drops the quotes whose source was taken back by one of these revisions, and those among them that come after theirs
 * was, in whatever order the two came. In the transaction that took the revisions in.
 */
export const dropQuotesOfGone = async (tx: Writing, taken: readonly Revision[]): Promise<void> => {
  const heads = tx.objectStore('heads');
  const erases = taken.some(({ erased }) => erased);
  const asked = erases
    ? ((await heads.index('kind').getAllKeys('quote')) as RecordId[])
    : taken.flatMap(({ kind, id }) => (kind === 'quote' ? [id] : []));
  for (const id of new Set(asked))
    for (const source of await sourcesOf(tx, id)) {
      if (!(await heads.get(source))?.erased) continue;
      await heads.delete(id);
      await tx.objectStore('superseded').delete(rangeOf(id));
      await tx.objectStore('outbox').delete(rangeOf(id));
      break;
    }
};
