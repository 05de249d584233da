/** A hand-out may be noted late, but not for a time when another tester had the pair. */
import { describe, expect, it } from 'vitest';
import {
  draftOfHandOut,
  isOutNow,
  readHandOutDraft,
  readNewHandOut,
  readReturn,
  sinceInstant,
  sinceTrouble,
  type HandOutDraft,
  type NewHandOutDraft,
} from '../../../app/drafts/hand-out.ts';
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

describe('the dates of a hand-out that are put right', () => {
  const stored = (id: number, from: string, until?: string) =>
    ({
      revision: { id: idOf(id) },
      body: {
        ...{ project: idOf(1), pair: idOf(3), tester: idOf(2), from, blind: true },
        ...(until !== undefined && { until }),
        fromNewerApp: 'kept',
      },
    }) as unknown as RecordOf<'hand-out'>;
  const old = stored(20, '2026-05-04T08:00:40+02:00', '2026-05-06T08:00:00+02:00');
  const local = (text: string) => toLocalMinute(at(text));
  const read = (part: Partial<HandOutDraft>, others: readonly RecordOf<'hand-out'>[] = []) =>
    readHandOutDraft({ ...draftOfHandOut(old.body), ...part }, old, [old, ...others], now);

  it('stay exactly what they were where nothing is changed, with what a newer app wrote', () => {
    expect(read({})).toEqual({ ok: true, body: old.body });
  });

  it('are changed one by one; an empty return is a pair that is still out', () => {
    const later = read({ until: local('2026-05-08T08:00Z') });
    expect(later.ok && Date.parse(later.body.until ?? '')).toBe(at('2026-05-08T08:00Z'));
    expect(later.ok && later.body.from).toBe(old.body.from);
    const out = read({ until: '' });
    expect(out.ok && 'until' in out.body).toBe(false);
    expect(out.ok && (out.body as { fromNewerApp?: string }).fromNewerApp).toBe('kept');
  });

  it('are times, not in the future, and in their order', () => {
    expect(read({ from: '' })).toEqual({
      ok: false,
      troubles: [{ field: 'from', why: 'missing' }],
    });
    expect(read({ until: 'soon' })).toEqual({
      ok: false,
      troubles: [{ field: 'until', why: 'missing' }],
    });
    expect(read({ from: '', until: local('2026-06-01T08:00Z') })).toMatchObject({
      troubles: [
        { field: 'from', why: 'missing' },
        { field: 'until', why: 'not-yet' },
      ],
    });
    expect(read({ from: local('2026-06-01T08:00Z') })).toMatchObject({
      troubles: [
        { field: 'from', why: 'not-yet' },
        { field: 'until', why: 'before-from' },
      ],
    });
    expect(read({ until: local('2026-06-01T08:00Z') })).toMatchObject({
      troubles: [{ field: 'until', why: 'not-yet' }],
    });
    expect(read({ until: local('2026-05-03T08:00Z') })).toMatchObject({
      troubles: [{ field: 'until', why: 'before-from' }],
    });
  });

  it('may lie ahead where they were agreed ahead', () => {
    const ahead = {
      ...handOut(3, '2026-06-22T08:00Z'),
      body: { ...handOut(3, '2026-06-22T08:00Z').body, from: '2026-06-01T08:00Z' },
    };
    const moved = { from: local('2026-06-02T08:00Z'), until: local('2026-06-20T08:00Z') };
    const draft = { ...draftOfHandOut(ahead.body), ...moved };
    expect(readHandOutDraft(draft, ahead, [], now)).toMatchObject({ ok: true });
    expect(isOutNow(ahead.body, now)).toBe(false);
    // A running one keeps its beginning in the past; its end, agreed ahead, may be moved.
    const running = handOut(3, '2026-06-22T08:00Z');
    expect(isOutNow(running.body, now)).toBe(true);
    const [from, until] = [local('2026-06-02T08:00Z'), local('2026-06-20T08:00Z')];
    const own = draftOfHandOut(running.body);
    expect(readHandOutDraft({ ...own, until }, running, [], now)).toMatchObject({ ok: true });
    expect(readHandOutDraft({ ...own, from }, running, [], now)).toMatchObject({
      troubles: [{ field: 'from', why: 'not-yet' }],
    });
  });

  it('do not reach into another hand-out of the same pair', () => {
    const next = stored(21, '2026-05-07T08:00Z');
    expect(read({ until: local('2026-05-08T08:00Z') }, [next])).toEqual({
      ok: false,
      troubles: [{ field: 'until', why: 'held', fromMs: at('2026-05-07T08:00Z'), untilMs: null }],
    });
    const before = stored(22, '2026-05-01T08:00Z', '2026-05-03T08:00Z');
    expect(read({ from: local('2026-05-02T08:00Z') }, [before])).toMatchObject({
      troubles: [{ field: 'from', why: 'held' }],
    });
    expect(read({ from: local('2026-05-03T08:00Z') }, [before, next]).ok).toBe(true);
  });
});

