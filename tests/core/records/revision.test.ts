import { describe, expect, it } from 'vitest';
import {
  editBody,
  MAX_REVISION_CHARACTERS,
  parseRevision,
  readBody,
  readRecord,
  SCHEMA_VERSION,
  schemaVersionOf,
  sealRevision,
  type BodyOf,
} from '../../../core/records/index.ts';
import { hashOfRevision } from '../../hash-of-revision.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf, stampAt } from './make.ts';

const run = {
  project: idOf(1),
  pair: idOf(2),
  tester: idOf(3),
  startedAt: '2026-05-01T07:30:00+02:00',
  distanceM: 10_000,
  distanceFrom: 'typed',
};
const seal = (body: Record<string, unknown> | null, kind = 'run', sv = 1) =>
  sealRevision({ id: idOf(9), kind, author: idOf(3), sv, body }, stampAt(7), null);

describe('parseRevision', () => {
  it('takes what was sealed, also after it went through JSON', () => {
    const revision = seal(run);
    expect(parseRevision(JSON.parse(JSON.stringify(revision)))).toEqual({ ok: true, revision });
  });

  it('keeps envelope fields that it does not know, under the same hash', () => {
    const { hash: _, ...open } = seal(run);
    const noted = { ...open, note: 'from a later version' };
    const revision = { ...noted, hash: hashOfRevision(noted) };
    expect(parseRevision(revision)).toEqual({ ok: true, revision });
    expect(parseRevision({ ...revision, note: 'changed' })).toMatchObject({
      ok: false,
      problem: { why: 'hash-differs' },
    });
  });

  it.each([
    ['no object', null, 'not-a-revision'],
    ['no id', { ...seal(run), id: 'x' }, 'not-a-revision'],
    ['a stamp out of form', { ...seal(run), stamp: 'z' }, 'not-a-revision'],
    ['a newer envelope', { ...seal(run), v: 2 }, 'newer-envelope'],
    ['a changed body', { ...seal(run), body: { ...run, distanceM: 1 } }, 'hash-differs'],
    ['too much', seal({ words: 'x'.repeat(MAX_REVISION_CHARACTERS) }), 'too-large'],
  ])('refuses %s', (_, value, why) => {
    expect(parseRevision(value)).toMatchObject({ ok: false, problem: { why } });
  });
});

describe('readBody', () => {
  it('names the field that is wrong and what was expected there', () => {
    const read = readBody('run', { ...run, distanceM: -1, startedAt: 'yesterday' });
    expect(read.ok ? [] : read.problems).toEqual([
      {
        field: 'startedAt',
        expected: 'a date and time with offset, such as 2026-05-01T07:30:00+02:00',
      },
      { field: 'distanceM', expected: 'a number from 0 to 1000000' },
    ]);
  });

  it('wants the shares of the surfaces to sum to 1', () => {
    expect(readBody('run', { ...run, surfaces: { road: 0.5, trail: 0.5 } }).ok).toBe(true);
    expect(readBody('run', { ...run, surfaces: { road: 0.5 } })).toMatchObject({
      ok: false,
      problems: [{ field: 'surfaces', expected: 'the shares of the surfaces must sum to 1' }],
    });
  });

  it('tells "nothing bothered me" from no answer', () => {
    expect(readBody('run', { ...run, feet: { answer: 'nothing' } })).toMatchObject({ ok: true });
    expect(readBody('run', run)).toMatchObject({ ok: true, body: run });
    expect(readBody('run', { ...run, feet: { answer: 'complaints', complaints: [] } }).ok).toBe(
      false,
    );
  });

  it('takes a comfort score from 0 to 100 and none for an attribute that was not answered', () => {
    expect(readBody('run', { ...run, comfort: { overall: 0 } }).ok).toBe(true);
    expect(readBody('run', { ...run, comfort: { overall: 101 } }).ok).toBe(false);
    expect(readBody('run', { ...run, comfort: {} }).ok).toBe(true);
  });
});

describe('readRecord', () => {
  it('reads what it can and says why it cannot', () => {
    expect(readRecord(seal(run))).toMatchObject({ ok: true, record: { kind: 'run' } });
    expect(readRecord(seal(null))).toEqual({ ok: false, why: 'gone' });
    expect(readRecord(seal({}, 'weather-mast'))).toEqual({ ok: false, why: 'unknown-kind' });
    expect(readRecord(seal(run, 'run', SCHEMA_VERSION + 1))).toEqual({
      ok: false,
      why: 'newer-schema',
    });
    expect(readRecord(seal({}))).toMatchObject({ ok: false, why: 'unreadable' });
  });
});

describe('schemaVersionOf', () => {
  it('is higher only for what an older app cannot read', () => {
    expect(schemaVersionOf('run', run)).toBe(1);
    expect(schemaVersionOf('quote', { sourceKind: 'run' })).toBe(1);
    expect(schemaVersionOf('quote', { sourceKind: 'ranking' })).toBe(SCHEMA_VERSION);
  });
});

describe('editBody', () => {
  it('changes known fields and leaves unknown ones as they were', () => {
    const read = readBody('run', { ...run, words: 'hot', wind: { ms: 4 } });
    const body = (read as { body: BodyOf<'run'> }).body;
    expect(editBody<'run'>(body, { distanceM: metres(11_000) })).toEqual({
      ...run,
      distanceM: 11_000,
      words: 'hot',
      wind: { ms: 4 },
    });
  });
});
