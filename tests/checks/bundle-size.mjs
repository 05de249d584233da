/**
 * How much does a tester's first page weigh over the wire? Counts index.html, which holds the fault screen, the
 * JavaScript and CSS that it asks for, whatever those import at once, and the two chunks that the first page always
 * fetches: the words of its language (the larger one) and the welcome screen (min + gzip).
 */
import { readFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const MOST_BYTES = 60_000;

/** Files of the first page with their gzip sizes, from the build's own manifest. */
export async function firstPageFiles() {
  const manifest = JSON.parse(await readFile(`${dist}.vite/manifest.json`, 'utf8'));
  const page = await readFile(`${dist}index.html`, 'utf8');
  const asked = new Set([...page.matchAll(/\/(assets\/[^"]+)/g)].map(([, file]) => file));
  const entries = Object.keys(manifest).filter((key) => asked.has(manifest[key].file));
  const alwaysFetched = ['words/languages/zh/phone.ts', 'phone/welcome.tsx'];
  const files = new Set(['index.html']);
  const visit = (key) => {
    const chunk = manifest[key];
    if (!chunk || files.has(chunk.file)) return;
    files.add(chunk.file);
    for (const css of chunk.css ?? []) files.add(css);
    for (const next of chunk.imports ?? []) visit(next);
  };
  for (const key of [...entries, ...alwaysFetched]) {
    if (!manifest[key]) throw new Error(`${key} is not in the build's manifest`);
    visit(key);
  }
  return Promise.all(
    [...files].map(async (file) => ({
      file,
      bytes: gzipSync(await readFile(dist + file), { level: 9 }).length,
    })),
  );
}

export async function bundleIsSmall() {
  const files = await firstPageFiles().catch((error) => error);
  if (!Array.isArray(files)) return { ok: false, output: `build the app first: ${files.message}` };
  const total = files.reduce((sum, { bytes }) => sum + bytes, 0);
  const lines = files.map(({ file, bytes }) => `${String(bytes).padStart(7)} B  ${file}`);
  const output = [...lines, `${total} B of at most ${MOST_BYTES}`].join('\n');
  return { ok: total <= MOST_BYTES && files.length > 1, output };
}
