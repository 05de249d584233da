/** From an agreed plan to its hand-outs: on the plan's own days, and nothing that has happened changes. */
import { describe, expect, it } from 'vitest';
import { planHeadline } from '../../../../core/headlines/index.ts';
import { stopTester } from '../../../../core/panel/index.ts';
import type { HandOut, HandOutPlan, RecordId } from '../../../../core/records/index.ts';
import { millimetres } from '../../../../core/units/index.ts';
import { morningOf, startOf } from '../../../../app/desk/plan/day.ts';
import { toLocalDay } from '../../../../app/parts/instant.ts';
import {
  datedPlaces,
  planCounts,
  planDays,
  planFacts,
} from '../../../../app/desk/plan/plan-facts.ts';
import { reservesFor, roomsIn } from '../../../../app/desk/plan/plan-fit.ts';
import { planRows } from '../../../../app/desk/plan/plan-rows.ts';
import {
  handedOut,
  settlePlan,
  type SettleOptions,
} from '../../../../app/desk/plan/settle-plan.ts';
import type { DeskRecords } from '../../../../app/desk/worker/desk-work.ts';
import { idOf } from '../../../core/records/make.ts';

const DAY_MS = 86_400_000;
const project = idOf(900);
const [roundA, roundB] = [idOf(501), idOf(502)];
const FROM = '2026-11-02T08:00:00.000Z';
const startMs = Date.parse(FROM);
const instant = (ms: number) => new Date(ms).toISOString();
const dayAt = (day: number) => instant(startMs + day * DAY_MS);

const record = <B>(id: RecordId, body: B) => ({ body, revision: { id } });
const feet = (mm: number) => ({
  footLengthMm: { left: millimetres(mm - 1), right: millimetres(mm) },
});
const last = { name: 'L1', sizeMm: millimetres(270), lengthMm: millimetres(283) };

/** Two rounds, two sizes, two testers who change after three weeks; T13 is in reserve, T14 has other feet. */
const plan: HandOutPlan = {
  ...{ project, at: FROM, seed: 1, rounds: [roundA, roundB], basis: 'best-found' as const },
  ...{ from: FROM, periods: 2, weeksPerPeriod: 3 },
  testers: [{ tester: idOf(1) }, { tester: idOf(2) }],
  places: [
    { tester: idOf(1), period: 0, pair: idOf(601), round: roundA },
    { tester: idOf(2), period: 0, pair: idOf(712), round: roundB },
    { tester: idOf(1), period: 1, pair: idOf(711), round: roundB },
    { tester: idOf(2), period: 1, pair: idOf(602), round: roundA },
  ],
};

const recordsWith = (handOuts: readonly HandOut[] = [], stopped: readonly RecordId[] = []) =>
  ({
    tester: [
      record(idOf(1), { code: 'T01', ...feet(270) }),
      record(idOf(2), { code: 'T02', ...feet(283) }),
      record(idOf(13), { code: 'T13', ...feet(271) }),
      record(idOf(14), { code: 'T14', ...feet(262) }),
      record(idOf(15), { code: 'T15' }),
    ],
    round: [record(roundA, { name: 'A', last }), record(roundB, { name: 'B', last })],
    pair: [601, 602, 711, 712].map((n) =>
      record(idOf(n), {
        ...{ project, code: String(n), round: n < 700 ? roundA : roundB },
        sizeMm: millimetres(n % 10 === 1 ? 270 : 280),
      }),
    ),
    'hand-out': handOuts.map((body, at) => record(idOf(3000 + at), body)),
    'fit-trial': [],
    'stop-use': stopped.map((pair) => record(idOf(4000), { pairs: [pair] })),
  }) as unknown as DeskRecords;

const handOut = (tester: number, pair: number, from: string, until?: string): HandOut => ({
  ...{ project, tester: idOf(tester), pair: idOf(pair), from, blind: true },
  ...(until !== undefined && { until }),
});

const at = (day: number, more: Partial<SettleOptions> = {}): SettleOptions => ({
  nowMs: startMs + day * DAY_MS,
  instant,
  lateAt: null,
  ...more,
});

