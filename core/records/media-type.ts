/** What is a file of the log, by how it begins? Only what Pairlog itself keeps is told: photos and reports. */

const signatures: readonly (readonly [mediaType: string, at: number, text: string])[] = [
  ['image/png', 0, '\x89PNG\r\n\x1a\n'],
  ['image/jpeg', 0, '\xff\xd8\xff'],
  ['image/webp', 8, 'WEBPVP'],
  ['text/html', 0, '<!doctype html'],
];

/**
 * The media type of bytes that come without one.
 *
 * Source of the signatures: WHATWG MIME Sniffing, "Matching an image type pattern" and "Identifying a resource with an
 * unknown MIME type".
 */
export const mediaTypeOfBytes = (bytes: Uint8Array): string => {
  const head = String.fromCharCode(...bytes.subarray(0, 32));
  const found = signatures.find(
    ([, at, text]) => head.slice(at, at + text.length).toLowerCase() === text.toLowerCase(),
  );
  return found?.[0] ?? 'application/octet-stream';
};
