/**
 * Where did each of these go from one time to another? A line each, from the left axis to the right one;
 * a value at one time only is a mark without a line. The drawing is one picture for a screen reader, which
 * names its lines; the figures stand in a table beside it.
 */
import { halves, listed, saidOf } from '../../words/index.ts';
import './charts.css';

export interface SlopeLine {
  readonly name: string;
  /** Null: no value at that time. */
  readonly from: number | null;
  readonly to: number | null;
}

const [WIDTH, HEIGHT] = [316, 190];
const MARGIN = { top: 12, bottom: 28, left: 116, right: 84 };
const [LEFT, RIGHT] = [MARGIN.left, WIDTH - MARGIN.right];
const TICKS = [0, 25, 50, 75, 100];
/** Names closer than this would be written over each other. */
const LINE_HEIGHT = 13;

const yOf = (percent: number): number =>
  HEIGHT - MARGIN.bottom - (percent / 100) * (HEIGHT - MARGIN.bottom - MARGIN.top);

/** The names at each height, those that would touch in one line, in the order of the lines. */
const labels = (
  lines: readonly SlopeLine[],
  side: 'from' | 'to',
): readonly { readonly y: number; readonly text: string }[] => {
  const groups: { y: number; names: string[] }[] = [];
  const sorted = lines
    .flatMap((line) => (line[side] === null ? [] : [{ name: line.name, y: yOf(line[side]) }]))
    .sort((a, b) => b.y - a.y);
  for (const { name, y } of sorted) {
    const last = groups.at(-1);
    if (last && last.y - y < LINE_HEIGHT) last.names.push(name);
    else groups.push({ y, names: [name] });
  }
  return groups.map(({ y, names }) => ({
    y,
    text: names.length > 2 ? `${names[0]} … ×${names.length}` : listed(names),
  }));
};

/** @param props.lines values from 0 to 100 */
export const SlopeLines = (props: {
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly lines: readonly SlopeLine[];
  readonly format: (percent: number) => string;
}) => {
  const { title, lines, format } = props;
  const spoken = lines.map(
    ({ name, from, to }) =>
      `${name} ${[from, to].map((value) => (value === null ? '–' : format(value))).join(' → ')}`,
  );
  return (
    <figure class="chart slopes">
      <figcaption class="chart-title">{title}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={saidOf(title, halves(spoken))}>
        <g class="chart-grid">
          {TICKS.map((tick) => (
            <path key={tick} d={`M${LEFT},${yOf(tick)}H${RIGHT}`} />
          ))}
          {TICKS.map((tick) => (
            <text key={tick} x={40} y={yOf(tick)} dy="0.32em" text-anchor="end">
              {format(tick)}
            </text>
          ))}
        </g>
        {lines.map(({ name, from, to }) => (
          <g key={name} class="slope">
            {from !== null && to !== null && (
              <path d={`M${LEFT},${yOf(from)}L${RIGHT},${yOf(to)}`} />
            )}
            {from !== null && <circle cx={LEFT} cy={yOf(from)} r="3.5" />}
            {to !== null && <circle cx={RIGHT} cy={yOf(to)} r="3.5" />}
          </g>
        ))}
        {labels(lines, 'from').map(({ y, text }) => (
          <text key={`from ${text}`} x={LEFT - 8} y={y} dy="0.32em" text-anchor="end">
            {text}
          </text>
        ))}
        {labels(lines, 'to').map(({ y, text }) => (
          <text key={`to ${text}`} x={RIGHT + 8} y={y} dy="0.32em">
            {text}
          </text>
        ))}
        <text class="chart-axis" x={LEFT} y={HEIGHT - 6} text-anchor="middle">
          {props.from}
        </text>
        <text class="chart-axis" x={RIGHT} y={HEIGHT - 6} text-anchor="middle">
          {props.to}
        </text>
      </svg>
    </figure>
  );
};