describe('an agreed plan', () => {
  it('hands out on its own days; the last period stays open', () => {
    const { give, change, drop, cannot } = settlePlan(plan, recordsWith(), at(-5));
    expect(give).toEqual([
      handOut(1, 601, FROM, dayAt(21)),
      handOut(2, 712, FROM, dayAt(21)),
      handOut(1, 711, dayAt(21)),
      handOut(2, 602, dayAt(21)),
    ]);
    expect([...change, ...drop, ...cannot]).toEqual([]);
    const after = recordsWith(give);
    expect([...handedOut(plan, after).keys()]).toEqual(plan.places);
    expect(settlePlan(plan, after, at(-5))).toEqual({ give: [], change: [], drop: [], cannot: [] });
    expect(settlePlan(plan, after, at(10)).change).toEqual([]);
  });

  it('hands out one period alone, and the next one ends it on the plan’s day', () => {
    const first = settlePlan(plan, recordsWith(), at(-5, { periods: 1 }));
    expect(first.give).toEqual([handOut(1, 601, FROM), handOut(2, 712, FROM)]);
    const second = settlePlan(plan, recordsWith(first.give), at(20));
    expect(second.give).toEqual([handOut(1, 711, dayAt(21)), handOut(2, 602, dayAt(21))]);
    expect(second.change.map(({ body }) => body.until)).toEqual([dayAt(21), dayAt(21)]);
  });

  it('takes a day that is past only as the lead says it was', () => {
    expect(settlePlan(plan, recordsWith(), at(3)).give).toHaveLength(2);
    const lateAt = dayAt(2);
    const { give } = settlePlan(plan, recordsWith(), at(3, { lateAt }));
    expect(give.map(({ from }) => from)).toEqual([lateAt, lateAt, dayAt(21), dayAt(21)]);
    // On the day itself nothing is late yet.
    expect(settlePlan(plan, recordsWith(), at(0.4)).give[0]?.from).toBe(FROM);
  });

  it('has a pair back on the day it goes out again, and waits where it is promised or out of use', () => {
    const out = handOut(14, 601, dayAt(-30));
    const back = settlePlan(plan, recordsWith([out]), at(-5));
    expect(back.change).toEqual([{ id: idOf(3000), body: { ...out, until: FROM } }]);
    const promised = settlePlan(plan, recordsWith([handOut(14, 601, dayAt(3))]), at(-5));
    expect(promised.cannot).toEqual([{ why: 'promised', place: plan.places[0] }]);
    expect(promised.change).toEqual([]);
    const stopped = settlePlan(plan, recordsWith([], [idOf(601)]), at(-5));
    expect(stopped.cannot).toEqual([{ why: 'withdrawn', place: plan.places[0] }]);
  });

  it('goes on with a pair that the tester has already, and does not open what a lead has ended', () => {
    const held = handOut(1, 601, dayAt(-30));
    const { give, change } = settlePlan(plan, recordsWith([held]), at(-5));
    expect(give).toHaveLength(3);
    expect(change).toEqual([{ id: idOf(3000), body: { ...held, until: dayAt(21) } }]);
    const ended = handOut(1, 601, FROM, dayAt(4));
    expect(settlePlan(plan, recordsWith([ended]), at(6)).change).toEqual([]);
  });
});

describe('a pair that goes to somebody else first', () => {
  it('is not the later place’s, though its tester has it now', () => {
    const both: HandOutPlan = {
      ...plan,
      places: [
        { tester: idOf(1), period: 0, pair: idOf(601), round: roundA },
        { tester: idOf(2), period: 1, pair: idOf(601), round: roundA },
      ],
    };
    const held = handOut(2, 601, dayAt(-30));
    const todo = settlePlan(both, recordsWith([held]), at(-5));
    expect(todo.change).toEqual([{ id: idOf(3000), body: { ...held, until: FROM } }]);
    expect(todo.give).toEqual([handOut(1, 601, FROM, dayAt(21)), handOut(2, 601, dayAt(21))]);
  });
});

