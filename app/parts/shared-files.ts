/** Which files did another app share into this one? The service worker keeps them until they are taken. */

/** The service worker writes the same cache under this name. */
const CACHE = 'shared-files';

/** Takes the kept files, oldest first; they are gone from the cache afterwards. */
export const takeSharedFiles = async (): Promise<readonly File[]> => {
  if (!('caches' in globalThis)) return [];
  const cache = await caches.open(CACHE);
  const files: File[] = [];
  for (const request of await cache.keys()) {
    const kept = await cache.match(request);
    await cache.delete(request);
    if (!kept) continue;
    const name = decodeURIComponent(kept.headers.get('x-file-name') ?? 'file');
    const type = kept.headers.get('content-type') ?? 'application/octet-stream';
    files.push(new File([await kept.arrayBuffer()], name, { type }));
  }
  return files;
};

/** Keeps files that the system opened this app with, the way the service worker keeps shared ones. */
const keepOpenedFiles = async (files: readonly File[]): Promise<void> => {
  const cache = await caches.open(CACHE);
  for (const [at, file] of files.entries()) {
    const headers = {
      'content-type': file.type || 'application/octet-stream',
      'x-file-name': encodeURIComponent(file.name),
    };
    await cache.put(`/shared/${Date.now()}-${at}`, new Response(file, { headers }));
  }
};

interface LaunchQueue {
  setConsumer(
    consumer: (launch: { readonly files?: readonly { getFile(): Promise<File> }[] }) => void,
  ): void;
}

/** "Open with": takes the files of the launch where the platform hands them over (File Handling API). */
export const followLaunches = (): void => {
  const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files }) => {
    if (!files || files.length === 0) return;
    void Promise.all(files.map((file) => file.getFile()))
      .then(keepOpenedFiles)
      .then(() => location.assign('/shared'));
  });
};
