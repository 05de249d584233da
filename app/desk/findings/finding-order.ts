/** Which findings are listed, and in which order? Pure. */
import { tradeOf, type Trade } from '../../../core/foot/index.ts';
import {
  findingStates,
  type Finding,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import { byUrgency } from '../../../core/review/index.ts';
import { holdsText, type SortKey } from '../list/sorting.ts';

export const findingColumns = [
  'finding',
  'state',
  'turn',
  'part',
  'seenIn',
  'carried',
  'outcome',
] as const;
export type FindingColumn = (typeof findingColumns)[number];

export interface FindingFilter {
  /** Null: any. */
  readonly state: Finding['state'] | null;
  readonly trade: Trade | null;
  /** Of its title or of what it asks for. */
  readonly text: string;
}

export const everyFinding: FindingFilter = { state: null, trade: null, text: '' };

/** Those that fit, the most urgent first. */
export const filteredFindings = (
  findings: readonly RecordOf<'finding'>[],
  { state, trade, text }: FindingFilter,
): readonly RecordOf<'finding'>[] =>
  findings
    .filter(
      ({ body }) =>
        (state === null || body.state === state) &&
        (trade === null || tradeOf[body.part] === trade) &&
        holdsText([body.title, body.wanted ?? ''], text),
    )
    .toSorted((a, b) =>
      byUrgency({ id: a.revision.id, body: a.body }, { id: b.revision.id, body: b.body }),
    );

/**
 * @param roundAt the place of a round among the project's rounds
 * @param partOf the name of a part
 * @param turnSince since when it has been somebody's turn; null: nobody's
 */
export const findingKey = (
  { body }: RecordOf<'finding'>,
  column: FindingColumn,
  roundAt: (id: RecordId) => number,
  partOf: (part: Finding['part']) => string,
  turnSince: number | null,
): SortKey => {
  switch (column) {
    case 'finding':
      return body.title;
    case 'state':
      return findingStates.indexOf(body.state);
    case 'turn':
      return turnSince;
    case 'part':
      return partOf(body.part);
    case 'seenIn':
      return roundAt(body.round);
    case 'carried':
      return body.carriedBy === undefined ? null : roundAt(body.carriedBy);
    case 'outcome':
      return body.outcome?.verdict ?? null;
  }
};
