/**
 * What each step leaves behind, as a small drawing of the shapes that its place draws: the shoe's own, or an example
 * where it has nothing yet.
 */
import { viewBox, zoneShapes } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { StartStep } from '../../../core/review/index.ts';
import { metres, millimetres } from '../../../core/units/index.ts';
import { Decorations } from '../../parts/foot-map/decorations.tsx';
import { formatDate, formatNumber, formatSetPercent, formatSize } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { roundDistance } from '../frame/say.ts';
import { SquareCode } from '../parts/square-code.tsx';
import {
  drawnBrief,
  ownFeet,
  ownPairs,
  ownPlan,
  type DrawnBrief,
  type DrawnFoot,
  type DrawnPair,
  type DrawnPlan,
} from './drawn.ts';
import { footOutlinePath, stretchedTo, widthAt } from '../people/foot-outline.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

const [WIDTH, HEIGHT] = [300, 116] as const;
const VIEW = `0 0 ${WIDTH} ${HEIGHT}`;

const Foot = (props: {
  readonly length: number;
  readonly at: readonly [number, number];
  readonly kind?: string;
}) => (
  <path
    class={props.kind ?? 'foot-outline'}
    d={footOutlinePath}
    transform={stretchedTo(props.length, widthAt(props.length), props.at)}
  />
);

const exampleBrief: DrawnBrief = { distanceM: metres(600_000), share: 0.7, feet: [248, 283] };

/** A curve above its limit, and the feet that the shoe is for. */
const BriefPicture = ({ distanceM, share, feet }: DrawnBrief) => {
  const words = p().start.pictures;
  const mm = (length: number) => formatNumber(length, 0);
  return (
    <svg viewBox={VIEW}>
      {share !== null && (
        <>
          <path class="start-curve" d="M8,10C44,42 92,52 146,57" />
          <path class="start-limit" d="M8,70H152" />
          <text class="soft" x="8" y="86">
            {words.ofNew(formatSetPercent(share))}
          </text>
        </>
      )}
      <path class="start-line" d="M152,10V92" />
      <text class="soft" x="152" y="108" text-anchor="end">
        {roundDistance(distanceM)}
      </text>
      {feet && (
        <>
          <Foot length={66} at={[208, 86]} />
          <Foot length={78} at={[252, 86]} />
          <text class="soft" x="230" y="108" text-anchor="middle">
            {words.feet(mm(feet[0]), mm(feet[1]))}
          </text>
        </>
      )}
    </svg>
  );
};

/** The shoe from above, toe to the right; as an example with a few dimensions, and what was changed is marked. */
const RoundPicture = ({ isExample }: { readonly isExample: boolean }) => {
  const [scale, right, top] = [0.46, 262, 8];
  const mm = (length: number) => `${formatNumber(length, 0)} mm`;
  return (
    <svg class="shoe-drawing" viewBox={VIEW}>
      <g transform={`translate(${right} ${top}) rotate(90) scale(${scale})`}>
        {zoneShapes('upper').map(({ zone, path }) => (
          <g
            key={zone}
            class="foot-map-zone"
            {...(isExample && zone === 'U9' && { 'data-level': 2 })}
          >
            <path class="foot-map-area" d={path} />
          </g>
        ))}
        <g class="foot-map-above">
          <Decorations view="upper" />
        </g>
      </g>
      {isExample && (
        <>
          <path
            class="start-line"
            d={`M${right - scale * (viewBox.height - 18)},110H${right - 8}`}
          />
          <text x="150" y="106" text-anchor="middle">
            {mm(284)}
          </text>
          <path class="start-line" d="M38,26V82" />
          <text x="34" y="58" text-anchor="end">
            {mm(66)}
          </text>
          <path class="start-line" d="M266,18V88" />
          <text x="270" y="20">
            {mm(98)}
          </text>
        </>
      )}
    </svg>
  );
};

/** A long code, as much of it as stands beside its drawing. */
const cut = (code: string, most: number): string =>
  code.length > most ? `${code.slice(0, most - 1)}…` : code;

const examplePairs = (): readonly DrawnPair[] =>
  [
    [688, 255],
    [260, 260],
    [146, 265],
    [395, 270],
    [429, 275],
    [864, 280],
  ].map(([code, size]) => ({ code: String(code), sizeMm: millimetres(size as number) }));

const PairsPicture = ({ pairs }: { readonly pairs: readonly DrawnPair[] }) => (
  <svg viewBox={VIEW}>
    {pairs.map(({ code, sizeMm }, at) => {
      const [x, y] = [100 * (at % 3), 56 * Math.floor(at / 3)];
      return (
        <g key={code} transform={`translate(${x} ${y})`}>
          <Foot length={44} at={[14, 50]} />
          <g transform="translate(46 0) scale(-1 1)">
            <Foot length={44} at={[14, 50]} />
          </g>
          <text class="start-name" x="50" y="27">
            {cut(code, 7)}
          </text>
          <text class="soft" x="50" y="43">
            {formatSize(sizeMm)}
          </text>
        </g>
      );
    })}
  </svg>
);

const exampleFeet: readonly DrawnFoot[] = [
  { code: 'T01', mm: 250, room: 15 },
  { code: 'T05', mm: 258, room: 13 },
  { code: 'T08', mm: 268, room: 12 },
  { code: 'T12', mm: 282, room: 17 },
];

/** Pixels of the drawing to a millimetre of foot. */
const OF_FOOT = 0.3;

