/** What each part of a session's page gets. */
import type { TabProps } from '../desk-state.ts';
import type { SessionFacts } from './session-facts.ts';

export interface SessionProps extends TabProps {
  readonly facts: SessionFacts;
}
