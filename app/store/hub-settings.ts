/** Under which settings is what the hub said of the group kept, for when there is no network? */

/** The setting under which the group's map tiles are kept. */
export const TILES_SETTING = 'tiles';
/** The setting under which it is kept for how many days the hub's backups hold what was taken back. */
export const BACKUP_DAYS_SETTING = 'backup-days';
