import { createHash } from 'node:crypto';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import { inlineHashes, staticFiles } from '../../../app/hub/static-files.ts';

const hashOf = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

describe('what stands in the page itself', () => {
  it('is named by its hash, and files are not', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'pairlog-page-'));
    const page = [
      '<style>a{b:c}\n</style><script>const a = 1;\nf(a);</script>',
      '<script type="module" src="/main.js"></script><style>d{}</style>',
    ].join('');
    await writeFile(join(folder, 'index.html'), page);
    expect(inlineHashes(folder)).toEqual({
      scripts: [hashOf('const a = 1;\nf(a);')],
      styles: [hashOf('a{b:c}\n'), hashOf('d{}')],
    });
  });
});

describe('a file that the build packed', () => {
  const plain = `const text = '${'a'.repeat(500)}';\n`;
  const hub = async () => {
    const folder = await mkdtemp(join(tmpdir(), 'pairlog-packed-'));
    await writeFile(join(folder, 'index.html'), '<p>the page</p>');
    await writeFile(join(folder, 'a.js'), plain);
    await writeFile(join(folder, 'a.js.gz'), gzipSync(plain));
    await writeFile(join(folder, 'a.js.br'), brotliCompressSync(plain));
    return new Hono().use('*', staticFiles(folder));
  };
  const ask = async (path: string, accepted: string) => {
    const answer = await (await hub()).request(path, { headers: { 'accept-encoding': accepted } });
    return { answer, bytes: new Uint8Array(await answer.arrayBuffer()) };
  };

  it('goes out in the smallest form that the browser reads, with the type of the plain one', async () => {
    for (const [accepted, name, unpack] of [
      ['gzip, deflate, br', 'br', brotliDecompressSync],
      ['gzip', 'gzip', gunzipSync],
      ['identity', null, (bytes: Uint8Array) => bytes],
    ] as const) {
      const { answer, bytes } = await ask('/a.js', accepted);
      expect(answer.headers.get('content-encoding')).toBe(name);
      expect(answer.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
      expect(new TextDecoder().decode(unpack(bytes))).toBe(plain);
    }
  });

  it('is no file of its own, and one that was not packed goes out plain', async () => {
    expect((await ask('/a.js.br', 'br')).answer.status).toBe(404);
    const { answer, bytes } = await ask('/', 'gzip, br');
    expect(answer.headers.get('content-encoding')).toBeNull();
    expect(new TextDecoder().decode(bytes)).toBe('<p>the page</p>');
  });
});
