/** Which answers were read? Kept on this device alone: another lead reads them too. */
import { signal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { ownRecords } from '../../../core/review/index.ts';
import { exchangesOf, isUnread, readKey } from '../../../core/talk/index.ts';
import { store } from '../../parts/state.ts';
import type { TabProps } from '../desk-state.ts';

const KEY = 'answersRead';
/** The oldest are forgotten; by then they are too old to be told of. */
const MOST = 5000;

/** Null: not known yet. */
export const read = signal<ReadonlySet<string> | null>(null);
let asked = false;

const load = async (): Promise<void> => {
  if (asked) return;
  asked = true;
  const kept = await store.setting(KEY).catch(() => undefined);
  const known = Array.isArray(kept) ? kept.filter((one) => typeof one === 'string') : [];
  read.value = new Set([...known, ...(read.value ?? [])]);
};

/** What was read on this device; null until that is known. */
export const useRead = (): ReadonlySet<string> | null => {
  useEffect(() => void load(), []);
  return read.value;
};

export const markRead = (answer: RecordOf<'answer'>): void => {
  const key = readKey(answer);
  if (read.value?.has(key)) return;
  read.value = new Set([...(read.value ?? []), key].slice(-MOST));
  void store.saveSetting(KEY, [...read.value]);
};

/** Answers and messages of a project that were not read here. */
export const useUnread = ({ records, review }: TabProps): number => {
  const known = useRead();
  const project: RecordId = review.project.id;
  const exchanges = useMemo(
    () =>
      exchangesOf({
        question: ownRecords(records.question, project),
        answer: ownRecords(records.answer, project),
        reply: [],
      }),
    [records, project],
  );
  return known === null ? 0 : exchanges.filter((one) => isUnread(one, known, review.nowMs)).length;
};
