/** How did readings of one kind at one site change: every pair, the estimate with its interval, the limits? */
import type { Limit } from '../../../core/records/index.ts';
import type { WearLook, WearPoint } from '../../../core/review/index.ts';
import type { Metres } from '../../../core/units/index.ts';
import { DistanceChart } from './distance-chart.tsx';

export interface WearChartProps {
  readonly look: WearLook;
  /** A distance of the dose's reference runner as the axis counts it. */
  readonly onAxis: (x: Metres) => number;
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly words: {
    readonly curve: string;
    readonly beyond: string;
    readonly band: string;
    readonly pair: (id: string) => string;
    readonly point: (point: WearPoint) => string;
    readonly limit: (limit: Limit) => string;
  };
  readonly number: (value: number, most: number) => string;
}

/** The readings as marks joined by pair; the estimate dashed where it goes beyond the checks. */
export const WearChart = (props: WearChartProps) => {
  const { look, onAxis, words, number } = props;
  const { points, curve, greatest } = look;
  const named = new Map<string, WearPoint[]>();
  for (const point of points) named.set(point.pair, [...(named.get(point.pair) ?? []), point]);
  const line = (part: readonly NonNullable<typeof curve>[number][]) =>
    part.map((one) => ({ x: onAxis(one.x), y: one.median, label: '' }));
  const within = curve?.filter((one) => one.x <= greatest) ?? [];
  const last = within.at(-1);
  const beyond = curve?.filter((one) => one.x > greatest) ?? [];
  const start = curve?.[0]?.median;
  return (
    <DistanceChart
      title={props.title}
      xTitle={props.xTitle}
      yTitle={props.yTitle}
      series={[
        ...[...named].map(([pair, own]) => ({
          name: words.pair(pair),
          points: own
            .map((point) => ({ x: onAxis(point.x), y: point.value, label: words.point(point) }))
            .sort((a, b) => a.x - b.x),
        })),
        ...(curve && within.length > 1
          ? [{ name: words.curve, curve: 'fitted' as const, points: line(within) }]
          : []),
        ...(beyond.length > 0
          ? [
              {
                name: words.beyond,
                curve: 'extrapolated' as const,
                points: line(last ? [last, ...beyond] : beyond),
              },
            ]
          : []),
      ]}
      bands={
        curve
          ? [
              {
                name: words.band,
                points: curve.map((one) => ({ x: onAxis(one.x), lo: one.lower, hi: one.upper })),
              },
            ]
          : []
      }
      limits={look.limits.flatMap(({ limit }) => {
        const y =
          limit.basis === 'reading'
            ? limit.value
            : start === undefined
              ? null
              : limit.value * start;
        return y === null ? [] : [{ y, label: words.limit(limit) }];
      })}
      formatX={(value) => number(value, 1)}
      formatY={(value) => number(value, 2)}
    />
  );
};
