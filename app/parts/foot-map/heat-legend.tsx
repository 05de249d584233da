/** What the colours and the hatching of a heat map mean, in one drawing that can leave the page with it. */
import { useId } from 'preact/hooks';
import { listed, saidOf } from '../../words/index.ts';
import { hatchId, Hatching } from './hatching.tsx';

const WIDTH = 420;
const COLUMNS = 3;
const ROW = 60;
const BOX = 26;

const placed = (at: number): string =>
  `translate(${(at % COLUMNS) * (WIDTH / COLUMNS) + 2} ${26 + Math.floor(at / COLUMNS) * ROW})`;

const levels = [0, 1, 2, 3, 4] as const;

export const HeatLegend = (props: {
  readonly title: string;
  /** Of the five levels, from none to most. */
  readonly levels: readonly string[];
  readonly unasked: string;
}) => {
  const id = useId();
  return (
    <div class="foot-map heat-legend" data-mode="heat">
      <svg
        class="heat-legend-drawing"
        viewBox={`0 0 ${WIDTH} ${26 + 2 * ROW}`}
        role="img"
        aria-label={saidOf(props.title, listed([...props.levels, props.unasked]))}
      >
        <defs>
          <Hatching id={id} />
        </defs>
        <text class="heat-legend-text" x="2" y="16">
          {props.title}
        </text>
        {levels.map((level) => (
          <g key={level} class="foot-map-zone" data-level={level} transform={placed(level)}>
            <path class="foot-map-area" d={`M0 0H${BOX * 2}V${BOX}H0Z`} />
            {level > 0 && (
              <path
                class="foot-map-hatch"
                d={`M0 0H${BOX * 2}V${BOX}H0Z`}
                fill={`url(#${hatchId(id, level as 1 | 2 | 3 | 4)})`}
              />
            )}
            <text class="heat-legend-text" x="0" y={BOX + 20}>
              {props.levels[level]}
            </text>
          </g>
        ))}
        <g class="foot-map-zone" data-level="unasked" transform={placed(5)}>
          <path class="foot-map-area" d={`M0 0H${BOX * 2}V${BOX}H0Z`} />
          <g class="foot-map-above">
            <path class="foot-map-unasked-gap" d={`M0 0H${BOX * 2}V${BOX}H0Z`} />
            <path class="foot-map-unasked" d={`M0 0H${BOX * 2}V${BOX}H0Z`} />
          </g>
          <text class="heat-legend-text" x="0" y={BOX + 20}>
            {props.unasked}
          </text>
        </g>
      </svg>
    </div>
  );
};
