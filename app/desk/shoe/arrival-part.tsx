/** Arrival: every dimension of the samples against the blueprint, round by round, with the tolerance as a band. */
import { useState } from 'preact/hooks';
import { arrivalHeadline, type ArrivalHeadline } from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { isOut } from '../../../core/rounds/index.ts';
import { arrivalOf, type ArrivalDimension } from '../../../core/review/index.ts';
import { apart } from '../../parts/charts/apart.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import { signed, withTolerance } from '../../words/figures.ts';
import { clauses, listed, p, t, terms } from '../../words/index.ts';
import { placeName, siteName } from '../../words/say-place.ts';
import { Deviations } from '../bench/deviations.tsx';
import { namesIn, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { Picture } from '../frame/picture.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Mark, type Tone } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { ShoeParts } from './shoe-parts.tsx';

/** So many dimensions at first. */
const FIRST = 12;
/** Dots nearer than so many percent of the line cannot be told apart. */
const DOT_APART = 0.5;
/** So many pairs that are out are named beside a line; the table has the others. */
const MOST_NAMED = 12;

type Round = ArrivalDimension['rounds'][number];

const write = (value: number): string => signed(value, (size) => formatNumber(size, 2));

const Line = (
  props: TabProps & { readonly round: Round; readonly dimension: ArrivalDimension },
) => {
  const { review, records, round, dimension } = props;
  const words = p().shoe.arrival;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const [lo, hi] = dimension.range;
  const at = (value: number) => (100 * (value - lo)) / (hi - lo);
  const percent = (value: number) => `${at(value).toFixed(2)}%`;
  const unit = terms().units[dimension.unit];
  return (
    <svg class="arrival-line" aria-hidden="true">
      <rect
        class="arrival-band"
        x={percent(round.lower)}
        width={`${(at(round.upper) - at(round.lower)).toFixed(2)}%`}
        y="1"
        height="18"
      />
      <line class="strip-grid" x1="0" x2="100%" y1="10" y2="10" />
      <line class="arrival-drawn" x1={percent(0)} x2={percent(0)} y1="1" y2="19" />
      {apart(
        round.points,
        ({ deviation, word }) => [at(deviation), isOut(word) ? 1 : 0],
        DOT_APART,
      ).map(({ pair, foot, deviation, word }) => (
        <a key={`${pair}${foot}`} href={links.pair(pair)} tabindex={-1}>
          <circle
            class={isOut(word) ? 'arrival-out' : 'arrival-dot'}
            cx={percent(deviation)}
            cy="10"
            r={isOut(word) ? 5 : 3.5}
          >
            <title>
              {words.point(names.code(pair), t().foot[foot], `${write(deviation)} ${unit}`)}
            </title>
          </circle>
        </a>
      ))}
    </svg>
  );
};

/** A measured length is named by its place alone, anything else by what was measured as well. */
const dimensionName = (one: Pick<ArrivalDimension, 'measure' | 'site'>, props: TabProps): string =>
  one.measure === 'dimension'
    ? siteName(one.site, speakerOf(props))
    : placeName(one, speakerOf(props));

/** What the stamp beside the headline says; null where nothing is out or was measured. */
const stampOf = (
  headline: ArrivalHeadline,
): { readonly tone: Tone; readonly said: string } | null => {
  switch (headline.case) {
    case 'one-out':
    case 'out':
      return { tone: 'fails', said: p().frame.outOfTolerance };
    case 'undecided':
      return { tone: 'open', said: p().shoe.arrival.undecidedMark };
    case 'all-in':
    case 'not-measured':
      return null;
  }
};

/** The worst reading of each pair that is out. */
const worstOut = ({ points, out }: Round) =>
  out.flatMap((pair) => {
    const own = points.filter((one) => one.pair === pair && isOut(one.word));
    const worst = own.reduce<(typeof own)[number] | null>(
      (most, one) => (most && Math.abs(most.deviation) >= Math.abs(one.deviation) ? most : one),
      null,
    );
    return worst ? [worst] : [];
  });

const Says = (
  props: TabProps & { readonly round: Round; readonly dimension: ArrivalDimension },
) => {
  const { review, records, round, dimension } = props;
  const words = p().shoe.arrival;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const out = worstOut(round);
  const undecided = round.points.filter(({ word }) => word === 'undecided').length;
  if (out.length > 0)
    return (
      <>
        {out.slice(0, MOST_NAMED).map(({ pair, deviation }) => (
          <span key={pair} class="arrival-named">
            <a href={links.pair(pair)}>{names.code(pair)}</a> {write(deviation)}{' '}
            {terms().units[dimension.unit]}
          </span>
        ))}
        {out.length > MOST_NAMED && p().sheet.more(out.length - MOST_NAMED)}
      </>
    );
  return <span class="soft">{undecided > 0 ? words.undecided(undecided) : words.allIn}</span>;
};

const Dimension = (props: TabProps & { readonly dimension: ArrivalDimension }) => {
  const { review, records, dimension } = props;
  const words = p().shoe.arrival;
  const names = namesIn(review, records);
  const unit = terms().units[dimension.unit];
  const say = sayOf(props);
  const drawn = [...new Set(dimension.rounds.map((round) => withTolerance(round, formatNumber)))];
  return (
    <li class="arrival">
      <div class="arrival-what">
        <b>{say.upper(dimensionName(dimension, props))}</b>
        <span class="soft small">{words.nominal(`${listed(drawn)} ${unit}`)}</span>
      </div>
      <ul class="plain-list arrival-rounds">
        {dimension.rounds.map((round) => (
          <li key={round.round}>
            <span class="small soft">{names.round(round.round)}</span>
            <Line {...props} round={round} />
            <span class="small">
              <Says {...props} round={round} />
            </span>
          </li>
        ))}
      </ul>
    </li>
  );
};

const Key = () => {
  const words = p().shoe.arrival;
  return (
    <p class="arrival-key small soft" aria-hidden="true">
      <span>
        <svg class="key-mark" viewBox="0 0 16 16">
          <rect class="arrival-band" x="1" y="3" width="14" height="10" />
        </svg>{' '}
        {words.band}
      </span>
      <span>
        <svg class="key-mark" viewBox="0 0 16 16">
          <circle class="arrival-dot" cx="8" cy="8" r="3.5" />
        </svg>{' '}
        {words.dot}
      </span>
      <span>
        <svg class="key-mark" viewBox="0 0 16 16">
          <circle class="arrival-out" cx="8" cy="8" r="5" />
        </svg>{' '}
        {words.outDot}
      </span>
      <span>{words.gap}</span>
    </p>
  );
};

/** Every reading in figures: pair, foot, deviation, with the out ones marked in words. */
const tableOf = (props: TabProps, dimensions: readonly ArrivalDimension[]) => {
  const { review, records } = props;
  const words = p().shoe.arrival;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const cell = (round: Round | undefined) =>
    round?.points.map(({ pair, foot, deviation, word }) => (
      <div key={`${pair}${foot}`}>
        <a href={links.pair(pair)}>{names.code(pair)}</a> {t().foot[foot]} {write(deviation)}{' '}
        {isOut(word) ? words.outDot : ''}
      </div>
    )) ?? words.notMeasured;
  return {
    head: [words.dimension, ...review.rounds.map(({ name }) => name)],
    rows: dimensions.map((one) => [
      clauses(dimensionName(one, props), terms().units[one.unit]),
      ...review.rounds.map(({ id }) => cell(one.rounds.find(({ round }) => round === id))),
    ]),
  };
};

export const ArrivalPart = (props: TabProps) => {
  const { review } = props;
  const words = p().shoe.arrival;
  const { id } = review.project;
  const [all, setAll] = useState(false);
  const order = review.rounds.map((round): RecordId => round.id);
  const dimensions = arrivalOf(review.deviations, order);
  const headline = arrivalHeadline(review.pairs, dimensions);
  const stamp = stampOf(headline);
  const measured = review.pairs.filter(({ outOfTolerance }) => outOfTolerance.judged > 0).length;
  const shown = all ? dimensions : dimensions.slice(0, FIRST);
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, sayOf(props), (one) => dimensionName(one, props))}
        sub={words.sub(measured, review.pairs.length, dimensions.length)}
        stamp={stamp && <Mark tone={stamp.tone}>{stamp.said}</Mark>}
      />
      <ShoeParts project={id} at="arrival" />
      {dimensions.length > 0 && (
        <Picture says={words.pictureSays} table={() => tableOf(props, shown)}>
          <Key />
          <ul class="arrivals plain-list">
            {shown.map((one) => (
              <Dimension
                key={`${one.measure} ${one.site} ${one.unit}`}
                {...props}
                dimension={one}
              />
            ))}
          </ul>
          {!all && dimensions.length > FIRST && (
            <Button kind="quiet" onClick={() => setAll(true)}>
              {words.all(dimensions.length)}
            </Button>
          )}
        </Picture>
      )}
      <HowSure>
        <Deviations {...props} />
      </HowSure>
    </>
  );
};
