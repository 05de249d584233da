/**
 * Do all imports run downward? And would the check notice if one did not?
 * A file with an import from core to app, planted in core/units while this runs, must make it fail.
 */
import { cruise } from 'dependency-cruiser';
import { createRequire } from 'node:module';
import { rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const rules = createRequire(import.meta.url)('./dependency-rules.cjs');

const cruiseFiles = async (paths) => {
  const { output } = await cruise(paths, {
    ruleSet: { forbidden: rules.forbidden },
    validate: true,
    baseDir: root,
    ...rules.options,
  });
  return output.summary;
};

const inWords = ({ rule, from, to }) => `${rule.name}: ${from} → ${to}`;

export async function importsAreDownward() {
  const summary = await cruiseFiles(['core', 'app', 'service-worker', 'demo-data']);
  if (summary.totalCruised < 50)
    return {
      ok: false,
      output: `only ${summary.totalCruised} files were read: the check is blind`,
    };
  if (summary.error > 0) return { ok: false, output: summary.violations.map(inWords).join('\n') };

  const planted = `${root}core/units/planted-wrong-import.ts`;
  await writeFile(planted, `export * from '../../app/store/index.ts';\n`);
  try {
    const wrong = await cruiseFiles(['core/units']);
    const noticed = wrong.violations.some(({ rule }) => rule.name === 'core-never-imports-app');
    return {
      ok: noticed,
      output: noticed ? '' : 'a planted import from core to app was not noticed',
    };
  } finally {
    await rm(planted);
  }
}
