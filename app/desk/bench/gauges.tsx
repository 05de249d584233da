/** How far each gauge can be trusted: the gauge studies with what they say. */
import type { GaugeReview } from '../../../core/review/index.ts';
import type { GaugeSpread } from '../../../core/statistics/index.ts';
import { IntervalLine } from '../../parts/charts/interval-line.tsx';
import { formatDate, formatNumber, formatPercent } from '../../parts/format.ts';
import { clauses, d, p, terms } from '../../words/index.ts';
import { gaugeLines } from '../../words/say-blueprint.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { Mark } from '../frame/stamp.tsx';
import { GaugeForm } from './gauge-form.tsx';

export const Gauges = (props: TabProps) => {
  const words = d().blueprint;
  const { gauges } = props.review;
  return (
    <>
      {gauges.length === 0 ? (
        <p>{words.gaugesNone}</p>
      ) : (
        <ul class="plain-list stack">
          <Some of={gauges} step={10}>
            {(one) => (
              <li key={one.id}>
                <Study records={props.records} review={props.review} of={one} />
              </li>
            )}
          </Some>
        </ul>
      )}
      <span class="no-print">
        <GaugeForm {...props} />
      </span>
      {gauges.length > 0 && (
        <HowSure>
          <p>{words.gaugeRule}</p>
        </HowSure>
      )}
    </>
  );
};

/** What a gauge's share of the tolerance is held against: good below, of no use above. */
const [GOOD, POOR] = [0.1, 0.3];

const toneOf = { good: 'holds', conditional: 'open', 'not-good-enough': 'fails' } as const;

const Study = (props: TabProps & { readonly of: GaugeReview }) => {
  const words = d().blueprint;
  const { of } = props;
  const { result, unit } = of;
  const title = words.gaugeOf(
    of.gauge,
    clauses(
      terms().measures[of.measure],
      of.site === null ? words.anySite : (words.sites[of.site] ?? of.site),
    ),
    formatDate(of.at),
  );
  const [first, ...rest] = gaugeLines(of, speakerOf(props));
  const share = result.ok ? (result.anova.shareOfTolerance ?? result.anova.share) : null;
  return (
    <section class="paper gauge-study" aria-label={title}>
      <div class="row row-apart">
        <h2>{title}</h2>
        {result.ok && <Mark tone={toneOf[result.word]}>{words.gaugeWord[result.word]}</Mark>}
      </div>
      <p>{first}</p>
      {share !== null && first && (
        <p class="gauge-share">
          <IntervalLine
            range={[0, 0.5]}
            value={share}
            limit={POOR}
            right={[0, GOOD]}
            says={first}
          />
          <span class="soft small">{p().wear.gaugesPlace.line}</span>
        </p>
      )}
      <HowSure>
        <ul>
          {rest.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {result.ok && (
          <div
            class="table-wrap"
            tabIndex={0}
            role="region"
            aria-label={clauses(title, words.method)}
          >
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
                    <th scope="col" class="right" key={name}>
                      {clauses(name, terms().units[unit])}
                    </th>
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
      </HowSure>
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
