/** Builds the service worker and writes the list of the files that it keeps for use offline. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join, posix, resolve } from 'node:path';
import { build, type Plugin, type ResolvedConfig } from 'vite';
import { builtFiles } from './built-files.ts';

export interface ServiceWorkerOptions {
  readonly entry: string;
  /** Which built files are kept for use offline. */
  readonly include: RegExp;
}

/** A file whose name holds the hash of its content never changes: its name is revision enough. */
const HASHED = /^assets\/.+-[\w-]{8}\.\w+$/;
const OUTPUT = 'service-worker.js';

export function serviceWorker(options: ServiceWorkerOptions): Plugin {
  let config: ResolvedConfig;
  return {
    name: 'pairlog-service-worker',
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
        const files = (await builtFiles(out))
          .filter((file) => options.include.test(file) && file !== OUTPUT)
          .sort();
        const precache = await Promise.all(
          files.map(async (file) => ({
            url: posix.join('/', file),
            revision: HASHED.test(file)
              ? null
              : createHash('sha256')
                  .update(await readFile(join(out, file)))
                  .digest('hex')
                  .slice(0, 16),
          })),
        );
        await build({
          configFile: false,
          root: config.root,
          logLevel: 'warn',
          publicDir: false,
          define: {
            'self.__PRECACHE': JSON.stringify(precache),
            'process.env.NODE_ENV': '"production"',
          },
          build: {
            outDir: out,
            emptyOutDir: false,
            copyPublicDir: false,
            target: 'es2022',
            rolldownOptions: {
              input: options.entry,
              output: { format: 'iife', entryFileNames: OUTPUT, codeSplitting: false },
            },
          },
        });
      },
    },
  };
}
