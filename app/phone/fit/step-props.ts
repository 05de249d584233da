/** What each step of a fit trial gets. */
import type { FitForm, FitTrouble } from '../../drafts/fit-trial.ts';

export interface StepProps {
  readonly form: FitForm;
  readonly change: (next: (now: FitForm) => FitForm) => void;
  readonly troubles: readonly FitTrouble[];
}
