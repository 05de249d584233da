/** The desk's worker over the demo: its answers are the review's, and lists come in parts. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  emptyLog,
  readBundle,
  unpackBundle,
  viewOfHeads,
  type Revision,
} from '../../../../core/records/index.ts';
import {
  checkPanel,
  openProject,
  reviewProject,
  type ProjectLog,
} from '../../../../core/review/index.ts';
import { deskWork } from '../../../../app/desk/worker/desk-work.ts';

const NOW = Date.UTC(2026, 10, 19);
const revisions = (): Revision[] => {
  const file = new Uint8Array(
    readFileSync(new URL('../../../../demo-data/wear-test.pairlog', import.meta.url)),
  );
  const unpacked = unpackBundle(file);
  if (!unpacked.ok) throw new Error(unpacked.why);
  return readBundle(unpacked.text).revisions.map(({ revision }) => revision);
};
const heads = [...addRevisions(emptyLog, revisions()).values()].map(({ head }) => head);
const records = viewOfHeads(heads);
const project = records.project[0]?.revision.id as never;
const review = reviewProject(openProject(records, project, NOW) as ProjectLog);

const opened = async () => {
  const work = deskWork(
    () => Promise.resolve(heads),
    () => NOW,
  );
  const read = await work.read();
  return { work, read };
};

describe('the desk’s worker', () => {
  it('gives the records without the runs, and a review without its long lists', async () => {
    const { work, read } = await opened();
    expect(read).not.toHaveProperty('run');
    expect(read.pair).toHaveLength(24);
    const summary = work.review(project);
    expect(summary?.size).toEqual(review.size);
    const [cell] = summary?.rounds[1]?.complaints.cells ?? [];
    expect(cell).toMatchObject({ zone: 'U3', kind: 'pressure', word: 'recurs-across-testers' });
    expect(cell).not.toHaveProperty('runIds');
    expect(summary?.leftOut).toEqual({ 'unknown-kind': 1, 'newer-schema': 0, unreadable: 0 });
    expect(structuredClone(summary)).toEqual(summary);
  });

  it('works out once what a place asks, ahead of it, and anew once the log is read anew', async () => {
    const { work } = await opened();
    await work.prepare(project);
    const ahead = work.comfort(project);
    expect(work.comfort(project)).toBe(ahead);
    expect(work.inTolerance.comfort(project)).not.toBe(ahead);
    await work.read();
    expect(work.comfort(project)).not.toBe(ahead);
    expect(work.comfort(project)).toEqual(ahead);
  });

  it('counts zones as the review does, and of one kind only that', async () => {
    const { work } = await opened();
    const round = review.rounds[1];
    if (!round) throw new Error('no round');
    const all = work.zones(project, round.id, null);
    const byZone = (list: readonly { zone: string }[]) =>
      [...list].sort((a, b) => (a.zone < b.zone ? -1 : 1));
    expect(byZone(all.left)).toEqual(round.zones.left);
    expect(byZone(all.right)).toEqual(round.zones.right);
    const pressure = work.zones(project, round.id, 'pressure');
    expect(pressure.right.map(({ zone }) => zone)).toEqual(['U3']);
    expect(pressure.left).toEqual([]);
  });

  it('gives the latest reports of a zone, and says how many there are', async () => {
    const { work } = await opened();
    const asked = { foot: 'right', zone: 'U3', kind: 'pressure', testers: 3, reports: 5 } as const;
    const { look, headline } = work.zone(project, asked);
    expect(headline.case).toBe('recurred');
    expect(look.allReports).toBe(52);
    expect(look.reports).toHaveLength(5);
    const times = look.reports.map(({ atMs }) => atMs);
    expect(times).toEqual([...times].sort((a, b) => b - a));
    expect(look.rows).toHaveLength(3);
    expect(look.allTesters).toBe(12);
    expect(work.zone(project, { ...asked, reports: 99 }).look.reports).toHaveLength(52);
    expect(structuredClone(look)).toEqual(look);
  });

  it('looks closer at what recurs', async () => {
    const { work } = await opened();
    const look = work.zoneProof(project, review.rounds[0]?.id as never, {
      zone: 'U10',
      kind: 'heel-slip',
    });
    expect(look?.firstRepeat).toMatchObject({ testers: 8, repeated: 5 });
    expect(work.zoneProof(project, project, { zone: 'U10', kind: 'heel-slip' })).toBeNull();
  });

  it('sets two rounds against each other, and none that is not in the project', async () => {
    const { work } = await opened();
    const [first, , third] = review.rounds.map(({ id }) => id);
    const found = work.changes(project, first as never, third as never, 'all')?.look.comparison;
    expect(found?.testers).toEqual({ both: 8, onlyEarlier: 0, onlyLater: 0 });
    expect(found?.changes.map(({ found: own }) => own?.verdict)).toEqual([
      'better',
      undefined,
      'too-little',
      undefined,
    ]);
    expect(structuredClone(found)).toEqual(found);
    expect(work.changes(project, first as never, project, 'all')).toBeNull();
  });

  it('proposes what came of the finding on the heel', async () => {
    const { work, read } = await opened();
    const finding = read.finding[0]?.revision.id as never;
    expect(work.proposeOutcome(project, finding)).toMatchObject({
      round: review.rounds[1]?.id,
      verdict: 'better',
      untilMs: NOW,
    });
    expect(work.proposeOutcome(project, project)).toBeNull();
  });

  it('answers the same without the pairs out of tolerance, when asked so', async () => {
    const { work } = await opened();
    const some = work.inTolerance.review(project);
    expect(work.review(project)?.without).toBeNull();
    expect(some?.without?.map(({ code }) => code)).toEqual(['229']);
    expect(some?.size.pairs).toBe(23);
    expect(some?.size.runs).toBeLessThan(review.size.runs);
    const round = review.rounds[1]?.id as never;
    const runs = (answers: Pick<typeof work, 'layers'>) =>
      answers.layers(project, round)?.askedRuns ?? 0;
    expect(runs(work.inTolerance)).toBeLessThan(runs(work));
    expect(work.feet(project).testers).toHaveLength(12);
    expect(structuredClone(some)).toEqual(some);
  });

  it('knows no project that is not in the log', async () => {
    const { work } = await opened();
    expect(work.review('00000000-0000-7000-8000-000000000000' as never)).toBeNull();
    expect(() => work.wearPlaces('00000000-0000-7000-8000-000000000000' as never)).toThrow(
      /not in the log/,
    );
  });

  it('checks the panel and draws a plan as the core does', async () => {
    const { work } = await opened();
    expect(work.panelCheck(project)).toEqual(
      checkPanel(openProject(records, project, NOW) as ProjectLog),
    );
    expect(
      work.drawPlan({ seed: 1, rounds: [], periods: 1, testers: [], pairs: [], allowedMm: 4 }),
    ).toEqual({ ok: false, why: 'no-round' });
  });

  it('puts together the report of a round, and the figures as files that read back', async () => {
    const { work } = await opened();
    const round = review.rounds[0]?.id as never;
    const report = work.report(project, round);
    expect(report?.round.size).toEqual(review.rounds[0]?.size);
    // What goes from the worker to the page must be plain.
    expect(structuredClone(report)).toEqual(report);
    const { tables, json } = work.figures(project);
    expect(tables.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['findings', 'complaints', 'pairs', 'runs']),
    );
    expect(JSON.parse(json)).toMatchObject({ format: 'pairlog-review', v: 1 });
  });
});
