/**
 * How did a measured quantity change with distance? Points joined by lines, one series a pair, told
 * apart by mark and dash as well as by colour; an interval as a band; a limit as a ruled line.
 * One tab stop: the arrow keys walk the points, and each says its own values.
 */
import { useId, useRef, useState } from 'preact/hooks';
import { linear, niceTicks } from './ticks.ts';
import { useWidth } from './use-width.ts';

export interface ChartPoint {
  readonly x: number;
  readonly y: number;
  /** What a reader of this point should hear or see, units included. */
  readonly label: string;
}

export interface ChartSeries {
  readonly name: string;
  readonly points: readonly ChartPoint[];
  /** Drawn dashed and without marks: a fitted curve or an extrapolation. */
  readonly curve?: 'fitted' | 'extrapolated';
  /** Marks alone, without a line between them. */
  readonly unjoined?: boolean;
}

export interface ChartBand {
  readonly name: string;
  readonly points: readonly { readonly x: number; readonly lo: number; readonly hi: number }[];
}

export interface DistanceChartProps {
  /** What the chart shows, said before it to a screen reader. */
  readonly title: string;
  /** Axis titles with their units, e.g. `Distance on the pair, km`. */
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly ChartSeries[];
  readonly bands?: readonly ChartBand[];
  /** Values that the vertical axis shows whatever the data, e.g. 0 and 100 of a share. */
  readonly yCovers?: readonly number[];
  /** Horizontal ruled lines, e.g. a limit of the brief. */
  readonly limits?: readonly { readonly y: number; readonly label: string }[];
  readonly formatX: (value: number) => string;
  readonly formatY: (value: number) => string;
}

const HEIGHT = 280;
const MARGIN = { top: 12, right: 14, bottom: 44, left: 58 };
const MARKS = 6;

/** A mark of about 9 px around the origin; six shapes that stay apart in print. */
const markPath = (index: number): string =>
  [
    'M-4,0a4,4 0 1 0 8,0a4,4 0 1 0 -8,0Z',
    'M-4,-4H4V4H-4Z',
    'M0,-5L5,4H-5Z',
    'M0,-5.5L5.5,0L0,5.5L-5.5,0Z',
    'M-5,-1.5H-1.5V-5H1.5V-1.5H5V1.5H1.5V5H-1.5V1.5H-5Z',
    'M0,5L5,-4H-5Z',
  ][index % MARKS] as string;

