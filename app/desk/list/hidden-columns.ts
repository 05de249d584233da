/** Which columns this device hides, list by list. Kept on the device alone: it is nobody else's reading. */
import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { store } from '../../parts/state.ts';
import { readHidden, withShown, type HiddenColumns } from './columns.ts';

const KEY = 'hiddenColumns';

const hidden = signal<HiddenColumns>({});
let isRead = false;

const read = async (): Promise<void> => {
  if (isRead) return;
  isRead = true;
  hidden.value = readHidden(await store.setting(KEY).catch(() => undefined));
};

/** @param list such as `pairs`; every list has its own */
export const useHiddenColumns = (list: string) => {
  useEffect(() => void read(), []);
  return {
    hidden: hidden.value[list],
    show: (column: string, isShown: boolean) => {
      hidden.value = withShown(hidden.value, list, column, isShown);
      void store.saveSetting(KEY, hidden.value);
    },
  };
};
