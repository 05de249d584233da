/** The test day by day, drawn: a row for each pair, or for each round where there are too many pairs. */
import { useEffect, useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { MOST_ROWS, type Calendar as Days } from '../../../core/review/index.ts';
import { useWidth } from '../../parts/charts/use-width.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { distanceFigure, formatDate, formatDistance } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { locale, p } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import {
  DAY_MS,
  HEAD,
  LEFT,
  linesOf,
  RIGHT,
  ROW,
  scrollToLatest,
  ticksOf,
} from './calendar-lines.ts';
import { Row } from './calendar-row.tsx';
import { CalendarTable } from './calendar-table.tsx';

/** Narrower than this the picture of the whole test scrolls sideways; a few weeks fit on a phone. */
const LEAST_WIDTH = 640;
const LEAST_WIDTH_OF_WEEKS = 280;
const PHONE = '(max-width: 48rem)';

const spans = ['whole', 'weeks', 'week'] as const;
type Span = (typeof spans)[number];
const daysOf: Readonly<Record<Exclude<Span, 'whole'>, number>> = { weeks: 28, week: 7 };

const Legend = ({ planned }: { readonly planned: boolean }) => {
  const words = p().sheet.legend;
  return (
    <span class="day-legend" aria-hidden="true">
      {(
        [
          'hand',
          'run',
          'complaint',
          'check',
          'damage',
          'stop',
          ...(planned ? (['planned'] as const) : []),
        ] as const
      ).map((mark) => (
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
  const [span, setSpan] = useState<Span>(() => (matchMedia(PHONE).matches ? 'weeks' : 'whole'));
  const [open, setOpen] = useState<RecordId | null>(null);
  const [measure, room] = useWidth(960);
  const width = Math.max(span === 'whole' ? LEAST_WIDTH : LEAST_WIDTH_OF_WEEKS, room);
  const [picture, setPicture] = useState<HTMLElement | null>(null);
  const { id, brief } = review.project;
  const bounds =
    span === 'whole'
      ? null
      : { fromMs: review.nowMs - daysOf[span] * DAY_MS, untilMs: review.nowMs + DAY_MS };
  const days = useWork((desk) => desk.calendar(id, bounds, open), records, [id, span, open]);
  const x = (ms: number) => {
    const share = days ? (ms - days.fromMs) / (days.untilMs - days.fromMs) : 0;
    return LEFT + Math.min(1, Math.max(0, share)) * (width - LEFT - RIGHT);
  };
  const nowX = x(review.nowMs);
  useEffect(() => {
    if (picture) picture.scrollLeft = scrollToLatest(nowX, picture.clientWidth, width);
  }, [picture, nowX, width]);
  if (!days || (days.rows.length === 0 && days.folds.length === 0)) return null;
  const names = namesIn(review, records);
  const links = linksOf(id);
  const lines = linesOf(
    days,
    review.rounds.map((round) => round.id),
  );
  const height = (lines.at(-1)?.y ?? HEAD) + ROW + 4;
  const short = new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short' });
  const planned = new Map(days.planned.map((one) => [one.pair, one]));
  return (
    <section
      class={`calendar${span === 'whole' ? ' calendar-whole' : ''}`}
      aria-label={words.calendar}
    >
      <div class="calendar-head">
        <h2>{words.calendar}</h2>
        <Legend planned={days.planned.length > 0} />
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
      <div
        ref={(element) => {
          measure(element);
          setPicture(element);
        }}
        class="picture"
        tabIndex={0}
      >
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
                <a href={links.round(line.round)} tabindex={-1}>
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
