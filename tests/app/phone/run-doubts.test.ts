/** What a tester is asked before an odd run is saved. */
import { describe, expect, it } from 'vitest';
import {
  clockOff,
  doubtsOf as allDoubtsOf,
  type DoubtContext,
} from '../../../app/phone/log/run-doubts.ts';
import type { RecordId, RecordOf, Run } from '../../../core/records/index.ts';
import { metres, seconds } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';

const [PAIR, OTHER_PAIR, TESTER, OTHER_TESTER] = [idOf(1), idOf(2), idOf(3), idOf(4)];
const handOut = (from: string, until?: string, pair = PAIR, tester = TESTER) =>
  ({
    revision: { id: idOf(9) },
    body: { project: idOf(8), pair, tester, from, blind: true, ...(until && { until }) },
  }) as RecordOf<'hand-out'>;
const run = (startedAt: string, more: Partial<Run> = {}): Run => ({
  project: idOf(8),
  pair: PAIR,
  tester: TESTER,
  startedAt,
  distanceM: metres(10_000),
  distanceFrom: 'typed',
  durationS: seconds(3000),
  ...more,
});
const chosen = { start: '2026-05-03T07:00', startMs: null, isHourMade: false };
type AskedForm = Parameters<typeof allDoubtsOf>[1];
const now: AskedForm = { start: '', startMs: null, isHourMade: false };
const saved = (id: number, body: Run) => ({ revision: { id: idOf(id) }, body }) as RecordOf<'run'>;
/** The run as the form makes it, with nothing known but what is named. */
const ask = (body: Run, form: AskedForm = now, context: Partial<DoubtContext> = {}) =>
  allDoubtsOf(body, form, {
    handOuts: [handOut('2026-01-01T00:00:00Z')],
    runs: [],
    before: null,
    nowMs: Date.parse('2026-06-01T08:00:00Z'),
    clockOffMs: 0,
    ...context,
  });
const doubtsOf = (
  body: Run,
  form: Pick<AskedForm, 'start' | 'startMs'>,
  handOuts: readonly RecordOf<'hand-out'>[],
  before: Run | null,
) =>
  ask(body, { isHourMade: false, ...form }, { handOuts, before: before && saved(20, before) }).map(
    ({ why }) => why,
  );
const handOuts = [
  handOut('2026-05-04T08:00:00Z', '2026-05-20T08:00:00Z'),
  handOut('2026-04-01T08:00:00Z', undefined, OTHER_PAIR, OTHER_TESTER),
  handOut('2026-04-01T08:00:00Z', '2026-05-04T07:00:00Z', PAIR, OTHER_TESTER),
];

describe('what is asked before a run is saved', () => {
  it('is whether the day is right, where the pair was not with the tester', () => {
    for (const odd of ['2026-05-03T07:00:00Z', '2026-05-21T07:00:00Z'])
      expect(doubtsOf(run(odd), chosen, handOuts, null)).toEqual(['not-handed-out']);
    expect(doubtsOf(run('2026-05-05T07:00:00Z'), chosen, handOuts, null)).toEqual([]);
  });

  it('is nothing of the day where nobody chose one; the start of a track is chosen', () => {
    const odd = run('2026-05-03T07:00:00Z');
    expect(doubtsOf(odd, { start: '', startMs: null }, handOuts, null)).toEqual([]);
    expect(doubtsOf(odd, { start: '', startMs: 1 }, handOuts, null)).toEqual(['not-handed-out']);
  });

  it('is both where distance or pace is odd too', () => {
    const odd = run('2026-05-03T07:00:00Z', { distanceM: metres(100_000) });
    expect(doubtsOf(odd, chosen, handOuts, null)).toEqual(['distance-or-pace', 'not-handed-out']);
  });

  it('is not asked again of what was as odd before the change', () => {
    const odd = run('2026-05-03T07:00:00Z', { distanceM: metres(100_000) });
    expect(doubtsOf({ ...odd, words: 'wet' }, chosen, handOuts, odd)).toEqual([]);
    expect(doubtsOf({ ...odd, startedAt: '2026-05-02T07:00:00Z' }, chosen, handOuts, odd)).toEqual([
      'not-handed-out',
    ]);
  });

  it('is whether it is the right pair, where the tester had others and not this one, whoever chose the start', () => {
    const others = [handOut('2026-04-01T08:00:00Z', undefined, OTHER_PAIR)];
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, others, null)).toEqual(['other-pair']);
    const [asked] = ask(run('2026-05-03T07:00:00Z'), now, { handOuts: others });
    expect(asked).toEqual({ why: 'other-pair', held: [OTHER_PAIR] });
    // A hand-out that is noted a little late is no wrong pair.
    const late = [...others, handOut('2026-05-03T09:00:00Z')];
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, late, null)).toEqual([]);
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), chosen, late, null)).toEqual(['not-handed-out']);
    // Long after it went back it is.
    const back = [...others, handOut('2026-04-02T08:00:00Z', '2026-04-20T08:00:00Z')];
    expect(doubtsOf(run('2026-05-03T07:00:00Z'), now, back, null)).toEqual(['other-pair']);
  });
});

