/** One finding on the board: what it asks for, on what evidence, what came of it, and how it got there. */
import { useState } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { store } from '../../parts/state.ts';
import { d, t } from '../../words/index.ts';
import { findingInWords } from '../../words/say-finding.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../speaker.ts';
import { EditForm } from './edit-form.tsx';
import type { FindingRecord } from './findings.tsx';
import { FindingHistory } from './history.tsx';
import { OutcomeForm } from './outcome-form.tsx';

export interface FindingProps extends TabProps {
  readonly finding: FindingRecord;
}

const erase = async (finding: FindingRecord) => {
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

const Written = ({ lines }: { lines: readonly string[] }) => (
  <ul>
    {lines.map((line, at) => (
      <li key={at}>{line}</li>
    ))}
  </ul>
);

export const FindingCard = (props: FindingProps) => {
  const { finding } = props;
  const { body } = finding;
  const words = d().report;
  const [history, setHistory] = useState(false);
  const speaker = speakerOf(props);
  const said = findingInWords(body, speaker, speaker.round, formatDate);
  return (
    <article class="sheet">
      <h3>{body.title}</h3>
      <p>
        {[
          said.about,
          said.part,
          said.urgency,
          words.shownBy(speaker.round(body.round)),
          said.carriedBy,
        ]
          .filter(Boolean)
          .join(' ')}
      </p>
      {said.wanted !== null && (
        <p>
          <strong>{said.wanted}</strong>
        </p>
      )}
      <details>
        <summary class="button button-quiet">
          {[said.frozen ?? words.noEvidence, said.source].filter(Boolean).join(', ')}
        </summary>
        {said.counted.length > 0 && <Written lines={said.counted} />}
        {said.counted.length > 0 && said.written.length > 0 && (
          <p class="soft small">{words.asWritten}</p>
        )}
        {said.written.length > 0 && <Written lines={said.written} />}
      </details>
      {said.outcome && (
        <div>
          <p>
            <strong>{said.outcome.title}</strong>
          </p>
          <Written lines={said.outcome.lines} />
        </div>
      )}
      <PhotoRow photos={body.photos ?? []} label={body.title} />
      <div class="stack no-print">
        <EditForm {...props} />
        <OutcomeForm {...props} />
        <div class="row">
          <Button
            kind="quiet"
            aria-expanded={history}
            aria-label={`${words.board.history}: ${body.title}`}
            onClick={() => setHistory(!history)}
          >
            {words.board.history}
          </Button>
          <Button
            kind="quiet"
            aria-label={`${words.board.erase}: ${body.title}`}
            onClick={() => void erase(finding)}
          >
            {words.board.erase}
          </Button>
        </div>
        {history && <FindingHistory {...props} />}
      </div>
    </article>
  );
};
