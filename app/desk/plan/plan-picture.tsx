/** The plan as a calendar: a row a pair, a block a tester; what is planned is dashed. */
import { useState } from 'preact/hooks';
import type { HandOutPlan } from '../../../core/records/index.ts';
import { useWidth } from '../../parts/charts/use-width.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatSize } from '../../parts/format.ts';
import { clauses, locale, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf, type Links } from '../frame/route.ts';
import { besideTick, ticksOf } from '../sheet/calendar-lines.ts';
import type { RoomIn } from './plan-fit.ts';
import { planRows, type PlanBlock, type PlanRow } from './plan-rows.ts';
import { roomFigure, roomSigns } from './room-sign.tsx';

const [ROW, HEAD, LEFT] = [24, 36, 162] as const;
/** More rows than this push the rest off the screen. */
const FIRST_ROWS = 28;
const LETTER = 7.4;

interface Drawing {
  readonly x: (ms: number) => number;
  readonly links: Links;
  readonly names: ReturnType<typeof namesIn>;
  readonly nameOf: (tester: string) => string | undefined;
  readonly room: RoomIn;
}

/** As much of tester and room as the block holds. */
const blockTexts = (block: PlanBlock, width: number, { names, nameOf, room }: Drawing) => {
  const { tester, pair } = block.place;
  const code = names.tester(tester);
  const name = nameOf(tester);
  const found = room(tester, pair);
  const sign = found ? `${roomSigns[found.word]} ${roomFigure(found)}` : '?';
  const left = width - 18 - LETTER * code.length;
  const withSign = left > LETTER * sign.length;
  const withName =
    name !== undefined && left - (withSign ? LETTER * sign.length + 8 : 0) > LETTER * name.length;
  return {
    ...{ code, name: withName ? name : null, sign: withSign ? sign : null },
    kind: found ? `room-${found.word}` : 'room-unknown',
  };
};

const Block = ({
  block,
  y,
  drawing,
}: {
  readonly block: PlanBlock;
  readonly y: number;
  readonly drawing: Drawing;
}) => {
  const { x, links, names, room } = drawing;
  const { place, fromMs, untilMs, state, changed } = block;
  const [from, until] = [x(fromMs), x(untilMs)];
  const width = Math.max(3, until - from - 2);
  const { code, name, sign, kind } = blockTexts(block, width, drawing);
  const words = p().plan;
  const found = room(place.tester, place.pair);
  const says = clauses(
    names.tester(place.tester),
    words.span(formatDate(fromMs), formatDate(untilMs)),
    found ? `${roomFigure(found)} ${words.roomWord[found.word]}` : words.roomUnknown,
    words.states[state],
  );
  return (
    <a href={links.tester(place.tester)} tabindex={-1}>
      <title>{says}</title>
      <rect
        class={`plan-block plan-${state}${changed ? ' plan-changed' : ''}`}
        x={from + 1}
        y={y + 1.5}
        width={width}
        height={ROW - 4}
        rx="2"
      />
      <text x={from + 8} y={y + ROW / 2} dy="0.35em">
        <tspan class="plan-code">{code}</tspan>
        {name && ` ${name}`}
      </text>
      {sign && (
        <text class={kind} x={from + width - 5} y={y + ROW / 2} dy="0.35em" text-anchor="end">
          {sign}
        </text>
      )}
    </a>
  );
};

const Held = ({ row, y, drawing }: { row: PlanRow; y: number; drawing: Drawing }) => {
  const { x, names } = drawing;
  if (!row.held) return null;
  const { tester, fromMs, untilMs } = row.held;
  const width = Math.max(2, x(untilMs) - x(fromMs) - 2);
  return (
    <g>
      <rect class="plan-block plan-over" x={x(fromMs)} y={y + 1.5} width={width} height={ROW - 4} />
      {width > LETTER * 4 && (
        <text class="soft" x={x(fromMs) + 6} y={y + ROW / 2} dy="0.35em">
          {names.tester(tester)}
        </text>
      )}
    </g>
  );
};

