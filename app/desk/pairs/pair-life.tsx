/**
 * The life of a pair on one axis of kilometres: a lane for the hands, for comfort, for each complaint, for readings
 * on the bench, and for damage. Lanes are boxes with marks placed in percent, so that letters and marks keep their size.
 */
import { fromMetres, toMetres } from '../../../core/units/index.ts';
import { distanceFigure, formatDate, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { p, saidOf, terms } from '../../words/index.ts';
import { namesIn } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Picture, type PictureTable } from '../frame/picture.tsx';
import { sayOf } from '../frame/say.ts';
import { Bench } from './life-bench.tsx';
import { axisOf, Behind, Lane, line, type Axis, type LaneProps } from './life-lane.tsx';

/** More lanes of complaints than this push the rest off the screen. */
const MOST_FELT = 3;

const Hands = ({ look, axis, ...tab }: LaneProps & { readonly axis: Axis }) => {
  const words = p().pairs.page;
  const names = namesIn(tab.review, tab.records);
  const links = linksOf(tab.review.project.id);
  return (
    <Lane kind="hands" title={words.hands}>
      {look.hands.map((hand) => (
        <a
          key={hand.handOut}
          class="life-hand"
          href={links.tester(hand.tester)}
          tabIndex={-1}
          style={{
            insetInlineStart: axis.at(hand.fromM),
            inlineSize: `max(3.2em, ${axis.at(hand.untilM - hand.fromM)})`,
          }}
          title={words.handRuns(
            formatDate(hand.fromMs),
            hand.untilMs === null ? null : formatDate(hand.untilMs),
            hand.runs,
          )}
        >
          {names.tester(hand.tester)}
        </a>
      ))}
    </Lane>
  );
};

const Comfort = ({ look, axis, ...tab }: LaneProps & { readonly axis: Axis }) => {
  const links = linksOf(tab.review.project.id);
  const x = (m: number) => (100 * m) / axis.endM;
  return (
    <Lane kind="comfort" title={p().pairs.page.comfort} note={p().pairs.page.comfortNote}>
      <Behind>
        <path class="life-usual" d={line(look.usual.map(({ m, score }) => [x(m), 100 - score]))} />
      </Behind>
      {look.runs.map(
        ({ run, pairM, comfort, isFirst, atMs }) =>
          comfort !== null && (
            <a
              key={run}
              class={isFirst ? 'life-dot life-first' : 'life-dot'}
              href={links.run(run)}
              tabIndex={-1}
              style={{ insetInlineStart: axis.at(pairM), insetBlockStart: `${100 - comfort}%` }}
              title={saidOf(formatDate(atMs), formatNumber(comfort, 0))}
            >
              <span class="hidden-words">{formatDate(atMs)}</span>
            </a>
          ),
      )}
    </Lane>
  );
};

const Felt = ({ look, axis, ...tab }: LaneProps & { readonly axis: Axis }) => {
  const words = p().pairs.page;
  const links = linksOf(tab.review.project.id);
  const runs = new Map(look.runs.map((one) => [one.run, one]));
  return (
    <>
      {look.felt.slice(0, MOST_FELT).map(({ zone, kind, byFoot, marks }) => (
        <Lane
          key={`${zone}${kind}`}
          kind="felt"
          title={
            <a href={links.zone(byFoot.left >= byFoot.right ? 'left' : 'right', zone)}>
              {p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name)}
            </a>
          }
          note={words.inRuns(marks.length, look.asked)}
        >
          {marks.map(({ run, severity }) => {
            const one = runs.get(run);
            return (
              one && (
                <a
                  key={run}
                  class="life-felt"
                  href={links.run(run)}
                  tabIndex={-1}
                  style={{
                    insetInlineStart: axis.at(one.pairM),
                    '--size': `${7 + 0.7 * (severity ?? 3)}px`,
                  }}
                  title={formatDate(one.atMs)}
                >
                  <span class="hidden-words">{formatDate(one.atMs)}</span>
                </a>
              )
            );
          })}
        </Lane>
      ))}
    </>
  );
};

const Events = ({ look, axis, ...tab }: LaneProps & { readonly axis: Axis }) => {
  const links = linksOf(tab.review.project.id);
  if (look.damages.length + look.stops.length === 0) return null;
  return (
    <Lane kind="events" title={p().pairs.page.events}>
      {look.stops.map(({ stop, fromM, untilM, reason }) => (
        <span
          key={stop}
          class="life-stop"
          style={{
            insetInlineStart: axis.at(fromM),
            inlineSize: `max(6px, ${axis.at(untilM - fromM)})`,
          }}
          title={reason}
        />
      ))}
      {look.damages.map(({ damage, m, what }) => (
        <a
          key={damage}
          class="life-damage"
          href={links.damage(damage)}
          tabIndex={-1}
          style={{ insetInlineStart: axis.at(m) }}
          title={terms().damages[what]}
        >
          <span class="hidden-words">{terms().damages[what]}</span>
        </a>
      ))}
    </Lane>
  );
};

/** Round distances along the axis, four to seven of them. */
const ticksOf = (endM: number): readonly number[] => {
  const unit = settings.value.distance;
  const end = fromMetres(toMetres(endM / 1000, 'km'), unit);
  const step =
    [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000].find((one) => end / one <= 6) ?? 2000;
  return Array.from({ length: Math.floor(end / step) + 1 }, (_, at) => at * step);
};

const tableOf = ({ look, ...tab }: LaneProps): PictureTable => {
  const words = p().pairs.page.runTable;
  const names = namesIn(tab.review, tab.records);
  const links = linksOf(tab.review.project.id);
  return {
    head: [words.run, words.tester, words.at, words.length, words.comfort, words.felt, words.pain],
    rows: look.runs.toReversed().map((one) => [
      <a key={one.run} href={links.run(one.run)}>
        {formatDate(one.atMs)}
      </a>,
      <a key={one.run} href={links.tester(one.tester)}>
        {names.tester(one.tester)}
      </a>,
      distanceFigure(one.pairM),
      distanceFigure(one.distanceM),
      one.comfort === null ? '–' : formatNumber(one.comfort, 0),
      one.complaints ?? '–',
      one.pain ?? '–',
    ]),
  };
};

export const PairLife = (props: LaneProps) => {
  const { look } = props;
  const words = p().pairs.page;
  const axis = axisOf(look);
  const unit = settings.value.distance;
  const hidden = look.felt.length - MOST_FELT;
  const ticks = ticksOf(axis.endM);
  return (
    <Picture
      says={words.lifeSays(look.code, sayOf(props).distance(look.totalM), look.runs.length)}
      table={() => tableOf(props)}
    >
      <div class="life">
        <Hands {...props} axis={axis} />
        <Comfort {...props} axis={axis} />
        <Felt {...props} axis={axis} />
        {hidden > 0 && <p class="soft small lane-more">{words.moreFelt(hidden)}</p>}
        <Bench {...props} axis={axis} />
        <Events {...props} axis={axis} />
        <div class="lane lane-axis" aria-hidden="true">
          <span class="lane-name soft small">{words.axis(unit)}</span>
          <div class="lane-field">
            {ticks.map((tick) => (
              <span
                key={tick}
                class="life-tick"
                style={{ insetInlineStart: axis.at(toMetres(tick, unit)) }}
              >
                {formatNumber(tick, 0)}
              </span>
            ))}
          </div>
        </div>
      </div>
    </Picture>
  );
};
