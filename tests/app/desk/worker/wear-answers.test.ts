/** What Wear and Verdict ask of the log, on the demo: cards, checks with their standing, and the grid. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  emptyLog,
  readBundle,
  sealRevision,
  unpackBundle,
  type Decision,
  type RecordId,
  type Revision,
} from '../../../../core/records/index.ts';
import { decisionOn, nextCheck, testersToShow } from '../../../../core/review/index.ts';
import { pairsToHold } from '../../../../core/wear/index.ts';
import { deskWork } from '../../../../app/desk/worker/desk-work.ts';
import { idOf, stampAt } from '../../../core/records/make.ts';

const NOW = Date.UTC(2026, 10, 19);
const demo = (): readonly Revision[] => {
  const unpacked = unpackBundle(
    new Uint8Array(
      readFileSync(new URL('../../../../demo-data/wear-test.pairlog', import.meta.url)),
    ),
  );
  if (!unpacked.ok) throw new Error(unpacked.why);
  return readBundle(unpacked.text).revisions.map(({ revision }) => revision);
};

const opened = async (more: readonly Revision[] = []) => {
  const log = addRevisions(emptyLog, [...demo(), ...more]);
  const work = deskWork(
    () => Promise.resolve([...log.values()].map(({ head }) => head)),
    () => NOW,
  );
  const records = await work.read();
  return { work, records, project: records.project[0]?.revision.id as RecordId };
};

const codeOf = ({ records }: Awaited<ReturnType<typeof opened>>, id: string) =>
  records.pair.find(({ revision }) => revision.id === id)?.body.code;

describe('the cards of wear', () => {
  it('stand for the limits of the brief in its order, then for what has none, with every round', async () => {
    const { work, project } = await opened();
    const { cards, headline, stamp, checks } = work.wearState(project);
    expect(cards.map(({ limit, site }) => limit && `${limit.measure} ${site}`)).toEqual([
      'energy-absorbed heel-centre',
      'stack-height heel-centre',
      'tread-depth heel-lateral',
      null,
      null,
      null,
      null,
    ]);
    for (const { rounds } of cards) expect(rounds).toHaveLength(3);
    expect(headline).toMatchObject({ case: 'weak-point', limit: { measure: 'tread-depth' } });
    expect(stamp).toBe('open');
    expect(checks).toBe(43);
    const [energy, , tread] = cards;
    // 70 % of the start of the round, which each round has of its own.
    expect(energy?.rounds[0]?.limitAt).toBeCloseTo(
      0.7 * (energy?.rounds[0]?.curve?.[0]?.median ?? 0),
    );
    expect(tread?.rounds[0]?.limitAt).toBe(1);
  });

  it('name the soonest check that still tells something', async () => {
    const desk = await opened();
    const { cards } = desk.work.wearState(desk.project);
    const [, stack] = cards;
    const latest = stack?.rounds.at(-1);
    const next = latest && nextCheck(latest);
    expect(codeOf(desk, next?.pair ?? '')).toBe('637');
    expect(next?.distance).toBe(390_000);
    expect(next?.narrowing).toBeLessThan(latest?.next[0]?.narrowing ?? 0);
  });
});

describe('the checks', () => {
  it('are all there, latest first, each beside the pair’s earlier ones', async () => {
    const { work, project } = await opened();
    const list = work.checkList(project);
    expect(list).toHaveLength(43);
    const times = list.map(({ at }) => Date.parse(at));
    expect(times).toEqual(times.toSorted((a, b) => b - a));
    const [first] = list;
    const look = first && work.checkLook(project, first.id);
    expect(look?.readings[0]?.earlier.map(({ distanceM }) => Math.round(distanceM / 1000))).toEqual(
      [0, 64],
    );
    expect(look?.readings[0]?.uncertainty).toBeGreaterThan(0);
    expect(work.checkLook(project, idOf(77))).toBeNull();
  });

  it('show a reading that was set aside, with the reason, although it is in no figure', async () => {
    const before = await opened();
    const { project } = before;
    const [check] = before.work.checkList(project);
    const [reading] = check?.readings ?? [];
    if (!check || !reading) throw new Error('no check');
    const head = before.records['bench-check'].find(({ revision }) => revision.id === check.id);
    const { measure, site, foot, unit } = reading;
    const decision = decisionOn(
      {
        ...{ record: check.id, recordKind: 'bench-check', reading: { measure, site, foot, unit } },
        judged: head?.revision.stamp as Decision['judged'],
      },
      { project, ruling: 'set-aside', why: 'misread', at: '2026-11-18T00:00:00Z' },
    );
    const revision = sealRevision(
      { id: idOf(300), kind: 'decision', author: idOf(1), sv: 1, body: decision },
      stampAt(NOW),
      null,
    );
    const after = await opened([revision]);
    const shown = after.work.checkLook(project, check.id)?.readings[0];
    expect(shown).toMatchObject({
      value: reading.value,
      standing: { state: 'set-aside', why: 'misread', decision: idOf(300) },
    });
    const valueIn = (desk: typeof before) =>
      desk.work
        .wearState(project)
        .cards.flatMap(({ kind, rounds }) =>
          kind === 'stack-height mm' ? rounds.flatMap(({ points }) => points) : [],
        )
        .filter((point) => point.check === check.id)
        .map(({ value }) => value);
    expect(valueIn(after)).not.toEqual(valueIn(before));
  });
});

describe('the grid of the verdict', () => {
  it('has a row a limit and a cell a round, and says what would settle the latest', async () => {
    const desk = await opened();
    const { grid, headline, stamp } = desk.work.verdictState(desk.project);
    expect(grid.rows.map(({ what }) => what)).toEqual([
      ...['wear', 'wear', 'wear', 'structure', 'allowed-rate', 'complaints', 'stop-use'],
    ]);
    for (const { cells } of grid.rows) expect(cells.every((cell) => cell !== null)).toBe(true);
    expect(headline).toMatchObject({ case: 'open', open: 6, of: 7 });
    expect(stamp).toBe('open');
    const settles = grid.rows.map(({ settle }) => settle);
    expect(settles[1]).toMatchObject({ by: 'measure', atM: 390_000 });
    const visit = settles[1]?.by === 'measure' ? settles[1] : null;
    expect(codeOf(desk, visit?.pair ?? '')).toBe('637');
    expect(visit?.also.map((id) => codeOf(desk, id))).toEqual(['360', '926']);
    // T01 ran about 9 km a day in it up to 17 November.
    expect(visit?.expected).toMatchObject({ when: 'later' });
    // The same three pairs at one distance are one visit.
    const visits = desk.work.nextVisits(desk.project);
    expect(visits).toHaveLength(1);
    expect(visits[0]).toMatchObject({ atM: 390_000, expected: { when: 'later' } });
    const { cards } = desk.work.wearState(desk.project);
    expect(cards.slice(0, 3).map(({ settle }) => settle)).toEqual(settles.slice(0, 3));
    expect(settles[3]).toEqual({ by: 'run-pairs', need: 29, have: 0, atM: 600_000 });
    expect(settles[6]).toBeNull();
    const lives = grid.rows[3]?.cells[1]?.picture;
    expect(
      lives?.draw === 'lives' && lives.lives.filter(({ cameApart }) => cameApart),
    ).toHaveLength(1);
    expect(structuredClone(grid)).toEqual(grid);
  });

  it('asks for as many testers and pairs as the rules need', () => {
    expect(testersToShow(0.05)).toBe(73);
    expect(testersToShow(0.01)).toBe(381);
    expect(pairsToHold(0)).toBe(29);
    expect(pairsToHold(1)).toBeGreaterThan(29);
  });
});
