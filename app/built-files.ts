import { readdir } from 'node:fs/promises';
import { join, relative } from 'node:path';

/** The files of a finished build, each by its path in the build's folder, with slashes. */
export const builtFiles = async (out: string): Promise<readonly string[]> =>
  (await readdir(out, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => relative(out, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
