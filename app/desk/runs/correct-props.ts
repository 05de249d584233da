/** What each part of the form that corrects a run gets. */
import type { RunForm, RunFormError } from '../../drafts/run.ts';
import type { TabProps } from '../desk-state.ts';

export interface CorrectProps extends TabProps {
  readonly form: RunForm;
  readonly change: (part: Partial<RunForm>) => void;
  /** What is wrong with a field, in words. */
  readonly wrong: (field: RunFormError) => string | undefined;
}
