/** What of their notices has a tester still to read? */
import type { RecordOf } from '../records/index.ts';
import type { OwnNotice } from './stop-notices.ts';

/** How many of these notices the tester has not said to have read, each once however many pairs it is about. */
export const unreadOf = (
  notices: readonly OwnNotice[],
  acknowledgements: readonly RecordOf<'acknowledgement'>[],
): number => {
  const read = new Set(acknowledgements.map(({ body }) => body.stopUse));
  return new Set(notices.map(({ stop }) => stop.revision.id).filter((notice) => !read.has(notice)))
    .size;
};
