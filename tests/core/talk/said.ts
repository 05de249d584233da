/** Records of the talk between testers, leads and specialists, for tests. */
import {
  sealRevision,
  viewOfHeads,
  type RecordId,
  type Records,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../records/make.ts';
import { PROJECT } from '../review/log-for-tests.ts';

export const DAY_MS = 86_400_000;
export const NOW = Date.UTC(2026, 5, 30);
export const day = (n: number): string => new Date(NOW + n * DAY_MS).toISOString();

/** A record of the project, saved at its own `at` (days from {@link NOW}) unless another stamp is given. */
export const said = (
  id: RecordId,
  kind: string,
  days: number,
  body: Readonly<Record<string, unknown>>,
  stampMs = NOW + days * DAY_MS,
): Revision =>
  sealRevision(
    { id, kind, author: idOf(9), sv: 1, body: { project: PROJECT, at: day(days), ...body } },
    stampAt(stampMs),
    null,
  );

export const view = (...revisions: readonly Revision[]): Records => {
  const records = viewOfHeads(revisions);
  if (records.leftOut.length > 0) throw new Error(JSON.stringify(records.leftOut));
  return records;
};
