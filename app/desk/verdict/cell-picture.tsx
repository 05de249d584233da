/** The small picture in a cell of the verdict: a curve against its limit, lives of pairs, shares, or bars by distance. */
import type { GridPicture, GridShare } from '../../../core/review/index.ts';
import { fromMetres, type Metres } from '../../../core/units/index.ts';
import { IntervalLine } from '../../parts/charts/interval-line.tsx';
import { linear } from '../../parts/charts/ticks.ts';
import { settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';

const [WIDTH, HEIGHT] = [200, 34];
const LIFE = 4;
/** Beyond this share a bar leaves the line; a complaint in half of all runs is off any scale. */
const MOST_SHARE = 0.5;

const km = (at: Metres): number => fromMetres(at, settings.value.distance);

const pathOf = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(1)},${y.toFixed(1)}`).join('');

const Frame = (props: {
  readonly height?: number;
  readonly children: preact.ComponentChildren;
}) => {
  const { height = HEIGHT } = props;
  return (
    <svg
      class="cell-picture"
      viewBox={`0 0 ${WIDTH} ${height}`}
      preserveAspectRatio="none"
      style={{ blockSize: `${height}px` }}
      aria-hidden="true"
    >
      {props.children}
    </svg>
  );
};

type Of<Draw extends GridPicture['draw']> = Extract<GridPicture, { draw: Draw }>;

const Curve = ({ of, briefM }: { readonly of: Of<'curve'>; readonly briefM: Metres }) => {
  const { curve, points, limitAt, greatest } = of;
  const values = [
    ...points.map(({ value }) => value),
    ...(curve ?? []).flatMap(({ lower, upper }) => [lower, upper]),
    ...(limitAt === null ? [] : [limitAt]),
  ];
  const x = linear([0, km(briefM) * 1.02], [3, WIDTH - 3]);
  const xOf = (at: Metres) => Math.min(WIDTH - 1, x(km(at)));
  const y = linear([Math.min(...values), Math.max(...values)], [HEIGHT - 3, 3]);
  const within = curve?.filter((one) => one.x <= greatest) ?? [];
  const beyond = curve?.filter((one) => one.x >= (within.at(-1)?.x ?? 0)) ?? [];
  const line = (part: typeof within) => pathOf(part.map((one) => [xOf(one.x), y(one.median)]));
  return (
    <Frame>
      {curve && (
        <path
          class="cell-band"
          d={`${pathOf(curve.map((one) => [xOf(one.x), y(one.upper)]))}${pathOf(
            curve.toReversed().map((one) => [xOf(one.x), y(one.lower)]),
          ).replace('M', 'L')}Z`}
        />
      )}
      <path class="cell-brief" d={`M${xOf(briefM)},0V${HEIGHT}`} />
      {limitAt !== null && <path class="cell-limit" d={`M0,${y(limitAt)}H${WIDTH}`} />}
      <path class="cell-line" d={line(within)} />
      <path class="cell-line cell-beyond" d={line(beyond)} />
      <path
        class="cell-dots"
        d={points.map((one) => `M${xOf(one.x)},${y(one.value)}h0.01`).join('')}
      />
    </Frame>
  );
};

/** More lines than this are not told apart. */
const MOST_LIVES = 10;

const Lives = ({ of, briefM }: { readonly of: Of<'lives'>; readonly briefM: Metres }) => {
  const broken = of.lives.filter(({ cameApart }) => cameApart);
  const rest = of.lives.filter(({ cameApart }) => !cameApart);
  const shown = [...rest.slice(0, Math.max(0, MOST_LIVES - broken.length)), ...broken]
    .slice(0, MOST_LIVES)
    .sort((a, b) => b.atM - a.atM);
  const most = Math.max(km(briefM), ...shown.map(({ atM }) => km(atM)));
  const x = linear([0, most * 1.02], [1, WIDTH - 3]);
  const height = Math.max(1, shown.length) * LIFE + 4;
  return (
    <Frame height={height}>
      <path class="cell-brief" d={`M${x(km(briefM))},0V${height}`} />
      {shown.map(({ pair, atM, cameApart }, at) => {
        const [end, y] = [x(km(atM)), at * LIFE + 3];
        return (
          <g key={pair}>
            <path class="cell-life" d={`M1,${y}H${end}`} />
            {cameApart && <path class="cell-cross" d={`M${end - 3},${y - 3}l6,6m0,-6l-6,6`} />}
          </g>
        );
      })}
    </Frame>
  );
};

const feltOf = ({ zone, kind }: GridShare): string =>
  p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name);

const Shares = (props: {
  readonly of: Of<'shares'>;
  readonly href: (share: GridShare) => string;
}) => (
  <ul class="cell-shares">
    {props.of.shares.map((one) => (
      <li key={`${one.zone} ${one.kind}`}>
        <a href={props.href(one)}>{feltOf(one)}</a>
        <IntervalLine
          range={[0, MOST_SHARE]}
          value={one.share}
          interval={[one.lower, one.upper]}
          limit={one.allowed}
          tone={one.proved ? 'against' : 'plain'}
          says={p().verdict.share(feltOf(one), one.runs, one.askedRuns)}
        />
      </li>
    ))}
  </ul>
);

const Growth = ({ of, briefM }: { readonly of: Of<'growth'>; readonly briefM: Metres }) => {
  const end = Math.max(km(briefM), ...of.bars.map(({ untilM }) => km(untilM)));
  const x = linear([0, end * 1.02], [1, WIDTH - 3]);
  const height = 26;
  return (
    <Frame height={height}>
      <path class="cell-base" d={`M0,${height - 0.5}H${WIDTH}`} />
      <path class="cell-brief" d={`M${x(km(briefM))},0V${height}`} />
      {of.bars.map(({ fromM, untilM, asked, complained }) =>
        asked === 0 ? null : (
          <rect
            key={fromM}
            class="cell-bar"
            x={x(km(fromM)) + 0.5}
            width={Math.max(1, x(km(untilM)) - x(km(fromM)) - 1)}
            y={height - 1 - ((height - 2) * complained) / asked}
            height={((height - 2) * complained) / asked}
          />
        ),
      )}
    </Frame>
  );
};

export const CellPicture = (props: {
  readonly picture: GridPicture;
  readonly briefM: Metres;
  readonly href: (share: GridShare) => string;
}) => {
  const { picture, briefM, href } = props;
  switch (picture.draw) {
    case 'curve':
      return <Curve of={picture} briefM={briefM} />;
    case 'lives':
      return <Lives of={picture} briefM={briefM} />;
    case 'shares':
      return <Shares of={picture} href={href} />;
    case 'growth':
      return <Growth of={picture} briefM={briefM} />;
    // Whether a pair is withdrawn is a word, not a figure.
    case 'notices':
      return null;
  }
};
