/** The findings of a round, each with the evidence that it was written on. */
import { formatDate, formatNumber } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import type { RoundProps } from './round-props.ts';

const order = ['high', 'medium', 'low'] as const;

export const Findings = ({ records, round }: RoundProps) => {
  const words = d().finding;
  const own = records.finding
    .filter(({ body }) => body.round === round.id)
    .sort((a, b) => order.indexOf(a.body.priority) - order.indexOf(b.body.priority));
  if (own.length === 0) return null;
  return (
    <section class="stack">
      <h2>{words.list}</h2>
      <ul class="plain-list stack">
        {own.map(({ body, revision }) => (
          <li class="sheet" key={revision.id}>
            <h3>{body.title}</h3>
            <p>
              {[
                `${terms().parts[body.part].name} (${terms().parts[body.part].role})`,
                `${words.priority}: ${words.priorities[body.priority]}`,
                words.states[body.state],
              ].join(' · ')}
            </p>
            {(body.wanted !== undefined || body.wantedMm !== undefined) && (
              <p>
                {`${words.wanted}: ${[
                  body.wanted,
                  body.wantedMm === undefined ? '' : `${formatNumber(body.wantedMm, 1)} mm`,
                ]
                  .filter(Boolean)
                  .join(', ')}`}
              </p>
            )}
            {body.evidence && (
              <details>
                <summary class="button button-quiet">
                  {words.frozen(formatDate(body.evidence.until))}
                </summary>
                {body.evidence.lines.map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </details>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
};
