/** A complaint becomes a finding: for one part, with what the data said frozen as of now. */
import { useState } from 'preact/hooks';
import { partIds, suspectsOf, type PartId } from '../../../core/foot/index.ts';
import type { Finding, RecordId } from '../../../core/records/index.ts';
import type { CellSummary } from '../../../core/review/index.ts';
import { millimetres, parseDecimal } from '../../../core/units/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { d, terms } from '../../words/index.ts';
import { cellTitle } from '../../words/say-complaint.ts';
import { saveFromForm, SelectField, SmallForm, TextField, Unfold } from '../form-parts.tsx';
import type { RoundProps } from './round-props.ts';
import { speakerOf } from '../speaker.ts';

export const FindingForm = (
  props: RoundProps & { readonly cell: CellSummary; readonly lines: readonly string[] },
) => {
  const { review, round, cell, lines } = props;
  const words = d().finding;
  const [part, setPart] = useState<PartId>(suspectsOf(cell.kind, cell.zone).first[0] ?? 'last');
  const [priority, setPriority] = useState<Finding['priority']>('medium');
  const [wanted, setWanted] = useState('');
  const [mm, setMm] = useState('');
  const [carriedBy, setCarriedBy] = useState<RecordId | 'undecided'>('undecided');
  const later = review.rounds.filter(({ order }) => order > round.order);
  const { asked } = round.complaints;
  return (
    <div class="no-print">
      <Unfold label={words.make}>
        {(close) => (
          <SmallForm
            save={async () => {
              const size = mm.trim() === '' ? null : parseDecimal(mm);
              if (mm.trim() !== '' && size === null) return `${words.wantedMm}: ${d().wrongNumber}`;
              const saved = await saveFromForm('finding', {
                project: review.project.id,
                round: round.id,
                title: cellTitle(cell, speakerOf(props)),
                part,
                kind: cell.kind,
                zone: cell.zone,
                priority,
                ...(wanted.trim() !== '' && { wanted: wanted.trim() }),
                ...(size !== null && { wantedMm: millimetres(size) }),
                ...(carriedBy !== 'undecided' && { carriedBy }),
                source: 'complaint',
                evidence: {
                  until: toInstant(review.nowMs),
                  lines: [...lines],
                  complaint: {
                    word: cell.word,
                    askedRuns: asked.runs,
                    askedTesters: asked.testers,
                    runs: cell.runs,
                    testersOnce: cell.testersOnce,
                    testersTwice: cell.testersTwice,
                    left: cell.byFoot.left,
                    right: cell.byFoot.right,
                    eValue: cell.eValue,
                  },
                },
                state: 'open',
              });
              if (typeof saved === 'string') return saved;
              close();
              return null;
            }}
          >
            <div class="field-row">
              <SelectField
                label={words.part}
                value={part}
                options={partIds.map((value) => ({ value, label: terms().parts[value].name }))}
                onChange={setPart}
              />
              <SelectField
                label={words.priority}
                value={priority}
                options={(['high', 'medium', 'low'] as const).map((value) => ({
                  value,
                  label: words.priorities[value],
                }))}
                onChange={setPriority}
              />
              {later.length > 0 && (
                <SelectField<RecordId | 'undecided'>
                  label={words.carriedBy}
                  value={carriedBy}
                  options={[
                    { value: 'undecided', label: words.undecided },
                    ...later.map(({ id, name }) => ({ value: id, label: name })),
                  ]}
                  onChange={setCarriedBy}
                />
              )}
            </div>
            <TextField label={words.wanted} value={wanted} onInput={setWanted} />
            <TextField label={words.wantedMm} value={mm} onInput={setMm} numeric />
          </SmallForm>
        )}
      </Unfold>
    </div>
  );
};
