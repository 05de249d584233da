/** What the app does once its first screen stands: it would only compete with that screen's own files. */
export { followLaunches } from './shared-files.ts';
export { keepAppFresh } from './update.ts';
