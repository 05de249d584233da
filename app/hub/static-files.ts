/** Serves the built app: from memory, as the build packed it, with the headers that keep it safe and fresh. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { MiddlewareHandler } from 'hono';

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  webmanifest: 'application/manifest+json',
  txt: 'text/plain; charset=utf-8',
};

interface StaticFile {
  readonly plain: Uint8Array<ArrayBuffer>;
  /** The packed forms that the build wrote; none of a file that would grow. */
  readonly gzip: Uint8Array<ArrayBuffer> | null;
  readonly brotli: Uint8Array<ArrayBuffer> | null;
  readonly type: string;
  readonly etag: string;
  /** Named by its content, so it never changes under its name. */
  readonly forever: boolean;
}

const own = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(bytes);

const packed = (path: string): Uint8Array<ArrayBuffer> | null =>
  existsSync(path) ? own(readFileSync(path)) : null;

const readFiles = (folder: string): ReadonlyMap<string, StaticFile> => {
  const files = new Map<string, StaticFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const full = join(entry.parentPath, entry.name);
    const path = `/${relative(folder, full).replaceAll('\\', '/')}`;
    const type = TYPES[path.split('.').at(-1) ?? ''];
    // Source maps and the build's own manifest are for developers; a packed form is no file of its own.
    if (type === undefined || path.includes('/.')) continue;
    const plain = own(readFileSync(full));
    files.set(path, {
      plain,
      gzip: packed(`${full}.gz`),
      brotli: packed(`${full}.br`),
      type,
      etag: `W/"${createHash('sha256').update(plain).digest('hex').slice(0, 16)}"`,
      forever: path.startsWith('/assets/'),
    });
  }
  return files;
};

/**
 * The hashes of what stands in the page itself, as a content security policy names them: the fault screen must work
 * where no file of the app can be fetched.
 */
export const inlineHashes = (
  folder: string,
): { readonly scripts: readonly string[]; readonly styles: readonly string[] } => {
  const path = join(folder, 'index.html');
  // Without a built app only the endpoints are served.
  const page = existsSync(path) ? readFileSync(path, 'utf8') : '';
  const hashesOf = (element: 'script' | 'style') =>
    [...page.matchAll(new RegExp(`<${element}>(.*?)</${element}>`, 'gs'))].map(
      ([, content = '']) => `'sha256-${createHash('sha256').update(content).digest('base64')}'`,
    );
  return { scripts: hashesOf('script'), styles: hashesOf('style') };
};

/** The smallest form that the browser says it reads. */
const encodedFor = (file: StaticFile, accepted: string) => {
  if (file.brotli && /\bbr\b/.test(accepted)) return { name: 'br', bytes: file.brotli };
  if (file.gzip && /\bgzip\b/.test(accepted)) return { name: 'gzip', bytes: file.gzip };
  return null;
};

/** A handler for every GET that the API leaves: a file of `folder`, else the app's page. */
export const staticFiles = (folder: string): MiddlewareHandler => {
  const files = readFiles(folder);
  return async (c, next) => {
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return next();
    const path = c.req.path === '/' ? '/index.html' : c.req.path;
    const isPage = !path.split('/').at(-1)?.includes('.');
    const file = files.get(path) ?? (isPage ? files.get('/index.html') : undefined);
    if (!file) return next();
    c.header('content-type', file.type);
    c.header('etag', file.etag);
    c.header('vary', 'accept-encoding');
    c.header('cache-control', file.forever ? 'public, max-age=31536000, immutable' : 'no-cache');
    if (c.req.header('if-none-match') === file.etag) return c.body(null, 304);
    const encoded = encodedFor(file, c.req.header('accept-encoding') ?? '');
    if (encoded) c.header('content-encoding', encoded.name);
    return c.body(encoded ? encoded.bytes : file.plain);
  };
};
