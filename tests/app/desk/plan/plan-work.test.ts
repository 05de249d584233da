/** From the demo's records to a plan, its hand-outs, and the plan without a tester. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../../core/panel/index.ts';
import {
  addRevisions,
  emptyLog,
  readBody,
  readBundle,
  unpackBundle,
  viewOfHeads,
  type HandOut,
  type HandOutPlan,
  type RecordId,
  type RecordOf,
} from '../../../../core/records/index.ts';
import { millimetres } from '../../../../core/units/index.ts';
import {
  balanceOf,
  drawnAnew,
  dropOut,
  footLengthOf,
  handedOut,
  handOutPeriod,
  leastOf,
  nextPeriod,
  planBody,
  questionOf,
  type PlanForm,
} from '../../../../app/desk/plan/plan-work.ts';

const file = new Uint8Array(
  readFileSync(new URL('../../../../demo-data/wear-test.pairlog', import.meta.url)),
);
const unpacked = unpackBundle(file);
if (!unpacked.ok) throw new Error(unpacked.why);
const revisions = readBundle(unpacked.text).revisions.map(({ revision }) => revision);
const records = viewOfHeads(
  [...addRevisions(emptyLog, revisions).values()].map(({ head }) => head),
);
const project = records.project[0]?.revision.id as RecordId;
const rounds = [...records.round].sort((a, b) => a.body.order - b.body.order);
const form: PlanForm = {
  rounds: rounds.map(({ revision }) => revision.id),
  periods: 3,
  testers: new Map(records.tester.map(({ revision }) => [revision.id, []])),
  allowedMm: 8,
  outComeBack: true,
  seed: 9,
};
const AT = '2026-11-26T08:00:00+00:00';
const about = { project, at: AT, from: AT, weeksPerPeriod: 3 };

const savedPlan = (): HandOutPlan => {
  const choice = questionOf(form, records);
  const answer = drawPlan(choice.question);
  if (!answer.ok) throw new Error(answer.why);
  return planBody(choice, answer.plan, about);
};

/** The records after these hand-outs were saved. */
const withHandOuts = (made: readonly HandOut[], ended: ReadonlySet<RecordId> = new Set()) => ({
  ...records,
  'hand-out': [
    ...records['hand-out'].map((one) =>
      ended.has(one.revision.id) ? { ...one, body: { ...one.body, until: AT } } : one,
    ),
    ...made.map((body, at) => ({
      kind: 'hand-out' as const,
      body,
      revision: { id: `made ${at}` } as unknown as RecordOf<'hand-out'>['revision'],
    })),
  ],
});

describe('the question of a plan', () => {
  it('takes the pairs that can be handed out and says how many it leaves out', () => {
    const all = questionOf(form, records);
    const stopped = records['stop-use'].filter(({ body }) => body.until === undefined);
    expect(all.pairsWithdrawn).toBe(new Set(stopped.flatMap(({ body }) => body.pairs)).size);
    expect(all.pairsWithdrawn).toBeGreaterThan(0);
    expect(all.pairsOut).toBe(0);
    expect(all.question.pairs.length + all.pairsWithdrawn).toBe(records.pair.length);
    const free = questionOf({ ...form, outComeBack: false }, records);
    expect(free.pairsOut).toBeGreaterThan(0);
    expect(free.question.pairs.length + free.pairsOut).toBe(all.question.pairs.length);
  });

  it('knows a size by the longer foot, else by the pair that was handed out last, else not', () => {
    const [tester] = records.tester;
    const id = tester?.revision.id as RecordId;
    const feet = { left: millimetres(251), right: millimetres(254) };
    expect(footLengthOf(id, { code: 'T1', footLengthMm: feet }, records)).toBe(254);
    const last = records['hand-out']
      .filter(({ body }) => body.tester === id)
      .sort((a, b) => Date.parse(b.body.from) - Date.parse(a.body.from))[0];
    const worn = records.pair.find(({ revision }) => revision.id === last?.body.pair);
    expect(worn).toBeDefined();
    expect(footLengthOf(id, { code: 'T1' }, records)).toBe(worn?.body.sizeMm);
    expect(footLengthOf(project, undefined, records)).toBeNull();
    const stranger = questionOf({ ...form, testers: new Map([[project, []]]) }, records);
    expect(stranger.withoutSize).toEqual([project]);
  });

  it('becomes a record that can be read again', () => {
    const plan = savedPlan();
    expect(readBody('hand-out-plan', plan)).toMatchObject({ ok: true });
    expect(plan.places.length).toBeGreaterThan(20);
    expect(balanceOf(plan).imbalance).toBeLessThan(60);
    expect(leastOf(plan)).toBe(0);
  });
});

