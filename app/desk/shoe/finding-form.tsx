/** A complaint becomes a finding: for one part, with what the data said frozen as of now. */
import { useState } from 'preact/hooks';
import { suspectsOf, type PartId } from '../../../core/foot/index.ts';
import type { Finding } from '../../../core/records/index.ts';
import { freezeComplaint, type CellSummary, type CloserLook } from '../../../core/review/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d } from '../../words/index.ts';
import { cellTitle } from '../../words/say-complaint.ts';
import { frozenEvidence } from '../../words/say-evidence.ts';
import { saveFromForm, SmallForm, Unfold } from '../form-parts.tsx';
import {
  PartAndPriority,
  readWanted,
  WantedFields,
  CarrierField,
  type Carrier,
} from '../findings/finding-fields.tsx';
import type { RoundProps } from './round-props.ts';
import { speakerOf } from '../speaker.ts';

export const FindingForm = (
  props: RoundProps & { readonly cell: CellSummary; readonly look: CloserLook },
) => {
  const { review, round, cell, look } = props;
  const words = d().finding;
  const [part, setPart] = useState<PartId>(suspectsOf(cell.kind, cell.zone).first[0] ?? 'last');
  const [priority, setPriority] = useState<Finding['priority']>('medium');
  const [wanted, setWanted] = useState('');
  const [mm, setMm] = useState('');
  const [carriedBy, setCarriedBy] = useState<Carrier>('undecided');
  const later = review.rounds.filter(({ order }) => order > round.order);
  const speaker = speakerOf(props);
  return (
    <div class="no-print">
      <Unfold label={words.make}>
        {(close) => (
          <SmallForm
            save={async () => {
              const change = readWanted(wanted, mm);
              if (typeof change === 'string') return change;
              const evidence = frozenEvidence(
                freezeComplaint(cell, round.complaints, look, speaker.tester),
                [],
                toInstant(review.nowMs),
                settings.value.language,
                speaker,
              );
              const saved = await saveFromForm('finding', {
                project: review.project.id,
                round: round.id,
                title: cellTitle(cell, speaker),
                part,
                kind: cell.kind,
                zone: cell.zone,
                priority,
                ...change,
                ...(carriedBy !== 'undecided' && { carriedBy }),
                source: 'complaint',
                ...(evidence && { evidence }),
                state: 'open',
              });
              if (typeof saved === 'string') return saved;
              close();
              return null;
            }}
          >
            <div class="field-row">
              <PartAndPriority
                part={part}
                onPart={setPart}
                priority={priority}
                onPriority={setPriority}
              />
              {later.length > 0 && (
                <CarrierField value={carriedBy} rounds={later} onChange={setCarriedBy} />
              )}
            </div>
            <WantedFields wanted={wanted} onWanted={setWanted} mm={mm} onMm={setMm} />
          </SmallForm>
        )}
      </Unfold>
    </div>
  );
};
