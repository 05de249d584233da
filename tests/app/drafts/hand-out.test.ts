/** A hand-out may be noted late, but not for a time when another tester had the pair. */
import { describe, expect, it } from 'vitest';
import { sinceInstant, sinceTrouble } from '../../../app/drafts/hand-out.ts';
import { toLocalMinute } from '../../../app/parts/instant.ts';
import type { HandOut, RecordOf } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const now = Date.parse('2026-05-10T12:00Z');
const at = (text: string) => Date.parse(text);
const handOut = (pair: number, until?: string) =>
  ({
    revision: { id: idOf(9) },
    body: {
      project: idOf(1),
      pair: idOf(pair),
      tester: idOf(2),
      from: '2026-05-01T08:00Z',
      blind: true,
      ...(until !== undefined && { until }),
    } satisfies HandOut,
  }) as RecordOf<'hand-out'>;

describe('since when a pair is out', () => {
  it('may be now, or any time before where the pair was with nobody', () => {
    expect(sinceTrouble([], idOf(3), now, now)).toBe(null);
    expect(sinceTrouble([handOut(4, '2026-05-09T08:00Z')], idOf(3), at('2026-04-01'), now)).toBe(
      null,
    );
  });

  it('is not in the future, and is a time', () => {
    expect(sinceTrouble([], idOf(3), now + 1, now)).toEqual({ why: 'not-yet' });
    expect(sinceTrouble([], idOf(3), Number.NaN, now)).toEqual({ why: 'missing' });
  });

  it('is not before the pair came back the last time', () => {
    const before = [handOut(3, '2026-05-09T08:00Z'), handOut(3, '2026-05-05T08:00Z')];
    expect(sinceTrouble(before, idOf(3), at('2026-05-07T08:00Z'), now)).toEqual({
      why: 'held',
      untilMs: at('2026-05-09T08:00Z'),
    });
    expect(sinceTrouble(before, idOf(3), at('2026-05-09T08:00Z'), now)).toBe(null);
  });
});

describe('a hand-out whose "since" is changed', () => {
  const stored = '2026-05-09T10:00:40+02:00';
  const shown = toLocalMinute(stored);

  it('keeps its seconds where the field still says what it showed, so that nothing holds it', () => {
    expect(sinceInstant(shown, stored)).toBe(stored);
    const before = [handOut(3, '2026-05-09T10:00:30+02:00')];
    const fromMs = at(sinceInstant(shown, stored) ?? '');
    expect(sinceTrouble(before, idOf(3), fromMs, now)).toBe(null);
  });

  it('is at the minute that was typed, or at none', () => {
    expect(toLocalMinute(sinceInstant('2026-05-08T07:15', stored) ?? '')).toBe('2026-05-08T07:15');
    expect(sinceInstant('', stored)).toBe(null);
  });
});
