/**
 * What it takes to speak with the hub. The first screen is drawn without, so it is fetched when the hub is first
 * spoken with: a file of its own, like those of a screen that is opened later.
 */
export { deviceSide } from './device-side.ts';
export { createHubClient } from './hub-client.ts';
export { sendAttachments } from './send-attachments.ts';
export { syncRound } from './sync-round.ts';
