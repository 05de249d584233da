/**
 * `npm run bench:desk [-- TESTERS RUNS] [--before FOLDER] [--passes N] [--pictures FOLDER]`: a desk that holds much, in
 * a real browser. Of each place: how long until its answer is there, and the longest time in which the page could not
 * answer, by the clock and by the processor time of the page's thread, which other work on the machine does not lengthen.
 * Needs `npm run build` first; `--before` is a built checkout of an earlier state to be measured in turns with this one.
 */
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { launchOptions } from '../browser/programs.ts';
import { openDeskSide, type Measured, type Side } from './desk-side.ts';
import { formerPlaces, places } from './desk-places.ts';
import { largeGroup } from './large-group.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    before: { type: 'string' },
    passes: { type: 'string', default: '3' },
    pictures: { type: 'string' },
  },
});
const [testers = 1000, runs = 200_000] = positionals.map(Number);
if (values.pictures) mkdirSync(values.pictures, { recursive: true });

const group = largeGroup(testers, runs, true);
const browser = await chromium.launch(launchOptions);
const here = fileURLToPath(new URL('../..', import.meta.url));
const now = await openDeskSide(browser, here, group);
const before = values.before ? await openDeskSide(browser, values.before, group) : null;

const median = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor((list.length - 1) / 2)] as number;

/** By place, what each pass measured. */
type Passes = Map<string, Measured[]>;
const pass = async (side: Side, all: typeof places, into: Passes, pictures?: string) => {
  for await (const [name, measured] of side.walk(all, pictures)) {
    into.set(name, [...(into.get(name) ?? []), measured]);
    console.error(name, measured);
  }
};
const mine: Passes = new Map();
const theirs: Passes = new Map();
for (let at = 0; at < Number(values.passes); at++) {
  if (before) await pass(before, formerPlaces, theirs);
  await pass(now, places, mine, at === 0 ? values.pictures : undefined);
}

const middle = (list: readonly Measured[], of: (one: Measured) => number) => median(list.map(of));
const ms = (value: number) => `${value.toFixed(0)} ms`;
console.log(`${testers} testers, ${runs} runs, ${group.revisions.length} records; the middle of`);
console.log(`${values.passes} passes. Longest task of the page's thread: clock / processor.\n`);
console.log('| place | there after | longest task | nodes | tab before | ratio |');
console.log('| --- | --- | --- | --- | --- | --- |');
for (const [name, list] of mine) {
  const tab = places.find((one) => one.name === name)?.tab;
  const old = tab === undefined ? undefined : theirs.get(tab);
  const there = middle(list, (one) => one.thereMs);
  const cells = [
    name,
    ms(there),
    `${ms(middle(list, (one) => one.longestMs))} / ${ms(middle(list, (one) => one.longestCpuMs))}`,
    String(middle(list, (one) => one.nodes)),
    old
      ? `${tab}: ${ms(middle(old, (one) => one.thereMs))}, ` +
        `${ms(middle(old, (one) => one.longestMs))} / ${ms(middle(old, (one) => one.longestCpuMs))}`
      : '',
    old ? (there / middle(old, (one) => one.thereMs)).toFixed(2) : '',
  ];
  console.log(`| ${cells.join(' | ')} |`);
}
await now.close();
await before?.close();
await browser.close();
