/** A tester stops: whatever lies before that instant stays, whatever plan it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  couldTakeOver,
  firstPeriodFrom,
  periodStartMs,
  placeSpan,
  stopTester,
} from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId } from '../../../core/records/index.ts';
import { readBody } from '../../../core/records/index.ts';
import { idOf } from '../records/make.ts';

const DAY_MS = 86_400_000;
const FROM = '2026-11-02T08:00:00+00:00';
const startMs = Date.parse(FROM);
const instant = (ms: number) => new Date(ms).toISOString();

const planOf = (testers: number, periods: number, weeks: number): HandOutPlan => ({
  project: idOf(900),
  at: FROM,
  seed: 1,
  rounds: Array.from({ length: periods }, (_, at) => idOf(500 + at)),
  basis: 'best-found',
  from: FROM,
  periods,
  weeksPerPeriod: weeks,
  testers: Array.from({ length: testers }, (_, at) => ({ tester: idOf(at + 1) })),
  places: Array.from({ length: testers * periods }, (_, n) => {
    const [tester, period] = [n % testers, Math.floor(n / testers)];
    const round = (tester + period) % periods;
    return {
      ...{ tester: idOf(tester + 1), period, round: idOf(500 + round) },
      pair: idOf(600 + 100 * round + tester),
    };
  }),
});

/** Who has which pair at an instant. */
const handsAt = (plan: HandOutPlan, ms: number): string[] =>
  plan.places
    .filter((place) => {
      const { fromMs, untilMs } = placeSpan(plan, place);
      return fromMs <= ms && ms < untilMs;
    })
    .map(({ tester, pair }) => `${tester} ${pair}`)
    .sort();

const whole = planOf(3, 2, 3);

describe('the days of a plan', () => {
  it('are those of its periods, and a place may have its own', () => {
    const [place] = whole.places;
    if (!place) throw new Error('no place');
    expect(placeSpan(whole, place)).toEqual({ fromMs: startMs, untilMs: startMs + 21 * DAY_MS });
    const until = instant(startMs + 5 * DAY_MS);
    expect(placeSpan(whole, { ...place, until }).untilMs).toBe(Date.parse(until));
    expect(periodStartMs(whole, 2)).toBe(startMs + 42 * DAY_MS);
    expect(
      [-1, 0, 1, 21 * DAY_MS, 22 * DAY_MS].map((ms) => firstPeriodFrom(whole, startMs + ms)),
    ).toEqual([0, 0, 1, 1, 2]);
  });
});

describe('a tester who stops', () => {
  const at = instant(startMs + 10 * DAY_MS);
  const reserve = idOf(13);

  it('gives the running pair to the reserve that day, and those to come', () => {
    const next = stopTester(whole, { tester: idOf(1), at, reserve });
    const own = next.places.filter(({ tester }) => tester === idOf(1));
    expect(own).toEqual([{ ...whole.places[0], until: at }]);
    expect(next.places.filter(({ tester }) => tester === reserve)).toEqual([
      { ...whole.places[0], tester: reserve, from: at },
      { ...whole.places[3], tester: reserve },
    ]);
    expect(next.testers.find(({ tester }) => tester === idOf(1))?.droppedOutAt).toBe(1);
    expect(next.testers.at(-1)).toEqual({ tester: reserve });
    expect(readBody('hand-out-plan', next)).toMatchObject({ ok: true });
  });

  it('leaves the pairs in store where nobody takes them', () => {
    const next = stopTester(whole, { tester: idOf(1), at, reserve: null });
    expect(next.places).toHaveLength(whole.places.length - 1);
    expect(next.testers).toHaveLength(whole.testers.length);
  });

  it('is replaced by nobody who wears a pair then, wears the round anyway, or stopped', () => {
    const stop = { tester: idOf(1), at };
    expect(couldTakeOver(whole, reserve, stop)).toBe(true);
    expect(couldTakeOver(whole, idOf(1), stop)).toBe(false);
    expect(couldTakeOver(whole, idOf(2), stop)).toBe(false);
    const without = stopTester(whole, { tester: idOf(2), at: FROM, reserve: null });
    expect(couldTakeOver(without, idOf(2), stop)).toBe(false);
  });

  it('changes nothing before that instant, and wears nothing after it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 6 }),
        fc.array(
          fc.record({
            tester: fc.integer({ min: 1, max: 9 }),
            hours: fc.integer({ min: -200, max: 5000 }),
            reserve: fc.option(fc.integer({ min: 20, max: 24 })),
          }),
          { minLength: 1, maxLength: 4 },
        ),
        (testers, periods, weeks, stops) => {
          let plan = planOf(testers, periods, weeks);
          // Stops are told one after the other, as time goes on.
          for (const one of stops.toSorted((a, b) => a.hours - b.hours)) {
            const atMs = startMs + one.hours * 3_600_000;
            const tester = idOf(one.tester);
            const next = stopTester(plan, {
              ...{ tester, at: instant(atMs) },
              reserve: one.reserve === null ? null : idOf(one.reserve),
            });
            for (let day = -10; startMs + day * DAY_MS < atMs; day += 0.5)
              expect(handsAt(next, startMs + day * DAY_MS)).toEqual(
                handsAt(plan, startMs + day * DAY_MS),
              );
            const left = (body: HandOutPlan, who: RecordId) =>
              body.places.some(
                (place) => place.tester === who && placeSpan(body, place).untilMs > atMs,
              );
            if (tester !== (one.reserve === null ? null : idOf(one.reserve)))
              expect(left(next, tester)).toBe(false);
            plan = next;
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
