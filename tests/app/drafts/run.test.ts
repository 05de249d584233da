import * as z from 'zod/mini';
import { describe, expect, it } from 'vitest';
import {
  closeComplaint,
  emptyRunForm,
  formOfRun,
  openComplaint,
  runFormSchema,
  runOfForm,
  withAnswer,
  type RunContext,
  type RunForm,
} from '../../../app/drafts/run.ts';
import { toLocalMinute } from '../../../app/parts/instant.ts';
import { readBody, type Run } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const context: RunContext = {
  project: idOf(1),
  tester: idOf(2),
  units: { distance: 'km', temperature: 'C' },
  nowMs: Date.UTC(2026, 5, 1, 8),
  firstImpression: false,
  stopped: false,
};
const form = (part: Partial<RunForm> = {}): RunForm => ({
  ...emptyRunForm(idOf(3), 'road'),
  distance: '10.5',
  ...part,
});
const run = (part: Partial<RunForm> = {}, more: Partial<RunContext> = {}) => {
  const outcome = runOfForm(form(part), { ...context, ...more });
  if (!outcome.ok) throw new Error([...outcome.errors].join());
  return outcome.run;
};
const errors = (part: Partial<RunForm>, more: Partial<RunContext> = {}) => {
  const outcome = runOfForm(form(part), { ...context, ...more });
  return outcome.ok ? [] : [...outcome.errors];
};

describe('a run from the form', () => {
  it('leaves what was not answered out: nobody asked is not nothing', () => {
    const plain = run();
    expect(plain).not.toHaveProperty('feet');
    expect(plain).not.toHaveProperty('comfort');
    expect(plain).not.toHaveProperty('pain');
    expect(plain).not.toHaveProperty('photos');
    expect(run({ feet: 'nothing' }).feet).toEqual({ answer: 'nothing' });
  });

  it('takes a complaint that was described but not closed', () => {
    const open = { ...openComplaint('left', 'U10'), kind: 'heel-slip' as const, severity: 4 };
    expect(run({ feet: 'something', openComplaint: open }).feet).toEqual({
      answer: 'complaints',
      complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip', severity: 4 }],
    });
  });

  it('makes two complaints of one on both feet, each with its photos', () => {
    const photo = 'a'.repeat(64);
    const open = {
      ...openComplaint('right', 'U10'),
      kind: 'rubbing' as const,
      bothFeet: true,
      photos: [photo],
    };
    const closed = closeComplaint(form({ feet: 'something', openComplaint: open }));
    expect(closed.openComplaint).toBeNull();
    expect(closed.complaints.map(({ foot, photos }) => [foot, photos])).toEqual([
      ['left', [photo]],
      ['right', [photo]],
    ]);
  });

  it('asks where and what it was like, rather than lose the answer', () => {
    expect(errors({ feet: 'something' })).toEqual(['where']);
    expect(errors({ feet: 'something', openComplaint: openComplaint('left', 'U1') })).toEqual([
      'kind',
    ]);
  });

  it('wants a reason for a run in a withdrawn pair', () => {
    expect(errors({}, { stopped: true })).toEqual(['worn']);
    expect(run({ wornDespiteStop: 'was already out' }, { stopped: true }).wornDespiteStop).toBe(
      'was already out',
    );
  });

  it('marks the first wearing, and keeps the mark when the run is changed', () => {
    const first = run({}, { firstImpression: true });
    expect(first.firstImpression).toBe(true);
    expect(run({}, { firstImpression: false, before: first }).firstImpression).toBe(true);
  });

  it('is what the form of that run makes again', () => {
    const saved = run({
      time: '52:30',
      comfort: { overall: 63, 'heel-hold': 20 },
      feet: 'something',
      complaints: [{ ...openComplaint('left', 'U9'), kind: 'rubbing', from: '4', skin: 'blister' }],
      pain: 3,
      painIsNew: true,
      painSigns: ['limp'],
      temperature: '14',
      sock: 'thin',
      words: 'warm',
      photos: ['b'.repeat(64)],
    });
    const outcome = runOfForm(formOfRun(saved, context.units), { ...context, before: saved });
    expect(outcome).toEqual({ ok: true, run: saved });
  });

  it('keeps marks and scores apart, and leaves out what was not marked', () => {
    const { comfort, comfort2 } = run({
      comfort: { overall: 70 },
      comfort2: { 'heel-cushioning': -40, 'ball-width': 0 },
    });
    expect(comfort).toEqual({ overall: 70 });
    expect(comfort2).toEqual({ 'heel-cushioning': -40, 'ball-width': 0 });
    expect(run()).not.toHaveProperty('comfort2');
    expect(readBody('run', run({ comfort2: { 'heel-cushioning': -101 } })).ok).toBe(false);
    const marked = run({ comfort2: { arch: 30 } });
    expect(formOfRun(marked, context.units).comfort2).toEqual({ arch: 30 });
    const cleared = run({ comfort2: withAnswer({ arch: 30 }, 'arch', null) }, { before: marked });
    expect(cleared).not.toHaveProperty('comfort2');
  });

  it('opens drafts of a version that asked on 0-100 lines alone', () => {
    const { comfort2: _, ...old } = form({ comfort: { 'heel-cushioning': 70 } });
    const kept = z.parse(runFormSchema, old);
    expect(kept).toMatchObject({ comfort: { 'heel-cushioning': 70 }, comfort2: {} });
    expect(run(kept).comfort).toEqual({ 'heel-cushioning': 70 });
  });

  it('opens drafts of a version that knew no photos', () => {
    const {
      photos: _,
      openComplaint: __,
      ...old
    } = form({
      complaints: [{ ...openComplaint('left', 'U1'), kind: 'pressure' }],
    });
    const complaints = old.complaints.map(({ photos: ___, ...one }) => one);
    const read = z.safeParse(runFormSchema, { ...old, complaints });
    expect(read.success).toBe(true);
    expect(read.data).toMatchObject({ photos: [], openComplaint: null });
  });
});

