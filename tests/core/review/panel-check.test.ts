import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  emptyLog,
  newRecordId,
  readBundle,
  sealRevision,
  unpackBundle,
  viewOfHeads,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import { checkPanel, openProject, type PanelCheck } from '../../../core/review/index.ts';
import { idOf, stampAt } from '../records/make.ts';
import { pair, project, PROJECT, record, round } from './log-for-tests.ts';

const NOW = Date.UTC(2026, 11, 1);

const check = (
  revisions: readonly Revision[],
): { found: PanelCheck; code: (id: RecordId) => string } => {
  const records = viewOfHeads(
    [...addRevisions(emptyLog, revisions).values()].map(({ head }) => head),
  );
  const log = openProject(records, records.project[0]?.revision.id as RecordId, NOW);
  if (!log) throw new Error('no project');
  return {
    found: checkPanel(log),
    code: (id) => records.tester.find(({ revision }) => revision.id === id)?.body.code ?? '?',
  };
};

const demo = (): Revision[] => {
  const unpacked = unpackBundle(
    new Uint8Array(readFileSync(new URL('../../../demo-data/wear-test.pairlog', import.meta.url))),
  );
  if (!unpacked.ok) throw new Error(unpacked.why);
  return readBundle(unpacked.text).revisions.map(({ revision }) => revision);
};

describe('the panel of the demo', () => {
  it('has one tester to ask: the one who was made to complain in nearly every run', () => {
    const { found, code } = check(demo());
    expect(found.questions.map(({ about, tester }) => `${code(tester)} ${about}`)).toEqual([
      'T11 many-complaints',
    ]);
    expect(found.testers).toBe(12);
    expect(found.agreement).toMatchObject({ ok: true, agreement: { testers: 8 } });
    // The demo draws each score with a standard deviation of 6, and comfort drifts with the kilometres.
    expect(found.sessionError?.standardError).toBeGreaterThan(5);
    expect(found.sessionError?.standardError).toBeLessThan(8);
  });
});

describe('when runs were written down', () => {
  const [ROUND, PAIR, TESTER, LEAD] = [2, 3, 4, 5].map(idOf) as [
    RecordId,
    RecordId,
    RecordId,
    RecordId,
  ];
  const HOUR = 3_600_000;
  const base = [
    project(),
    round(ROUND, 1),
    pair(PAIR, ROUND, '101'),
    record(TESTER, 'tester', { code: 'T01' }),
  ];
  /** A run of an hour, first saved so many hours after its end. */
  const run = (day: number, delayH: number, author = TESTER): Revision => {
    const startMs = Date.UTC(2026, 5, day, 8);
    const savedMs = startMs + (1 + delayH) * HOUR;
    const id = newRecordId(savedMs, new Uint8Array(16).fill(day));
    const body = {
      project: PROJECT,
      pair: PAIR,
      tester: TESTER,
      startedAt: new Date(startMs).toISOString(),
      distanceM: 9000 + 10 * day,
      distanceFrom: 'typed',
      durationS: 3600,
    };
    return sealRevision({ id, kind: 'run', author, sv: 1, body }, stampAt(savedMs), null);
  };

  it('is the first saving, also where the run was changed long after', () => {
    const prompt = [1, 2, 3, 4, 5].map((day) => run(day, 0.5));
    const changed = prompt.map(({ id, kind, author, sv, body, stamp }) =>
      sealRevision({ id, kind, author, sv, body }, stampAt(NOW), stamp),
    );
    expect(check([...base, ...prompt, ...changed]).found.questions).toEqual([]);
    const late = [1, 2, 3, 4, 5].map((day) => run(day, 60 + day));
    expect(check([...base, ...late]).found.questions).toMatchObject([
      { about: 'written-late', late: 5, logs: 5, medianH: 63 },
    ]);
  });

  it('says nothing of the tester where the lead typed the runs in', () => {
    const typed = [1, 2, 3, 4, 5, 6].map((day) => run(day, 200, LEAD));
    expect(check([...base, ...typed]).found.questions).toEqual([]);
  });

  it('asks about the clock where a run was written down before it began', () => {
    const early = check([...base, run(1, -20), run(2, 1)]).found;
    expect(early.questions).toMatchObject([{ about: 'clock', logs: 1 }]);
    expect(early.agreement).toEqual({ ok: false, why: 'few' });
    expect(early.sessionError).toBeNull();
  });

  it('says that nobody logged where nobody did', () => {
    const { testers, questions } = check(base).found;
    expect([testers, questions]).toEqual([0, []]);
  });
});
