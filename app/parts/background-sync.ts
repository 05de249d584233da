/** Asks the browser, where it can, to send what waits once there is a network, even if the app is closed by then. */

/** The worker listens under this name (`service-worker/background-sync.ts`). */
const TAG = 'outbox';

interface WithSync extends ServiceWorkerRegistration {
  readonly sync?: { register(tag: string): Promise<void> };
}

export const askForBackgroundSync = async (): Promise<void> => {
  const registration = (await navigator.serviceWorker?.getRegistration()) as WithSync | undefined;
  // Refused where the person has switched it off; the app sends when it is opened, as elsewhere.
  await registration?.sync?.register(TAG).catch(() => undefined);
};
