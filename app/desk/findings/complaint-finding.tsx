/** A complaint becomes a finding: for one part, with what the data said frozen as of now. */
import { suspectsOf } from '../../../core/foot/index.ts';
import {
  freezeComplaint,
  oneSided,
  type CellSummary,
  type CloserLook,
} from '../../../core/review/index.ts';
import type { RoundSummary } from '../../../core/review/index.ts';
import { carriersOf, newFinding } from '../../drafts/finding.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, proposeWords } from '../../words/index.ts';
import { cellTitle } from '../../words/say-complaint.ts';
import { frozenEvidence } from '../../words/say-evidence.ts';
import type { TabProps } from '../desk-state.ts';
import { SmallForm, Unfold } from '../parts/form-parts.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { FindingFields } from './finding-form.tsx';
import { useFinding } from './use-finding.ts';

export interface ComplaintFindingProps extends TabProps {
  /** The round that shows it. */
  readonly round: RoundSummary;
  /** The complaint, as the round's review counts it. */
  readonly cell: CellSummary;
  /** When, where and with whom it comes: frozen with the counts. */
  readonly look: CloserLook;
}

/** A button that unfolds the form of a new finding from one complaint of one round. */
export const ComplaintFinding = (props: ComplaintFindingProps) => (
  <div class="no-print">
    <Unfold label={d().finding.make}>{(close) => <Fields {...props} close={close} />}</Unfold>
  </div>
);

const Fields = (props: ComplaintFindingProps & { readonly close: () => void }) => {
  const { review, round, cell, look, close } = props;
  const speaker = speakerOf(props);
  const { save, kept, ...form } = useFinding({
    key: `new finding ${round.id} ${cell.kind} ${cell.zone}`,
    begin: () => {
      const side = oneSided(cell.byFoot);
      return {
        ...newFinding(
          cellTitle(cell, speaker),
          suspectsOf(cell.kind, cell.zone).first[0] ?? 'last',
        ),
        // A complaint of one shoe points to that shoe's build before it points to the design.
        ...(side !== null && { wanted: proposeWords().onFoot[side] }),
      };
    },
  });
  return (
    <SmallForm
      kept={kept}
      save={async () => {
        const evidence = frozenEvidence(
          freezeComplaint(cell, round.complaints, look, speaker.tester),
          [],
          toInstant(review.nowMs),
          settings.value.language,
          speaker,
        );
        const saved = await save({
          project: review.project.id,
          round: round.id,
          kind: cell.kind,
          zone: cell.zone,
          source: 'complaint',
          ...(evidence && { evidence }),
        });
        if (typeof saved === 'string') return saved;
        close();
        return null;
      }}
    >
      <FindingFields {...form} carriers={carriersOf(review.rounds, round.id)} short />
    </SmallForm>
  );
};
