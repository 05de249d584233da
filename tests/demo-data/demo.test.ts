/** The demo files come out the same each time, and hold what the README says. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  emptyLog,
  readBundle,
  revisionsOf,
  unpackBundle,
  viewOfLog,
} from '../../core/records/index.ts';
import { isOutOfTolerance, openProject, reviewProject } from '../../core/review/index.ts';
import { buildDemo } from '../../demo-data/wear-test.ts';

const file = (name: string) =>
  new Uint8Array(readFileSync(fileURLToPath(new URL(`../../demo-data/${name}`, import.meta.url))));
const revisionsIn = (name: string) => {
  const unpacked = unpackBundle(file(name));
  if (!unpacked.ok) throw new Error(unpacked.why);
  const { revisions, problems } = readBundle(unpacked.text);
  expect(problems).toEqual([]);
  return revisions.map(({ revision }) => revision);
};

describe('the demo', () => {
  it('is what its generator makes', () => {
    const { wearTest, lateDelivery } = buildDemo();
    expect(Buffer.from(wearTest).equals(file('wear-test.pairlog'))).toBe(true);
    expect(Buffer.from(lateDelivery).equals(file('late-delivery.pairlog'))).toBe(true);
  });

  it('is a whole wear test with one pair out of tolerance', () => {
    const records = viewOfLog(addRevisions(emptyLog, revisionsIn('wear-test.pairlog')));
    const log = openProject(
      records,
      records.project[0]?.revision.id as never,
      Date.UTC(2026, 10, 19),
    );
    const review = log && reviewProject(log);
    expect(review?.rounds).toHaveLength(3);
    expect(review?.size).toMatchObject({ pairs: 24, testers: 12 });
    expect(review?.size.runs).toBeGreaterThan(450);
    expect(review?.pairs.filter(({ outOfTolerance: out }) => isOutOfTolerance(out))).toHaveLength(
      1,
    );
    expect(review?.pairs.filter(({ stopUse }) => stopUse !== null)).toHaveLength(1);
    expect(review?.leftOut).toMatchObject([{ kind: 'lab-booking', why: 'unknown-kind' }]);
  });

  it('gives the figures that it gave before testers added words and marks, and the lead a change in figures', () => {
    const reviewOf = (name: string) => {
      const records = viewOfLog(addRevisions(emptyLog, revisionsIn(name)));
      const id = records.project[0]?.revision.id as never;
      return reviewProject(openProject(records, id, Date.UTC(2026, 10, 19)) as never);
    };
    const before = reviewOf('../tests/reference/logs/demo-without-remarks.pairlog');
    expect(before.size.runs).toBeGreaterThan(450);
    const now = reviewOf('wear-test.pairlog');
    // Marks on the two-sided lines came later, and stand apart from every other figure.
    expect(now.rounds.map(({ twoSided }) => twoSided.length > 0)).toEqual([false, true, true]);
    // So did the collar's change in figures, which only its own arrival reads.
    const structured = now.rounds.flatMap(({ changes }) =>
      changes.flatMap((one) => one.structured ?? []),
    );
    expect(structured).toMatchObject([{ line: 'collar', by: { amount: 3, unit: 'mm' } }]);
    expect({
      ...now,
      rounds: now.rounds.map((round) => ({
        ...round,
        changes: round.changes.map(({ structured: _structured, ...words }) => words),
        twoSided: [],
        twoSidedChanges: [],
      })),
    }).toEqual(before);
  });

  it('takes the late delivery in any order with the same result', () => {
    const [group, late] = [revisionsIn('wear-test.pairlog'), revisionsIn('late-delivery.pairlog')];
    const one = addRevisions(addRevisions(emptyLog, group), late);
    const two = addRevisions(addRevisions(addRevisions(emptyLog, late), group), late);
    const hashes = (log: typeof one) => [...revisionsOf(log)].map(({ hash }) => hash).sort();
    expect(hashes(two)).toEqual(hashes(one));
    expect(hashes(one).length).toBeGreaterThan(group.length);
    expect(hashes(one).length).toBeLessThan(group.length + late.length);
  });
});