describe('a typed time', () => {
  it('is taken in any form, and refused where no run can last so long', () => {
    expect(run({ time: '7530' }).durationS).toBe(4530);
    expect(run({ time: '1h15' }).durationS).toBe(4500);
    expect(run({ time: '７５：３０' }).durationS).toBe(4530);
    expect(errors({ time: '75.3' })).toEqual(['time']);
    expect(errors({ time: '0' })).toEqual(['time']);
    expect(errors({ time: '999:00:00' })).toEqual(['time']);
  });

  it('and a temperature may stand in the characters of any keyboard', () => {
    expect(run({ temperature: '−５' }).temperatureC).toBe(-5);
    expect(run({ distance: '１０．５' }).distanceM).toBe(10_500);
  });
});

describe('a start still to come', () => {
  const ahead = { start: toLocalMinute(context.nowMs + 2 * 86_400_000) };

  it('is refused, unless this phone’s clock is known to be slow', () => {
    expect(errors(ahead)).toEqual(['ahead']);
    expect(errors(ahead, { clockOffMs: 3 * 86_400_000 })).toEqual([]);
    expect(errors(ahead, { clockOffMs: -3 * 86_400_000 })).toEqual(['ahead']);
  });
});

describe('a run that is changed', () => {
  const complaint = {
    foot: 'left',
    zone: 'U10',
    kind: 'rubbing',
    severity: 6,
    words: 'sharp',
    x: 1,
  };
  const before = {
    ...run({ words: 'far', temperature: '12' }),
    feet: { answer: 'complaints', complaints: [complaint] },
    weather: 'kept',
    correctedBy: { by: idOf(9), at: '2026-05-20T08:00:00Z', why: 'typed wrong' },
  } as unknown as Run;
  const shown = formOfRun(before, context.units);

  it('keeps what the form does not show, in the run and in each complaint', () => {
    const changed = run({ ...shown, distance: '11' }, { before });
    expect(changed).toMatchObject({ weather: 'kept', distanceM: 11_000, words: 'far' });
    expect(changed.feet).toEqual(before.feet);
  });

  it('loses what was taken out of the form', () => {
    const [one] = shown.complaints;
    const changed = run(
      { ...shown, temperature: '', words: ' ', complaints: [{ ...one!, severity: null }] },
      { before },
    );
    expect(changed).not.toHaveProperty('temperatureC');
    expect(changed).not.toHaveProperty('words');
    expect(changed.feet).toEqual({
      answer: 'complaints',
      complaints: [{ foot: 'left', zone: 'U10', kind: 'rubbing', words: 'sharp', x: 1 }],
    });
  });

  it('is the tester’s own again once the tester saves it, and says who corrected it where a lead does', () => {
    expect(run(shown, { before })).not.toHaveProperty('correctedBy');
    const correctedBy = { by: idOf(8), at: '2026-06-01T08:00:00Z', why: 'the other pair' };
    expect(run({ ...shown, pair: idOf(4) }, { before, correctedBy })).toMatchObject({
      pair: idOf(4),
      startedAt: before.startedAt,
      correctedBy,
    });
  });

  it('asks what was felt in a complaint that does not say it', () => {
    const [one] = shown.complaints;
    expect(errors({ ...shown, complaints: [{ ...one!, kind: null }] }, { before })).toEqual([
      'kind',
    ]);
  });
});
