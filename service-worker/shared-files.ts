/**
 * What becomes of a file that another app shares into this one? It is kept in a cache of its own,
 * also without a network, and the page that opens takes it from there (`app/parts/shared-files.ts`).
 */

/** The page reads the same cache under this name. */
const CACHE = 'shared-files';
const MAX_FILES = 10;

/** Keeps the files of a share-sheet POST and sends the browser on to the page that takes them. */
export const keepSharedFiles = async (request: Request): Promise<Response> => {
  const form = await request.formData();
  const files = form.getAll('files').filter((entry) => entry instanceof File);
  const cache = await caches.open(CACHE);
  for (const [at, file] of files.slice(0, MAX_FILES).entries()) {
    const headers = {
      'content-type': file.type || 'application/octet-stream',
      'x-file-name': encodeURIComponent(file.name),
    };
    await cache.put(`/shared/${Date.now()}-${at}`, new Response(file, { headers }));
  }
  return Response.redirect('/shared', 303);
};
