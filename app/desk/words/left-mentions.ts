/**
 * What a lead does not want to be asked about any more, kept on this device alone: it changes no record, so it is
 * nobody else's decision.
 */
import { signal } from '@preact/signals';
import { store } from '../../parts/state.ts';

const KEY = 'wordsLeft';
/** The oldest are forgotten, and asked about again. */
const MOST = 2000;

export const left = signal<readonly string[]>([]);
let isRead = false;

/** Reads what was left before; asked once. */
export const readLeft = async (): Promise<void> => {
  if (isRead) return;
  isRead = true;
  const kept = await store.setting(KEY).catch(() => undefined);
  if (Array.isArray(kept))
    left.value = kept.filter((one): one is string => typeof one === 'string').slice(-MOST);
};

const keep = (next: readonly string[]): void => {
  left.value = next;
  void store.saveSetting(KEY, next);
};

export const leave = (key: string): void => keep([...left.value, key].slice(-MOST));
export const askAgain = (key: string): void => keep(left.value.filter((one) => one !== key));
