/** What the desk works on: every readable record, and the review of one project. */
import { useMemo } from 'preact/hooks';
import { kinds, viewOfHeads, type RecordId, type Records } from '../../core/records/index.ts';
import { reviewProject, type Review } from '../../core/review/index.ts';
import { useStored } from '../parts/state.ts';

/** All records of the group; null until they are read. */
export const useDeskRecords = (): Records | null =>
  useStored(async (from) => viewOfHeads(await from.heads()), kinds);

/** The review of a project as of now; null where it is not in the records. */
export const useReview = (records: Records, project: RecordId): Review | null =>
  useMemo(() => reviewProject(records, project, Date.now()), [records, project]);

/** What every tab of a project gets. */
export interface TabProps {
  readonly records: Records;
  readonly review: Review;
}

/** Codes of pairs and testers and names of rounds, by id. */
export const namesIn = (review: Review, records: Records) => {
  const pairs = new Map(review.pairs.map(({ id, code }) => [id, code]));
  const testers = new Map(records.tester.map(({ revision, body }) => [revision.id, body.code]));
  const rounds = new Map(review.rounds.map(({ id, name }) => [id, name]));
  return {
    pair: (id: RecordId) => pairs.get(id) ?? '?',
    tester: (id: RecordId | null) => (id === null ? '' : (testers.get(id) ?? '?')),
    round: (id: RecordId) => rounds.get(id) ?? '?',
  };
};
