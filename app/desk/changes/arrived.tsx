/** Did it arrive? A change a line: what was measured of what was asked for, what would settle it, and what else differs. */
import {
  arrivedAnswer,
  askedInFigures,
  type Arrival,
  type ChangesLook,
  type ComparedChange,
} from '../../../core/review/index.ts';
import type { MeasureUnit } from '../../../core/records/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { comma, p, terms } from '../../words/index.ts';
import { arrivalLine, foundLine, measureLine } from '../../words/say-arrival.ts';
import { changeTitle } from '../../words/say-change.ts';
import { placeName } from '../../words/say-place.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import { ArrivalBar } from './arrival-bar.tsx';

type Props = TabProps & { readonly look: ChangesLook };

/** Of more lines only the first stand here; How sure? has all. */
const MOST_LINES = 5;
/** Of more pairs only their number is said. */
const MOST_PAIRS = 6;

const size = (value: number, unit: MeasureUnit): string =>
  p().changes.measured(
    signed(value, (by) => formatNumber(by, unit === 'mm' ? 2 : 1)),
    terms().units[unit],
  );

export const Arrived = (props: Props) => {
  const { look, review } = props;
  const words = p().changes;
  const speaker = speakerOf(props);
  const links = linksOf(review.project.id);
  const { changes } = look.comparison;
  const inFigures = changes.flatMap(({ arrival }) => arrival ?? []);
  const [only] = inFigures;
  const { found, same } = look.differences;
  return (
    <section aria-label={words.arrive}>
      <h2>{words.arrive}</h2>
      <p>
        <b>
          {only && inFigures.length + look.arrivals.length === 1
            ? arrivalLine(only, speaker)
            : words.arrived[arrivedAnswer(askedInFigures(look))]}
        </b>
        {changes.length > 0 && inFigures.length + look.arrivals.length === 0 && (
          <>
            {' '}
            <a class="no-print" href={links.round(look.comparison.later)}>
              {words.sayInFigures}
            </a>
          </>
        )}
      </p>
      {changes.length === 0 && <p class="soft">{words.noChanges}</p>}
      <ul class="plain-list">
        {changes.slice(0, MOST_LINES).map((change, at) => (
          <ChangeLine
            {...props}
            key={`${change.round} ${at}`}
            change={change}
            saysLine={inFigures.length + look.arrivals.length > 1}
          />
        ))}
        {look.arrivals.slice(0, MOST_LINES).map((one) => (
          <Drawn {...props} key={`${one.measure} ${one.site} ${one.unit}`} one={one} />
        ))}
      </ul>
      {found.length > 0 && (
        <>
          <p class="soft small">{speaker.desk.arrival.found}</p>
          <ul class="plain-list">
            {found.slice(0, MOST_LINES).map((one) => {
              const line = foundLine(one, speaker);
              return (
                <li key={line} class="soft">
                  {line}
                </li>
              );
            })}
          </ul>
        </>
      )}
      {same > 0 && <p class="soft">{words.sameMeasures(same)}</p>}
    </section>
  );
};

const ChangeLine = (
  props: Props & { readonly change: ComparedChange; readonly saysLine: boolean },
) => {
  const { look, review, records, change, saysLine } = props;
  const words = p().changes;
  const speaker = speakerOf(props);
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  const { arrival } = change;
  const settle =
    arrival &&
    measureLine(arrival, speaker, (ids) =>
      ids.length > MOST_PAIRS
        ? p().sheet.pairs(ids.length)
        : p().sheet.pairNamed(ids.map((id) => names.code(id)).join(comma())),
    );
  const [place] = arrival?.places ?? [];
  return (
    <li>
      <a href={links.round(change.round)}>{changeTitle(change, speaker)}</a>
      {change.round !== look.comparison.later && (
        <span class="soft small">{` ${words.since(speaker.round(change.round))}`}</span>
      )}
      {arrival && saysLine && <div>{arrivalLine(arrival, speaker)}</div>}
      {place && <ArrivalBar place={place} words={speaker} />}
      {settle && <div class="soft small">{settle}</div>}
    </li>
  );
};

const Drawn = (props: TabProps & { readonly one: Arrival }) => {
  const { measure, site, unit, wanted, measured, word } = props.one;
  const words = p().changes;
  const speaker = speakerOf(props);
  const place = placeName({ measure, site }, speaker);
  return (
    <li class="soft">
      {measured && word !== 'not-measured'
        ? words.drawn(
            place,
            size(wanted, unit),
            size(measured.difference, unit),
            speaker.desk.arrival.words[word],
          )
        : words.drawnUnmeasured(place, size(wanted, unit))}
    </li>
  );
};
