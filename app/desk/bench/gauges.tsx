/** How far each gauge can be trusted: the gauge studies with what they say. */
import type { GaugeReview } from '../../../core/review/index.ts';
import type { GaugeSpread } from '../../../core/statistics/index.ts';
import { formatDate, formatNumber, formatPercent } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import { gaugeLines } from '../../words/say-blueprint.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../some.tsx';
import { speakerOf } from '../speaker.ts';
import { GaugeForm } from './gauge-form.tsx';
import { Judged } from '../judged.tsx';

export const Gauges = (props: TabProps) => {
  const words = d().blueprint;
  const { gauges } = props.review;
  return (
    <section class="stack">
      <h2>{words.gauges}</h2>
      {gauges.length === 0 ? (
        <p>{words.gaugesNone}</p>
      ) : (
        <>
          <ul class="plain-list stack">
            <Some of={gauges} step={10}>
              {(one) => (
                <li key={one.id}>
                  <Study {...props} of={one} />
                </li>
              )}
            </Some>
          </ul>
          <p class="soft small">{words.gaugeRule}</p>
        </>
      )}
      <span class="no-print">
        <GaugeForm {...props} />
      </span>
    </section>
  );
};

const Study = (props: TabProps & { readonly of: GaugeReview }) => {
  const words = d().blueprint;
  const { of } = props;
  const { result, unit } = of;
  const title = words.gaugeOf(
    of.gauge,
    `${terms().measures[of.measure]}, ${of.site === null ? words.anySite : (words.sites[of.site] ?? of.site)}`,
    formatDate(of.at),
  );
  return (
    <section class="sheet" aria-label={title}>
      <div class="row row-apart">
        <h3>{title}</h3>
        {result.ok && <Judged word={result.word}>{words.gaugeWord[result.word]}</Judged>}
      </div>
      <ul>
        {gaugeLines(of, speakerOf(props)).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {result.ok && (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={`${title}, ${words.method}`}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.method}</th>
                {[
                  words.repeatability,
                  words.reproducibility,
                  words.gaugeTotal,
                  words.partSpread,
                ].map((name) => (
                  <th scope="col" class="right" key={name}>{`${name}, ${terms().units[unit]}`}</th>
                ))}
                <th scope="col" class="right">
                  {words.shareOfTotal}
                </th>
                <th scope="col" class="right">
                  {words.shareOfTolerance}
                </th>
              </tr>
            </thead>
            <tbody>
              <Spread name={words.methods.anova} of={result.anova} />
              {result.ranges && <Spread name={words.methods.ranges} of={result.ranges} />}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
};

const Spread = ({ name, of }: { readonly name: string; readonly of: GaugeSpread }) => (
  <tr>
    <th scope="row">{name}</th>
    {[of.repeatability, of.reproducibility, of.gauge, of.parts].map((value, at) => (
      <td class="right" key={at}>
        {formatNumber(value, 4)}
      </td>
    ))}
    <td class="right">{formatPercent(of.share)}</td>
    <td class="right">
      {of.shareOfTolerance === null ? d().none : formatPercent(of.shareOfTolerance)}
    </td>
  </tr>
);
