import { describe, expect, it } from 'vitest';
import {
  dayOf,
  onDay,
  onItsDay,
  recentDays,
  shownStart,
  typedStart,
  withHour,
  withTime,
  withTrackStart,
} from '../../../app/phone/log/run-day.ts';
import { emptyRunForm, formOfRun, runOfForm, type RunForm } from '../../../app/drafts/run.ts';
import { isDayOnly, type Run } from '../../../core/records/index.ts';
import { toLocalMinute } from '../../../app/parts/instant.ts';
import { idOf } from '../../core/records/make.ts';

/** Two minutes past midnight, local; in Europe the day before had 23 hours. */
const NOW = new Date(2026, 2, 30, 0, 2).getTime();
const form = (part: Partial<RunForm> = {}): RunForm => ({
  ...emptyRunForm(idOf(3), 'road'),
  distance: '10',
  ...part,
});
const outcomeOf = (part: Partial<RunForm>, nowMs = NOW, before?: Run) =>
  runOfForm(form(part), {
    project: idOf(1),
    tester: idOf(2),
    units: { distance: 'km', temperature: 'C' },
    nowMs,
    firstImpression: false,
    stopped: false,
    ...(before && { before }),
  });
const errorsOf = (part: Partial<RunForm>, nowMs = NOW, before?: Run) => {
  const outcome = outcomeOf(part, nowMs, before);
  return outcome.ok ? [] : [...outcome.errors];
};
const startedAt = (part: Partial<RunForm>, nowMs: number) => {
  const outcome = outcomeOf(part, nowMs);
  return outcome.ok ? toLocalMinute(outcome.run.startedAt) : [...outcome.errors].join();
};
/** 30 March, local. */
const at = (hour: number, minute = 0, day = 30) => new Date(2026, 2, day, hour, minute).getTime();

describe('the day of a run', () => {
  it('is offered back to a week, by the calendar', () => {
    expect(recentDays(NOW)).toEqual([
      '2026-03-30',
      '2026-03-29',
      '2026-03-28',
      '2026-03-27',
      '2026-03-26',
      '2026-03-25',
      '2026-03-24',
    ]);
  });

  it('is now until something else is said, and now again', () => {
    expect(dayOf(form(), NOW)).toBe('now');
    const yesterday = form(onDay('2026-03-29', form(), NOW));
    expect(yesterday.start).toBe('2026-03-29T00:02');
    expect(dayOf(yesterday, NOW)).toBe('2026-03-29');
    expect(onDay('now', yesterday, NOW).start).toBe('');
  });

  it('keeps the hour that was said', () => {
    const at = form({ start: '2026-03-28T18:45' });
    expect(onDay('2026-03-29', at, NOW).start).toBe('2026-03-29T18:45');
    expect(dayOf(at, NOW)).toBe('2026-03-28');
    expect(dayOf(form({ start: '2026-01-05T18:45' }), NOW)).toBe('other');
  });

  it('is that of the track where there is one, until another is said', () => {
    const startMs = new Date(2026, 2, 28, 18, 45, 12).getTime();
    const tracked = form({ startMs });
    expect(dayOf(tracked, NOW)).toBe('2026-03-28');
    expect(shownStart(tracked)).toBe(toLocalMinute(startMs));
    expect(dayOf(form(onDay('now', tracked, NOW)), NOW)).toBe('now');
  });

  it('is asked for, and never taken for today, while it is still to be typed', () => {
    const open = form(onDay('other', form(), NOW));
    expect(shownStart(open)).toBe('');
    expect(dayOf(open, NOW)).toBe('other');
    expect(errorsOf(open)).toEqual(['start']);
    expect(errorsOf(typedStart(''))).toEqual(['start']);
    expect(errorsOf(typedStart('2026-03-01T07:00'))).toEqual([]);
  });
});

describe('the start of a track', () => {
  const trackMs = at(18, 12, 29);
  const after = (day: Parameters<typeof onDay>[0]) => {
    const chosen = form(onDay(day, form(), at(7)));
    return { ...chosen, ...withTrackStart(chosen, trackMs) };
  };

  it('wins over an hour that nobody typed: none, one still to be typed, one that came with its day', () => {
    for (const day of ['now', 'other', '2026-03-29'] as const)
      expect(startedAt(after(day), at(7)), day).toBe('2026-03-29T18:12');
  });

  it('leaves a typed hour and another day as they are', () => {
    const typed = form({
      ...onDay('2026-03-29', form(), at(7)),
      ...typedStart('2026-03-29T18:00'),
    });
    expect(withTrackStart(typed, trackMs)).toEqual({});
    expect(after('2026-03-28').start).toBe('2026-03-28T07:00');
    expect(withTrackStart(form(), null)).toEqual({});
  });

  it('is that of its day where the day is chosen after it', () => {
    const track = { startMs: trackMs } as RunForm['track'];
    const cleared = form({ track, startMs: trackMs, ...typedStart('') });
    expect(startedAt(onDay('2026-03-29', cleared, at(7)), at(7))).toBe('2026-03-29T18:12');
  });
});

