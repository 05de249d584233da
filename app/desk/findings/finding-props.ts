/** What everything about one finding on the board gets. */
import type { RecordOf } from '../../../core/records/index.ts';
import type { TabProps } from '../desk-state.ts';

export interface FindingProps extends TabProps {
  readonly finding: RecordOf<'finding'>;
}
