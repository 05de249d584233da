/** Tells a tester that a lead corrected the run on their behalf, when and why. */
import type { Run } from '../../core/records/index.ts';
import { formatDate } from '../parts/format.ts';
import { t } from '../words/index.ts';

export const CorrectedNote = ({ run }: { readonly run: Pick<Run, 'correctedBy'> }) =>
  run.correctedBy ? (
    <p class="small">{t().runs.corrected(formatDate(run.correctedBy.at), run.correctedBy.why)}</p>
  ) : null;
