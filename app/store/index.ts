export { openStore, type DamagedAttachment, type Store, type Unsent } from './store.ts';
export type { StoreOptions } from './open-context.ts';
export type { Session } from './session.ts';
export type { SyncStatus } from './changes.ts';
export type { FilePreview, FileProblem } from './files.ts';
export type { FilePart, Person } from './file-parts.ts';
export type { Invited, JoinProblem } from './membership.ts';
export type { HubClient } from './hub-client.ts';
export { BACKUP_DAYS_SETTING, TILES_SETTING } from './hub-settings.ts';
