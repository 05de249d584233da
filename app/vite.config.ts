import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { serviceWorker } from './service-worker-plugin.ts';

const root = new URL('.', import.meta.url).pathname;

export default defineConfig({
  root,
  plugins: [
    preact({ devToolsEnabled: false, prefreshEnabled: false }),
    serviceWorker({
      entry: new URL('../service-worker/service-worker.ts', import.meta.url).pathname,
      include: /\.(html|js|css|svg|png|webmanifest)$/,
    }),
  ],
  build: {
    target: 'es2022',
    outDir: new URL('../dist', import.meta.url).pathname,
    emptyOutDir: true,
    sourcemap: 'hidden',
    manifest: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