describe('a tester who stops in an agreed plan', () => {
  const agreed = settlePlan(plan, recordsWith(), at(-5)).give;
  const records = recordsWith(agreed);
  const stopAt = dayAt(10);
  const next = stopTester(plan, { tester: idOf(1), at: stopAt, reserve: idOf(13) });
  const todo = settlePlan(next, records, at(9, { before: [plan], periods: 2 }));

  it('gives the pair back that day; the reserve has it from then on; the rest stays', () => {
    expect(todo.change).toEqual([
      { id: idOf(3000), body: { ...handOut(1, 601, FROM), until: stopAt } },
    ]);
    expect(todo.drop).toEqual([idOf(3002)]);
    expect(todo.give).toEqual([handOut(13, 601, stopAt, dayAt(21)), handOut(13, 711, dayAt(21))]);
    expect(todo.cannot).toEqual([]);
  });

  it('changes no hand-out before now', () => {
    const nowMs = startMs + 9 * DAY_MS;
    for (const { body } of todo.change) expect(Date.parse(body.until ?? '')).toBeGreaterThan(nowMs);
    for (const { from } of todo.give) expect(Date.parse(from)).toBeGreaterThan(nowMs);
    const dropped = records['hand-out'].filter(({ revision }) => todo.drop.includes(revision.id));
    for (const { body } of dropped) expect(Date.parse(body.from)).toBeGreaterThan(nowMs);
  });

  it('is followed by whom the pairs fit best; unknown feet come last', () => {
    const reserves = reservesFor(plan, { tester: idOf(1), at: stopAt }, records);
    expect(reserves.map(({ tester }) => tester)).toEqual([idOf(13), idOf(14), idOf(15)]);
    expect(reserves.map(({ fits }) => fits)).toEqual([true, false, false]);
    expect(reserves[0]?.rooms.map(({ room }) => room?.mm)).toEqual([12, 12]);
    expect(reserves[2]?.rooms.map(({ room }) => room)).toEqual([null, null]);
  });

  it('is drawn as a change, and so is who follows', () => {
    const { rows } = planRows(next, plan, records, startMs + 9 * DAY_MS);
    const changed = rows.flatMap(({ blocks }) =>
      blocks.filter((one) => one.changed).map(({ place }) => place.tester),
    );
    expect(new Set(changed)).toEqual(new Set([idOf(13)]));
    expect(rows.map(({ pair }) => pair)).toEqual([601, 602, 711, 712].map((n) => idOf(n)));
  });
});

describe('what is said of a plan', () => {
  it('counts who begins with what, and whom the pairs fit', () => {
    const records = recordsWith();
    const { starts, rooms } = planCounts(plan, records, roomsIn(records));
    expect(starts).toEqual([
      { round: roundA, testers: 1 },
      { round: roundB, testers: 1 },
    ]);
    expect(rooms).toEqual({ good: [idOf(1), idOf(2)], short: [], long: [], unknown: [] });
  });

  it('says what is to agree, what is late, what comes, and what is still out at the end', () => {
    const says = (records: DeskRecords, day: number) =>
      planHeadline(planFacts(plan, records, project, startMs + day * DAY_MS));
    const records = recordsWith(settlePlan(plan, recordsWith(), at(-5)).give);
    expect(says(recordsWith(), -5)).toMatchObject({ case: 'to-agree', wearers: 2 });
    expect(says(recordsWith(), 2)).toMatchObject({ case: 'late', pairs: 2, sinceMs: startMs });
    expect(says(records, -5)).toMatchObject({ case: 'next', pairs: 2, atMs: startMs });
    expect(says(records, 30)).toMatchObject({ case: 'running', out: 2 });
    expect(says(records, 50)).toMatchObject({ case: 'over', out: 2 });
    expect(planFacts(null, recordsWith(), project, 0)).toEqual({
      pairs: 4,
      testers: 5,
      plan: null,
    });
  });

  it('lists the days on which something happens', () => {
    const nowMs = startMs - 5 * DAY_MS;
    const days = planDays(plan, datedPlaces(plan, recordsWith(), nowMs), nowMs);
    expect(
      days.map(({ atMs, out, back, isEnd }) => [
        (atMs - startMs) / DAY_MS,
        out.length,
        back.length,
        isEnd,
      ]),
    ).toEqual([
      [0, 2, 0, false],
      [21, 2, 2, false],
      [42, 0, 2, true],
    ]);
  });
});

describe('a day of a plan', () => {
  it('begins at three, local time, and some days later too', () => {
    const ms = morningOf('2026-10-24');
    expect(new Date(ms).getHours()).toBe(3);
    expect(toLocalDay(ms)).toBe('2026-10-24');
    expect(toLocalDay(morningOf('2026-10-24', 8))).toBe('2026-11-01');
    expect(morningOf('')).toBeNaN();
  });

  it('is under way from now on where its morning is still to come', () => {
    const night = new Date('2026-10-24T01:20').getTime();
    expect(startOf('2026-10-24', night)).toBe(night);
    const noon = new Date('2026-10-24T12:00').getTime();
    expect(startOf('2026-10-24', noon)).toBe(morningOf('2026-10-24'));
    expect(startOf('2026-10-25', night)).toBe(morningOf('2026-10-25'));
  });
});
