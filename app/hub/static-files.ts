/** Serves the built app: from memory, compressed once, with the headers that keep it safe and fresh. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
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
  readonly gzip: Uint8Array<ArrayBuffer> | null;
  readonly type: string;
  readonly etag: string;
  /** Named by its content, so it never changes under its name. */
  readonly forever: boolean;
}

const own = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(bytes);

const readFiles = (folder: string): ReadonlyMap<string, StaticFile> => {
  const files = new Map<string, StaticFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const full = join(entry.parentPath, entry.name);
    const path = `/${relative(folder, full).replaceAll('\\', '/')}`;
    const type = TYPES[path.split('.').at(-1) ?? ''];
    // Source maps and the build's own manifest are for developers, not for the network.
    if (type === undefined || path.includes('/.')) continue;
    const plain = own(readFileSync(full));
    const gzip = type.startsWith('image/png') ? null : own(gzipSync(plain, { level: 9 }));
    files.set(path, {
      plain,
      gzip: gzip && gzip.length < plain.length ? gzip : null,
      type,
      etag: `"${createHash('sha256').update(plain).digest('hex').slice(0, 16)}"`,
      forever: path.startsWith('/assets/'),
    });
  }
  return files;
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
    const zipped = file.gzip && (c.req.header('accept-encoding') ?? '').includes('gzip');
    if (zipped) c.header('content-encoding', 'gzip');
    return c.body(zipped ? file.gzip : file.plain);
  };
};