const TestersPicture = ({ feet }: { readonly feet: readonly DrawnFoot[] }) => {
  const words = p().start.pictures;
  const heel = [18, 112] as const;
  return (
    <svg viewBox={VIEW}>
      {feet.map(({ code, mm, room }, at) => (
        <g key={code} transform={`translate(${75 * at} 0)`}>
          {mm !== null && room !== undefined && (
            <>
              <Foot kind="last-outline" length={OF_FOOT * (mm + room)} at={heel} />
              <text class={room <= 15 ? 'room-good' : 'room-long'} x="2" y="16">
                {words.room(formatNumber(room, 0))}
              </text>
            </>
          )}
          {mm !== null && <Foot length={OF_FOOT * mm} at={heel} />}
          <text class="start-name" x="38" y="76">
            {cut(code, 5)}
          </text>
          <text class="soft" x="38" y="92">
            {mm === null ? '' : formatNumber(mm, 0)}
          </text>
        </g>
      ))}
    </svg>
  );
};

const DAY_MS = 86_400_000;

const examplePlan = (nowMs: number): DrawnPlan => ({
  rows: [
    ['688', 'T01', 'T04'],
    ['260', 'T02', 'T05'],
    ['146', 'T03', 'T06'],
    ['395', 'T04', 'T01'],
  ],
  days: [nowMs, nowMs + 21 * DAY_MS],
});

/** Two periods, four pairs; what is to come is dashed. */
const PlanPicture = ({ rows, days }: DrawnPlan) => {
  const [left, wide, row] = [44, 124, 22];
  return (
    <svg viewBox={VIEW}>
      {days.map((ms, period) => (
        <text key={period} class="soft" x={left + 4 + period * (wide + 4)} y="18">
          {formatDate(ms)}
        </text>
      ))}
      {rows.map(([pair = '', ...testers], at) => {
        const y = 26 + at * row;
        return (
          <g key={pair}>
            <text class="soft" x="38" y={y + 14} text-anchor="end">
              {cut(pair, 5)}
            </text>
            {testers.map((tester, period) => (
              <g key={period} transform={`translate(${left + period * (wide + 4)} ${y})`}>
                <rect
                  class={`plan-block ${period === 0 ? 'plan-running' : 'plan-drawn'}`}
                  width={wide}
                  height={row - 4}
                  rx="2"
                />
                <text x="6" y="14">
                  {cut(tester, 12)}
                </text>
              </g>
            ))}
          </g>
        );
      })}
    </svg>
  );
};

/** A slip to scan, and the phone with its first run. The code opens the door of this hub, and is no invite. */
const InvitesPicture = () => {
  const words = p().start.pictures;
  return (
    <div class="start-invite">
      <div class="start-slip">
        <SquareCode address={`${location.origin}/join`} />
        <p>
          <b>T01</b>
          <br />
          <span class="soft">{words.joins}</span>
        </p>
      </div>
      <svg viewBox="0 0 62 110" class="start-phone">
        <rect class="start-case" x="1" y="1" width="60" height="108" rx="8" />
        <rect class="start-screen" x="6" y="10" width="50" height="88" />
        <text x="31" y="30" text-anchor="middle">
          {words.run}
        </text>
        <text x="31" y="46" text-anchor="middle">
          {roundDistance(metres(8_200))}
        </text>
        <Foot length={40} at={[31, 92]} />
      </svg>
    </div>
  );
};

interface StepProps {
  readonly step: StartStep;
  readonly project: RecordId | null;
  readonly records: DeskRecords;
}

/** What the shoe has of a step, drawn; null: nothing yet, or nothing that can be drawn. */
const ownPicture = ({ step, project, records }: StepProps) => {
  switch (step) {
    case 'brief': {
      const own = records.project.find(({ revision }) => revision.id === project);
      const drawn = own && drawnBrief(own.body.brief);
      // A distance alone makes no picture.
      return drawn && (drawn.share ?? drawn.feet) !== null && <BriefPicture {...drawn} />;
    }
    case 'round':
      return (
        records.round.some(({ body }) => body.project === project) && (
          <RoundPicture isExample={false} />
        )
      );
    case 'pairs': {
      const first = ownPairs(records, project);
      return first && <PairsPicture pairs={first} />;
    }
    case 'testers': {
      const first = ownFeet(records);
      return first && <TestersPicture feet={first} />;
    }
    case 'plan': {
      const own = ownPlan(records, project);
      return own && <PlanPicture {...own} />;
    }
    case 'invites':
      return null;
  }
};

const examplePicture = (step: StartStep) => {
  switch (step) {
    case 'brief':
      return <BriefPicture {...exampleBrief} />;
    case 'round':
      return <RoundPicture isExample />;
    case 'pairs':
      return <PairsPicture pairs={examplePairs()} />;
    case 'testers':
      return <TestersPicture feet={exampleFeet} />;
    case 'plan':
      return <PlanPicture {...examplePlan(Date.now())} />;
    case 'invites':
      return <InvitesPicture />;
  }
};

/** What the shoe has of a step; where it has nothing yet, an example that says so. A step that is done shows no example. */
export const StepPicture = (props: StepProps & { readonly isDone: boolean }) => {
  const own = ownPicture(props);
  if (own) return own;
  if (props.isDone) return null;
  return (
    <>
      {examplePicture(props.step)}
      {props.project !== null && <p class="start-example soft small">{p().start.example}</p>}
    </>
  );
};
