/** The findings, and what came of each. */
import { tradeOf } from '../../../core/foot/index.ts';
import type { ReportedFinding } from '../../../core/review/index.ts';
import type { Table } from './table.ts';
import { changeColumns } from './talking.ts';

const wishes = changeColumns(({ change }: ReportedFinding['body']) => change);

export const findingsTable = (
  list: readonly ReportedFinding[],
  round: (id: string) => string,
): Table => ({
  name: 'findings',
  columns: [
    'round',
    'title',
    'part',
    'trade',
    'zone',
    'kind',
    'source',
    'priority',
    'state',
    'wanted',
    'wanted_mm',
    ...Object.keys(wishes),
    'asked_at',
    'carried_by',
    'evidence_until',
    'evidence_language',
    'evidence',
    'outcome_round',
    'outcome',
    'outcome_until',
    'photos',
  ],
  rows: list.map(({ body }) => [
    round(body.round),
    body.title,
    body.part,
    tradeOf[body.part],
    body.zone,
    body.kind,
    body.source,
    body.priority,
    body.state,
    body.wanted,
    body.wantedMm,
    ...Object.values(wishes).map((of) => of(body)),
    body.asked,
    body.carriedBy === undefined ? '' : round(body.carriedBy),
    body.evidence?.until,
    body.evidence?.language,
    body.evidence?.lines.join('\n'),
    body.outcome === undefined ? '' : round(body.outcome.round),
    body.outcome?.verdict,
    body.outcome?.until,
    body.photos?.length ?? 0,
  ]),
});
