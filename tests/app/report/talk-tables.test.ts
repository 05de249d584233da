/** What people say to each other stands in its tables, and changes no figure of any other. */
import { describe, expect, it } from 'vitest';
import { figureTables, jsonOf, tablesOf } from '../../../app/report/tables/index.ts';
import {
  answerOptions,
  askIds,
  sealRevision,
  type Records,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';
import { readDemo } from './demo-report.ts';

const at = '2026-11-18T10:00:00+01:00';
const change = {
  ...{ part: 'upper-pattern', line: 'collar', side: 'lateral', direction: 'lower' },
  by: { amount: 2, unit: 'mm' },
};

/** To each run a question and an answer, to each finding a proposal that was accepted and thanks. */
const talkOf = ({ run, finding, pair }: Records): readonly Revision[] => {
  let last = 0;
  const said = (kind: string, body: Record<string, unknown>): Revision => {
    const n = ++last;
    return sealRevision(
      { id: idOf(5000 + n), kind, author: idOf(1), sv: 1, body: { at, ...body } },
      stampAt(Date.UTC(2026, 10, 18) + n),
      null,
    );
  };
  const runs = run.slice(0, 300).flatMap(({ body, revision }, n) => {
    const { project, tester } = body;
    const question = said('question', {
      ...{ project, tester, ask: askIds[n % askIds.length], words: 'Heel slip in the pain zone?' },
      about: { record: { id: revision.id, kind: 'run' }, pair: body.pair, zone: 'U10' },
    });
    const option = answerOptions[n % answerOptions.length];
    const answer = { project, tester, question: question.id, option, words: 'It hurts.' };
    return [question, said('answer', answer)];
  });
  const [first] = run;
  const message = said('answer', {
    ...{ project: first?.body.project, tester: first?.body.tester },
    ...{ pair: pair[0]?.revision.id, words: 'The lace broke.' },
  });
  const findings = finding.flatMap(({ body: { project }, revision }) => {
    const proposal = said('proposal', {
      ...{ project, finding: revision.id, answer: 'other', change, sampleAt: at },
    });
    return [
      proposal,
      said('proposal-reply', {
        ...{ project, finding: revision.id, proposal: proposal.id, judged: proposal.stamp },
        answer: 'accepted',
      }),
      said('thanks', {
        ...{ project, finding: revision.id, tester: first?.body.tester, result: 'mended', change },
      }),
    ];
  });
  return [...runs, message, ...findings];
};

describe('a log with questions, answers, proposals and thanks', () => {
  const [without, beside] = [readDemo(), readDemo(talkOf)];

  it('has the figures of the log without them', () => {
    expect(beside.log.records.answer.length).toBeGreaterThan(300);
    expect(beside.review.leftOut).toEqual(without.review.leftOut);
    expect(figureTables(beside)).toEqual(figureTables(without));
    expect(beside.review).toEqual(without.review);
    expect(jsonOf(beside)).toBe(jsonOf(without));
    const others = (written: typeof beside) =>
      tablesOf(written).filter(
        ({ name }) =>
          !['questions', 'answers', 'proposals', 'proposal-replies', 'thanks'].includes(name),
      );
    expect(others(beside)).toEqual(others(without));
  });

  it('has each of them in its table, once', () => {
    const rowsOf = (name: string) => tablesOf(beside).find((one) => one.name === name);
    for (const [name, kind] of [
      ['questions', 'question'],
      ['answers', 'answer'],
      ['proposals', 'proposal'],
      ['proposal-replies', 'proposal-reply'],
      ['thanks', 'thanks'],
    ] as const) {
      expect(rowsOf(name)?.rows, name).toHaveLength(beside.log.records[kind].length);
      expect(tablesOf(without).find((one) => one.name === name)?.rows).toEqual([]);
    }
    const { columns = [], rows = [] } = rowsOf('proposals') ?? {};
    const first = Object.fromEntries(columns.map((column, n) => [column, rows[0]?.[n]]));
    expect(first).toMatchObject({
      ...{ answer: 'other', change_line: 'collar', change_side: 'lateral', change_unit: 'mm' },
      ...{ change_direction: 'lower', change_amount: 2, sample_at: at },
    });
  });
});