describe('handing out a period', () => {
  it('waits for pairs that are still out or withdrawn, and hands out the rest blind', () => {
    const plan = savedPlan();
    const todo = handOutPeriod(plan, 0, records, AT);
    const first = plan.places.filter(({ period }) => period === 0);
    expect(todo.give.length + todo.cannot.length).toBe(first.length);
    expect(todo.takeBack).toEqual([]);
    expect(todo.give.length).toBeGreaterThan(0);
    expect(todo.give.every(({ blind, from }) => blind && from === AT)).toBe(true);
    expect(new Set(todo.cannot.map(({ why }) => why))).toEqual(new Set(['out']));
    const withdrawn = {
      ...records,
      'stop-use': [
        ...records['stop-use'],
        ...records['stop-use']
          .slice(0, 1)
          .map((one) => ({ ...one, body: { ...one.body, pairs: [first[0]?.pair as RecordId] } })),
      ].map((one) => ({ ...one, body: { ...one.body, until: undefined } })) as never,
    };
    expect(handOutPeriod(plan, 0, withdrawn, AT).cannot.map(({ why }) => why)).toContain(
      'withdrawn',
    );
  });

  it('knows what it handed out, and takes it back for the next period', () => {
    const plan = savedPlan();
    const out = new Set(records['hand-out'].map(({ revision }) => revision.id));
    const free = withHandOuts([], out);
    const { give } = handOutPeriod(plan, 0, free, AT);
    const first = plan.places.filter(({ period }) => period === 0);
    expect(give).toHaveLength(first.length);
    expect(nextPeriod(plan, free)).toBe(0);
    const after = withHandOuts(give, out);
    expect([...handedOut(plan, after).keys()]).toEqual(first);
    expect(nextPeriod(plan, after)).toBe(1);
    expect(handOutPeriod(plan, 0, after, AT).give).toEqual([]);
    const second = handOutPeriod(plan, 1, after, AT);
    expect(second.takeBack).toHaveLength(first.length);
    expect(second.cannot).toEqual([]);
    expect(second.give).toHaveLength(plan.places.filter(({ period }) => period === 1).length);
  });
});

describe('a tester who drops out', () => {
  it('keeps what was handed out, wears nothing later, and leaves the rest no less even', () => {
    const plan = savedPlan();
    const out = new Set(records['hand-out'].map(({ revision }) => revision.id));
    const { give } = handOutPeriod(plan, 0, withHandOuts([], out), AT);
    const after = withHandOuts(give, out);
    for (const { tester } of plan.testers.slice(0, 4)) {
      const asked = dropOut(plan, tester, 1, after);
      const answer = drawPlan(asked.question);
      if (!answer.ok) throw new Error(answer.why);
      const made = drawnAnew(plan, asked, answer.plan);
      const early = (body: HandOutPlan) => body.places.filter(({ period }) => period === 0);
      expect(early(made.plan)).toEqual(early(plan));
      expect(made.plan.places.some((one) => one.tester === tester && one.period > 0)).toBe(false);
      expect(made.plan.testers.find((one) => one.tester === tester)?.droppedOutAt).toBe(1);
      expect(made.before).toEqual(balanceOf(plan));
      expect(made.after).toEqual(balanceOf(made.plan));
      const rest = plan.places.filter((one) => one.tester !== tester || one.period === 0);
      if (made.plan.places.length === rest.length)
        expect(made.after.imbalance).toBeLessThanOrEqual(made.untouched.imbalance);
      else expect(made.plan.places.length).toBeGreaterThan(rest.length);
      expect(readBody('hand-out-plan', made.plan)).toMatchObject({ ok: true });
      expect(leastOf(made.plan)).toBeNull();
    }
  });

  it('does not empty places whose pairs are still out, because the plan counts on their return', () => {
    const plan = savedPlan();
    const [one] = plan.testers;
    const tester = one?.tester as RecordId;
    const answer = drawPlan(dropOut(plan, tester, 1, records).question);
    if (!answer.ok) throw new Error(answer.why);
    const others = (places: readonly { tester: RecordId; period: number }[]) =>
      places.filter((place) => place.tester !== tester).length;
    expect(others(answer.plan.places)).toBeGreaterThanOrEqual(others(plan.places));
  });
});
