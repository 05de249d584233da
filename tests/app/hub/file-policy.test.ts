/** A file without a choice of anybody does what its maker could do at the hub, and a device takes what the hub would send. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openDatabase, type HubDatabase } from '../../../app/hub/store/database.ts';
import { pullRevisions, pushRevisions } from '../../../app/hub/store/feed.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import {
  addRevisions,
  changesByFile,
  compareRevisions,
  emptyLog,
  makerAt,
  planFile,
  readBundle,
  recordShownIn,
  sealRevision,
  unpackBundle,
  type Caller,
  type Log,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { seeded } from '../../seeded.ts';

const [lead, ada, ben, reader] = [idOf(1), idOf(2), idOf(3), idOf(4)];
const ids = [ada, ben, idOf(5), idOf(6), idOf(7)];
const kinds = [
  'run',
  'ranking',
  'attachment',
  'tester',
  'pair',
  'project',
  'hand-out',
  'round',
  'finding',
  'reply',
  'decision',
  'quote',
  'question',
  'answer',
  'proposal',
  'proposal-reply',
  'thanks',
  'fit-session',
  'fit-trial',
  'weather-mast',
];

const anyState: fc.Arbitrary<Revision> = fc
  .record({
    id: fc.constantFrom(...ids),
    kind: fc.constantFrom(...kinds),
    author: fc.constantFrom(lead, ada, ada, ben, reader),
    tester: fc.constantFrom(ada, ada, ben, null),
    record: fc.constantFrom(...ids),
    ms: fc.nat(30),
    device: fc.nat(2),
    state: fc.constantFrom('kept', 'kept', 'kept', 'kept', 'deleted', 'erased'),
  })
  .map(({ id, kind, author, tester, record, ms, device, state }) =>
    sealRevision(
      {
        id,
        // A tester's record stays one: members go by it.
        kind: id === ada || id === ben ? 'tester' : kind,
        author,
        sv: 9,
        body:
          state === 'kept'
            ? {
                ...{ ...(tester && { tester }), record, source: record, word: ms },
                ...{ question: record, finding: record },
                ...(ms % 2 === 0 && { sent: '2026-11-18T10:00:00Z' }),
              }
            : null,
        ...(state !== 'kept' && { deleted: true as const }),
        ...(state === 'erased' && { erased: true as const }),
      },
      stampAt(1000 + ms, 0, device),
      null,
    ),
  );
const someStates = fc.array(anyState, { maxLength: 14 });

/** A tester's record, by which the hub's group and the lead's device know the tester. */
const known = (id: RecordId, n: number): Revision =>
  sealRevision(
    { id, kind: 'tester', author: lead, sv: 9, body: { code: `T0${n}` } },
    stampAt(1, n),
    null,
  );
const members = [known(ada, 1), known(ben, 2)];

const logOf = (...revisions: readonly (readonly Revision[])[]): Log =>
  addRevisions(emptyLog, revisions.flat());

/** What a log comes to, in a form that can be compared; of two erasures for good either will do. */
const stateOf = (log: Log): unknown =>
  [...log]
    .map(([id, { head, older }]) =>
      head.erased ? [id, 'erased'] : [id, head.hash, ...older.map(({ hash }) => hash)],
    )
    .sort((a, b) => ((a[0] as string) < (b[0] as string) ? -1 : 1));

let db: HubDatabase;
let groups = 0;
beforeAll(async () => ({ db } = await openDatabase({ file: ':memory:' })));
afterAll(() => db.destroy());

/** A group of the hub, and what becomes of revisions that are pushed to it in the order of their stamps. */
const newGroup = async () => {
  const group = idOf(1000 + ++groups);
  await makeGroup(db, group, 'Group', 0);
  const push = async (caller: Caller, revisions: readonly Revision[]) => {
    const sorted = [...revisions].sort(compareRevisions);
    const outcome = await pushRevisions(db, group, caller, sorted);
    if (outcome.what !== 'done') throw new Error(outcome.what);
    return sorted.filter((_, at) => outcome.verdicts[at]?.verdict === 'stored');
  };
  const pull = async (caller: Caller): Promise<Revision[]> => {
    const page = await pullRevisions(db, group, caller, 'none', null, 'mine', 2000, true);
    return (page?.revisions ?? []).map((json) => JSON.parse(json) as Revision);
  };
  return { push, pull };
};

