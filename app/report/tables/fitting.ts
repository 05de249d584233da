/** Fit trials, record by record: the sessions, who tried what, what they said of each place, and what they want moved. */
import { ownRecords, type ProjectLog } from '../../../core/review/index.ts';
import { tableOf, type Table } from './table.ts';
import { changeColumns } from './talking.ts';
import type { Names } from './written.ts';

export const fitSessionsTable = (log: ProjectLog, { round, pair }: Names): Table =>
  tableOf('fit-sessions', ownRecords(log.records['fit-session'], log.id), {
    fit_session: ({ revision }) => revision.id,
    name: ({ body }) => body.name,
    at: ({ body }) => body.at,
    round: ({ body }) => round(body.round),
    pairs: ({ body }) => body.pairs.map(pair).join(' '),
    closed_at: ({ body }) => body.closed,
  });

export const fitTrialsTable = (log: ProjectLog, { pair, tester }: Names): Table => {
  const sizes = new Map(log.records.pair.map(({ revision, body }) => [revision.id, body.sizeMm]));
  return tableOf('fit-trials', ownRecords(log.records['fit-trial'], log.id), {
    fit_trial: ({ revision }) => revision.id,
    fit_session: ({ body }) => body.session,
    at: ({ body }) => body.at,
    tester: ({ body }) => (body.fitter === undefined ? tester(body.tester) : undefined),
    fitter: ({ body }) => body.fitter,
    pair: ({ body }) => pair(body.pair),
    size_mm: ({ body }) => sizes.get(body.pair),
    lacing: ({ body }) => body.lacing,
    sock: ({ body }) => body.sock,
    walked: ({ body }) => body.walked,
    heel: ({ body }) =>
      body.heel?.map(({ foot, slip }) => [foot, slip].filter(Boolean).join(' ')).join('; '),
    spots: ({ body }) =>
      body.spots?.map(({ foot, zone, what }) => `${foot} ${zone} ${what}`).join('; '),
    fit_pain: ({ body }) => body.pain?.join(' '),
    words: ({ body }) => body.words,
  });
};

export const fitAnswersTable = (log: ProjectLog): Table =>
  tableOf(
    'fit-answers',
    ownRecords(log.records['fit-trial'], log.id).flatMap(({ revision, body }) =>
      body.standing.map((answer) => ({ trial: revision.id, ...answer })),
    ),
    {
      fit_trial: ({ trial }) => trial,
      fit_place: ({ place }) => place,
      foot: ({ foot }) => foot,
      fit: ({ fit }) => fit,
      off_mm: ({ mm }) => mm,
    },
  );

export const fitWantedTable = (log: ProjectLog): Table =>
  tableOf(
    'fit-wanted',
    ownRecords(log.records['fit-trial'], log.id).flatMap(({ revision, body }) =>
      (body.wanted ?? []).map((change) => ({ trial: revision.id, change })),
    ),
    { fit_trial: ({ trial }) => trial, ...changeColumns(({ change }) => change) },
  );
