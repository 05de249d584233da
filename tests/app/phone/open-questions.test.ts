/** Which questions wait on a tester's phone, and what the number on the icon counts. */
import { describe, expect, it } from 'vitest';
import { unreadNotices } from '../../../app/phone/notices/badge.ts';
import { readOpenQuestions } from '../../../app/phone/talk/open-questions.ts';
import type { Kind, RecordOf, Revision } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';
import { NOW, said, view } from '../../core/talk/said.ts';

const [ADA, BEN, RUN] = [idOf(201), idOf(202), idOf(1000)];

/** A phone's store that holds these records. */
const phone = (...revisions: readonly Revision[]) => {
  const records = view(...revisions);
  const list = <K extends Kind>(kind: K) =>
    Promise.resolve(records[kind] as unknown as readonly RecordOf<K>[]);
  return {
    list,
    get: async <K extends Kind>(kind: K, id: string) =>
      (await list(kind)).find(({ revision }) => revision.id === id) ?? null,
  };
};
const question = (n: number, more: Readonly<Record<string, unknown>> = {}) =>
  said(idOf(300 + n), 'question', -n, { tester: ADA, ask: 'other-shoes', ...more });
const aboutRun = { about: { record: { id: RUN, kind: 'run' } }, ask: 'pain-now' };
const run = said(RUN, 'run', -9, {
  ...{ tester: ADA, pair: idOf(101), startedAt: '2026-06-21T08:00:00Z' },
  ...{ distanceM: 10_000, distanceFrom: 'typed' },
});
const answer = said(idOf(400), 'answer', 0, {
  ...{ tester: ADA, question: idOf(301), option: 'others-too' },
});
const waiting = async (...revisions: readonly Revision[]) =>
  (await readOpenQuestions(phone(...revisions), ADA)).map(({ revision }) => revision.id);

describe('the questions that wait on a phone', () => {
  it('are its tester’s, oldest first, without what was answered or withdrawn', async () => {
    const withdrawn = { withdrawn: '2026-06-30T08:00:00Z' };
    expect(await waiting(question(1), question(2))).toEqual([idOf(302), idOf(301)]);
    expect(await waiting(question(1), question(2), answer)).toEqual([idOf(302)]);
    expect(await waiting(question(1, withdrawn), question(2, { tester: BEN }))).toEqual([]);
  });

  it('go with the run that they are about', async () => {
    expect(await waiting(question(1, aboutRun), run)).toEqual([idOf(301)]);
    expect(await waiting(question(1, aboutRun))).toEqual([]);
  });

  it('count on the icon', async () => {
    expect(await unreadNotices(phone(question(1), question(2), answer), ADA, NOW)).toBe(1);
    expect(await unreadNotices(phone(), ADA, NOW)).toBe(0);
  });
});
