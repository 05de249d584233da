/**
 * How does a bundle travel as a file? As plain text, as gzip, or, with attachments, as a zip that
 * holds `log.ndjson` and `attachments/<sha256>`. Which one it is shows in its first bytes.
 */
import { Gunzip, gzipSync, strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { sha256OfBytes } from './hash.ts';
import { SHA256_PATTERN, type Sha256 } from './id.ts';
import { MAX_ATTACHMENT_BYTES } from './wire.ts';

/** What a file may unpack to; a larger one is refused before it fills the memory. */
export const MAX_BUNDLE_BYTES = 512 * 1024 * 1024;

const LOG_NAME = 'log.ndjson';
const ATTACHMENT_FOLDER = 'attachments/';

export interface UnpackedBundle {
  readonly text: string;
  readonly attachments: ReadonlyMap<Sha256, Uint8Array>;
}

export type UnpackProblem = 'damaged' | 'too-large' | 'no-log' | 'attachment-differs';

/** Packs a bundle's text, with attachments as a zip, without as gzip. */
export const packBundle = (
  text: string,
  attachments: ReadonlyMap<Sha256, Uint8Array> = new Map(),
): Uint8Array => {
  if (attachments.size === 0) return gzipSync(strToU8(text), { mtime: 0 });
  const files: Record<string, Uint8Array> = { [LOG_NAME]: strToU8(text) };
  for (const [sha256, bytes] of attachments) files[ATTACHMENT_FOLDER + sha256] = bytes;
  return zipSync(files, { mtime: new Date('1980-01-01T00:00:00') });
};

/** Unpacks a bundle file of any of the three forms; names within a zip other than ours are left alone. */
export const unpackBundle = (
  file: Uint8Array,
):
  | ({ readonly ok: true } & UnpackedBundle)
  | { readonly ok: false; readonly why: UnpackProblem } => {
  try {
    if (file[0] === 0x50 && file[1] === 0x4b) return unpackZip(file);
    const plain = file[0] === 0x1f && file[1] === 0x8b ? gunzipBounded(file) : file;
    if (plain.length > MAX_BUNDLE_BYTES) return { ok: false, why: 'too-large' };
    return { ok: true, text: strFromU8(plain), attachments: new Map() };
  } catch (error) {
    return { ok: false, why: error instanceof RangeError ? 'too-large' : 'damaged' };
  }
};

const unpackZip = (file: Uint8Array): ReturnType<typeof unpackBundle> => {
  let total = 0;
  const files = unzipSync(file, {
    filter: ({ name, originalSize }) => {
      const sha256 = name.startsWith(ATTACHMENT_FOLDER) && name.slice(ATTACHMENT_FOLDER.length);
      const ours = name === LOG_NAME || (sha256 && SHA256_PATTERN.test(sha256));
      if (!ours || (sha256 && originalSize > MAX_ATTACHMENT_BYTES)) return false;
      total += originalSize;
      if (total > MAX_BUNDLE_BYTES) throw new RangeError('unpacks to more than a bundle may');
      return true;
    },
  });
  const log = files[LOG_NAME];
  if (!log) return { ok: false, why: 'no-log' };
  const attachments = new Map<Sha256, Uint8Array>();
  for (const [name, bytes] of Object.entries(files)) {
    if (name === LOG_NAME) continue;
    const sha256 = name.slice(ATTACHMENT_FOLDER.length) as Sha256;
    if (sha256OfBytes(bytes) !== sha256) return { ok: false, why: 'attachment-differs' };
    attachments.set(sha256, bytes);
  }
  return { ok: true, text: strFromU8(log), attachments };
};

const gunzipBounded = (file: Uint8Array): Uint8Array => {
  const chunks: Uint8Array[] = [];
  let total = 0;
  let whole = false;
  const gunzip = new Gunzip((chunk, final) => {
    total += chunk.length;
    whole ||= final;
    if (total > MAX_BUNDLE_BYTES) throw new RangeError('unpacks to more than a bundle may');
    chunks.push(chunk);
  });
  const step = 65_536;
  for (let at = 0; at < file.length; at += step)
    gunzip.push(file.subarray(at, at + step), at + step >= file.length);
  if (!whole) throw new Error('gzip stream ends early');
  const joined = new Uint8Array(total);
  let at = 0;
  for (const chunk of chunks) {
    joined.set(chunk, at);
    at += chunk.length;
  }
  return joined;
};
