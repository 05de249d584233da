/** What a table that is brought in is compared with: the runs on record, and no more of each than that takes. */
import type { KnownRun } from '../../drafts/tables/row.ts';
import type { Opened } from './opened.ts';

const knownRuns = ({ log }: Opened): readonly KnownRun[] =>
  log.everyRun.map(({ body: { tester, pair, startedAt, distanceM, broughtIn } }) => ({
    tester,
    pair,
    startedAt,
    distanceM,
    dayOnly: broughtIn?.dayOnly === true,
  }));

export const tablesQuestions = { knownRuns };
