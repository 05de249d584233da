/** What has to do with the hub, in one file of the built app. */
export { membership } from './membership.ts';
export { syncing } from './sync.ts';
