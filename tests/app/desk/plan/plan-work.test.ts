/** From the demo's records to a plan, and the plan without a tester. */
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
  type HandOutPlan,
  type RecordId,
} from '../../../../core/records/index.ts';
import { millimetres } from '../../../../core/units/index.ts';
import {
  balanceOf,
  drawnAnew,
  dropOut,
  footLengthOf,
  leastOf,
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

describe('a tester who drops out', () => {
  it('keeps what is running, wears nothing later, and leaves the rest no less even', () => {
    const plan = savedPlan();
    // In the second week: the first period runs, two are to come.
    const at = '2026-12-05T08:00:00+00:00';
    for (const { tester } of plan.testers.slice(0, 4)) {
      const asked = dropOut(plan, tester, at, records);
      const answer = drawPlan(asked.question);
      if (!answer.ok) throw new Error(answer.why);
      const made = drawnAnew(plan, asked, answer.plan);
      const early = (body: HandOutPlan) =>
        body.places.filter(({ period, tester: who }) => period === 0 && who !== tester);
      expect(early(made.plan)).toEqual(early(plan));
      const own = made.plan.places.filter((one) => one.tester === tester);
      expect(own.every(({ period, until }) => period === 0 && until === at)).toBe(true);
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
    const answer = drawPlan(dropOut(plan, tester, '2026-12-05T08:00:00+00:00', records).question);
    if (!answer.ok) throw new Error(answer.why);
    const others = (places: readonly { tester: RecordId; period: number }[]) =>
      places.filter((place) => place.tester !== tester).length;
    expect(others(answer.plan.places)).toBeGreaterThanOrEqual(others(plan.places));
  });
});
