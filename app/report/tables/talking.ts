/** What testers, leads and specialists said to each other, record by record. */
import type { StructuredChange } from '../../../core/records/index.ts';
import { ownRecords, type ProjectLog, type ReportedFinding } from '../../../core/review/index.ts';
import { tableOf, type ColumnsOf, type Table } from './table.ts';
import type { Names } from './written.ts';

/** A structured change, a column each. */
export const changeColumns = <T>(of: (one: T) => StructuredChange | undefined): ColumnsOf<T> => ({
  change_part: (one) => of(one)?.part,
  change_line: (one) => of(one)?.line,
  change_measure: (one) => of(one)?.dimension?.measure,
  change_site: (one) => of(one)?.dimension?.site,
  change_side: (one) => of(one)?.side,
  change_foot: (one) => of(one)?.foot,
  change_direction: (one) => of(one)?.direction,
  change_amount: (one) => of(one)?.by?.amount,
  change_unit: (one) => of(one)?.by?.unit,
});

export const questionsTable = (log: ProjectLog, { tester, pair }: Names): Table =>
  tableOf('questions', ownRecords(log.records.question, log.id), {
    question: ({ revision }) => revision.id,
    tester: ({ body }) => tester(body.tester),
    at: ({ body }) => body.at,
    ask: ({ body }) => body.ask,
    words: ({ body }) => body.words,
    options: ({ body }) => body.options?.join(' '),
    record: ({ body }) => body.about?.record?.id,
    record_kind: ({ body }) => body.about?.record?.kind,
    pair: ({ body }) => (body.about?.pair === undefined ? undefined : pair(body.about.pair)),
    foot: ({ body }) => body.about?.foot,
    zone: ({ body }) => body.about?.zone,
    kind: ({ body }) => body.about?.complaint,
    attribute: ({ body }) => body.about?.attribute,
    withdrawn_at: ({ body }) => body.withdrawn,
  });

export const answersTable = (log: ProjectLog, { tester, pair }: Names): Table =>
  tableOf('answers', ownRecords(log.records.answer, log.id), {
    question: ({ body }) => body.question,
    tester: ({ body }) => tester(body.tester),
    at: ({ body }) => body.at,
    pair: ({ body }) => (body.pair === undefined ? undefined : pair(body.pair)),
    option: ({ body }) => body.option,
    words: ({ body }) => body.words,
  });

const titlesOf = (findings: readonly ReportedFinding[]) => {
  const titles = new Map<string, string>(findings.map(({ id, body }) => [id, body.title]));
  return (finding: string): string | undefined => titles.get(finding);
};

export const proposalsTable = (log: ProjectLog, findings: readonly ReportedFinding[]): Table => {
  const title = titlesOf(findings);
  return tableOf('proposals', ownRecords(log.records.proposal, log.id), {
    proposal: ({ revision }) => revision.id,
    finding: ({ body }) => title(body.finding),
    at: ({ body }) => body.at,
    answer: ({ body }) => body.answer,
    ...changeColumns(({ body }) => body.change),
    sample_at: ({ body }) => body.sampleAt,
    words: ({ body }) => body.words,
    photos: ({ body }) => body.photos?.length ?? 0,
  });
};

export const proposalRepliesTable = (
  log: ProjectLog,
  findings: readonly ReportedFinding[],
): Table => {
  const title = titlesOf(findings);
  return tableOf('proposal-replies', ownRecords(log.records['proposal-reply'], log.id), {
    proposal: ({ body }) => body.proposal,
    finding: ({ body }) => title(body.finding),
    at: ({ body }) => body.at,
    answer: ({ body }) => body.answer,
    words: ({ body }) => body.words,
  });
};

export const thanksTable = (
  log: ProjectLog,
  { tester }: Names,
  findings: readonly ReportedFinding[],
): Table => {
  const title = titlesOf(findings);
  return tableOf('thanks', ownRecords(log.records.thanks, log.id), {
    tester: ({ body }) => tester(body.tester),
    finding: ({ body }) => title(body.finding),
    at: ({ body }) => body.at,
    zone: ({ body }) => body.zone,
    kind: ({ body }) => body.kind,
    runs: ({ body }) => body.runs,
    result: ({ body }) => body.result,
    ...changeColumns(({ body }) => body.change),
    words: ({ body }) => body.words,
  });
};
