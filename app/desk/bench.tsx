/** Each pair's measurements against its distance, and the arrival check against the blueprint. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../core/records/index.ts';
import type { BenchSeries, ReviewSummary } from '../../core/review/index.ts';
import { metres } from '../../core/units/index.ts';
import { DistanceChart } from '../parts/charts/distance-chart.tsx';
import { distanceFigure, formatDistance, formatNumber } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import { d, t, terms } from '../words/index.ts';
import { BenchForm } from './bench-form.tsx';
import { namesIn, useWork, type TabProps } from './desk-state.ts';
import { SelectField } from './form-parts.tsx';

const keyOf = ({ measure, site, foot, unit }: BenchSeries): string =>
  `${measure} ${site} ${foot} ${unit}`;

const titleOf = ({ measure, site, foot }: BenchSeries): string =>
  `${terms().measures[measure]}, ${site}, ${t().foot[foot]}`;

/** The limits of the brief that can be drawn in the reading's own unit. */
const limitsOf = (review: ReviewSummary, { measure, site, unit }: BenchSeries) =>
  review.project.brief.limits
    .filter((one) => one.measure === measure && one.basis === 'reading')
    .filter((one) => one.site === undefined || one.site === site)
    .map(({ value }) => ({
      y: value,
      label: d().bench.limit(`${formatNumber(value, 2)} ${terms().units[unit]}`),
    }));

export const Bench = ({ records, review }: TabProps) => {
  const words = d().bench;
  const names = namesIn(review, records);
  const [chosen, setChosen] = useState<string | null>(null);
  const bench = useWork((desk) => desk.bench(review.project.id), [records]);
  if (!bench) return <p class="soft">{t().loading}</p>;
  const kinds = new Map(bench.map((series) => [keyOf(series), series]));
  const worn = bench.find(({ points }) => points.length > 1) ?? bench[0];
  const shown = kinds.get(chosen ?? '') ?? worn;
  return (
    <>
      {!shown ? (
        <p>{words.none}</p>
      ) : (
        <>
          <SelectField
            label={words.choose}
            value={keyOf(shown)}
            options={[...kinds]
              .sort(([a], [b]) => (a < b ? -1 : 1))
              .map(([value, series]) => ({ value, label: titleOf(series) }))}
            onChange={setChosen}
          />
          <Curve records={records} review={review} bench={bench} shown={shown} />
        </>
      )}
      <Deviations review={review} pairName={names.pair} />
      <BenchForm records={records} review={review} />
    </>
  );
};

const Curve = (props: TabProps & { bench: readonly BenchSeries[]; shown: BenchSeries }) => {
  const { records, review, bench, shown } = props;
  const words = d().bench;
  const names = namesIn(review, records);
  const unit = terms().units[shown.unit];
  const series = bench
    .filter((one) => keyOf(one) === keyOf(shown))
    .sort((a, b) => b.points.length - a.points.length);
  // Pairs measured once say where they began; a line needs two. Without any line, the points are shown.
  const lines = series.some(({ points }) => points.length > 1)
    ? series.filter(({ points }) => points.length > 1)
    : series;
  const value = (reading: number) => `${formatNumber(reading, 2)} ${unit}`;
  const perUnit = settings.value.distance === 'km' ? 1000 : 1609.344;
  return (
    <>
      <DistanceChart
        title={titleOf(shown)}
        xTitle={words.xTitle(settings.value.distance)}
        yTitle={`${terms().measures[shown.measure]}, ${unit}`}
        series={lines.map(({ pair, round, points }) => ({
          name: `${names.pair(pair)} (${names.round(round)})`,
          points: points.map(({ distanceM, value: reading }) => ({
            x: distanceM / perUnit,
            y: reading,
            label: words.point(names.pair(pair), value(reading), formatDistance(distanceM)),
          })),
        }))}
        limits={limitsOf(review, shown)}
        formatX={(x) => formatNumber(x, 0)}
        formatY={(y) => formatNumber(y, 2)}
      />
      <details>
        <summary class="button button-quiet">{words.table}</summary>
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.table}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.pair}</th>
                <th scope="col">{d().pairs.round}</th>
                <th scope="col">{`${words.readings}, ${unit} @ ${settings.value.distance}`}</th>
              </tr>
            </thead>
            <tbody>
              {series.map(({ pair, round, points }) => (
                <tr key={pair}>
                  <th scope="row">{names.pair(pair)}</th>
                  <td>{names.round(round)}</td>
                  <td>
                    {points
                      .map(
                        (p) =>
                          `${formatNumber(p.value, 2)} @ ${distanceFigure(metres(p.distanceM))}`,
                      )
                      .join('   ')}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </>
  );
};

const Deviations = (props: { review: ReviewSummary; pairName: (id: RecordId) => string }) => {
  const words = d().bench;
  const { deviations } = props.review;
  const outside = deviations.filter(({ inside }) => !inside);
  const signed = (value: number) =>
    `${value >= 0 ? '+' : '−'}${formatNumber(Math.abs(value), 2, 2)}`;
  return (
    <section class="stack">
      <h2>{words.deviations}</h2>
      {deviations.length === 0 ? (
        <p>{words.noBlueprint}</p>
      ) : outside.length === 0 ? (
        <p>{words.allInside(deviations.length)}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.deviations}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.pair}</th>
                <th scope="col">{words.choose}</th>
                <th scope="col" class="right">
                  {words.nominal}
                </th>
                <th scope="col" class="right">
                  {words.reading}
                </th>
                <th scope="col" class="right">
                  {words.deviation}
                </th>
              </tr>
            </thead>
            <tbody>
              {outside.map((one) => (
                <tr key={`${one.pair} ${one.measure} ${one.site} ${one.foot}`}>
                  <th scope="row">{props.pairName(one.pair)}</th>
                  <td>{`${terms().measures[one.measure]}, ${one.site}, ${t().foot[one.foot]}`}</td>
                  <td class="right">
                    {`${formatNumber(one.nominal, 2)} (${signed(one.lower)} … ${signed(one.upper)}) ${terms().units[one.unit]}`}
                  </td>
                  <td class="right">{formatNumber(one.value, 2)}</td>
                  <td class="right outside">{signed(one.deviation)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
};
