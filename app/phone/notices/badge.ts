/** How many notices and questions wait for the tester? On the icon, where the platform has it (Badging API), and none left hanging. */
import { noticesOf, unreadOf } from '../../../core/mileage/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { Store } from '../../store/index.ts';
import { KINDS_OF_QUESTIONS, readOpenQuestions } from '../talk/open-questions.ts';

/** The kinds of record that the number is read from. */
export const KINDS_OF_NOTICES = [
  'stop-use',
  'acknowledgement',
  'hand-out',
  ...KINDS_OF_QUESTIONS,
] as const;

/** The same for every notice: a later one takes the place of the one before. */
export const NOTICE_TAG = 'notice';

/** What a tester has still to read or to answer. */
export const unreadNotices = async (
  from: Pick<Store, 'list' | 'get'>,
  tester: RecordId,
  nowMs: number,
): Promise<number> => {
  const [stops, read, handOuts, asked] = await Promise.all([
    from.list('stop-use'),
    from.list('acknowledgement'),
    from.list('hand-out'),
    readOpenQuestions(from, tester),
  ]);
  return unreadOf(noticesOf(tester, stops, handOuts, nowMs), read) + asked.length;
};

interface WithBadge {
  setAppBadge?(count: number): Promise<void>;
  clearAppBadge?(): Promise<void>;
}

/** @param count 0: none */
export const showBadge = async (count: number): Promise<void> => {
  const { navigator } = globalThis as { navigator: WithBadge };
  // Refused where the app is not installed: it has no icon.
  await (count > 0 ? navigator.setAppBadge?.(count) : navigator.clearAppBadge?.())?.catch(
    () => undefined,
  );
};

/** Takes away what the phone still shows of notices that were read. */
export const closeShown = async (registration: ServiceWorkerRegistration): Promise<void> => {
  for (const shown of await registration.getNotifications({ tag: NOTICE_TAG })) shown.close();
};
