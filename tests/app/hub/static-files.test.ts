import { createHash } from 'node:crypto';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inlineHashes } from '../../../app/hub/static-files.ts';

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
