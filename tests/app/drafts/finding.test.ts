/** A finding in its form comes back as it was, with what no form knows; what cannot be is told by its field. */
import { describe, expect, it } from 'vitest';
import {
  carriersOf,
  draftOfFinding,
  draftOfOutcome,
  linesOf,
  newFinding,
  readFinding,
  readOutcome,
} from '../../../app/drafts/finding.ts';
import { readBody, type Finding } from '../../../core/records/index.ts';
import { millimetres } from '../../../core/units/index.ts';
import { idOf } from '../../core/records/make.ts';

const origin = { project: idOf(1), round: idOf(2) };
const finding: Finding = {
  ...origin,
  title: 'Heel slips',
  part: 'upper-pattern',
  kind: 'heel-slip',
  zone: 'U10',
  priority: 'high',
  wanted: 'Raise the collar',
  wantedMm: millimetres(2.5),
  carriedBy: idOf(3),
  source: 'complaint',
  state: 'asked-for',
  photos: ['a'.repeat(64)],
  due: '2026-12-01T09:30:00+08:00',
  otherWords: { language: 'zh', title: '后跟打滑', ofANewerApp: 1 },
  ofANewerApp: { kept: true },
};

describe('a finding’s draft', () => {
  it('reads back to the same finding, with what no form knows', () => {
    const read = readFinding(draftOfFinding(finding, String), finding);
    expect(read).toEqual({ ok: true, body: finding });
    expect(read.ok && readBody('finding', read.body).ok).toBe(true);
  });

  it('lets go of what is cleared, and of nothing else', () => {
    const draft = draftOfFinding(finding, String);
    const read = readFinding(
      {
        ...draft,
        ...{ wanted: ' ', mm: '', due: '', carriedBy: '', photos: [], state: 'closed' },
        other: { ...draft.other, title: ' ' },
      },
      finding,
    );
    const { wanted, wantedMm, carriedBy, photos, due, otherWords, ...rest } = finding;
    const gone = [wanted, wantedMm, carriedBy, photos, due, otherWords];
    expect(gone.every(Boolean)).toBe(true);
    expect(read).toEqual({ ok: true, body: { ...rest, state: 'closed' } });
  });

  it('becomes a new record from where it comes and what is typed', () => {
    const read = readFinding(
      { ...newFinding(' Heel cup too wide ', 'last'), mm: '1,5' },
      { ...origin, source: 'blueprint' },
    );
    expect(read).toEqual({
      ok: true,
      body: {
        ...origin,
        source: 'blueprint',
        title: 'Heel cup too wide',
        part: 'last',
        priority: 'medium',
        state: 'open',
        wantedMm: 1.5,
      },
    });
    expect(read.ok && readBody('finding', read.body).ok).toBe(true);
  });

  it('tells a missing title, and a size that is no number or too large', () => {
    const draft = newFinding('x', 'last');
    expect(readFinding({ ...draft, title: '  ' }, origin)).toEqual({
      ok: false,
      troubles: [{ field: 'title' }],
    });
    for (const mm of ['two', '1e9', '5000'])
      expect(readFinding({ ...draft, mm }, origin)).toMatchObject({
        ok: false,
        troubles: [{ field: 'mm' }],
      });
  });
});

describe('what is asked for in figures', () => {
  const change: NonNullable<Finding['change']> = {
    part: 'upper-pattern',
    line: 'collar',
    foot: 'left',
    direction: 'higher',
    by: { amount: 3, unit: 'mm' },
  };
  const asked: Finding = { ...finding, change: { ...change, ofANewerApp: 1 } };

  it('comes back as it was, and follows the part of the finding', () => {
    const draft = draftOfFinding(asked, String);
    expect(readFinding(draft, asked)).toEqual({ ok: true, body: asked });
    const moved = readFinding({ ...draft, part: 'last' }, asked);
    expect(moved.ok && moved.body.change).toEqual({ ...asked.change, part: 'last' });
  });

  it('is typed into a finding that had none, and let go of', () => {
    const draft = draftOfFinding(finding, String);
    const typed = {
      ...draft.change,
      what: 'line collar',
      foot: 'left' as const,
      direction: 'higher' as const,
      amount: '3',
    };
    const read = readFinding({ ...draft, change: typed }, finding);
    expect(read.ok && read.body.change).toEqual(change);
    expect(read.ok && readBody('finding', read.body).ok).toBe(true);
    const gone = readFinding({ ...draftOfFinding(asked, String), change: draft.change }, asked);
    expect(gone.ok && 'change' in gone.body).toBe(false);
  });

  it('is told by its field where it is half said', () => {
    const draft = draftOfFinding(finding, String);
    expect(
      readFinding({ ...draft, change: { ...draft.change, amount: 'three' } }, finding),
    ).toMatchObject({ ok: false, troubles: [{ field: 'direction' }, { field: 'amount' }] });
  });
});

