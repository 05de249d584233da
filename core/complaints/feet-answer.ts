/** What did one run answer to the feet question? */
import type { Complaint, RecordId } from '../records/index.ts';

/** One run's answer to the feet question, as the counts need it. */
export interface FeetAnswer {
  readonly run: RecordId;
  readonly tester: RecordId;
  /** Empty: "nothing bothered me". */
  readonly complaints: readonly Complaint[];
}
