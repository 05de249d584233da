import { describe, expect, it } from 'vitest';
import { mediaTypeOfBytes } from '../../../core/records/index.ts';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('the media type of bytes', () => {
  // WHATWG MIME Sniffing, "Matching an image type pattern".
  it.each([
    ['\x89PNG\r\n\x1a\nrest', 'image/png'],
    ['\xff\xd8\xff\xe0', 'image/jpeg'],
    ['RIFF\x10\0\0\0WEBPVP8 ', 'image/webp'],
    ['<!DOCTYPE HTML><p>', 'application/octet-stream'],
    ['RIFF\x10\0\0\0WAVEfmt ', 'application/octet-stream'],
    ['', 'application/octet-stream'],
  ])('%j', (text, type) => {
    expect(mediaTypeOfBytes(bytes(text))).toBe(type);
  });
});
