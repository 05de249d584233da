/** One finding on the board: what it asks for, on what evidence, what came of it, and how it got there. */
import { useState } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { SaidLines } from '../../parts/said-lines.tsx';
import { store } from '../../parts/state.ts';
import { d, t } from '../../words/index.ts';
import { findingInWords } from '../../words/say-finding.ts';
import { speakerOf } from '../speaker.ts';
import { EditForm } from './edit-form.tsx';
import type { FindingProps } from './finding-props.ts';
import { FindingHistory } from './history.tsx';
import { laterRounds, OutcomeForm } from './outcome-form.tsx';

const erase = async (finding: FindingProps['finding']) => {
  const { id } = finding.revision;
  const erased = await store.erase(id);
  showToast(
    erased.ok
      ? {
          text: d().report.board.erased,
          action: { label: t().undo, run: () => void store.restore(id) },
        }
      : { text: d().trouble },
  );
};

type Panel = 'edit' | 'outcome' | 'history';

export const FindingCard = (props: FindingProps) => {
  const { finding, review } = props;
  const { body } = finding;
  const words = d().report;
  const [open, setOpen] = useState<Panel | null>(null);
  const speaker = speakerOf(props);
  const said = findingInWords(body, speaker, speaker.round, formatDate);
  const later = laterRounds(review, body);
  const panels: readonly { readonly id: Panel; readonly label: string }[] = [
    { id: 'edit', label: words.board.edit },
    ...(later.length > 0 ? [{ id: 'outcome' as const, label: words.board.writeOutcome }] : []),
    { id: 'history', label: words.board.history },
  ];
  const close = () => setOpen(null);
  return (
    <article class="sheet">
      <h3>{body.title}</h3>
      {said.about !== null && <p>{said.about}</p>}
      <p>
        {[said.part, said.urgency, words.shownBy(speaker.round(body.round)), said.carriedBy]
          .filter(Boolean)
          .join(' ')}
      </p>
      {said.wanted !== null && (
        <p>
          <strong>{said.wanted}</strong>
        </p>
      )}
      {said.frozen === null ? (
        <p class="soft">{[words.noEvidence, said.source].filter(Boolean).join(' · ')}</p>
      ) : (
        <details>
          <summary class="button button-quiet">
            {[said.frozen, said.source].filter(Boolean).join(' · ')}
          </summary>
          {said.evidence && <SaidLines {...said.evidence} />}
        </details>
      )}
      {said.outcome && (
        <div>
          <p>
            <strong>{said.outcome.title}</strong>
          </p>
          <SaidLines said={[]} written={said.outcome.written} />
        </div>
      )}
      <PhotoRow photos={body.photos ?? []} label={body.title} />
      <div class="row no-print">
        {panels.map(({ id, label }) => (
          <Button
            key={id}
            kind="quiet"
            aria-expanded={open === id}
            aria-label={`${label}: ${body.title}`}
            onClick={() => setOpen(open === id ? null : id)}
          >
            {label}
          </Button>
        ))}
        <Button
          kind="quiet"
          aria-label={`${words.board.erase}: ${body.title}`}
          onClick={() => void erase(finding)}
        >
          {words.board.erase}
        </Button>
      </div>
      {open === 'edit' && <EditForm {...props} close={close} />}
      {open === 'outcome' && <OutcomeForm {...props} later={later} close={close} />}
      {open === 'history' && <FindingHistory {...props} />}
    </article>
  );
};
