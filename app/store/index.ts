export { openStore, type Store, type StoreOptions, type Unsent } from './store.ts';
export type { Session } from './session.ts';
export type { SyncStatus } from './changes.ts';
export type { FilePreview, FileProblem } from './files.ts';
export type { JoinProblem } from './membership.ts';
export type { HubClient } from './hub-client.ts';
export { TILES_SETTING } from './sync.ts';
