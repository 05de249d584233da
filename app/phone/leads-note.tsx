/** Tells a tester what a lead did to the run on their behalf, when and why: brought in from a table, or corrected. */
import type { Run } from '../../core/records/index.ts';
import { formatDate } from '../parts/format.ts';
import { t } from '../words/index.ts';

export const LeadsNote = ({ run }: { readonly run: Pick<Run, 'correctedBy' | 'broughtIn'> }) => {
  const { correctedBy, broughtIn } = run;
  const words = t().runs;
  return (
    <>
      {broughtIn && <p class="small">{words.broughtIn(formatDate(broughtIn.at))}</p>}
      {correctedBy && (
        <p class="small">{words.corrected(formatDate(correctedBy.at), correctedBy.why)}</p>
      )}
    </>
  );
};
