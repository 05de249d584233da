/**
 * A mixed model of wear over 1,000 pairs with 10 checks each, against lme4 in the same run. R times its own
 * fits, so that neither its start nor the reading of the data counts; both fits must agree.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { linearMixedModel, type MixedRow } from '../../core/statistics/index.ts';
import { seeded } from '../seeded.ts';

const PAIRS = 1000;
const CHECKS = 10;

/** Standard normal numbers by Box GEP & Muller ME, Ann Math Stat 1958;29:610-611. */
const normals = (random: () => number) => (): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const makeRows = (): MixedRow[] => {
  const normal = normals(seeded(7));
  return Array.from({ length: PAIRS }, (_, pair) => {
    const [start, change] = [0.03 * normal(), 0.09 * normal()];
    return Array.from({ length: CHECKS }, (__, at): MixedRow => {
      const g = Math.log(1 + (60 * at) / 50) / Math.log(1 + 500 / 50);
      const y = 0.7 + start + (change - 0.3) * g + 0.02 * normal();
      return { y, group: `p${pair}`, fixed: [1, g], random: [1, g] };
    });
  }).flat();
};

const script = (file: string, rounds: number): string => `
suppressMessages(library(lme4))
d <- read.csv("${file}")
fit <- lmer(y ~ g + (1 + g | pair), d, REML = TRUE)
for (i in seq_len(${rounds})) {
  t <- system.time(fit <- lmer(y ~ g + (1 + g | pair), d, REML = TRUE))[["elapsed"]]
  cat("ms", 1000 * t, "\\n")
}
cat("fixed", format(fixef(fit), digits = 15), "\\n")
cat("version", as.character(packageVersion("lme4")), "\\n")
`;

/**
 * Times both.
 * @returns milliseconds of each fit; null where R with lme4 is not on this machine
 */
export const timeMixed = (
  rounds: number,
): { readonly ours: number[]; readonly peer: number[]; readonly version: string } | null => {
  const rows = makeRows();
  const folder = mkdtempSync(join(tmpdir(), 'pairlog-mixed-'));
  try {
    const file = join(folder, 'rows.csv');
    writeFileSync(
      file,
      ['y,g,pair', ...rows.map(({ y, fixed, group }) => `${y},${fixed[1]},${group}`)].join('\n'),
    );
    let output: string;
    try {
      output = execFileSync('Rscript', ['-e', script(file, rounds)], { encoding: 'utf8' });
    } catch {
      return null;
    }
    const fit = linearMixedModel(rows);
    const [, ...fixed] = /fixed (\S+) (\S+)/.exec(output) ?? [];
    for (const [at, value] of fixed.entries())
      if (Math.abs(Number(value) - (fit.fixed[at] as number)) > 1e-6)
        throw new Error('the two fits differ');
    const ours: number[] = [];
    for (let round = 0; round < rounds; round++) {
      const began = performance.now();
      linearMixedModel(rows);
      ours.push(performance.now() - began);
    }
    return {
      ours,
      peer: [...output.matchAll(/ms ([\d.]+)/g)].map(([, ms]) => Number(ms)),
      version: /version (\S+)/.exec(output)?.[1] ?? '?',
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
