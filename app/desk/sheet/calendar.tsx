/** The test day by day, drawn: a row for each pair, or for each round where there are too many pairs. */
import { useEffect, useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { MOST_ROWS, type Calendar as Days, type CalendarRow } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { distanceFigure, formatDate, formatDistance } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { locale, p } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { linksOf, type Links } from '../frame/route.ts';
import { CalendarTable } from './calendar-table.tsx';

const DAY_MS = 86_400_000;
const ROW = 15;
const HEAD = 22;
/** Room for the round and the pair, and for the tester's code before a hand-out. */
const [LEFT, RIGHT] = [132, 56];
/** Narrower than this the picture scrolls sideways. */
const LEAST_WIDTH = 640;

const spans = ['whole', 'weeks', 'week'] as const;
type Span = (typeof spans)[number];
const daysOf: Readonly<Record<Exclude<Span, 'whole'>, number>> = { weeks: 28, week: 7 };

/** The width of an element, followed as it changes; letters in the picture keep their size. */
const useWidth = (): [(element: Element | null) => void, number] => {
  const [width, setWidth] = useState(960);
  const [element, setElement] = useState<Element | null>(null);
  useEffect(() => {
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.max(LEAST_WIDTH, Math.round(entry.contentRect.width)));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return [setElement, width];
};

/** Days at which a line stands: Mondays, fewer of them where the span is long. */
const ticksOf = (fromMs: number, untilMs: number, width: number): number[] => {
  const days = (untilMs - fromMs) / DAY_MS;
  const step = [1, 7, 14, 28, 56, 112, 224, 448].find((one) => (days / one) * 74 < width) ?? 896;
  const first = Math.ceil(fromMs / DAY_MS);
  // 1 January 1970 was a Thursday.
  const monday = step === 1 ? first : first + ((11 - (first % 7)) % 7);
  const ticks: number[] = [];
  for (let day = monday; day * DAY_MS < untilMs; day += step) ticks.push(day * DAY_MS);
  return ticks;
};

interface Line {
  readonly key: string;
  readonly y: number;
  /** Stands at the first line of its round. */
  readonly round: RecordId | null;
  readonly row: CalendarRow | null;
  readonly fold: Days['folds'][number] | null;
}

/** Rows and folded rounds in the order of the rounds, with room between rounds. */
const linesOf = (days: Days, rounds: readonly RecordId[]): readonly Line[] => {
  let y = HEAD;
  return rounds.flatMap((round): Line[] => {
    const rows = days.rows.filter((row) => row.round === round);
    const fold = days.folds.find((one) => one.round === round) ?? null;
    const own = rows.length > 0 ? rows : fold ? [null] : [];
    const lines = own.map((row, at): Line => {
      const line = {
        key: row?.pair ?? `fold ${round}`,
        y,
        round: at === 0 ? round : null,
        row,
        fold: row ? null : fold,
      };
      y += ROW;
      return line;
    });
    if (lines.length > 0) y += 5;
    return lines;
  });
};

/** Where a tester's code ends before a hand-out: left of a bench check that stands just before it. */
const labelEnd = (row: CalendarRow, fromMs: number, x: (ms: number) => number): number => {
  const marks = row.checks.map(({ atMs }) => x(atMs) - 8).filter((at) => at < x(fromMs));
  const near = marks.filter((at) => at > x(fromMs) - 40);
  return Math.max(LEFT - 8, Math.min(x(fromMs) - 3, ...near));
};

const Row = (props: {
  readonly line: Line & { readonly row: CalendarRow };
  readonly x: (ms: number) => number;
  readonly end: number;
  readonly links: Links;
  readonly names: ReturnType<typeof namesIn>;
}) => {
  const { line, x, end, links, names } = props;
  const { row, y } = line;
  const middle = y + ROW / 2;
  return (
    <g>
      {row.hands.map(({ handOut, fromMs, untilMs }) => (
        <rect
          key={handOut}
          class="day-hand"
          x={x(fromMs)}
          y={y + 1}
          width={Math.max(1, x(untilMs ?? end) - x(fromMs))}
          height={ROW - 2}
        />
      ))}
      {row.stops.map(({ stop, fromMs, untilMs }) => (
        <rect
          key={stop}
          class="day-stop"
          x={x(fromMs)}
          y={y + 2}
          width={Math.max(2, x(untilMs ?? end) - x(fromMs))}
          height={ROW - 4}
          fill="url(#day-stop)"
        />
      ))}
      {row.runs.map(({ run, atMs, count, complained }) => {
        const mark = (
          <path
            class={complained > 0 ? 'day-run day-complaint' : 'day-run'}
            d={`M${x(atMs)},${complained > 0 ? y + 2 : middle - 1}V${y + ROW - 3}`}
            stroke-width={count > 1 ? 3 : undefined}
          />
        );
        return run ? (
          <a key={run} href={links.run(run)} tabIndex={-1}>
            <title>{formatDate(atMs)}</title>
            {mark}
          </a>
        ) : (
          <g key={atMs}>{mark}</g>
        );
      })}
      {row.checks.map(({ check, atMs }) => (
        <a key={check} href={links.check(check)} tabIndex={-1}>
          <path class="day-check" d={`M${x(atMs)},${middle - 5}l5,5l-5,5l-5,-5z`} />
        </a>
      ))}
      {row.damages.map(({ damage, atMs }) => (
        <a key={damage} href={links.damage(damage)} tabIndex={-1}>
          <path class="day-damage" d={`M${x(atMs) - 4},${middle - 4}l8,8m0,-8l-8,8`} />
        </a>
      ))}
      <a href={links.pair(row.pair)} tabIndex={-1}>
        <text x={LEFT - 38} y={middle} dy="0.35em" text-anchor="end">
          {names.code(row.pair)}
        </text>
      </a>
      {row.hands
        .filter(({ tester }, at) => row.hands[at - 1]?.tester !== tester)
        .map(({ handOut, tester, fromMs }) => (
          <text
            key={handOut}
            class="soft day-tester"
            x={labelEnd(row, fromMs, x)}
            y={middle}
            dy="0.35em"
            text-anchor="end"
          >
            {names.tester(tester)}
          </text>
        ))}
    </g>
  );
};

const Legend = () => {
  const words = p().sheet.legend;
  return (
    <span class="day-legend" aria-hidden="true">
      {(['hand', 'run', 'complaint', 'check', 'damage', 'stop'] as const).map((mark) => (
        <span key={mark}>
          <i class={`day-key day-key-${mark}`} />
          {words[mark]}
        </span>
      ))}
    </span>
  );
};

export const Calendar = (props: TabProps) => {
  const { review, records } = props;
  const words = p().sheet;
  const [span, setSpan] = useState<Span>('whole');
  const [open, setOpen] = useState<RecordId | null>(null);
  const [measure, width] = useWidth();
  const { id, brief } = review.project;
  const bounds =
    span === 'whole'
      ? null
      : { fromMs: review.nowMs - daysOf[span] * DAY_MS, untilMs: review.nowMs + DAY_MS };
  const days = useWork((desk) => desk.calendar(id, bounds, open), records, [id, span, open]);
  if (!days || (days.rows.length === 0 && days.folds.length === 0)) return null;
  const names = namesIn(review, records);
  const links = linksOf(id);
  const lines = linesOf(
    days,
    review.rounds.map((round) => round.id),
  );
  const height = (lines.at(-1)?.y ?? HEAD) + ROW + 4;
  const x = (ms: number) => {
    const share = (ms - days.fromMs) / (days.untilMs - days.fromMs);
    return LEFT + Math.min(1, Math.max(0, share)) * (width - LEFT - RIGHT);
  };
  const short = new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short' });
  const planned = new Map(days.planned.map((one) => [one.pair, one]));
  return (
    <section class="calendar" aria-label={words.calendar}>
      <div class="calendar-head">
        <h2>{words.calendar}</h2>
        <Legend />
        <select
          aria-label={words.span}
          value={span}
          onChange={(event) => setSpan(event.currentTarget.value as Span)}
        >
          {spans.map((one) => (
            <option key={one} value={one}>
              {words.spans[one]}
            </option>
          ))}
        </select>
      </div>
      <div ref={measure} class="picture">
        <svg
          viewBox={`0 0 ${width} ${height}`}
          style={{ blockSize: `${height}px` }}
          role="group"
          aria-label={words.calendarSays(
            review.pairs.length,
            formatDate(days.fromMs),
            formatDate(days.untilMs),
          )}
        >
          <defs>
            <pattern
              id="day-stop"
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <rect class="day-stop-ground" width="7" height="7" />
              <rect class="day-stop-stripe" width="3.5" height="7" />
            </pattern>
          </defs>
          {ticksOf(days.fromMs, days.untilMs, width - LEFT - RIGHT).map((ms) => (
            <g key={ms}>
              <path class="day-tick" d={`M${x(ms)},${HEAD - 4}V${height}`} />
              <text class="soft" x={x(ms)} y={12} text-anchor="middle">
                {short.format(ms)}
              </text>
            </g>
          ))}
          <text class="soft" x={width} y={12} text-anchor="end">
            {settings.value.distance}
          </text>
          {lines.map((line) => (
            <g key={line.key}>
              {line.round && (
                <a href={links.round(line.round)} tabIndex={-1}>
                  <text class="day-round" x={0} y={line.y + ROW / 2} dy="0.35em">
                    {names.round(line.round).slice(0, 9)}
                  </text>
                </a>
              )}
              {line.row && (
                <Row
                  line={{ ...line, row: line.row }}
                  x={x}
                  end={days.nowMs}
                  links={links}
                  names={names}
                />
              )}
              {line.row && planned.get(line.row.pair) && (
                <PlannedMark planned={planned.get(line.row.pair)} x={x} y={line.y} names={names} />
              )}
              {line.row && (
                <text
                  x={width}
                  y={line.y + ROW / 2}
                  dy="0.35em"
                  text-anchor="end"
                  class={line.row.totalM >= brief.distanceM ? 'day-far' : ''}
                >
                  {distanceFigure(line.row.totalM)}
                </text>
              )}
              {line.fold?.runs.map(({ atMs, count, complained }) => (
                <rect
                  key={atMs}
                  class={
                    complained > count / 4 ? 'day-density day-density-complaint' : 'day-density'
                  }
                  x={x(atMs) - 1}
                  y={line.y + 1}
                  width="3"
                  height={ROW - 3}
                  opacity={Math.min(1, 0.25 + count / 20)}
                />
              ))}
            </g>
          ))}
          <path class="day-now" d={`M${x(days.nowMs)},${HEAD - 6}V${height}`} />
        </svg>
      </div>
      {days.folds.length > 0 && (
        <div class="row">
          {days.folds.map(({ round, pairs }) => (
            <Button key={round} kind="quiet" onClick={() => setOpen(open === round ? null : round)}>
              {open === round
                ? words.closeRound(names.round(round))
                : words.openRound(names.round(round), Math.min(pairs, MOST_ROWS))}
            </Button>
          ))}
        </div>
      )}
      <CalendarTable days={days} links={links} names={names} format={formatDistance} />
    </section>
  );
};

const PlannedMark = (props: {
  readonly planned: Days['planned'][number] | undefined;
  readonly x: (ms: number) => number;
  readonly y: number;
  readonly names: ReturnType<typeof namesIn>;
}) => {
  const { planned, x, y, names } = props;
  if (!planned) return null;
  const [from, until] = [x(planned.fromMs), x(planned.untilMs)];
  return (
    <g>
      <rect
        class="day-planned"
        x={from}
        y={y + 1}
        width={Math.max(2, until - from)}
        height={ROW - 2}
      />
      <text class="soft" x={from + 4} y={y + ROW / 2} dy="0.35em">
        {names.tester(planned.tester)}
      </text>
    </g>
  );
};
