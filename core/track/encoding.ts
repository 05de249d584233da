/** In which encoding is an XML file written? By its byte order mark, else by what its first line says (XML 1.0, appendix F). */

/** A label that TextDecoder knows; UTF-8 where the file says nothing. `head`: the first hundred bytes or so. */
export const encodingOfXml = (head: Uint8Array): string => {
  const [a, b, c] = head;
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  if (a === 0x3c && b === 0) return 'utf-16le';
  if (a === 0 && b === 0x3c) return 'utf-16be';
  const line = String.fromCharCode(...head.subarray(0, 200));
  return (
    /^<\?xml[^>]*\sencoding\s*=\s*["']([A-Za-z][A-Za-z0-9._-]{0,39})["']/.exec(line)?.[1] ?? 'utf-8'
  );
};
