/** What recurs in a round, how sure that is, when and with whom it comes, and which part could act on it. */
import type { CloserLook, CellSummary } from '../../../core/review/index.ts';
import { fromMetres, metres } from '../../../core/units/index.ts';
import { DistanceChart } from '../../parts/charts/distance-chart.tsx';
import { formatDistance, formatNumber, formatPercent } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { d, t, terms } from '../../words/index.ts';
import { cellLines, cellTitle, lookLines, suspectLine } from '../../words/say-complaint.ts';
import { useWork } from '../desk-state.ts';
import { Some } from '../some.tsx';
import type { RoundProps } from './round-props.ts';
import { FindingForm } from './finding-form.tsx';
import { speakerOf } from '../speaker.ts';

const isProven = ({ word }: CellSummary): boolean =>
  word === 'recurs-across-testers' || word === 'recurs-for-one-tester';

export const Recurring = (props: RoundProps) => {
  const { review, records, round } = props;
  const words = d().complaints;
  const proven = round.complaints.cells.filter(isProven);
  const rest = round.complaints.cells.length - proven.length;
  const looks = useWork(
    (desk) => desk.closerLooks(review.project.id, round.id),
    [records, round.id],
  );
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
  const lines = [
    ...cellLines(cell, round.complaints, speaker),
    ...(look ? lookLines(look, speaker) : []),
  ];
  return (
    <article class="sheet">
      <div class="row row-apart">
        <h3>{cellTitle(cell, speaker)}</h3>
        <span class={`proof proof-${cell.word}`}>{terms().evidence[cell.word].name}</span>
      </div>
      <p class="soft small">{terms().evidence[cell.word].meaning}</p>
      {cellLines(cell, round.complaints, speaker).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <h4>{d().complaints.look}</h4>
      {look ? (
        <>
          {lookLines(look, speaker).map((line) => (
            <p key={line}>{line}</p>
          ))}
          <FirstRepeatChart look={look} />
        </>
      ) : (
        <p class="soft">{t().loading}</p>
      )}
      <p class="soft small">{suspectLine(cell, speaker)}</p>
      <FindingForm {...props} cell={cell} lines={lines} />
    </article>
  );
};

/** The share of testers without the complaint twice, over kilometres: a stair that falls at each of them. */
const FirstRepeatChart = ({ look }: { look: CloserLook }) => {
  const words = d().complaints;
  const { steps, testers } = look.firstRepeat;
  const unit = settings.value.distance;
  if (!steps.some(({ events }) => events > 0)) return null;
  const inUnit = (time: number) => fromMetres(metres(time), unit);
  let before = 1;
  const stairs = [
    { x: 0, y: 100, label: `${formatDistance(metres(0))}: ${formatPercent(1)}` },
    ...steps.flatMap(({ time, survival, lower, upper, atRisk }) => {
      const label = `${formatDistance(metres(time))}: ${formatPercent(survival)} (${formatPercent(lower)}–${formatPercent(upper)}), ${atRisk}/${testers}`;
      const corner = { x: inUnit(time), y: 100 * before, label };
      before = survival;
      return [corner, { x: inUnit(time), y: 100 * survival, label }];
    }),
  ];
  return (
    <details>
      <summary class="button button-quiet">{words.firstRepeat}</summary>
      <DistanceChart
        title={words.firstRepeat}
        xTitle={d().bench.xTitle(unit)}
        yTitle={words.withoutIt}
        yCovers={[0, 100]}
        series={[{ name: words.withoutIt, points: stairs }]}
        formatX={(x) => formatNumber(x, 0)}
        formatY={(y) => formatNumber(y, 0)}
      />
    </details>
  );
};
