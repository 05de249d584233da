/** Behind How sure?: one measure at one site of one round, with the interval, what follows from it, and as a table. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import {
  doses,
  PER_METRE,
  type Dose,
  type Felt,
  type WearLook,
} from '../../../core/review/index.ts';
import { fromMetres, metres, type Metres } from '../../../core/units/index.ts';
import { DistanceChart } from '../../parts/charts/distance-chart.tsx';
import { WearChart } from '../../parts/charts/wear-chart.tsx';
import { distanceFigure, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { signed } from '../../words/figures.ts';
import { clauses, d, halves, saidOf, t, terms } from '../../words/index.ts';
import {
  doseInWords,
  limitTitle,
  placeTitle,
  siteLines,
  unitName,
  valueOf,
  warningInWords,
  wearLines,
} from '../../words/say-wear.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { speakerOf } from '../parts/speaker.ts';

/** Kind and site, as the page's choice names them. */
export const placeKey = ({
  kind,
  site,
}: {
  readonly kind: string | null;
  readonly site: string | null;
}): string => `${kind ?? ''} ${site ?? ''}`;

/** A distance of the dose's reference runner as the chart's axis counts it. */
const onAxis = (x: Metres, dose: Dose): number =>
  dose === 'distance' ? fromMetres(x, settings.value.distance) : (x * PER_METRE[dose]) / 1000;

const axisTitle = (dose: Dose): string =>
  dose === 'distance' ? d().bench.xTitle(settings.value.distance) : d().wear.xTitles[dose];