export const DistanceChart = (props: DistanceChartProps) => {
  const { title, series, bands = [], limits = [], yCovers = [], formatX, formatY } = props;
  const [box, width] = useWidth(640);
  const titleId = useId();
  const [current, setCurrent] = useState(0);
  const points = useRef<(SVGGElement | null)[]>([]);

  const xs = [0, ...series.flatMap((s) => s.points.map((p) => p.x))];
  const ys = [
    ...series.flatMap((s) => s.points.map((p) => p.y)),
    ...bands.flatMap((b) => b.points.flatMap((p) => [p.lo, p.hi])),
    ...limits.map((l) => l.y),
    ...yCovers,
  ];
  const xTicks = niceTicks(Math.min(...xs), Math.max(...xs), width < 480 ? 4 : 7);
  const yTicks = niceTicks(Math.min(...ys), Math.max(...ys), 5);
  const x = linear(
    [xTicks[0] as number, xTicks.at(-1) as number],
    [MARGIN.left, width - MARGIN.right],
  );
  const y = linear(
    [yTicks[0] as number, yTicks.at(-1) as number],
    [HEIGHT - MARGIN.bottom, MARGIN.top],
  );
  const line = (at: readonly { x: number; y: number }[]) =>
    at.map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.x).toFixed(1)},${y(p.y).toFixed(1)}`).join('');

  const measured = series.filter((s) => !s.curve);
  const flat = measured.flatMap((s, at) => s.points.map((point) => ({ point, mark: at })));
  const walk = (event: KeyboardEvent) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    const target =
      event.key === 'Home' ? 0 : event.key === 'End' ? flat.length - 1 : current + (step ?? 0);
    if (target === current || target < 0 || target >= flat.length) return;
    event.preventDefault();
    setCurrent(target);
    points.current[target]?.focus();
  };

  return (
    // The listener sits here: Chromium makes a tab stop of every SVG element with one of its own.
    <figure
      class="chart"
      ref={box}
      onFocusIn={(event) => {
        const at = (event.target as Element).getAttribute('data-at');
        if (at !== null) setCurrent(Number(at));
      }}
      onKeyDown={walk}
    >
      <figcaption id={titleId} class="chart-title">
        {title}
      </figcaption>
      <svg
        width={width}
        height={HEIGHT}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        role="group"
        aria-labelledby={titleId}
        data-curves={series.some((s) => s.curve)}
      >
        <g class="chart-grid" aria-hidden="true">
          {yTicks.map((tick) => (
            <g key={tick}>
              <path d={`M${MARGIN.left},${y(tick)}H${width - MARGIN.right}`} />
              <text x={MARGIN.left - 8} y={y(tick)} dy="0.32em" text-anchor="end">
                {formatY(tick)}
              </text>
            </g>
          ))}
          {xTicks.map((tick) => (
            <text key={tick} x={x(tick)} y={HEIGHT - MARGIN.bottom + 18} text-anchor="middle">
              {formatX(tick)}
            </text>
          ))}
          <text
            class="chart-axis"
            x={(MARGIN.left + width - MARGIN.right) / 2}
            y={HEIGHT - 6}
            text-anchor="middle"
          >
            {props.xTitle}
          </text>
          <text
            class="chart-axis"
            transform={`translate(14,${(HEIGHT - MARGIN.bottom + MARGIN.top) / 2}) rotate(-90)`}
            text-anchor="middle"
          >
            {props.yTitle}
          </text>
        </g>
        {bands.map((band) => (
          <path
            key={band.name}
            class="chart-band"
            aria-hidden="true"
            d={`${line(band.points.map((p) => ({ x: p.x, y: p.hi })))}L${line(
              [...band.points].reverse().map((p) => ({ x: p.x, y: p.lo })),
            ).slice(1)}Z`}
          />
        ))}
        {series.map((s, at) =>
          s.unjoined ? null : (
            <path
              key={s.name}
              class={`chart-line ${s.curve ? `chart-${s.curve}` : `chart-series-${at % MARKS}`}`}
              aria-hidden="true"
              d={line(s.points)}
            />
          ),
        )}
        {/* After the lines, so that none of them runs through its words. */}
        {limits.map((limit) => (
          <g key={limit.label} class="chart-limit">
            <path d={`M${MARGIN.left},${y(limit.y)}H${width - MARGIN.right}`} />
            <text x={width - MARGIN.right} y={y(limit.y) - 5} text-anchor="end">
              {limit.label}
            </text>
          </g>
        ))}
        {flat.map(({ point, mark }, at) => (
          <g
            key={at}
            ref={(element: SVGGElement | null) => {
              points.current[at] = element;
            }}
            class={`chart-point chart-series-${mark % MARKS}${mark >= MARKS ? ' chart-hollow' : ''}`}
            transform={`translate(${x(point.x).toFixed(1)},${y(point.y).toFixed(1)})`}
            role="img"
            aria-label={point.label}
            tabindex={at === Math.min(current, flat.length - 1) ? 0 : -1}
            data-at={at}
          >
            <circle class="chart-target" r="12" />
            <path d={markPath(mark)} />
            <title>{point.label}</title>
          </g>
        ))}
      </svg>
      <ul class="chart-key" aria-hidden="true">
        {measured.map((s, at) => (
          <li key={s.name}>
            <svg width="28" height="14" viewBox="-14 -7 28 14">
              {!s.unjoined && (
                <path class={`chart-line chart-series-${at % MARKS}`} d="M-14,0H14" />
              )}
              <path
                class={`chart-point chart-series-${at % MARKS}${at >= MARKS ? ' chart-hollow' : ''}`}
                d={markPath(at)}
              />
            </svg>
            {s.name}
          </li>
        ))}
        {series
          .filter((s) => s.curve)
          .map((s) => (
            <li key={s.name}>
              <svg width="28" height="14" viewBox="-14 -7 28 14">
                <path class={`chart-line chart-${s.curve}`} d="M-14,0H14" />
              </svg>
              {s.name}
            </li>
          ))}
      </ul>
    </figure>
  );
};
