/** What every part of the screen on complaints gets: the tab's, and the round that is looked at. */
import type { RoundSummary } from '../../../core/review/index.ts';
import type { TabProps } from '../desk-state.ts';

export interface RoundProps extends TabProps {
  readonly round: RoundSummary;
}
