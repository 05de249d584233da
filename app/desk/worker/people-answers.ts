/** What the places Pairs and Testers ask of the log. */
import type { Sureness } from '../../../core/complaints/index.ts';
import {
  pairHeadline,
  pairsHeadline,
  testerHeadline,
  testersHeadline,
  testerStamp,
  type PairHeadline,
  type PairsHeadline,
  type TesterHeadline,
  type TestersHeadline,
} from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import {
  lookAtPair,
  lookAtTester,
  pairRows,
  testerRows,
  type PairLook,
  type PairRow,
  type TesterLook,
  type TesterRow,
} from '../../../core/review/index.ts';
import type { Opened } from './opened.ts';

const pairList = ({
  log,
  review,
}: Opened): { readonly headline: PairsHeadline; readonly rows: readonly PairRow[] } => {
  const rows = pairRows(log, review);
  return { headline: pairsHeadline(rows, log.project.brief.distanceM, log.rounds.length), rows };
};

/** Null within where there is no such pair, so that "not there" differs from "not answered yet". */
const pairPage = (
  { log, review }: Opened,
  pair: RecordId,
): { readonly page: { readonly look: PairLook; readonly headline: PairHeadline } | null } => {
  const look = lookAtPair(log, review, pair);
  return { page: look && { look, headline: pairHeadline(look) } };
};

const testerList = ({
  log,
  review,
}: Opened): { readonly headline: TestersHeadline; readonly rows: readonly TesterRow[] } => {
  const rows = testerRows(log, review);
  return { headline: testersHeadline(rows, review.quiet), rows };
};

const testerPage = (
  { log, review }: Opened,
  tester: RecordId,
): {
  readonly page: {
    readonly look: TesterLook;
    readonly headline: TesterHeadline;
    readonly stamp: Sureness | null;
  } | null;
} => {
  const look = lookAtTester(log, review, tester);
  return { page: look && { look, headline: testerHeadline(look), stamp: testerStamp(look) } };
};

export const peopleQuestions = { pairList, pairPage, testerList, testerPage };
