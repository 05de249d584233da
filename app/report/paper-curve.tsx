/** A wear curve as paper has it: small, ink first, two to a row. */
import type { WearLook } from '../../core/review/index.ts';
import { fromMetres, metres, type Metres } from '../../core/units/index.ts';
import { linear, niceTicks } from '../parts/charts/ticks.ts';
import { setPercentOf } from '../words/figures.ts';
import { placeTitle, unitName, valueOf } from '../words/say-wear.ts';
import type { PartProps } from './document-props.ts';
import { widthOf } from './shoe-picture.tsx';
import { joined, Say } from './spoken.tsx';

const [WIDTH, HEIGHT] = [340, 130];
const MARGIN = { top: 8, right: 10, bottom: 24, left: 40 };

/** Marks of the upright axis. A limit never lies on its lower end, where its line could not be told from the axis. */
export const ticksAround = (
  values: readonly number[],
  limits: readonly number[],
): readonly number[] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const ticks = niceTicks(low, high, 4);
  const step = (ticks[1] as number) - (ticks[0] as number);
  return limits.some((one) => Math.abs(one - (ticks[0] as number)) < 0.1 * step)
    ? niceTicks(low - 0.2 * step, high, 4)
    : ticks;
};

/** Height of a label's letters above its base line, and its distance from its line, in the drawing's units. */
const [LETTERS, GAP] = [8, 4];
/** Right end of a label. */
const LABEL_END = WIDTH - MARGIN.right - 2;

/** Where a line of the grid ends: before a label that it would run through. */
export const gridEnd = (
  line: number,
  labels: readonly { readonly text: string; readonly base: number }[],
): number =>
  Math.min(
    WIDTH - MARGIN.right,
    ...labels.flatMap(({ text, base }) =>
      line > base - LETTERS - 2 && line < base + 3 ? [LABEL_END - widthOf(text) - 6] : [],
    ),
  );

/**
 * The base line of a limit's label: above its line or below it, whichever is farther from the lines of the grid and not
 * below the drawing; above where neither is.
 * @param at height of the limit's line; @param grid heights of the grid's lines
 */
export const labelAt = (at: number, grid: readonly number[]): number => {
  const room = (base: number) =>
    base > Math.max(...grid) - 1 || base - LETTERS < Math.min(...grid) + 1
      ? -1
      : Math.min(
          ...grid
            .filter((line) => Math.abs(line - at) > 0.5)
            .map((line) => Math.abs(line - (base - LETTERS / 2))),
        );
  const [above, below] = [at - GAP, at + GAP + LETTERS];
  return room(below) > room(above) ? below : above;
};

export const PaperCurve = ({
  report,
  languages,
  look,
}: PartProps & { readonly look: WearLook }) => {
  const [{ unit, speaker }] = languages;
  const { points, curve, greatest } = look;
  const briefM = report.project.brief.distanceM;
  const km = (x: Metres) => fromMetres(x, unit);
  const start = curve?.[0]?.median;
  const limits = look.limits.flatMap(({ limit }) => {
    const y =
      limit.basis === 'reading' ? limit.value : start === undefined ? null : limit.value * start;
    return y === null ? [] : [{ y, limit }];
  });
  const ys = [
    ...points.map(({ value }) => value),
    ...(curve ?? []).flatMap(({ lower, upper }) => [lower, upper]),
    ...limits.map((one) => one.y),
  ];
  const yTicks = ticksAround(
    ys,
    limits.map((one) => one.y),
  );
  const xTicks = niceTicks(0, km(briefM), 4);
  const x = linear([0, xTicks.at(-1) as number], [MARGIN.left, WIDTH - MARGIN.right]);
  const y = linear(
    [yTicks[0] as number, yTicks.at(-1) as number],
    [HEIGHT - MARGIN.bottom, MARGIN.top],
  );
  const labels = limits.map((one) => {
    const text = joined(languages, (spoken) =>
      spoken.paper.atLimit(
        one.limit.basis === 'reading'
          ? valueOf(one.limit.value, look, spoken.speaker)
          : spoken.speaker.desk.wear.ofNew(setPercentOf(one.limit.value, spoken.speaker.number)),
      ),
    );
    return { text, at: one.y, base: labelAt(y(one.y), yTicks.map(y)) };
  });
  const path = (some: readonly { readonly x: Metres; readonly y: number }[]) =>
    `M${some.map((one) => `${x(km(one.x)).toFixed(1)},${y(one.y).toFixed(1)}`).join('L')}`;
  const medians = (curve ?? []).map((one) => ({ x: one.x, y: one.median }));
  const within = medians.filter((one) => one.x <= greatest);
  const beyond = medians.filter((one) => one.x >= (within.at(-1)?.x ?? metres(0)));
  const byPair = new Map<string, typeof points>();
  for (const point of points) byPair.set(point.pair, [...(byPair.get(point.pair) ?? []), point]);
  return (
    <figure class="curve whole">
      <figcaption>
        <strong>
          <Say in={languages} of={(spoken) => placeTitle(look, spoken.speaker)} />
        </strong>
        <span class="soft">
          <Say
            in={languages}
            of={(spoken) =>
              `${unitName(look, spoken.speaker)}. ${spoken.paper.curveOf(spoken.far(greatest))}`
            }
          />
        </span>
      </figcaption>
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={joined(languages, (spoken) => placeTitle(look, spoken.speaker))}
      >
        {yTicks.map((tick) => (
          <g key={tick}>
            {!limits.some((one) => Math.abs(y(one.y) - y(tick)) < 1) && (
              <path class="grid" d={`M${MARGIN.left},${y(tick)}H${gridEnd(y(tick), labels)}`} />
            )}
            <text x={MARGIN.left - 5} y={y(tick) + 4} text-anchor="end">
              {speaker.number(tick, 2)}
            </text>
          </g>
        ))}
        {xTicks.map((tick) => (
          <text
            key={tick}
            x={x(tick)}
            y={HEIGHT - 8}
            text-anchor={tick === xTicks.at(-1) ? 'end' : 'middle'}
          >
            {tick === xTicks.at(-1)
              ? `${speaker.number(tick, 0)} ${unit}`
              : speaker.number(tick, 0)}
          </text>
        ))}
        {curve && (
          <path
            class="band"
            d={`${path(curve.map((one) => ({ x: one.x, y: one.upper })))}L${path(
              [...curve].reverse().map((one) => ({ x: one.x, y: one.lower })),
            ).slice(1)}Z`}
          />
        )}
        <path class="brief" d={`M${x(km(briefM))},${MARGIN.top}V${HEIGHT - MARGIN.bottom}`} />
        {[...byPair].map(([pair, own]) => (
          <path
            key={pair}
            class="pair"
            d={path(own.map((one) => ({ x: one.x, y: one.value })).sort((a, b) => a.x - b.x))}
          />
        ))}
        {within.length > 1 && <path class="median" d={path(within)} />}
        {beyond.length > 1 && <path class="median beyond" d={path(beyond)} />}
        {labels.map(({ text, at, base }) => (
          <g key={at}>
            <path class="limit" d={`M${MARGIN.left},${y(at)}H${WIDTH - MARGIN.right}`} />
            <text class="limit-words" x={LABEL_END} y={base} text-anchor="end">
              {text}
            </text>
          </g>
        ))}
        {points.map((point) => (
          <path
            key={`${point.check} ${point.pair}`}
            class="mark"
            d={`M${x(km(point.x))},${y(point.value) - 4}l4,4l-4,4l-4,-4z`}
          />
        ))}
      </svg>
    </figure>
  );
};
