/**
 * Writes every file that the network carries as gzip and Brotli beside it, once for each build: the hub reads them as
 * they are, and compresses nothing while somebody waits.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';
import type { Plugin, ResolvedConfig } from 'vite';
import { builtFiles } from './built-files.ts';

const PACKED = [
  { ending: '.gz', pack: (plain: Uint8Array) => promisify(gzip)(plain, { level: 9 }) },
  { ending: '.br', pack: promisify<Uint8Array, Buffer>(brotliCompress) },
] as const;

/** @param options.include which built files are packed; a form that is no smaller is not written */
export function packedFiles(options: { readonly include: RegExp }): Plugin {
  let config: ResolvedConfig;
  return {
    name: 'pairlog-packed-files',
    apply: 'build',
    enforce: 'post',
    configResolved(resolved) {
      config = resolved;
    },
    closeBundle: {
      sequential: true,
      order: 'post',
      async handler() {
        const out = resolve(config.root, config.build.outDir);
        const files = (await builtFiles(out)).filter((file) => options.include.test(file));
        await Promise.all(
          files.map(async (file) => {
            const plain = await readFile(join(out, file));
            for (const { ending, pack } of PACKED) {
              const packed = await pack(plain);
              if (packed.length < plain.length) await writeFile(join(out, file + ending), packed);
            }
          }),
        );
      },
    },
  };
}
