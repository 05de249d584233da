/** What recurs in a round, how sure that is, when and with whom it comes, and which part could act on it. */
import { isProven, type CellSummary, type CloserLook } from '../../../core/review/index.ts';
import { SurvivalChart } from '../../parts/charts/survival-chart.tsx';
import { settings } from '../../parts/settings.ts';
import { d, t, terms } from '../../words/index.ts';
import { cellLines, cellTitle, lookLines, suspectLine } from '../../words/say-complaint.ts';
import { useWork } from '../desk-state.ts';
import { Some } from '../some.tsx';
import type { RoundProps } from './round-props.ts';
import { FindingForm } from './finding-form.tsx';
import { speakerOf } from '../speaker.ts';
import { Judged } from '../judged.tsx';

export const Recurring = (props: RoundProps) => {
  const { review, records, round } = props;
  const words = d().complaints;
  const proven = round.complaints.cells.filter(isProven);
  const rest = round.complaints.cells.length - proven.length;
  const looks = useWork((desk) => desk.closerLooks(review.project.id, round.id), records, [
    round.id,
  ]);
  return (
    <section class="stack">
      <h2>{words.proven}</h2>
      {proven.length === 0 && <p>{words.nothingProven}</p>}
      <ul class="plain-list stack">
        <Some of={proven} step={12}>
          {(cell) => (
            <li key={`${cell.zone} ${cell.kind}`}>
              <Cell
                {...props}
                cell={cell}
                look={
                  looks?.find(
                    (one) => one.cell.zone === cell.zone && one.cell.kind === cell.kind,
                  ) ?? null
                }
              />
            </li>
          )}
        </Some>
      </ul>
      {rest > 0 && <p class="soft small">{words.signs(rest)}</p>}
    </section>
  );
};

const Cell = (props: RoundProps & { cell: CellSummary; look: CloserLook | null }) => {
  const { cell, look, round } = props;
  const speaker = speakerOf(props);
  const counted = cellLines(cell, round.complaints, speaker);
  const looked = look && lookLines(look, speaker);
  return (
    <article class="sheet">
      <div class="row row-apart">
        <h3>{cellTitle(cell, speaker)}</h3>
        <Judged word={cell.word}>{terms().evidence[cell.word].name}</Judged>
      </div>
      <p class="soft small">{terms().evidence[cell.word].meaning}</p>
      {counted.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <h4>{d().complaints.look}</h4>
      {look && looked ? (
        <>
          {looked.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {look.firstRepeat.repeated > 0 && look.firstRepeat.steps.some(({ time }) => time > 0) && (
            <details>
              <summary class="button button-quiet">{d().complaints.firstRepeat}</summary>
              <SurvivalChart
                title={d().complaints.firstRepeat}
                xTitle={d().bench.xTitle(settings.value.distance)}
                yTitle={d().complaints.withoutIt}
                eventName={d().complaints.withItTwice}
                steps={look.firstRepeat.steps}
              />
            </details>
          )}
        </>
      ) : (
        <p class="soft">{t().loading}</p>
      )}
      <p class="soft small">{suspectLine(cell, speaker)}</p>
      {look && <FindingForm {...props} cell={cell} look={look} />}
    </article>
  );
};
