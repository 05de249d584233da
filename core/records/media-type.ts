/**
 * What is a file of the log, by how it begins? Only photos are told: a photo opens in a page of its own, so nothing that a
 * browser would run as a page may pass for one.
 */

const signatures: readonly (readonly [mediaType: string, at: number, text: string])[] = [
  ['image/png', 0, '\x89PNG\r\n\x1a\n'],
  ['image/jpeg', 0, '\xff\xd8\xff'],
  ['image/webp', 8, 'WEBPVP'],
];

/**
 * The media type of bytes that come without one.
 *
 * Source of the signatures: WHATWG MIME Sniffing, "Matching an image type pattern".
 */
export const mediaTypeOfBytes = (bytes: Uint8Array): string => {
  const head = String.fromCharCode(...bytes.subarray(0, 32));
  const found = signatures.find(([, at, text]) => head.startsWith(text, at));
  return found?.[0] ?? 'application/octet-stream';
};
