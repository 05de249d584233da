/** One limit drawn: the readings of every round on one scale, the curves, the limit, and where it is reached. */
import type { WearRound } from '../../../core/review/index.ts';
import { fromMetres, type Metres } from '../../../core/units/index.ts';
import { apart } from '../../parts/charts/apart.ts';
import { RoundMark } from '../../parts/charts/interval-line.tsx';
import { linear, niceTicks } from '../../parts/charts/ticks.ts';
import { useWidth } from '../../parts/charts/use-width.ts';
import { formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';

const HEIGHT = 216;
const MARGIN = { top: 14, right: 14, bottom: 44, left: 34 };
/** A strip under the axis for each round that reaches the limit. */
const STRIP = 7;
/** Half a mark: a round's marks nearer than this cannot be told apart or pressed. */
const MARK_APART = 5;

export interface PictureProps {
  readonly rounds: readonly WearRound[];
  /** Order of a round among all, from 0, for its mark. */
  readonly markOf: (one: WearRound) => number;
  readonly briefM: Metres;
  /** Such as "at least 1 mm"; null: no limit. */
  readonly limit: string | null;
  readonly href: (point: WearRound['points'][number]) => string;
  readonly point: (one: WearRound, point: WearRound['points'][number]) => string;
}

type Curve = NonNullable<WearRound['curve']>;

/** The round whose checks reach farthest: its interval is shaded, for several over each other tell nothing. */
export const farthestRound = (rounds: readonly WearRound[]): WearRound | undefined =>
  rounds
    .filter(({ curve, basis }) => curve !== null && basis === 'checks')
    .toSorted((a, b) => b.greatest - a.greatest)[0];

const reachedIn = ({ outlook }: WearRound) => {
  const distance = outlook?.distance;
  return distance && distance.lower !== 'beyond-checks' ? distance : null;
};

/** Whether a round tells anything of where the limit is reached. */
export const isReached = (one: WearRound): boolean => reachedIn(one) !== null;

/** Room under the lowest value, so that a limit does not lie on the axis. */
const UNDER = 0.06;

const scales = ({ rounds, briefM }: PictureProps, width: number) => {
  const km = (at: Metres) => fromMetres(at, settings.value.distance);
  const most = Math.max(km(briefM), ...rounds.map(({ greatest }) => km(greatest)));
  const values = rounds.flatMap(({ points, curve, limitAt }) => [
    ...points.map(({ value }) => value),
    ...(curve ?? []).map(({ median }) => median),
    ...(limitAt === null ? [] : [limitAt]),
  ]);
  const xTicks = niceTicks(0, most, 4).filter((tick) => tick <= most * 1.05);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const yTicks = niceTicks(low > 0 ? Math.max(0, low - UNDER * (high - low)) : low, high, 4);
  const [least = 0, greatest = 1] = [yTicks[0], yTicks.at(-1)];
  const xAt = linear([0, most * 1.04], [MARGIN.left, width - MARGIN.right]);
  return {
    xTicks,
    yTicks,
    xOf: xAt,
    x: (at: Metres) => Math.min(width - MARGIN.right, xAt(km(at))),
    y: linear([least, greatest], [HEIGHT - MARGIN.bottom, MARGIN.top]),
  };
};

const pathOf = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(1)},${y.toFixed(1)}`).join('');

const Curves = (props: {
  readonly one: WearRound & { readonly curve: Curve };
  readonly mark: number;
  readonly x: (at: Metres) => number;
  readonly y: (value: number) => number;
}) => {
  const { one, mark, x, y } = props;
  const at = (part: Curve) => pathOf(part.map((point) => [x(point.x), y(point.median)] as const));
  const within = one.curve.filter((point) => point.x <= one.greatest);
  const last = within.at(-1);
  const beyond = one.curve.filter((point) => point.x > one.greatest);
  return (
    <g class={`wear-curve wear-round-${mark % 6}`}>
      {within.length > 1 && <path d={at(within)} />}
      {beyond.length > 0 && <path class="wear-beyond" d={at(last ? [last, ...beyond] : beyond)} />}
    </g>
  );
};

/** Where the limit is reached: the middle as a mark, its interval as a bar under the axis. */
const Reached = (
  props: PictureProps & { readonly x: (at: Metres) => number; readonly end: number },
) => {
  const { rounds, markOf, x, end } = props;
  return (
    <>
      {rounds.filter(isReached).map((one, at) => {
        const distance = reachedIn(one);
        if (!distance || distance.lower === 'beyond-checks') return null;
        const y = HEIGHT - MARGIN.bottom + 3 + at * STRIP;
        const until = distance.upper === 'beyond-checks' ? end : x(distance.upper);
        return (
          <g key={one.round} class={`wear-reached wear-round-${markOf(one) % 6}`}>
            <path d={`M${x(distance.lower)},${y}H${until}`} />
            {distance.median !== 'beyond-checks' && (
              <RoundMark round={markOf(one)} x={x(distance.median)} y={y} size={4} />
            )}
          </g>
        );
      })}
    </>
  );
};

/** The limit as values: one of all rounds, or one of each where it is a share of its start. */
const limitsOf = ({ rounds, markOf }: PictureProps) => {
  const own = rounds.flatMap((one) =>
    one.limitAt === null ? [] : [{ value: one.limitAt, mark: markOf(one) }],
  );
  const [first] = own;
  return first && own.every(({ value }) => value === first.value)
    ? [{ ...first, mark: null }]
    : own;
};

export const WearPicture = (props: PictureProps) => {
  const { rounds, markOf, briefM, limit, href, point } = props;
  const [box, width] = useWidth(380);
  const { xTicks, yTicks, xOf, x, y } = scales(props, width);
  const shaded = farthestRound(rounds);
  const bottom = HEIGHT - MARGIN.bottom;
  const floor = (value: number) => Math.min(bottom, Math.max(MARGIN.top, y(value)));
  const limits = limitsOf(props);
  const brief = fromMetres(briefM, settings.value.distance);
  const strips = rounds.filter(isReached).length;
  const labels = bottom + 18 + Math.max(0, strips - 1) * STRIP;
  return (
    <div ref={box}>
      <svg
        class="wear-picture"
        viewBox={`0 0 ${width} ${HEIGHT}`}
        style={{ blockSize: `${HEIGHT}px` }}
        aria-hidden="true"
      >
        {xTicks.map((tick) => (
          <g key={tick}>
            <path class="wear-rule" d={`M${xOf(tick)},${MARGIN.top}V${bottom}`} />
            {Math.abs(xOf(tick) - x(briefM)) > 44 && (
              <text class="soft" x={xOf(tick)} y={labels} text-anchor="middle">
                {formatNumber(tick, 0)}
              </text>
            )}
          </g>
        ))}
        {yTicks.map((tick) => (
          <text key={tick} class="soft" x={MARGIN.left - 5} y={y(tick) + 4} text-anchor="end">
            {formatNumber(tick, 2)}
          </text>
        ))}
        {shaded?.curve && (
          <path
            class="wear-band"
            d={`${pathOf(shaded.curve.map((one) => [x(one.x), floor(one.upper)] as const))}${pathOf(
              shaded.curve.toReversed().map((one) => [x(one.x), floor(one.lower)] as const),
            ).replace('M', 'L')}Z`}
          />
        )}
        <path class="wear-brief" d={`M${x(briefM)},${MARGIN.top}V${bottom}`} />
        <text class="wear-brief-text" x={x(briefM)} y={labels} text-anchor="end">
          {`${formatNumber(brief, 0)} ${settings.value.distance}`}
        </text>
        {limits.map(({ value, mark }) => (
          <path
            key={value}
            class={mark === null ? 'wear-limit' : `wear-limit wear-round-${mark % 6}`}
            d={`M${MARGIN.left},${y(value)}H${width - MARGIN.right}`}
          />
        ))}
        {limit !== null && limits[0] && (
          <text
            class="wear-limit-text"
            x={MARGIN.left + 6}
            y={y(Math.max(...limits.map(({ value }) => value))) - 5}
          >
            {limit}
          </text>
        )}
        {rounds.map(
          (one) =>
            one.curve && (
              <Curves
                key={one.round}
                one={{ ...one, curve: one.curve }}
                mark={markOf(one)}
                x={x}
                y={y}
              />
            ),
        )}
        {rounds.flatMap((one) =>
          apart(one.points, (reading) => [x(reading.x), y(reading.value)], MARK_APART).map(
            (reading) => (
              <a key={`${reading.check}${reading.x}`} href={href(reading)} tabindex={-1}>
                <title>{point(one, reading)}</title>
                <circle class="wear-target" cx={x(reading.x)} cy={y(reading.value)} r="9" />
                <RoundMark round={markOf(one)} x={x(reading.x)} y={y(reading.value)} size={3.5} />
              </a>
            ),
          ),
        )}
        <Reached {...props} x={x} end={width - MARGIN.right} />
      </svg>
    </div>
  );
};