export const PlanPicture = (
  props: TabProps & {
    readonly plan: HandOutPlan;
    /** As it is saved; `plan` may be a look at what would be. */
    readonly standing: HandOutPlan;
    readonly room: RoomIn;
  },
) => {
  const { records, review, plan, standing, room } = props;
  const words = p().plan;
  const [all, setAll] = useState(false);
  const [measure, width] = useWidth(860);
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { nowMs } = review;
  const { fromMs, untilMs, rows } = planRows(plan, standing, records, nowMs);
  const shown = all ? rows : rows.slice(0, FIRST_ROWS);
  const right = Math.max(LEFT + 300, width);
  const x = (ms: number) =>
    LEFT + Math.min(1, Math.max(0, (ms - fromMs) / (untilMs - fromMs))) * (right - LEFT);
  const height = HEAD + shown.length * ROW + 4;
  const sizes = new Map(records.pair.map(({ body, revision }) => [revision.id, body.sizeMm]));
  const testerNames = new Map<string, string | undefined>(
    records.tester.map(({ body, revision }) => [revision.id, body.name]),
  );
  const drawing = { x, links, names, room, nameOf: (id: string) => testerNames.get(id) };
  const day = new Intl.DateTimeFormat(locale(), {
    ...{ weekday: 'short', day: 'numeric', month: 'short' },
  });
  const changes = new Set(
    shown.flatMap(({ blocks }) => blocks.flatMap((one) => [one.fromMs, one.untilMs])),
  );
  const testers = new Set(plan.places.map(({ tester }) => tester)).size;
  const isNowIn = nowMs >= fromMs && nowMs <= untilMs;
  return (
    <section class="plan-picture no-print" aria-label={words.calendar}>
      <div class="picture" ref={measure}>
        <svg
          viewBox={`0 0 ${right} ${height}`}
          style={{ blockSize: `${height}px` }}
          role="group"
          aria-label={words.calendarSays(
            rows.length,
            testers,
            formatDate(fromMs),
            formatDate(untilMs),
          )}
        >
          {ticksOf(fromMs, untilMs, right - LEFT - 60).map((ms) => (
            <g key={ms}>
              <path class="plan-tick" d={`M${x(ms)},${HEAD - 16}V${height}`} />
              <text class="soft" y={12} {...besideTick(x(ms), right)}>
                {day.format(ms)}
              </text>
            </g>
          ))}
          {/* Under the blocks: over them it would run through the testers' codes. */}
          {isNowIn && (
            <>
              <path class="plan-now" d={`M${x(nowMs)},${HEAD - 8}V${height}`} />
              <text class="plan-now-word" x={x(nowMs)} y={HEAD - 11} text-anchor="middle">
                {words.today}
              </text>
            </>
          )}
          {shown.map((row, at) => {
            const y = HEAD + at * ROW;
            return (
              <g key={row.pair}>
                <path class="plan-tick" d={`M${row.leads ? 0 : 66},${y}H${right}`} />
                {row.leads && (
                  <a href={links.round(row.round)} tabindex={-1}>
                    <text class="plan-code" x={0} y={y + ROW / 2} dy="0.35em">
                      {names.round(row.round).slice(0, 9)}
                    </text>
                  </a>
                )}
                <a href={links.pair(row.pair)} tabindex={-1}>
                  <text x={98} y={y + ROW / 2} dy="0.35em" text-anchor="end">
                    {names.code(row.pair)}
                  </text>
                </a>
                <text class="soft" x={LEFT - 8} y={y + ROW / 2} dy="0.35em" text-anchor="end">
                  {formatSize(sizes.get(row.pair) as Parameters<typeof formatSize>[0])}
                </text>
                <Held row={row} y={y} drawing={drawing} />
                {row.blocks.map((block) => (
                  <Block
                    key={`${block.place.tester}${block.fromMs}`}
                    block={block}
                    y={y}
                    drawing={drawing}
                  />
                ))}
              </g>
            );
          })}
          {[...changes].map((ms) => (
            <path key={ms} class="plan-change" d={`M${x(ms)},${HEAD - 8}V${height}`} />
          ))}
        </svg>
      </div>
      {rows.length > shown.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {words.showAll(rows.length)}
        </Button>
      )}
    </section>
  );
};
