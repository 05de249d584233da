/**
 * `npm run bench`: each row warmed up, then ours and the peer in turn, so that a slow moment of the
 * machine hits both. Prints medians with their spread (half the distance between the quartiles) and the ratio.
 * `npm run bench -- ingest sync` runs these rows only.
 */
import type { BenchRow } from './row.ts';
import { complaintsRow } from './complaints.ts';
import { ingestRow } from './ingest.ts';
import { mergeRow } from './merge.ts';
import { timeMixed } from './mixed.ts';
import { mileageRow } from './mileage.ts';
import { syncRow } from './sync.ts';
import { trackRow } from './track.ts';

const ROUNDS = 9;

const timed = async (work: () => unknown): Promise<{ ms: number; value: unknown }> => {
  const began = performance.now();
  const value = await work();
  return { ms: performance.now() - began, value };
};

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.round(share * (values.length - 1))] as number;
const spread = (values: readonly number[]): number =>
  (quantile(values, 0.75) - quantile(values, 0.25)) / 2;

const ms = (values: readonly number[]) =>
  `${quantile(values, 0.5).toFixed(1)} ± ${spread(values).toFixed(1)} ms`;

const measure = async (row: BenchRow): Promise<string> => {
  const { ours, peer, check, tearDown } = await row.setUp();
  check(await ours(), await peer());
  const [our, their, ratios]: [number[], number[], number[]] = [[], [], []];
  for (let round = 0; round < (row.rounds ?? ROUNDS); round++) {
    const first = round % 2 === 0;
    const a = await timed(first ? ours : peer);
    const b = await timed(first ? peer : ours);
    const [o, p] = first ? [a, b] : [b, a];
    our.push(o.ms);
    their.push(p.ms);
    ratios.push(p.ms / o.ms);
    check(o.value, p.value);
  }
  await tearDown?.();
  const ratio = `${quantile(ratios, 0.5).toFixed(2)} ± ${spread(ratios).toFixed(2)}`;
  return `| ${row.name} | ${ms(our)} | ${row.peerName}: ${ms(their)} | ${ratio} |`;
};

const rows: Readonly<Record<string, BenchRow>> = {
  complaints: complaintsRow,
  merge: mergeRow,
  mileage: mileageRow,
  track: trackRow,
  ingest: ingestRow,
  sync: syncRow,
};
const names = [...Object.keys(rows), 'mixed'];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !names.includes(name));
if (unknown.length > 0) {
  console.error(`no such row: ${unknown.join(', ')}. There are: ${names.join(', ')}`);
  process.exit(1);
}
const isWanted = (name: string) => asked.length === 0 || asked.includes(name);

console.log('| what | Pairlog | peer | times as fast |\n| --- | --- | --- | --- |');
for (const [name, row] of Object.entries(rows)) if (isWanted(name)) console.log(await measure(row));
if (isWanted('mixed')) {
  const mixed = timeMixed(ROUNDS);
  console.log(
    mixed
      ? `| mixed model of 1,000 pairs with 10 checks | ${ms(mixed.ours)} | lme4 ${mixed.version}: ${ms(mixed.peer)} | ${(quantile(mixed.peer, 0.5) / quantile(mixed.ours, 0.5)).toFixed(1)} |`
      : '\nThe mixed model was left out: R with lme4 (Debian: r-cran-lme4) is not on this machine.',
  );
}