describe('a new hand-out', () => {
  const draft = { pair: idOf(3), tester: idOf(2), since: null, blind: true } as const;
  const read = (part: Partial<NewHandOutDraft>, others: readonly RecordOf<'hand-out'>[] = []) =>
    readNewHandOut({ ...draft, ...part }, idOf(1), others, now);

  it('begins now, or when it was said', () => {
    expect(read({})).toMatchObject({
      ok: true,
      body: { project: idOf(1), pair: idOf(3), tester: idOf(2), blind: true },
    });
    const since = read({ since: toLocalMinute(at('2026-05-08T08:00Z')), blind: false });
    expect(since.ok && Date.parse(since.body.from)).toBe(at('2026-05-08T08:00Z'));
    expect(since.ok && since.body.blind).toBe(false);
  });

  it('comes back when the pair goes to whom a plan promised it, and is not held up by that', () => {
    const promised = (from: string, until: string) => {
      const { body, ...rest } = handOut(3, until);
      return { ...rest, body: { ...body, from } } as RecordOf<'hand-out'>;
    };
    const made = read({}, [
      promised('2026-05-20T08:00Z', '2026-06-10T08:00Z'),
      promised('2026-05-14T08:00Z', '2026-05-19T08:00Z'),
    ]);
    expect(made.ok && Date.parse(made.body.until ?? '')).toBe(at('2026-05-14T08:00Z'));
    expect(read({}).ok && 'until' in (read({}) as { body: object }).body).toBe(false);
  });

  it('says everything that is wrong at once', () => {
    expect(read({ pair: '', tester: '', since: toLocalMinute(now + 3_600_000) })).toEqual({
      ok: false,
      troubles: [
        { field: 'pair', why: 'missing' },
        { field: 'tester', why: 'missing' },
        { field: 'since', why: 'not-yet' },
      ],
    });
    const since = toLocalMinute(at('2026-05-07T08:00Z'));
    expect(read({ since }, [handOut(3, '2026-05-09T08:00Z')])).toEqual({
      ok: false,
      troubles: [{ field: 'since', why: 'held', untilMs: at('2026-05-09T08:00Z') }],
    });
  });
});

describe('several pairs that come back at one time', () => {
  const out = [handOut(3), handOut(4)];

  it('all get it, and keep the rest of their hand-out', () => {
    const read = readReturn(toLocalMinute(at('2026-05-08T08:00Z')), out, now);
    expect(read.ok && read.returned.map(({ body }) => Date.parse(body.until ?? ''))).toEqual([
      at('2026-05-08T08:00Z'),
      at('2026-05-08T08:00Z'),
    ]);
    expect(read.ok && read.returned[0]?.body.pair).toBe(idOf(3));
    const atOnce = readReturn(null, out, now);
    expect(atOnce.ok && Date.parse(atOnce.returned[1]?.body.until ?? '')).toBe(now);
  });

  it('is a time, not in the future, and not before one of them was handed out', () => {
    expect(readReturn('', out, now)).toEqual({ ok: false, why: 'missing' });
    expect(readReturn(toLocalMinute(now + 3_600_000), out, now)).toEqual({
      ok: false,
      why: 'not-yet',
    });
    expect(readReturn(toLocalMinute(at('2026-04-30T08:00Z')), out, now)).toEqual({
      ok: false,
      why: 'before-from',
      pairs: [idOf(3), idOf(4)],
    });
  });
});
