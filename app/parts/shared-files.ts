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