export const WearDetails = (
  props: TabProps & {
    /** What the page is narrowed to; null: what tells most. */
    readonly round: RecordId | null;
    readonly place: string | null;
  },
) => {
  const { review, records } = props;
  const words = d().wear;
  const project = review.project.id;
  const speaker = speakerOf(props);
  const [chosen, setChosen] = useState(props.round);
  const [key, setKey] = useState(props.place);
  const [dose, setDose] = useState<Dose>('distance');
  const [pair, setPair] = useState<RecordId | 'new'>('new');
  const places = useWork((desk) => desk.wearPlaces(project), records, [project]);
  const rounds = review.rounds.filter(({ id }) => places?.some(({ round }) => round === id));
  const round = rounds.find(({ id }) => id === chosen) ?? rounds.at(-1);
  const own = places?.filter((place) => place.round === round?.id) ?? [];
  // What was checked most tells most: it is shown first.
  const most = own.reduce((best, place) => Math.max(best, place.checks), 0);
  const place =
    own.find((one) => placeKey(one) === key) ?? own.find(({ checks }) => checks === most) ?? null;
  const pairs = review.pairs.filter((one) => one.round === round?.id);
  const of = pairs.some(({ id }) => id === pair) && pair !== 'new' ? pair : null;
  const look = useWork(
    async (desk) => (place ? desk.wear(project, place, dose, of) : null),
    records,
    [round?.id, place && placeKey(place), dose, of],
  );
  const felt = useWork(async (desk) => (round ? desk.felt(project, round.id) : []), records, [
    round?.id,
  ]);
  if (!places) return <p class="soft">{t().loading}</p>;
  if (!round || !place) return <p>{d().bench.none}</p>;
  return (
    <>
      <div class="options no-print">
        <SelectField
          label={words.round}
          value={round.id}
          options={rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setChosen}
        />
        <SelectField
          label={words.place}
          value={placeKey(place)}
          options={own.map((one) => ({ value: placeKey(one), label: placeTitle(one, speaker) }))}
          onChange={setKey}
        />
        <SelectField
          label={words.against}
          value={dose}
          options={doses.map((value) => ({ value, label: terms().doses[value] }))}
          onChange={setDose}
        />
        <SelectField<RecordId | 'new'>
          label={words.curveOf}
          value={of ?? 'new'}
          options={[
            { value: 'new', label: words.newPair },
            ...pairs.map(({ id }) => ({ value: id, label: words.pairName(speaker.pair(id)) })),
          ]}
          onChange={setPair}
        />
      </div>
      <h3>{saidOf(round.name, placeTitle(place, speaker))}</h3>
      {look && (
        <div class="two-columns">
          <section class="stack">
            <LookChart {...props} look={look} />
            <p class="soft small">{words.key}</p>
            <WearTable {...props} look={look} />
          </section>
          <section class="stack">
            <ul>
              {[
                ...wearLines(look, review.project.brief.distanceM, speaker),
                ...siteLines(look, speaker),
              ].map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <Warnings {...props} look={look} />
          </section>
        </div>
      )}
      {felt && felt.length > 0 && <FeltPart felt={felt} />}
    </>
  );
};

const LookChart = (props: TabProps & { look: WearLook }) => {
  const { look } = props;
  const speaker = speakerOf(props);
  const title = placeTitle(look, speaker);
  return (
    <WearChart
      look={look}
      onAxis={(x) => onAxis(x, look.dose)}
      title={title}
      xTitle={axisTitle(look.dose)}
      yTitle={clauses(title, unitName(look, speaker))}
      words={{
        ...d().wear,
        pair: speaker.pair,
        point: ({ pair, value, x }) =>
          d().bench.point(
            speaker.pair(pair),
            valueOf(value, look, speaker),
            doseInWords(x, look.dose, speaker),
          ),
        limit: (limit) => limitTitle(limit, look, speaker),
      }}
      number={formatNumber}
    />
  );
};

const WearTable = (props: TabProps & { look: WearLook }) => {
  const { look } = props;
  const words = d().bench;
  const speaker = speakerOf(props);
  const unit = unitName(look, speaker);
  const curve = look.curve?.filter((_, at) => at % 4 === 0) ?? [];
  const byPair = new Map<string, string[]>();
  for (const { pair, x, value } of [...look.points].sort((a, b) => a.x - b.x))
    byPair.set(pair, [
      ...(byPair.get(pair) ?? []),
      `${formatNumber(value, 2)} @ ${look.dose === 'distance' ? distanceFigure(x) : formatNumber(onAxis(x, look.dose), 0)}`,
    ]);
  return (
    <details>
      <summary class="button button-quiet">{words.table}</summary>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.table}>
        {curve.length > 0 && (
          <table>
            <thead>
              <tr>
                <th scope="col">{axisTitle(look.dose)}</th>
                <th scope="col" class="right">
                  {clauses(d().wear.curve, unit)}
                </th>
                <th scope="col" class="right">
                  {d().wear.band}
                </th>
              </tr>
            </thead>
            <tbody>
              {curve.map((one) => (
                <tr key={one.x}>
                  <th scope="row">{formatNumber(onAxis(one.x, look.dose), 0)}</th>
                  <td class="right">{formatNumber(one.median, 2)}</td>
                  <td class="right">{`${formatNumber(one.lower, 2)} … ${formatNumber(one.upper, 2)}`}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <table>
          <thead>
            <tr>
              <th scope="col">{words.pair}</th>
              <th scope="col">{clauses(words.readings, `${unit} @ ${axisTitle(look.dose)}`)}</th>
            </tr>
          </thead>
          <tbody>
            {[...byPair].map(([pair, readings]) => (
              <tr key={pair}>
                <th scope="row">{speaker.pair(pair)}</th>
                <td>{readings.join('   ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
};

const Warnings = (props: TabProps & { look: WearLook }) => {
  const speaker = speakerOf(props);
  const warned = props.look.points.filter(({ warnings }) => warnings.length > 0);
  if (warned.length === 0) return null;
  return (
    <details>
      <summary class="button button-quiet">{`${d().wear.warningsTitle} (${warned.length})`}</summary>
      <ul class="small">
        {warned.map(({ check, pair, x, warnings }) => (
          <li key={check}>
            {saidOf(
              clauses(speaker.pair(pair), doseInWords(x, props.look.dose, speaker)),
              halves(warnings.map((warning) => warningInWords(warning, speaker))),
            )}
          </li>
        ))}
      </ul>
    </details>
  );
};

const FeltPart = ({ felt }: { felt: readonly Felt[] }) => {
  const words = d().wear;
  const write = (value: number) => signed(value, (size) => formatNumber(size, 1));
  const nameOf = ({ attribute }: Felt) => terms().attributes[attribute].name;
  return (
    <section class="stack">
      <h3>{words.felt}</h3>
      <div class="two-columns">
        <DistanceChart
          title={words.felt}
          xTitle={axisTitle('distance')}
          yTitle={words.feltScore}
          yCovers={[0, 100]}
          series={felt.map((one) => ({
            name: nameOf(one),
            points: one.stretches.map(({ fromM, toM, mean }) => ({
              x: fromMetres(metres((fromM + toM) / 2), settings.value.distance),
              y: mean.mean,
              label: saidOf(
                clauses(
                  nameOf(one),
                  `${distanceFigure(fromM)}–${distanceFigure(toM)} ${settings.value.distance}`,
                ),
                clauses(
                  `${formatNumber(mean.mean, 0)}${mean.interval ? ` (${formatNumber(mean.interval.lower, 0)} … ${formatNumber(mean.interval.upper, 0)})` : ''}`,
                  `n ${mean.n}`,
                ),
              ),
            })),
          }))}
          formatX={(value) => formatNumber(value, 0)}
          formatY={(value) => formatNumber(value, 0)}
        />
        <ul>
          {felt.map((one) => (
            <li key={one.attribute}>
              {one.drift
                ? words.feltLine(
                    nameOf(one),
                    write(one.drift.per100Km),
                    write(one.drift.interval.lower),
                    write(one.drift.interval.upper),
                    one.drift.testers,
                  )
                : saidOf(nameOf(one), words.feltNone)}
            </li>
          ))}
          <li class="soft">{words.feltPart}</li>
        </ul>
      </div>
    </section>
  );
};
