/** Kilometres and steps on each pair of a round, day by day. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { fromMetres } from '../../../core/units/index.ts';
import { DistanceChart } from '../../parts/charts/distance-chart.tsx';
import { Choice } from '../../parts/controls/controls.tsx';
import { formatDate, formatDistance, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { clauses, d } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';

const DAY_MS = 86_400_000;
/** More lines than this nobody can tell apart; those with most kilometres are drawn. */
const MOST_PAIRS = 12;

export const OverTime = ({ records, review }: TabProps) => {
  const words = d().pairs;
  const names = namesIn(review, records);
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const [what, setWhat] = useState<'distance' | 'steps'>('distance');
  const rounds = review.rounds.filter(({ size }) => size.runs > 0);
  const round = rounds.find(({ id }) => id === chosen) ?? rounds.at(-1);
  const courses = useWork(
    async (desk) => (round ? desk.courses(review.project.id, round.id, MOST_PAIRS) : null),
    records,
    [round?.id],
  );
  if (!round || !courses) return null;
  const { pairs: shown, worn } = courses;
  const firstMs = Math.min(...shown.map(({ course }) => course[0]?.atMs ?? Infinity));
  const { distance: unit } = settings.value;
  return (
    <section class="stack">
      <h2>{words.overTime}</h2>
      <div class="row">
        <SelectField
          label={words.round}
          value={round.id}
          options={rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setChosen}
        />
        <Choice
          label={words.ofWhat}
          options={[
            { value: 'distance', label: words.distance },
            { value: 'steps', label: words.steps },
          ]}
          value={what}
          onChange={setWhat}
        />
      </div>
      <DistanceChart
        title={clauses(words.overTime, round.name)}
        xTitle={words.days(formatDate(firstMs))}
        yTitle={what === 'distance' ? clauses(words.distance, unit) : words.stepsThousand}
        series={shown.map(({ id, course }) => ({
          name: names.pair(id),
          points: course.map(({ atMs, totalM, stepsPerShoe }) => ({
            x: (atMs - firstMs) / DAY_MS,
            y: what === 'distance' ? fromMetres(totalM, unit) : stepsPerShoe / 1000,
            label: clauses(
              names.pair(id),
              formatDate(atMs),
              what === 'distance' ? formatDistance(totalM) : formatNumber(stepsPerShoe, 0),
            ),
          })),
        }))}
        formatX={(x) => formatNumber(x, 0)}
        formatY={(y) => formatNumber(y, 0)}
      />
      {worn > shown.length && <p class="soft small">{words.mostWorn(shown.length, worn)}</p>}
    </section>
  );
};
