/** What the app does once its first screen stands: it would only compete with that screen's own files. */
export { followLaunches } from './shared-files.ts';
export { keepAppFresh } from './update.ts';

// The first save must not wait for it, nor fail where the network is gone by then.
void import('../store/write-records.ts').catch(() => undefined);
void import('../store/attachments.ts').catch(() => undefined);
