/**
 * Where does a share or a score lie, and between which bounds? One line: a dot, its interval as a bar, a dashed
 * mark at what is allowed, small dots for single testers. The words beside it give the figures.
 */
import './charts.css';

export interface IntervalLineProps {
  /** Ends of the line, in the unit of the values. */
  readonly range: readonly [number, number];
  /** Null: nothing is drawn but the line. */
  readonly value: number | null;
  readonly interval?: readonly [number, number] | null;
  /** What the brief allows. */
  readonly limit?: number | null;
  /** One dot each, such as the mean of each tester. */
  readonly singles?: readonly number[];
  /** `against`: beyond what is allowed, and proved so. */
  readonly tone?: 'plain' | 'against' | 'soft';
  /** A shaded span that is as it should be. */
  readonly right?: readonly [number, number];
  /** Which round, for its mark and colour, from 0. */
  readonly round?: number;
  /** What the line shows, in words. */
  readonly says: string;
  /** How long it is beside its height of 20, where there is room for more. */
  readonly width?: number;
}

const [WIDTH, HEIGHT, PAD] = [160, 20, 6];

/** A different mark for each round, so that colour is not all that tells them apart. */
export const RoundMark = (props: {
  readonly round: number;
  readonly x: number;
  readonly y: number;
  readonly size?: number;
}) => {
  const { round, x, y, size = 5 } = props;
  const shape = round % 3;
  const common = { class: `round-mark round-${round % 6}` };
  if (shape === 0) return <circle {...common} cx={x} cy={y} r={size} />;
  if (shape === 1)
    return <rect {...common} x={x - size} y={y - size} width={2 * size} height={2 * size} />;
  const d = size * 1.3;
  return <path {...common} d={`M${x},${y - d}L${x + d},${y}L${x},${y + d}L${x - d},${y}Z`} />;
};

export const IntervalLine = (props: IntervalLineProps) => {
  const { range, value, interval, limit, singles = [], tone = 'plain', right, round, says } = props;
  const width = props.width ?? WIDTH;
  const [lo, hi] = range;
  const x = (one: number) =>
    PAD + ((Math.min(hi, Math.max(lo, one)) - lo) / (hi - lo)) * (width - 2 * PAD);
  const middle = HEIGHT / 2;
  return (
    <svg
      class={`interval-line interval-${tone}`}
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={says}
    >
      {right && (
        <rect
          class="interval-right"
          x={x(right[0])}
          y="0"
          width={x(right[1]) - x(right[0])}
          height={HEIGHT}
        />
      )}
      <path class="interval-axis" d={`M${PAD},${middle}H${width - PAD}`} />
      {interval && (
        <path class="interval-bar" d={`M${x(interval[0])},${middle}H${x(interval[1])}`} />
      )}
      {limit !== undefined && limit !== null && (
        <path class="interval-limit" d={`M${x(limit)},1V${HEIGHT - 1}`} />
      )}
      {singles.map((one, at) => (
        <circle key={at} class="interval-single" cx={x(one)} cy={middle} r="2.2" />
      ))}
      {value !== null &&
        (round === undefined ? (
          <circle class="interval-dot" cx={x(value)} cy={middle} r="4.5" />
        ) : (
          <RoundMark round={round} x={x(value)} y={middle} size={4} />
        ))}
    </svg>
  );
};
