/** The findings of a round, each with the evidence that it was written on. */
import { formatDate } from '../../parts/format.ts';
import { SaidLines } from '../../parts/said-lines.tsx';
import { d } from '../../words/index.ts';
import { findingInWords } from '../../words/say-finding.ts';
import { speakerOf } from '../speaker.ts';
import type { RoundProps } from './round-props.ts';

const order = ['high', 'medium', 'low'] as const;

export const Findings = (props: RoundProps) => {
  const { records, round } = props;
  const speaker = speakerOf(props);
  const own = records.finding
    .filter(({ body }) => body.round === round.id)
    .sort((a, b) => order.indexOf(a.body.priority) - order.indexOf(b.body.priority));
  if (own.length === 0) return null;
  return (
    <section class="stack">
      <h2>{d().finding.list}</h2>
      <ul class="plain-list stack">
        {own.map(({ body, revision }) => {
          const said = findingInWords(body, speaker, speaker.round, formatDate);
          return (
            <li class="sheet" key={revision.id}>
              <h3>{body.title}</h3>
              <p>{[said.part, said.urgency].join(' ')}</p>
              {said.wanted !== null && <p>{said.wanted}</p>}
              {said.evidence && (
                <details>
                  <summary class="button button-quiet">{said.frozen}</summary>
                  <SaidLines {...said.evidence} />
                </details>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
};
