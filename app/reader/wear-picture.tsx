/** How it wears, as it was frozen with the finding: the readings, and the curve of a new pair through them. */
import type { Evidence } from '../../core/records/index.ts';
import { fromMetres } from '../../core/units/index.ts';
import { DistanceChart } from '../parts/charts/distance-chart.tsx';
import { formatDistance, formatNumber } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { clauses, proposeWords, saidOf, terms } from '../words/index.ts';
import { placeName } from '../words/say-place.ts';
import { readerSpeaker } from './say-reader.ts';
import '../parts/charts/charts.css';

type Place = NonNullable<Evidence['place']>;
type Wear = NonNullable<Evidence['wear']>;

export const WearPicture = ({ place, wear }: { readonly place: Place; readonly wear: Wear }) => {
  const words = proposeWords();
  const title = placeName(place, readerSpeaker());
  const unit = terms().units[place.unit];
  const { course } = wear;
  if (!course) return <p class="reader-answer">{title}</p>;
  const x = (at: Parameters<typeof fromMetres>[0]) => fromMetres(at, settings.value.distance);
  const figure = (value: number) => `${formatNumber(value, 2)} ${unit}`;
  return (
    <figure class="stack" style={{ margin: 0 }}>
      <DistanceChart
        title={words.curveSays(title)}
        xTitle={words.distance(settings.value.distance)}
        yTitle={clauses(title, unit)}
        series={[
          {
            name: words.readings,
            unjoined: true,
            points: course.readings.map((one) => ({
              x: x(one.x),
              y: one.value,
              label: saidOf(formatDistance(one.x), figure(one.value)),
            })),
          },
          {
            name: words.middle,
            curve: 'fitted',
            points: course.curve.map((one) => ({ x: x(one.x), y: one.median, label: '' })),
          },
        ]}
        bands={[
          {
            name: words.band,
            points: course.curve.map((one) => ({ x: x(one.x), lo: one.lower, hi: one.upper })),
          },
        ]}
        limits={wear.limits.flatMap(({ limit }) => {
          const start = course.curve[0]?.median;
          const y = limit.basis === 'reading' ? limit.value : start && limit.value * start;
          return y === undefined ? [] : [{ y, label: words.limit(figure(y)) }];
        })}
        formatX={(value) => formatNumber(value, 1)}
        formatY={(value) => formatNumber(value, 2)}
      />
      <figcaption class="soft small">{words.curveAt}</figcaption>
    </figure>
  );
};