describe('by when, and in the other language', () => {
  const bare: Finding = { ...origin, title: 'x', part: 'last', priority: 'low', state: 'open' };
  it('is what was typed: noon of the day, and the language that the finding is not in', () => {
    const inEnglish = { ...bare, evidence: { language: 'en-GB' } } as Finding;
    const draft = draftOfFinding(inEnglish, String);
    expect(draft.other.language).toBe('zh');
    expect(
      draftOfFinding({ ...bare, evidence: { language: 'zh' } } as Finding, String),
    ).toHaveProperty('other.language', 'en');
    const read = readFinding(
      { ...draft, due: '2026-12-24', other: { ...draft.other, wanted: '加高领口' } },
      inEnglish,
    );
    expect(read.ok && read.body.otherWords).toEqual({ language: 'zh', wanted: '加高领口' });
    expect(read.ok && read.body.due).toMatch(/^2026-12-24T12:00:00[+-]/);
  });

  it('is not asked where nobody knows which language the finding is in', () => {
    expect(draftOfFinding(bare, String).other.language).toBe('');
    expect(newFinding('x', 'last').other.language).toBe('');
  });

  it('can be said at once of a new finding, in the language that it is not written in', () => {
    const draft = newFinding('Heel slips', 'last', 'en');
    expect(draft.other.language).toBe('zh');
    expect(newFinding('后跟打滑', 'last', 'zh').other.language).toBe('en');
    const read = readFinding({ ...draft, other: { ...draft.other, title: '后跟打滑' } }, origin);
    expect(read.ok && read.body.otherWords).toEqual({ language: 'zh', title: '后跟打滑' });
  });

  it('says all that is wrong at once', () => {
    const draft = { ...newFinding(' ', 'last'), mm: 'x', due: 'soon' };
    expect(readFinding(draft, origin)).toMatchObject({
      ok: false,
      troubles: [{ field: 'title' }, { field: 'mm' }, { field: 'due' }],
    });
  });
});

describe('an outcome’s draft', () => {
  const begin = {
    round: idOf(3),
    verdict: 'better' as const,
    until: '2026-11-01T00:00:00+01:00',
    lines: ['Nobody.', 'Once.'],
    language: 'zh',
  };
  const written = { until: '2026-11-18T00:00:00+01:00', language: 'en' };

  it('begins with what is proposed, and keeps its language', () => {
    const draft = draftOfOutcome(begin, undefined);
    expect(draft).toEqual({ round: idOf(3), verdict: 'better', lines: 'Nobody.\nOnce.' });
    expect(readOutcome(draft, finding, begin, written)).toEqual({
      ok: true,
      body: { ...finding, outcome: { ...begin, until: written.until } },
    });
  });

  it('does not guess the language of words that were there without one', () => {
    const { language: _language, ...old } = begin;
    const read = readOutcome(draftOfOutcome(old, undefined), finding, old, written);
    expect(read.ok && read.body.outcome).toEqual({ ...old, until: written.until });
  });

  it('is in the writer’s language where it begins with nothing', () => {
    const draft = { ...draftOfOutcome(null, idOf(3)), lines: ' As deep. \n\n No slower. ' };
    const read = readOutcome(draft, finding, null, written);
    expect(read.ok && read.body.outcome).toEqual({
      round: idOf(3),
      verdict: 'too-little',
      ...written,
      lines: ['As deep.', 'No slower.'],
    });
  });

  it('asks for a round and for what shows it', () => {
    expect(readOutcome(draftOfOutcome(null, undefined), finding, null, written)).toEqual({
      ok: false,
      missing: ['round', 'lines'],
    });
    expect(readOutcome(draftOfOutcome(null, idOf(3)), finding, null, written)).toEqual({
      ok: false,
      missing: ['lines'],
    });
  });
});

describe('the rounds that can carry a change', () => {
  const rounds = [1, 2, 3].map((order) => ({ id: idOf(order), order }));
  it('are the later ones, and the one that was chosen', () => {
    const ids = (some: readonly { id: unknown }[]) => some.map(({ id }) => id);
    expect(ids(carriersOf(rounds, idOf(2)))).toEqual([idOf(3)]);
    expect(ids(carriersOf(rounds, idOf(2), idOf(1)))).toEqual([idOf(1), idOf(3)]);
  });
});

describe('lines of a text', () => {
  it('are trimmed, and the empty ones left out', () => {
    expect(linesOf(' a \n\n\tb\n')).toEqual(['a', 'b']);
  });
});