const twice = (
  body: Run,
  earlier: Run,
  form?: AskedForm,
  context?: Partial<DoubtContext>,
): RecordId | null => {
  const found = ask(body, form, { runs: [saved(30, earlier)], ...context });
  const doubt = found.find(({ why }) => why === 'logged-twice');
  return doubt?.why === 'logged-twice' ? doubt.other.id : null;
};

describe('a run that may be logged already', () => {
  const first = run('2026-06-01T07:00:00+02:00');
  const again = (startedAt: string, more: Partial<Run> = {}) => run(startedAt, more);

  it('is asked about where it began before the other can have ended', () => {
    // Saved again ten minutes later, as just run: the start is later by as much.
    expect(twice(again('2026-06-01T07:10:00+02:00'), first)).toBe(idOf(30));
    // Without a time: 10 km take half an hour and not ten minutes.
    const untimed = run('2026-06-01T07:00:00+02:00', { durationS: undefined });
    expect(twice(again('2026-06-01T07:10:00+02:00', { durationS: undefined }), untimed)).toBe(
      idOf(30),
    );
    // Noted in the wrong pair first.
    expect(twice(again('2026-06-01T07:00:00+02:00', { pair: OTHER_PAIR }), first)).toBe(idOf(30));
  });

  it('is asked about where the day, the pair and both figures are the same', () => {
    expect(twice(again('2026-06-01T18:00:00+02:00'), first)).toBe(idOf(30));
    expect(twice(again('2026-06-02T18:00:00+02:00'), first)).toBeNull();
    // The way there and the way back, each with its own time.
    expect(
      twice(again('2026-06-01T18:00:00+02:00', { durationS: seconds(3050) }), first),
    ).toBeNull();
  });

  it('is asked about by the day alone where nobody said the hour', () => {
    const made = { start: '2026-06-01T21:00', startMs: null, isHourMade: true };
    const later = again('2026-06-01T21:00:00+02:00', { durationS: undefined });
    expect(twice(later, first, made)).toBe(idOf(30));
    expect(twice(later, first)).toBeNull();
  });

  it('is none where it is farther, or somebody else’s', () => {
    expect(
      twice(again('2026-06-01T07:10:00+02:00', { distanceM: metres(10_200) }), first),
    ).toBeNull();
    expect(twice(again('2026-06-01T07:10:00+02:00', { tester: OTHER_TESTER }), first)).toBeNull();
  });

  it('is not asked about again when it is changed in something else, nor for itself', () => {
    const before = saved(20, again('2026-06-01T07:10:00+02:00'));
    expect(twice({ ...before.body, words: 'wet' }, first, chosen, { before })).toBeNull();
    const alone = ask(before.body, chosen, { before, runs: [before] });
    expect(alone.map(({ why }) => why)).not.toContain('logged-twice');
  });
});

describe('a clock that is off', () => {
  const DAY_MS = 86_400_000;
  const nowMs = Date.parse('2026-06-03T08:00:00Z');
  const just = run('2026-06-03T07:10:00Z');
  const off = (form = now, context: Partial<DoubtContext> = {}) =>
    ask(just, form, { nowMs, clockOffMs: -2 * DAY_MS, ...context });

  it('is asked about where it dates the run, with the date by the hub’s clock', () => {
    expect(off()).toEqual([{ why: 'clock', startMs: Date.parse('2026-06-01T07:10:00Z') }]);
    // "Today, earlier", of which this clock made the hour.
    expect(off({ ...chosen, isHourMade: true }).map(({ why }) => why)).toContain('clock');
  });

  it('is nothing where somebody, or a track, said when it was', () => {
    const typed = run('2026-05-03T07:00:00Z');
    expect(ask(typed, chosen, { nowMs, clockOffMs: -2 * DAY_MS })).toEqual([]);
    expect(ask(typed, { ...now, startMs: 1 }, { nowMs, clockOffMs: 2 * DAY_MS })).toEqual([]);
  });

  it('is asked about too where a typed start is still to come by the hub’s clock', () => {
    const typed = run('2026-06-03T07:00:00Z');
    const found = ask(
      typed,
      { ...chosen, start: '2026-06-03T09:00' },
      { nowMs, clockOffMs: -DAY_MS },
    );
    expect(found.map(({ why }) => why)).toEqual(['clock']);
  });

  it('is known from the hub from an hour on, and without one where others wrote later', () => {
    expect(clockOff(nowMs, -2 * DAY_MS, 0)).toBe(-2 * DAY_MS);
    expect(clockOff(nowMs, 20 * 60_000, 0)).toBe(0);
    expect(clockOff(nowMs, 0, nowMs + 2 * DAY_MS)).toBe(2 * DAY_MS);
    expect(clockOff(nowMs, 0, nowMs - DAY_MS)).toBe(0);
    expect(clockOff(nowMs, 0, 0)).toBe(0);
  });

  it('is not asked about again when a run is changed in something else', () => {
    expect(off(now, { before: saved(20, just) })).toEqual([]);
  });
});