describe('without a choice', () => {
  it('a lead’s device takes from a tester’s file what the hub would take from that tester', async () => {
    await fc.assert(
      fc.asyncProperty(someStates, someStates, async (before, file) => {
        const { push } = await newGroup();
        const base = await push({ member: lead, role: 'lead' }, [...members, ...before]);
        const stored = await push({ member: ada, role: 'tester' }, file);
        const log = logOf(base);
        const taker = { member: lead, role: 'lead' } as const;
        const {
          taken,
          asked,
          known: there,
          away,
        } = planFile(file, taker, makerAt(taker, ada, log), log);
        expect(stateOf(addRevisions(log, taken))).toEqual(stateOf(addRevisions(log, stored)));
        expect(taken.length + asked.length + there + away).toBe(file.length);
        expect(away).toBe(0);
        // Whatever else the header says is worth no more.
        const isKnown = base.some(({ kind, author }) => kind === 'proposal' && author === reader);
        for (const by of [lead, ...(isKnown ? [] : [reader]), idOf(77), undefined])
          expect(planFile(file, taker, makerAt(taker, by, log), log).taken).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('a lead’s device takes from a specialist who is known by a proposal what the hub would take', async () => {
    const [finding, proposal] = [
      sealRevision(
        { id: idOf(20), kind: 'finding', author: lead, sv: 9, body: {} },
        stampAt(2),
        null,
      ),
      sealRevision(
        { id: idOf(8), kind: 'proposal', author: reader, sv: 9, body: { finding: idOf(20) } },
        stampAt(3),
        null,
      ),
    ];
    await fc.assert(
      fc.asyncProperty(someStates, someStates, async (before, file) => {
        // A lead's kind by the reader would make them a lead here.
        const others = before.filter(({ author }) => author !== reader);
        const { push } = await newGroup();
        const base = await push({ member: lead, role: 'lead' }, [...members, finding, ...others]);
        const log = logOf(base);
        const taker = { member: lead, role: 'lead' } as const;
        expect(makerAt(taker, reader, log)).toBeNull();
        const known = logOf(base, await push({ member: reader, role: 'specialist' }, [proposal]));
        const maker = makerAt(taker, reader, known);
        expect(maker).toEqual({ member: reader, role: 'specialist' });
        const by = file.map((one, at) =>
          sealRevision(
            {
              ...{ id: one.id, kind: one.kind, sv: one.sv },
              author: one.author === ada ? reader : one.author,
              body: one.body && at % 2 === 0 ? { ...one.body, finding: idOf(20) } : one.body,
              ...(one.deleted && { deleted: true as const }),
              ...(one.erased && { erased: true as const }),
            },
            one.stamp,
            null,
          ),
        );
        const stored = await push({ member: reader, role: 'specialist' }, by);
        const { taken } = planFile(by, taker, maker, known);
        expect(stateOf(addRevisions(known, taken))).toEqual(stateOf(addRevisions(known, stored)));
        for (const { author, kind } of taken) {
          expect(author).toBe(reader);
          expect(['proposal', 'attachment']).toContain(kind);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('a member’s device takes from a lead’s file what the hub would send to that member', async () => {
    await fc.assert(
      fc.asyncProperty(
        someStates,
        fc.constantFrom<Caller>(
          { member: ada, role: 'tester' },
          { member: reader, role: 'specialist' },
        ),
        async (some, taker) => {
          const all = [...members, ...some];
          const { push, pull } = await newGroup();
          await push({ member: lead, role: 'lead' }, all);
          const maker = { member: lead, role: 'lead' } as const;
          const { taken, asked } = planFile(all, taker, maker, emptyLog);
          expect(asked).toEqual([]);
          // What was taken back is gone from the hub, and from a file as soon as it is exported.
          const erased = new Set(all.filter((one) => one.erased).map(({ id }) => id));
          const kept = (revisions: readonly Revision[]) =>
            stateOf(logOf(revisions.filter((one) => !erased.has(one.id) && !isOfErased(one))));
          const isOfErased = (one: Revision) => erased.has(recordShownIn(one) ?? one.id);
          expect(kept(taken)).toEqual(kept(await pull(taker)));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('the order of a file, and opening it twice, change nothing', () => {
    fc.assert(
      fc.property(someStates, someStates, fc.infiniteStream(fc.nat()), (before, file, keys) => {
        const log = logOf(members, before);
        const taker = { member: lead, role: 'lead' } as const;
        const maker = { member: ada, role: 'tester' } as const;
        const shuffled = file
          .map((revision) => [keys.next().value, revision] as const)
          .sort((a, b) => a[0] - b[0])
          .map(([, revision]) => revision);
        const first = planFile(file, taker, maker, log);
        expect(planFile([...shuffled, ...file], taker, maker, log)).toMatchObject({
          taken: first.taken,
          asked: first.asked,
        });
        // A second time nothing is taken, and with the rest chosen nothing is left.
        const after = addRevisions(log, first.taken);
        expect(planFile(file, taker, maker, after).taken).toEqual([]);
        const all = addRevisions(after, first.asked);
        expect(planFile(file, taker, maker, all)).toMatchObject({ taken: [], asked: [] });
        const named = new Set(
          [...all.values()].filter(({ head }) => head.erased).map(({ head }) => head.id),
        );
        const shownByNone = (revision: Revision) =>
          named.has(recordShownIn(revision) ?? revision.id);
        const rest = file.filter((revision) => !shownByNone(revision));
        expect(stateOf(addRevisions(all, rest))).toEqual(stateOf(all));
      }),
    );
  });
});

describe('the demo with flipped authors', () => {
  const unpacked = unpackBundle(
    readFileSync(new URL('../../../demo-data/wear-test.pairlog', import.meta.url)),
  );
  if (!unpacked.ok) throw new Error(unpacked.why);
  const { header, revisions } = readBundle(unpacked.text);
  const all = revisions.map(({ revision }) => revision);
  const log = addRevisions(emptyLog, all);
  const testers = all.filter(({ kind }) => kind === 'tester').map(({ id }) => id);
  const chief = header?.by as RecordId;

  it('changes no record of anybody but the tester who made the file', () => {
    const random = seeded(20261129);
    const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
    const authors = [chief, ...testers];
    const effects = new Set<string>();
    for (let round = 0; round < 60; round++) {
      const by = pick(testers);
      const file = Array.from({ length: 40 }, (_, at): Revision => {
        const { id, kind, body } = pick(all);
        const what = random();
        const next = what < 0.2 ? null : { ...body, ...(what < 0.4 && { tester: pick(testers) }) };
        return sealRevision(
          {
            id,
            kind: random() < 0.1 ? pick(kinds) : kind,
            author: random() < 0.3 ? by : pick(authors),
            sv: 1,
            body: next,
            ...(next === null && { deleted: true as const }),
            ...(next === null && random() < 0.5 && { erased: true as const }),
          },
          stampAt(Date.UTC(2040, 0, 1) + at),
          null,
        );
      });
      const taker = { member: chief, role: 'lead' } as const;
      const plan = planFile(file, taker, makerAt(taker, by, log), log);
      const after = addRevisions(log, plan.taken);
      for (const [id, { head }] of after) {
        const before = log.get(id)?.head as Revision;
        if (head === before) continue;
        expect(head.author).toBe(by);
        // Their own record, whoever wrote it last, or what the group noted of their body.
        expect([before.author, before.body?.['tester'], before.id]).toContain(by);
        expect([
          ...['run', 'ranking', 'damage-report', 'attachment', 'tester', 'fit-trial'],
        ]).toContain(head.kind);
      }
      for (const { effect } of changesByFile(plan.asked, file, log)) effects.add(effect);
    }
    for (const effect of ['changes', 'erases', 'erases-for-good'])
      expect(effects).toContain(effect);
  });
});
