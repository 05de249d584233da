import { describe, expect, it } from 'vitest';
import {
  dayOf,
  onDay,
  recentDays,
  shownStart,
  typedStart,
} from '../../../app/phone/log/run-day.ts';
import { emptyRunForm, runOfForm, type RunForm } from '../../../app/phone/log/run-form.ts';
import { toLocalMinute } from '../../../app/parts/instant.ts';
import { idOf } from '../../core/records/make.ts';

/** Two minutes past midnight, local; in Europe the day before had 23 hours. */
const NOW = new Date(2026, 2, 30, 0, 2).getTime();
const form = (part: Partial<RunForm> = {}): RunForm => ({
  ...emptyRunForm(idOf(3), 'road'),
  distance: '10',
  ...part,
});
const errorsOf = (part: Partial<RunForm>) => {
  const outcome = runOfForm(form(part), {
    project: idOf(1),
    tester: idOf(2),
    units: { distance: 'km', temperature: 'C' },
    nowMs: NOW,
    firstImpression: false,
    stopped: false,
  });
  return outcome.ok ? [] : [...outcome.errors];
};

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
    expect(errorsOf({ start: typedStart('') })).toEqual(['start']);
    expect(errorsOf({ start: typedStart('2026-03-01T07:00') })).toEqual([]);
  });
});
