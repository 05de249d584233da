/**
 * The life of a pair on one axis of kilometres: a lane for the hands, for comfort, for each complaint, for readings
 * on the bench, and for damage. Lanes are boxes with marks placed in percent, so that letters and marks keep their size.
 */
import type { ComponentChildren } from 'preact';
import type { PairBench, PairLook } from '../../../core/review/index.ts';
import { fromMetres, toMetres } from '../../../core/units/index.ts';
import { distanceFigure, formatDate, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';
import { placeName } from '../../words/say-place.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Picture, type PictureTable } from '../frame/picture.tsx';
import { roundDistance, sayOf } from '../frame/say.ts';
import { speakerOf } from '../speaker.ts';

/** More lanes of complaints than this push the rest off the screen. */
const MOST_FELT = 3;

type Props = TabProps & { readonly look: PairLook };

interface Axis {
  readonly endM: number;
  /** Percent of the axis. */
  readonly at: (m: number) => string;
}

const axisOf = ({ briefM, totalM }: PairLook): Axis => {
  const endM = Math.max(briefM, totalM, 1);
  return { endM, at: (m) => `${Math.min(100, Math.max(0, (100 * m) / endM))}%` };
};

const Lane = (props: {
  readonly title: ComponentChildren;
  readonly note?: string;
  readonly kind: string;
  readonly children: ComponentChildren;
}) => (
  <div class={`lane lane-${props.kind}`}>
    <div class="lane-name">
      <b>{props.title}</b>
      {props.note !== undefined && <span class="soft small">{props.note}</span>}
    </div>
    <div class="lane-field">{props.children}</div>
  </div>
);

const Hands = ({ look, axis, ...tab }: Props & { readonly axis: Axis }) => {
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

const line = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(2)},${y.toFixed(2)}`).join('');

/** A drawing behind the marks that is stretched to its lane; strokes keep their width. */
const Behind = ({ children }: { readonly children: ComponentChildren }) => (
  <svg class="lane-behind" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
    {children}
  </svg>
);

const Comfort = ({ look, axis, ...tab }: Props & { readonly axis: Axis }) => {
  const links = linksOf(tab.review.project.id);
  const x = (m: number) => (100 * m) / axis.endM;
  return (
    <Lane kind="comfort" title={p().pairs.page.comfort} note={p().pairs.page.comfortNote}>
      <Behind>
        <path class="life-usual" d={line(look.usual.map(({ m, score }) => [x(m), 100 - score]))} />
      </Behind>
      {look.runs.map(
        ({ run, endM, comfort, isFirst, atMs }) =>
          comfort !== null && (
            <a
              key={run}
              class={isFirst ? 'life-dot life-first' : 'life-dot'}
              href={links.run(run)}
              tabIndex={-1}
              style={{ insetInlineStart: axis.at(endM), insetBlockStart: `${100 - comfort}%` }}
              title={`${formatDate(atMs)}: ${formatNumber(comfort, 0)}`}
            >
              <span class="hidden-words">{formatDate(atMs)}</span>
            </a>
          ),
      )}
    </Lane>
  );
};

const Felt = ({ look, axis, ...tab }: Props & { readonly axis: Axis }) => {
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
                    insetInlineStart: axis.at(one.endM),
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

/** The lowest and the highest that is drawn of readings, with some room. */
const rangeOf = ({ marks, others, curve, limit }: PairBench): readonly [number, number] => {
  const values = [
    ...marks.map(({ value }) => value),
    ...others.map(({ value }) => value),
    ...curve.flatMap(({ lower, upper }) => [lower, upper]),
    ...(limit ? [limit.value] : []),
  ];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = 0.06 * (high - low || Math.abs(high) || 1);
  return [low - room, high + room];
};

const Bench = ({ look, axis, ...tab }: Props & { readonly axis: Axis }) => {
  const words = p().pairs.page;
  const links = linksOf(tab.review.project.id);
  const speaker = speakerOf(tab);
  const x = (m: number) => (100 * m) / axis.endM;
  return (
    <>
      {look.bench.map((bench) => {
        const [low, high] = rangeOf(bench);
        const y = (value: number) => (100 * (high - value)) / (high - low);
        const [measure] = bench.kind.split(' ') as [keyof ReturnType<typeof terms>['measures']];
        const band = [
          ...bench.curve.map(({ m, upper }) => [x(m), y(upper)] as const),
          ...bench.curve.toReversed().map(({ m, lower }) => [x(m), y(lower)] as const),
        ];
        return (
          <Lane
            key={`${bench.kind}${bench.site}`}
            kind="bench"
            title={
              <a href={links.place('wear')}>{placeName({ measure, site: bench.site }, speaker)}</a>
            }
            note={words.benchNote(bench.marks.length)}
          >
            <Behind>
              {band.length > 0 && <path class="life-band" d={`${line(band)}Z`} />}
              <path
                class="life-curve"
                d={line(bench.curve.map(({ m, median }) => [x(m), y(median)]))}
              />
              {bench.limit && <path class="life-limit" d={`M0,${y(bench.limit.value)}H100`} />}
            </Behind>
            {bench.limit && (
              <span class="life-limit-name" style={{ insetBlockStart: `${y(bench.limit.value)}%` }}>
                {words.limit(formatNumber(bench.limit.value, 1))}
              </span>
            )}
            {bench.others.map(({ check, m, value }) => (
              <span
                key={`${check}${m}`}
                class="life-other"
                style={{ insetInlineStart: axis.at(m), insetBlockStart: `${y(value)}%` }}
              />
            ))}
            {bench.marks.map(({ check, m, value }) => (
              <a
                key={`${check}${m}`}
                class="life-check"
                href={links.check(check)}
                tabIndex={-1}
                style={{ insetInlineStart: axis.at(m), insetBlockStart: `${y(value)}%` }}
                title={`${roundDistance(m)}: ${formatNumber(value, 2)}`}
              >
                <span class="hidden-words">{formatNumber(value, 2)}</span>
              </a>
            ))}
          </Lane>
        );
      })}
    </>
  );
};

const Events = ({ look, axis, ...tab }: Props & { readonly axis: Axis }) => {
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

const tableOf = ({ look, ...tab }: Props): PictureTable => {
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
      distanceFigure(one.endM),
      distanceFigure(one.distanceM),
      one.comfort === null ? '–' : formatNumber(one.comfort, 0),
      one.complaints ?? '–',
      one.pain ?? '–',
    ]),
  };
};

export const PairLife = (props: Props) => {
  const { look } = props;
  const words = p().pairs.page;
  const axis = axisOf(look);
  const unit = settings.value.distance;
  const hidden = look.felt.length - MOST_FELT;
  const ticks = ticksOf(axis.endM);
  return (
    <Picture
      says={words.lifeSays(look.code, sayOf(props).distance(look.totalM), look.runs.length)}
      table={tableOf(props)}
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