describe('a run of earlier today', () => {
  const earlier = (part: Partial<RunForm>, nowMs: number) =>
    form({ ...part, ...onDay('2026-03-30', form(part), nowMs) });

  it('ends by now, in whichever order day and time are said', () => {
    expect(earlier({ time: '1:00:00' }, at(7)).start).toBe('2026-03-30T06:00');
    const dayFirst = earlier({}, at(7));
    expect(dayFirst.start).toBe('2026-03-30T07:00');
    expect(withTime('1:00:00', dayFirst, at(7))).toEqual({
      time: '1:00:00',
      start: '2026-03-30T06:00',
    });
  });

  it('stays today shortly after midnight', () => {
    expect(earlier({ time: '1:00:00' }, at(0, 20)).start).toBe('2026-03-30T00:00');
  });

  it('keeps its hour where that was typed, or where the day is another', () => {
    const typed = { ...earlier({}, at(7)), ...typedStart('2026-03-30T06:30') };
    expect(withTime('1:00:00', typed, at(7))).toEqual({ time: '1:00:00' });
    const yesterday = form(onDay('2026-03-29', form(), at(7)));
    expect(withTime('1:00:00', yesterday, at(7))).toEqual({ time: '1:00:00' });
    expect(onDay('2026-03-30', { ...yesterday, time: '1:00:00' }, at(7)).start).toBe(
      '2026-03-30T06:00',
    );
  });
});

describe('a run of an earlier day without its hour', () => {
  const dayOnly = (part: Partial<RunForm>, nowMs = at(7)) => {
    const outcome = outcomeOf(part, nowMs);
    return outcome.ok ? outcome.run.dayOnly : outcome.errors;
  };

  it('is of the day alone, until the hour is said', () => {
    const yesterday = form(onDay('2026-03-29', form(), at(7)));
    expect(dayOnly(yesterday)).toBe(true);
    const said = form({ ...yesterday, ...withHour('18:30', '2026-03-29', yesterday, at(7)) });
    expect(startedAt(said, at(7))).toBe('2026-03-29T18:30');
    expect(dayOnly(said)).toBeUndefined();
    expect(dayOnly({ ...said, ...withHour('', '2026-03-29', said, at(7)) })).toBe(true);
  });

  it('is not: one of now, of earlier today, or of a track', () => {
    expect(dayOnly({})).toBeUndefined();
    expect(dayOnly(form(onDay('2026-03-30', form(), at(7))))).toBeUndefined();
    const tracked = form({ ...onDay('2026-03-29', form(), at(7)) });
    expect(dayOnly({ ...tracked, ...withTrackStart(tracked, at(18, 12, 29)) })).toBeUndefined();
  });

  it('stays so when it is changed, and knows its hour once one is said', () => {
    const outcome = outcomeOf(form(onDay('2026-03-29', form(), at(7))), at(7));
    if (!outcome.ok) throw new Error('no run');
    const again = formOfRun(outcome.run, { distance: 'km', temperature: 'C' });
    expect(again.isHourMade).toBe(true);
    const change = (part: Partial<RunForm>) => {
      const changed = outcomeOf({ ...again, ...part }, at(9), outcome.run);
      return changed.ok ? changed.run : null;
    };
    expect(change({ distance: '11' })).toMatchObject({
      dayOnly: true,
      startedAt: outcome.run.startedAt,
    });
    expect(change(typedStart('2026-03-29T06:00'))?.dayOnly).toBeUndefined();
    expect(isDayOnly(outcome.run)).toBe(true);
  });
});

describe('a start ahead of now', () => {
  it('is refused where it was typed, a few minutes aside', () => {
    expect(errorsOf(typedStart('2026-03-30T07:06'), at(7))).toEqual(['ahead']);
    expect(errorsOf(typedStart('2026-03-30T07:05'), at(7))).toEqual([]);
  });

  it('stands where a track or the saved run says it: this phone may be slow', () => {
    expect(startedAt({ startMs: at(9) }, at(7))).toBe('2026-03-30T09:00');
    const before = outcomeOf({ startMs: at(9) });
    if (!before.ok) throw new Error('no run');
    expect(errorsOf({ start: '2026-03-30T09:00' }, at(7), before.run)).toEqual([]);
  });
});

describe('a form that is left overnight', () => {
  const evening = { time: '1:00:00', touchedMs: at(22, 0, 29) };

  it('says its day when it is opened on another', () => {
    const opened = onItsDay(form(evening), at(7));
    expect(shownStart(opened)).toBe('2026-03-29T21:00');
    expect(dayOf(opened, at(7))).toBe('2026-03-29');
    expect(withTrackStart(opened, at(20, 47, 29))).toMatchObject({ startMs: at(20, 47, 29) });
  });

  it('stays as it is on its day, where its start is said, and where nobody knows its day', () => {
    for (const [part, nowMs] of [
      [evening, at(23, 0, 29)],
      [{ ...evening, ...typedStart('2026-03-29T18:00') }, at(7)],
      [{ ...evening, ...typedStart('') }, at(7)],
      [{ ...evening, startMs: at(18, 0, 29) }, at(7)],
      [{}, at(7)],
    ] as const) {
      const left = form(part);
      expect(onItsDay(left, nowMs)).toBe(left);
    }
  });
});
